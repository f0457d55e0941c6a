#pragma once

#include <optional>
#include <string_view>

#include "engine/finding/steps.h"
#include "engine/hydraulics/section.h"

namespace proofstone {

/// Which bank, looking downstream.
enum class BankSide { left, right };

std::string_view bank_side_name(BankSide side);

/// A bank under one water level, as sizing reads it.
struct BankGeometry {
  Length toe_station;
  Length toe_elevation;
  Length top_station;  ///< the top of the zone, or the water line where that stands lower
  Length top_elevation;
  Angle angle;           ///< from horizontal, of the straight line from toe to top
  Angle steepest_angle;  ///< of the steepest piece of ground between toe and top
  Length toe_depth;
  /// The place where the water attacks a bank for sizing: 20 % of the wet slope length up from the
  /// toe, measured along the ground (USACE EM 1110-2-1601, as reprinted in the WES Streambank
  /// Handbook App. A sec. A.4.3); on a plane bank its depth is 0.8 of the toe's.
  Length local_station;
  Length local_depth;
  Length wet_slope_length;  ///< along the ground, from the toe to the water line
  Steps steps;
};

/// The bank on one side of a section. `toe_station` absent means the lowest ground, and of several
/// equally low points the one nearest to that bank. `top_station` absent means the water line.
///
/// Problems: the toe lies outside the section, or is dry ("dry"); the top is not on the bank's side
/// of the toe, or not above it; the ground on that side ends below the water ("overtopped").
Expected<BankGeometry> bank_geometry(const Section& section, BankSide side,
                                     std::optional<Length> toe_station,
                                     std::optional<Length> top_station, Length water_level);

}  // namespace proofstone
