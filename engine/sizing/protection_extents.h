#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// How far bank protection reaches.
struct ProtectionExtentsInputs {
  Length top_width;  ///< of the water in the main channel
  Length layer_thickness;
};

struct ProtectionExtentsResult {
  Length upstream;       ///< beyond the place that needs protection, or where a bend begins
  Length downstream;     ///< beyond it, or where a bend ends
  Length end_thickness;  ///< of the layer at its ends
  Length end_length;     ///< over which it is thickened
};

Expected<ProtectionExtentsResult> protection_extents(const ProtectionExtentsInputs& inputs,
                                                     Steps& steps);

const Method& protection_extents_method();

}  // namespace proofstone
