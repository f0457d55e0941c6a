#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// What fits into the voids between equal spheres, and what can still be washed in.
struct VoidOccupationInputs {
  Length rock_size;
};

struct VoidOccupationResult {
  Length throat;            ///< passes between three touching stones
  Length tetrahedral_void;  ///< fits between four
  Length octahedral_void;   ///< fits between six
  Length washed_in;         ///< larger fill must be mixed in before placing
};

Expected<VoidOccupationResult> void_occupation(const VoidOccupationInputs& inputs, Steps& steps);

const Method& void_occupation_method();

}  // namespace proofstone
