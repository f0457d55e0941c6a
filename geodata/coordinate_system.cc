#include "geodata/coordinate_system.h"

#include <fmt/format.h>
#include <ogr_spatialref.h>

#include <cmath>

#include "engine/finding/quoted_text.h"
#include "geodata/problem_in_file.h"

namespace proofstone {

namespace {

/// Web Mercator by its EPSG code or by its other common names.
bool is_web_mercator(const OGRSpatialReference& system) {
  const char* code = system.GetAuthorityCode(nullptr);
  const std::string text = code == nullptr ? "" : code;
  if (text == "3857" || text == "900913" || text == "102100" || text == "3785") return true;
  const char* name = system.GetName();
  if (name == nullptr) return false;
  const std::string words = name;
  return words.find("Pseudo-Mercator") != std::string::npos ||
         words.find("Mercator_Auxiliary_Sphere") != std::string::npos;
}

/// GeoPackages give lines without a coordinate system one of this name.
bool is_undefined(const OGRSpatialReference& system) {
  const char* name = system.GetName();
  return name != nullptr && std::string(name).rfind("Undefined", 0) == 0;
}

}  // namespace

Problems unmeasurable(const OGRSpatialReference* system, const std::string& file) {
  if (system == nullptr || system->IsEmpty() || is_undefined(*system)) {
    return {in_file(file, "no-coordinate-system", "The file names no coordinate system.",
                    "a projected coordinate system")};
  }
  if (system->IsProjected() == 0) {
    return {in_file(file, "not-projected",
                    "The coordinates are not those of a projected coordinate system.",
                    "a projected coordinate system, in feet or metres")};
  }
  if (is_web_mercator(*system)) {
    return {in_file(file, "stretched-projection",
                    "Web Mercator stretches lengths and areas; it is for looking at maps only.",
                    "the projection of the survey or of the model")};
  }
  return {};
}

Expected<Unit> linear_unit_of(const OGRSpatialReference& system, const std::string& file) {
  const char* name = nullptr;
  const double meters = system.GetLinearUnits(&name);
  for (const Unit& known : {unit::meter, unit::foot, unit::survey_foot}) {
    // The two feet differ by 2e-6 of a foot; files write their factors with 9 digits and more.
    if (std::abs(meters / known.si_factor - 1) < 1e-8) return known;
  }
  return in_file(file, "unknown-unit",
                 fmt::format("The coordinates are in {} of {} m.",
                             in_quotes(name == nullptr ? "a unit" : name), meters),
                 "metres, feet or US survey feet; transform the file first");
}

}  // namespace proofstone
