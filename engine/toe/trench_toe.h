#pragma once

#include "engine/toe/launched_rock.h"
#include "engine/toe/placed_rock.h"

namespace proofstone {

/// A toe dug in: the layer goes on down the bank's slope in a trench to the scour depth. Geometry
/// alone: the trench has the bank's slope 1V:zH on one side, a level bottom as wide as the layer
/// lies level (T·√(1+z²)), and its own slope on the other.
struct TrenchToeInputs : PlacedRock {
  Length layer_thickness;  ///< square to the slope
  Length depth;            ///< below the bed
  Slope bank_slope = Slope::ratio(0.5);
  Slope trench_slope = Slope::ratio(1);  ///< the water side of the trench
  ToePlacement placement = ToePlacement::dry;
};

struct TrenchToeResult {
  Area cross_section;
  Volume volume;
  Mass mass;
  Length bottom_width;
  Length top_width;
  Area excavation_section;  ///< for each unit of length
  Volume excavation;
};

Expected<TrenchToeResult> trench_toe(const TrenchToeInputs& inputs, Steps& steps);

const Method& trench_toe_method();

}  // namespace proofstone
