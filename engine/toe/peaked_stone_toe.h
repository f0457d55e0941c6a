#pragma once

#include "engine/toe/placed_rock.h"

namespace proofstone {

/// A stone ridge along the foot of a bank (longitudinal peaked stone toe), specified as mass for
/// each unit of length: a triangle with both sides at 1V:zH.
struct PeakedStoneToeInputs : PlacedRock {
  Length height;
  Slope side_slope = Slope::ratio(1 / 1.5);
};

struct PeakedStoneToeResult {
  Area cross_section;
  Volume volume;
  Mass mass;
  Length base_width;
};

Expected<PeakedStoneToeResult> peaked_stone_toe(const PeakedStoneToeInputs& inputs, Steps& steps);

const Method& peaked_stone_toe_method();

}  // namespace proofstone
