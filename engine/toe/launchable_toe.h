#pragma once

#include "engine/toe/launched_rock.h"
#include "engine/toe/placed_rock.h"

namespace proofstone {

/// A toe that follows the bed down as it scours: volume by launched_rock, and the stockpile that
/// holds it at the foot of the bank, `toe_multiple` layer thicknesses high.
struct LaunchableToeInputs : PlacedRock {
  Length layer_thickness;
  Length launch_height;
  ToePlacement placement = ToePlacement::under_water;
  Slope launch_slope = Slope::ratio(0.5);
  Dimensionless toe_multiple =
      Dimensionless::number(3);  ///< of the layer thickness; usually 2.5 to 4
};

struct LaunchableToeResult {
  Dimensionless increase;
  Area in_place;
  Area cross_section;
  Volume volume;
  Mass mass;
  Length toe_thickness;  ///< of the stockpile
  Length toe_width;      ///< of the stockpile, as a rectangle
};

Expected<LaunchableToeResult> launchable_toe(const LaunchableToeInputs& inputs, Steps& steps);

const Method& launchable_toe_method();

}  // namespace proofstone
