#pragma once

#include <string>
#include <vector>

#include "geodata/surveyed_section.h"

namespace proofstone {

/// Which layer of a file holds the lines, and which of its fields say more; empty: not named.
struct LayerFields {
  std::string layer;  ///< may be empty where the file has one layer
  std::string name;
  std::string roughness;  ///< Manning's n of the whole line
  std::string left_bank;  ///< station from the line's first point
  std::string right_bank;
};

/// Reads section lines with elevations from GeoPackage, Shapefile and what else GDAL reads as
/// lines. Stations run along the line in plan.
///
/// Problems, each with the file and where it applies the feature: not-readable, no-such-layer,
/// several-layers, no-such-field, no-feature, too-many-features, those of unmeasurable and
/// linear_unit_of, not-a-line, several-lines, no-elevation, those of ground_along, not-a-number (a
/// field that holds no number).
Expected<SurveyFile> read_section_lines(const std::string& path, const LayerFields& fields);

/// The course of a channel in plan, in the units of its file.
struct SurveyedCourse {
  std::string name;
  std::string where;
  std::vector<SurveyedPoint> points;
};

struct CourseFile {
  std::string file;
  Unit plan_unit = unit::meter;
  std::string coordinate_name;
  std::vector<SurveyedCourse> courses;
};

/// Reads centrelines from such a file; elevations are not needed and not kept.
Expected<CourseFile> read_course_lines(const std::string& path, const LayerFields& fields);

}  // namespace proofstone
