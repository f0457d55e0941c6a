#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Fabric under a layer, laid in strips that run down the slope and overlap: what to order.
struct FabricAreaInputs {
  Length length;        ///< of the layer along the stream
  Length slope_length;  ///< from the toe to the top, along the slope
  Length roll_width = Length::feet(15);
  Length overlap = Length::feet(1);   ///< of neighbouring strips
  Length keyed_in = Length::feet(0);  ///< of each strip beyond the layer, at its ends together
};

struct FabricAreaResult {
  Dimensionless strips;  ///< whole
  Area laid;             ///< of fabric, overlaps and all
  Area covered;          ///< of ground
};

/// Problem "overlap-too-wide": strips that overlap by their whole width cover nothing.
Expected<FabricAreaResult> fabric_area(const FabricAreaInputs& inputs, Steps& steps);

const Method& fabric_area_method();

}  // namespace proofstone
