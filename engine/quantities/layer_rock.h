#pragma once

#include "engine/toe/placed_rock.h"

namespace proofstone {

/// Rock of a layer as it lies: its area on the slope times its thickness square to the slope.
struct LayerRockInputs : PlacedRock {
  Area area;
  Length thickness;
};

struct LayerRockResult {
  Volume volume;  ///< voids and all
  Density bulk_density;
  Mass mass;
};

Expected<LayerRockResult> layer_rock(const LayerRockInputs& inputs, Steps& steps);

const Method& layer_rock_method();

}  // namespace proofstone
