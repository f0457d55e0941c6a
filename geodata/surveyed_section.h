#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// A vertex of a surveyed line, in the units of its file.
struct SurveyedPoint {
  double east = 0;
  double north = 0;
  double elevation = 0;
};

/// Ground at a distance along a section, in the units of its file.
struct StationElevation {
  double station = 0;
  double elevation = 0;
};

/// One section as a surveyor's file holds it, from its first point to its last.
struct SurveyedSection {
  std::string name;
  std::string where;  ///< "feature 3 (XS 2+40)": how problems name it
  std::vector<StationElevation> ground;
  std::optional<double> roughness;
  std::optional<double> left_bank;  ///< stations as the file states them
  std::optional<double> right_bank;
};

/// Sections of one file with what the file itself says of them.
struct SurveyFile {
  std::string file;
  Unit station_unit = unit::meter;
  /// Of the elevations, where the format states it; files of mapping programs do not.
  std::optional<Unit> elevation_unit;
  std::string coordinate_name;  ///< for people; empty where there are no coordinates
  std::vector<SurveyedSection> sections;
  std::vector<std::string> cautions;
};

/// Stations along a surveyed line, from its first vertex, by the lengths of its pieces in plan.
/// Vertices above one another make a vertical wall.
///
/// Problems, located at `where`: one-point, not-a-number, no-elevation (every elevation is
/// nothing), repeated-point, crosses-itself (touching itself too), too-many-points.
Expected<std::vector<StationElevation>> ground_along(const std::vector<SurveyedPoint>& line,
                                                     const std::string& file,
                                                     const std::string& where);

/// What is wrong with a line's course in plan: one-point, not-a-number, repeated-point,
/// crosses-itself, too-many-points. Nothing where it may be measured.
Problems course_problems(const std::vector<SurveyedPoint>& line, bool walls_allowed,
                         const std::string& file, const std::string& where);

}  // namespace proofstone
