#include "geodata/landxml_sections.h"

#include <fmt/format.h>
#include <ogr_spatialref.h>

#include <cstdlib>

#include "engine/finding/quoted_text.h"
#include "geodata/coordinate_system.h"
#include "geodata/landxml_document.h"
#include "geodata/problem_in_file.h"

namespace proofstone {

namespace {

std::string where_of(const LandxmlCrossSection& section) {
  const auto& said = section.name.empty() ? section.station : section.name;
  return fmt::format("line {}, cross section {}", section.line, in_quotes(said));
}

Expected<Unit> unit_of(const LandxmlDocument& document, const std::string& file) {
  const std::string allowed = "Units with linearUnit meter, foot or USSurveyFoot";
  if (document.linear_unit.empty()) {
    return in_file(file, "no-units", "The document states no unit of length.", allowed);
  }
  std::optional<Unit> found;
  if (document.linear_unit == "meter") found = unit::meter;
  if (document.linear_unit == "foot") found = unit::foot;
  if (document.linear_unit == "USSurveyFoot") found = unit::survey_foot;
  if (!found) {
    return in_file(file, "unknown-unit",
                   fmt::format("Lengths are in {}.", in_quotes(document.linear_unit)), allowed);
  }
  const auto& heights = document.elevation_unit;
  const bool same = heights.empty() || heights == document.linear_unit ||
                    (heights == "feet" && document.linear_unit != "meter");
  if (!same) {
    return in_file(file, "unknown-unit",
                   fmt::format("Lengths are in {} and elevations in {}.",
                               in_quotes(document.linear_unit), in_quotes(heights)),
                   "one unit for both");
  }
  return *found;
}

/// The surface asked for, or the only one that is not a design.
Expected<const LandxmlSurface*> surface_of(const LandxmlCrossSection& section,
                                           const std::string& wanted, const std::string& file) {
  const LandxmlSurface* found = nullptr;
  std::string names;
  int candidates = 0;
  for (const auto& surface : section.surfaces) {
    names += (names.empty() ? "" : ", ") + in_quotes(surface.name);
    const bool candidate = wanted.empty() ? !surface.design : surface.name == wanted;
    if (!candidate) continue;
    ++candidates;
    found = &surface;
  }
  if (candidates == 1) return found;
  if (candidates == 0) {
    return in_file(file, "no-such-surface",
                   wanted.empty() ? "The cross section has no surveyed surface."
                                  : fmt::format("No surface is called {}.", in_quotes(wanted)),
                   names.empty() ? "a CrossSectSurf" : names, where_of(section));
  }
  return in_file(
      file, "several-surfaces",
      fmt::format("The cross section has {} surfaces of which any could be meant.", candidates),
      names + "; name one", where_of(section));
}

/// Turns the points of one surface into ground along a section.
class SurfaceGround {
 public:
  SurfaceGround(const LandxmlDocument& document, const std::string& file, const std::string& where)
      : document_(document), file_(file), where_(where) {}

  Expected<std::vector<StationElevation>> read(const LandxmlSurface& surface) {
    for (const auto& list : surface.points) {
      for (std::size_t i = 0; i + 1 < list.numbers.size();
           i += static_cast<std::size_t>(list.each)) {
        const double* number = &list.numbers[i];
        if (list.each == 3) {
          placed_.push_back({number[1], number[0], number[2]});
        } else {
          offsets_.push_back({number[0], number[1]});
        }
      }
    }
    for (const auto& name : surface.references) {
      const auto found = document_.points.find(name);
      if (found == document_.points.end() || found->second.size() != 3) {
        return in_file(file_, "no-such-point",
                       fmt::format("No point with an elevation is called {}.", in_quotes(name)),
                       "CgPoints with northing, easting and elevation", where_);
      }
      placed_.push_back({found->second[1], found->second[0], found->second[2]});
    }
    if (!offsets_.empty() && !placed_.empty()) {
      return in_file(file_, "mixed-points", "The cross section mixes offsets with coordinates.",
                     "one kind of points", where_);
    }
    if (!placed_.empty()) return ground_along(placed_, file_, where_);
    return by_offsets();
  }

  bool has_coordinates() const { return !placed_.empty(); }

 private:
  Expected<std::vector<StationElevation>> by_offsets() const {
    if (offsets_.size() < 2) {
      return in_file(file_, "one-point",
                     fmt::format("The cross section has {} points.", offsets_.size()),
                     "several points", where_);
    }
    for (std::size_t i = 1; i < offsets_.size(); ++i) {
      const auto& before = offsets_[i - 1];
      const auto& here = offsets_[i];
      if (here.station < before.station) {
        return in_file(file_, "stations-fall",
                       fmt::format("The offset of point {} is smaller than the one before it; the "
                                   "section would cross itself.",
                                   i + 1),
                       "offsets that never fall", where_);
      }
      if (here.station <= before.station && here.elevation <= before.elevation &&
          here.elevation >= before.elevation) {
        return in_file(file_, "repeated-point",
                       fmt::format("Point {} repeats the one before it.", i + 1), "each point once",
                       where_);
      }
    }
    return offsets_;
  }

  const LandxmlDocument& document_;
  const std::string& file_;
  std::string where_;
  std::vector<StationElevation> offsets_;
  std::vector<SurveyedPoint> placed_;
};

/// Coordinates must be such that lengths can be measured on them.
Problems coordinate_problems(const LandxmlDocument& document, SurveyFile& survey) {
  if (document.epsg_code.empty()) {
    survey.cautions.emplace_back(
        "The file names no coordinate system: its coordinates are taken as those of a plane.");
    return {};
  }
  OGRSpatialReference system;
  CPLPushErrorHandler(CPLQuietErrorHandler);
  const auto known = system.importFromEPSG(std::atoi(document.epsg_code.c_str()));
  CPLPopErrorHandler();
  if (known != OGRERR_NONE) {
    return {in_file(
        survey.file, "no-coordinate-system",
        fmt::format("No coordinate system has the EPSG code {}.", in_quotes(document.epsg_code)),
        "an EPSG code of a projected system")};
  }
  auto problems = unmeasurable(&system, survey.file);
  if (!problems.empty()) return problems;
  const auto said = linear_unit_of(system, survey.file);
  if (!said) return said.problems();
  if (said->symbol != survey.station_unit.symbol) {
    return {in_file(survey.file, "units-differ",
                    fmt::format("The file states its lengths in {}; its coordinate system is in "
                                "{}.",
                                survey.station_unit.symbol, said->symbol),
                    "one unit for both")};
  }
  survey.coordinate_name = system.GetName();
  return {};
}

Problems take_sections(const LandxmlDocument& document, const std::string& wanted,
                       SurveyFile& survey, bool& with_coordinates) {
  Problems problems;
  for (const auto& section : document.sections) {
    const auto surface = surface_of(section, wanted, survey.file);
    if (!surface) {
      problems.push_back(surface.problems().front());
      continue;
    }
    SurfaceGround reader(document, survey.file, where_of(section));
    auto ground = reader.read(**surface);
    if (!ground) {
      problems.push_back(ground.problems().front());
      continue;
    }
    with_coordinates = with_coordinates || reader.has_coordinates();
    SurveyedSection one;
    one.name = section.name.empty() ? "Section " + section.station : section.name;
    one.where = where_of(section);
    one.ground = std::move(*ground);
    survey.sections.push_back(std::move(one));
  }
  return problems;
}

}  // namespace

Expected<SurveyFile> read_landxml_sections(std::string_view bytes, const std::string& file,
                                           const std::string& surface) {
  if (bytes.size() > largest_landxml) {
    return in_file(file, "too-large", "The file is too large.", "at most 64 MB");
  }
  const auto document = read_landxml_document(bytes, file);
  if (!document) return document.problems();
  SurveyFile survey;
  survey.file = file;
  const auto lengths = unit_of(*document, file);
  if (!lengths) return lengths.problems();
  survey.station_unit = *lengths;
  survey.elevation_unit = *lengths;
  if (document->version != "1.2") {
    survey.cautions.push_back(fmt::format("The file is of LandXML version {}; it was read as 1.2.",
                                          in_quotes(document->version)));
  }
  if (document->sections.empty()) {
    return in_file(file, "no-section", "The document has no cross section.",
                   "CrossSects with CrossSect elements");
  }
  bool with_coordinates = false;
  auto problems = take_sections(*document, surface, survey, with_coordinates);
  if (problems.empty() && with_coordinates) problems = coordinate_problems(*document, survey);
  if (!problems.empty()) return problems;
  return survey;
}

}  // namespace proofstone
