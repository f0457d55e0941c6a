#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/hydraulics/section.h"

namespace proofstone {

/// A surveyed section as its file holds it.
struct SectionTable {
  std::vector<SectionPoint> points;  ///< Section::make accepts them
  Unit station_unit = unit::foot;
  Unit elevation_unit = unit::foot;
};

/// Reads a section, looking downstream, left to right:
///
///     station (ft), elevation (ft), roughness n
///     0, 104.2, 0.045
///
/// Lengths in ft, US survey ft or m, each heading with its own unit. Problems name `file`, the row
/// and the field; those of Section::make (stations that fall, a point listed twice, roughness out
/// of range) name the row too.
Expected<SectionTable> read_section_csv(std::string_view bytes, const std::string& file);

}  // namespace proofstone
