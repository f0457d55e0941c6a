#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/hydraulics/centreline.h"

namespace proofstone {

/// The centreline of a channel as its file holds it.
struct CentrelineTable {
  std::vector<PlanPoint> points;  ///< Centreline::make accepts them
  Unit easting_unit = unit::foot;
  Unit northing_unit = unit::foot;
};

/// Reads a centreline, running downstream:
///
///     easting (ft), northing (ft)
///     2104.0, 880.5
///
/// Lengths in ft, US survey ft or m, each heading with its own unit. Problems name `file`, the row
/// and the field; those of Centreline::make name the row too.
Expected<CentrelineTable> read_centreline_csv(std::string_view bytes, const std::string& file);

}  // namespace proofstone
