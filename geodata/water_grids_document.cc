#include "geodata/water_grids_document.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "geodata/water_grids.h"

namespace proofstone {

namespace {

using nlohmann::json;

std::optional<Unit> unit_called(const std::string& text, QuantityKind kind) {
  for (const auto& [spelling, unit] : unit_spellings()) {
    if (spelling == text && unit.kind == kind) return unit;
  }
  return std::nullopt;
}

/// Where a file lies: beside the request, unless its whole path is given.
std::string path_of(const std::string& file, const std::string& folder) {
  return folder.empty() || file.empty() || file.front() == '/' ? file : folder + "/" + file;
}

StatedGrid read_grid(FieldReader& reader, QuantityKind kind, const std::string& folder) {
  StatedGrid grid{path_of(reader.required_text("file"), folder), unit::number};
  const auto text = reader.required_text("unit");
  if (const auto unit = unit_called(text, kind)) {
    grid.unit = *unit;
  } else if (!text.empty()) {
    reader.report("unknown-unit", "This is not a unit of " + std::string(kind_name(kind)) + ".",
                  "unit", allowed_units(kind));
  }
  return grid;
}

StatedGrid required_grid(FieldReader& reader, const char* field, QuantityKind kind,
                         const std::string& folder, Problems& problems) {
  const auto* value = reader.required(field);
  if (value == nullptr) return {};
  FieldReader grid_reader(*value, reader.pointer() + "/" + field, problems);
  auto grid = read_grid(grid_reader, kind, folder);
  grid_reader.finish();
  return grid;
}

std::optional<MapPoint> map_point(const json& value) {
  if (!value.is_array() || value.size() != 2) return std::nullopt;
  if (!value[0].is_number() || !value[1].is_number()) return std::nullopt;
  const MapPoint point{value[0].get<double>(), value[1].get<double>()};
  if (!std::isfinite(point.x) || !std::isfinite(point.y)) return std::nullopt;
  return point;
}

std::vector<MapPoint> read_places(FieldReader& reader, const char* field) {
  std::vector<MapPoint> places;
  const auto* list = reader.optional_list(field);
  if (list == nullptr) return places;
  for (std::size_t i = 0; i < list->size(); ++i) {
    if (const auto point = map_point((*list)[i])) {
      places.push_back(*point);
    } else {
      reader.report("not-a-place", "A place is a pair of numbers.",
                    std::string(field) + "/" + std::to_string(i), "[x, y]");
    }
  }
  return places;
}

WaterGridsRequest read_request(FieldReader& reader, const std::string& folder, Problems& problems) {
  WaterGridsRequest request;
  request.from = reader.required_text("from");
  request.depth = required_grid(reader, "depth", QuantityKind::length, folder, problems);
  request.velocity = required_grid(reader, "velocity", QuantityKind::velocity, folder, problems);
  if (const auto* value = reader.optional("water_level")) {
    FieldReader level(*value, reader.pointer() + "/water_level", problems);
    request.water_level = read_grid(level, QuantityKind::length, folder);
    request.vertical_datum = level.required_text("vertical_datum");
    level.finish();
  }
  request.zero_depth = reader.choice<ZeroDepth>(
      "zero_depth", {{"dry", ZeroDepth::dry}, {"no data", ZeroDepth::no_data}}, std::nullopt);
  request.moment =
      reader.choice<GridMoment>("moment",
                                {{"one moment", GridMoment::one_moment},
                                 {"greatest of each cell", GridMoment::greatest_of_each}},
                                std::nullopt);
  request.polygon = read_places(reader, "polygon");
  request.points = read_places(reader, "points");
  return request;
}

json answer_of(const WaterGridsRequest& request, const SampledWater& water) {
  const Unit& depth_unit = request.depth.unit;
  const Unit& velocity_unit = request.velocity.unit;
  const auto text = [](const auto& quantity, const Unit& unit) {
    return significant(quantity.in(unit), 4) + " " + std::string(unit.symbol);
  };
  json stated = {{"from", request.from},
                 {"velocity", text(water.greatest_velocity, velocity_unit)},
                 {"depth", text(water.depth_there, depth_unit)}};
  if (water.water_level_there) {
    stated["water_level"] = significant(water.water_level_there->in(request.water_level->unit), 7) +
                            " " + std::string(request.water_level->unit.symbol);
  }
  return {{"water", std::move(stated)},
          {"sampled",
           {{"cells", water.cells},
            {"wet", water.wet},
            {"dry", water.dry},
            {"without_data", water.without_data},
            {"mean_velocity", text(water.mean_velocity, velocity_unit)},
            {"least_depth", text(water.least_depth, depth_unit)},
            {"greatest_depth", text(water.greatest_depth, depth_unit)},
            {"fastest_at", {water.fastest.x, water.fastest.y}},
            {"coordinate_system", water.coordinate_name}}},
          {"cautions", water.cautions}};
}

}  // namespace

Expected<json> water_from_grids(std::string_view request_text, const std::string& folder) {
  const auto document = parse_strict_json(request_text);
  if (!document) return document.problems();
  Problems problems;
  FieldReader reader(*document, "", problems);
  const auto request = read_request(reader, folder, problems);
  reader.finish();
  if (!problems.empty()) return problems;
  const auto water = sample_water_grids(request);
  if (!water) return water.problems();
  return answer_of(request, *water);
}

}  // namespace proofstone
