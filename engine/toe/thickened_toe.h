#pragma once

#include "engine/toe/launched_rock.h"
#include "engine/toe/placed_rock.h"

namespace proofstone {

/// A layer made thicker at bed level so that the extra rock can follow the bed down: the volume is
/// that of a launchable toe, spread over a stated width.
struct ThickenedToeInputs : PlacedRock {
  Length layer_thickness;
  Length launch_height;
  Length width;  ///< of the thicker part, along the bed
  ToePlacement placement = ToePlacement::dry;
};

struct ThickenedToeResult {
  Area cross_section;
  Volume volume;
  Mass mass;
  Length extra_thickness;
  Length toe_thickness;  ///< layer and extra together
};

Expected<ThickenedToeResult> thickened_toe(const ThickenedToeInputs& inputs, Steps& steps);

const Method& thickened_toe_method();

}  // namespace proofstone
