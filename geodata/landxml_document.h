#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// Numbers as a LandXML point list holds them, and how many make one point.
struct LandxmlPoints {
  int each = 2;  ///< 2: offset, elevation; 3: northing, easting, elevation
  std::vector<double> numbers;
};

/// A surface of a cross section.
struct LandxmlSurface {
  std::string name;
  bool design = false;
  std::vector<LandxmlPoints> points;
  std::vector<std::string> references;  ///< points by name, in order
};

struct LandxmlCrossSection {
  std::string station;  ///< as written
  std::string name;
  long line = 0;
  std::vector<LandxmlSurface> surfaces;
};

/// What a LandXML document says of cross sections, as written.
struct LandxmlDocument {
  std::string version;
  std::string linear_unit;  ///< empty: none stated
  std::string elevation_unit;
  std::string epsg_code;
  std::map<std::string, std::vector<double>> points;  ///< CgPoint by name
  std::vector<LandxmlCrossSection> sections;
};

/// Reads the text of a LandXML document. Problems name the line: not-xml, has-doctype, too-deep,
/// not-landxml, two-units, not-a-number, slope-distance, too-many-sections.
Expected<LandxmlDocument> read_landxml_document(std::string_view bytes, const std::string& file);

}  // namespace proofstone
