#include "geodata/vector_layer.h"

#include <fmt/format.h>
#include <gdal_priv.h>
#include <ogrsf_frmts.h>

#include <cmath>
#include <memory>

#include "engine/finding/quoted_text.h"
#include "engine/quantity/measure.h"
#include "geodata/coordinate_system.h"
#include "geodata/dataset.h"
#include "geodata/problem_in_file.h"

namespace proofstone {

namespace {

constexpr int most_features = 2000;

/// GDAL reports on its own to the terminal; here problems are values.
class QuietLibrary {
 public:
  QuietLibrary() { CPLPushErrorHandler(CPLQuietErrorHandler); }
  ~QuietLibrary() { CPLPopErrorHandler(); }
  QuietLibrary(const QuietLibrary&) = delete;
  QuietLibrary& operator=(const QuietLibrary&) = delete;
};

Dataset open_lines(const std::string& path) {
  GDALAllRegister();
  return Dataset(static_cast<GDALDataset*>(
      GDALOpenEx(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, nullptr, nullptr, nullptr)));
}

std::string layer_names(GDALDataset& dataset) {
  std::string names;
  for (int i = 0; i < dataset.GetLayerCount(); ++i) {
    names += (i == 0 ? "" : ", ") + in_quotes(dataset.GetLayer(i)->GetName());
  }
  return names.empty() ? "the file has none" : names;
}

Expected<OGRLayer*> layer_of(GDALDataset& dataset, const std::string& path,
                             const std::string& name) {
  if (!name.empty()) {
    OGRLayer* layer = dataset.GetLayerByName(name.c_str());
    if (layer != nullptr) return layer;
    return in_file(path, "no-such-layer", fmt::format("No layer is called {}.", in_quotes(name)),
                   layer_names(dataset));
  }
  if (dataset.GetLayerCount() == 1) return dataset.GetLayer(0);
  return in_file(path, "several-layers",
                 fmt::format("The file has {} layers; say which.", dataset.GetLayerCount()),
                 layer_names(dataset));
}

/// The place of a field in the layer; nothing where none is named.
Expected<std::optional<int>> field_of(OGRLayer& layer, const std::string& path,
                                      const std::string& name) {
  if (name.empty()) return std::optional<int>();
  const OGRFeatureDefn& definition = *layer.GetLayerDefn();
  std::string known;
  for (int i = 0; i < definition.GetFieldCount(); ++i) {
    const char* field = definition.GetFieldDefn(i)->GetNameRef();
    if (name == field) return std::optional<int>(i);
    known += (known.empty() ? "" : ", ") + in_quotes(field);
  }
  return in_file(path, "no-such-field", fmt::format("No field is called {}.", in_quotes(name)),
                 known.empty() ? "the layer has no field" : known);
}

struct FieldPlaces {
  std::optional<int> name;
  std::optional<int> roughness;
  std::optional<int> left_bank;
  std::optional<int> right_bank;
};

Expected<FieldPlaces> places_of(OGRLayer& layer, const std::string& path,
                                const LayerFields& fields) {
  FieldPlaces places;
  Problems problems;
  const auto find = [&](const std::string& name, std::optional<int>& place) {
    const auto found = field_of(layer, path, name);
    if (found) {
      place = *found;
    } else {
      problems.push_back(found.problems().front());
    }
  };
  find(fields.name, places.name);
  find(fields.roughness, places.roughness);
  find(fields.left_bank, places.left_bank);
  find(fields.right_bank, places.right_bank);
  if (!problems.empty()) return problems;
  return places;
}

/// One feature: its line in plan and height, and how problems name it.
struct LineFeature {
  std::string name;
  std::string where;
  std::vector<SurveyedPoint> points;
  OGRFeatureUniquePtr feature;
};

std::string name_of(const OGRFeature& feature, const std::optional<int>& field) {
  if (!field || feature.IsFieldSetAndNotNull(*field) == 0) return {};
  return feature.GetFieldAsString(*field);
}

/// The only line of a geometry: a line, or a collection that holds one.
const OGRLineString* only_line(const OGRGeometry& geometry) {
  const auto type = wkbFlatten(geometry.getGeometryType());
  if (type == wkbLineString) return geometry.toLineString();
  if (type != wkbMultiLineString) return nullptr;
  const auto* many = geometry.toMultiLineString();
  return many->getNumGeometries() == 1 ? many->getGeometryRef(0) : nullptr;
}

Problems take_points(LineFeature& line, const std::string& path, bool with_elevation) {
  const OGRGeometry* geometry = line.feature->GetGeometryRef();
  if (geometry == nullptr || geometry->IsEmpty()) {
    return {in_file(path, "not-a-line", "The feature has no geometry.", "a line", line.where)};
  }
  const OGRLineString* points = only_line(*geometry);
  if (points == nullptr) {
    return {in_file(path, "not-a-line",
                    fmt::format("The feature is a {}, not one line.",
                                OGRToOGCGeomType(geometry->getGeometryType())),
                    "one line of straight pieces for each section or course", line.where)};
  }
  if (with_elevation && points->Is3D() == 0) {
    return {in_file(path, "no-elevation", "The line has no elevations (no z).",
                    "lines with z at every point", line.where)};
  }
  const int count = points->getNumPoints();
  line.points.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    line.points.push_back({points->getX(i), points->getY(i), with_elevation ? points->getZ(i) : 0});
  }
  return {};
}

/// A layer with what its lines are measured in.
struct OpenLayer {
  Dataset dataset;
  OGRLayer* layer = nullptr;
  FieldPlaces fields;
  Unit plan_unit = unit::meter;
  std::string coordinate_name;
  std::string vertical_name;  ///< of the heights, as the file has it; empty where it says nothing
};

Problems count_problems(OGRLayer& layer, const std::string& path) {
  const auto count = layer.GetFeatureCount();
  if (count == 0) return {in_file(path, "no-feature", "The layer is empty.", "at least one line")};
  if (count > most_features) {
    return {in_file(path, "too-many-features", fmt::format("The layer has {} features.", count),
                    "at most 2000; cut it to the works")};
  }
  return {};
}

std::string vertical_name_of(const OGRSpatialReference& system) {
  if (system.IsCompound() == 0) return {};
  const char* name = system.GetAttrValue("COMPD_CS|VERT_CS", 0);
  return name == nullptr ? "" : name;
}

Expected<OpenLayer> open_layer(const std::string& path, const LayerFields& fields) {
  OpenLayer open;
  open.dataset = open_lines(path);
  if (!open.dataset) {
    return in_file(path, "not-readable", "This cannot be read as a file of lines.",
                   "a GeoPackage, a Shapefile or another file of lines with a coordinate system");
  }
  const auto layer = layer_of(*open.dataset, path, fields.layer);
  if (!layer) return layer.problems();
  open.layer = *layer;
  const OGRSpatialReference* system = open.layer->GetSpatialRef();
  auto problems = unmeasurable(system, path);
  if (problems.empty()) problems = count_problems(*open.layer, path);
  if (!problems.empty()) return problems;
  const auto plan_unit = linear_unit_of(*system, path);
  if (!plan_unit) return plan_unit.problems();
  open.plan_unit = *plan_unit;
  const char* name = system->GetName();
  open.coordinate_name = name == nullptr ? "unnamed" : name;
  open.vertical_name = vertical_name_of(*system);
  const auto places = places_of(*open.layer, path, fields);
  if (!places) return places.problems();
  open.fields = *places;
  return open;
}

/// Calls `take(line)` for every feature; `take` returns what is wrong with it.
template <class Take>
Problems each_line(OpenLayer& open, const std::string& path, bool with_elevation, Take take) {
  Problems problems;
  GIntBig read = 0;
  for (auto& feature : *open.layer) {
    ++read;
    LineFeature line;
    line.feature = std::move(feature);
    line.name = name_of(*line.feature, open.fields.name);
    line.where = fmt::format("feature {}", line.feature->GetFID());
    if (!line.name.empty()) line.where += " (" + in_quotes(line.name) + ")";
    auto wrong = take_points(line, path, with_elevation);
    if (wrong.empty()) wrong = take(line);
    problems.insert(problems.end(), wrong.begin(), wrong.end());
    // What is wrong with one line is often wrong with all.
    if (problems.size() >= 20) return problems;
  }
  if (read != open.layer->GetFeatureCount()) {
    problems.push_back(
        in_file(path, "not-readable", "The features break off or are damaged.", "a whole file"));
  }
  return problems;
}

Problems take_number(const LineFeature& line, const std::optional<int>& field, const char* what,
                     const std::string& path, std::optional<double>& into) {
  if (!field) return {};
  const auto wrong = [&](const std::string& said) {
    return Problems{in_file(path, "not-a-number",
                            fmt::format("The field of the {} {}.", what, said),
                            "a number in every feature", line.where)};
  };
  if (line.feature->IsFieldSetAndNotNull(*field) == 0) return wrong("is empty");
  const std::string text = line.feature->GetFieldAsString(*field);
  const auto number = parse_quantity<Dimensionless>(text);
  if (!number) return wrong("holds " + in_quotes(text));
  into = number->number();
  return {};
}

}  // namespace

Expected<SurveyFile> read_section_lines(const std::string& path, const LayerFields& fields) {
  const QuietLibrary quiet;
  auto open = open_layer(path, fields);
  if (!open) return open.problems();
  SurveyFile survey;
  survey.file = path;
  survey.station_unit = open->plan_unit;
  survey.coordinate_name = open->coordinate_name;
  if (!open->vertical_name.empty()) {
    survey.cautions.push_back(
        fmt::format("The file calls its heights {}. Files are often wrong about heights: the unit "
                    "and datum stated stand.",
                    in_quotes(open->vertical_name)));
  }
  const auto problems = each_line(*open, path, true, [&](const LineFeature& line) {
    SurveyedSection section;
    section.name = line.name;
    section.where = line.where;
    auto ground = ground_along(line.points, path, line.where);
    if (!ground) return ground.problems();
    section.ground = std::move(*ground);
    const auto& places = open->fields;
    auto wrong = take_number(line, places.roughness, "roughness", path, section.roughness);
    for (auto& more : take_number(line, places.left_bank, "left bank", path, section.left_bank)) {
      wrong.push_back(std::move(more));
    }
    for (auto& more :
         take_number(line, places.right_bank, "right bank", path, section.right_bank)) {
      wrong.push_back(std::move(more));
    }
    if (wrong.empty()) survey.sections.push_back(std::move(section));
    return wrong;
  });
  if (!problems.empty()) return problems;
  return survey;
}

Expected<CourseFile> read_course_lines(const std::string& path, const LayerFields& fields) {
  const QuietLibrary quiet;
  auto open = open_layer(path, fields);
  if (!open) return open.problems();
  CourseFile found;
  found.file = path;
  found.plan_unit = open->plan_unit;
  found.coordinate_name = open->coordinate_name;
  const auto problems = each_line(*open, path, false, [&](const LineFeature& line) {
    auto wrong = course_problems(line.points, false, path, line.where);
    if (wrong.empty()) found.courses.push_back({line.name, line.where, line.points});
    return wrong;
  });
  if (!problems.empty()) return problems;
  return found;
}

}  // namespace proofstone
