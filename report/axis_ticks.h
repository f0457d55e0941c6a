#pragma once

#include <string>
#include <vector>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// One mark of an axis.
struct AxisTick {
  double value = 0;   ///< in the unit of the axis
  std::string label;  ///< "12", "0.5"
  int rank = 0;       ///< where room is short, lower ranks are labelled first
};

/// Round marks from `low` to `high`, at most `most` of them, at steps of 1, 2 or 5 times a power of
/// ten. Empty when the range is empty or not finite.
std::vector<AxisTick> even_ticks(double low, double high, int most);

/// The sizes of stones that people think in, between two sizes: 1, 2, 3, 4, 6, 9, 12, 18, 24 … in,
/// or 10, 20, 50, 100, 150, 200, 300 … mm.
std::vector<AxisTick> stone_size_ticks(double low, double high, UnitSystem units);

/// The unit of stone sizes in a unit system: inch or millimetre.
const Unit& stone_size_unit(UnitSystem units);
/// The unit of the ground: foot or metre.
const Unit& ground_unit(UnitSystem units);

}  // namespace proofstone
