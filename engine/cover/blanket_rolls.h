#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Which way the rolls of a blanket are laid.
enum class RollDirection { along_stream, down_slope };

/// Rolls of a blanket on a bank: how long the slope is, what a roll covers, how many it takes.
struct BlanketRollsInputs {
  Length height;                           ///< of the covered slope
  Dimensionless side_slope;                ///< z: horizontal for 1 vertical
  Length length;                           ///< along the stream
  Length in_trenches = Length::meters(0);  ///< that the trenches take up, down the slope
  Length roll_width;
  Length roll_length;
  Length side_overlap = Length::meters(0);
  Length end_overlap = Length::meters(0);
  RollDirection direction = RollDirection::along_stream;
};

struct BlanketRollsResult {
  Length slope_length;
  Area roll_area;    ///< without overlaps
  Area roll_covers;  ///< within a field of rolls
  Area area;         ///< of the slope, with what lies in trenches
  Dimensionless strips;
  Dimensionless rolls;
};

/// Problem (overlap-too-wide): an overlap that leaves nothing of the roll.
Expected<BlanketRollsResult> blanket_rolls(const BlanketRollsInputs& inputs, Steps& steps);

const Method& blanket_rolls_method();

}  // namespace proofstone
