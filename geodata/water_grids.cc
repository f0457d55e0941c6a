#include "geodata/water_grids.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

struct Grids {
  RasterGrid depth;
  RasterGrid velocity;
  std::optional<RasterGrid> water_level;
};

struct Cell {
  std::size_t row = 0;
  std::size_t column = 0;
};

void check_unit(const StatedGrid& grid, QuantityKind kind, Problems& problems) {
  if (grid.unit.kind == kind) return;
  problems.push_back({"wrong-kind",
                      fmt::format("\"{}\" is not a unit of {}.", grid.unit.symbol, kind_name(kind)),
                      grid.path, "", allowed_units(kind)});
}

Problems request_problems(const WaterGridsRequest& request) {
  Problems problems;
  check_unit(request.depth, QuantityKind::length, problems);
  check_unit(request.velocity, QuantityKind::velocity, problems);
  if (request.water_level) {
    check_unit(*request.water_level, QuantityKind::length, problems);
    if (request.vertical_datum.empty()) {
      problems.push_back({"no-vertical-datum", "The datum of the water level is not stated.",
                          request.water_level->path, "",
                          "the vertical datum in words, such as NAVD 88"});
    }
  }
  if (request.polygon.empty() == request.points.empty()) {
    problems.push_back({"no-place", "Either an outline of the zone or points in it are needed.", "",
                        "", "a polygon or points, not both"});
  }
  if (!request.polygon.empty() && request.polygon.size() < 3) {
    problems.push_back(
        {"bad-polygon", "An outline has at least three corners.", "", "", "three corners or more"});
  }
  return problems;
}

Expected<Grids> read_grids(const WaterGridsRequest& request) {
  Problems problems;
  const auto take = [&](const StatedGrid& stated) -> std::optional<RasterGrid> {
    auto grid = read_raster_grid(stated.path);
    if (grid) return std::move(*grid);
    problems.insert(problems.end(), grid.problems().begin(), grid.problems().end());
    return std::nullopt;
  };
  auto depth = take(request.depth);
  auto velocity = take(request.velocity);
  std::optional<RasterGrid> level;
  if (request.water_level) level = take(*request.water_level);
  if (!problems.empty()) return problems;
  problems = compare_frames(*depth, *velocity);
  if (problems.empty() && level) problems = compare_frames(*depth, *level);
  if (!problems.empty()) return problems;
  return Grids{std::move(*depth), std::move(*velocity), std::move(level)};
}

/// Even-odd rule, corners in either sense.
bool inside(const std::vector<MapPoint>& polygon, MapPoint point) {
  bool in = false;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const MapPoint& a = polygon[i];
    const MapPoint& b = polygon[(i + 1) % polygon.size()];
    if ((a.y > point.y) == (b.y > point.y)) continue;
    if (point.x < a.x + (b.x - a.x) * (point.y - a.y) / (b.y - a.y)) in = !in;
  }
  return in;
}

Problem outside(const GridFrame& frame, MapPoint point, const std::string& file) {
  return {"outside-grid", fmt::format("The place {}, {} lies outside the grid.", point.x, point.y),
          file, "",
          fmt::format("x from {} to {}, y from {} to {}, in the grid's own coordinates", frame.left,
                      frame.right(), frame.bottom(), frame.top)};
}

/// First and one past the last cell whose centres may lie between two distances from an edge.
std::pair<std::size_t, std::size_t> cells_between(double low, double high, double cell,
                                                  std::size_t count) {
  const double first = std::clamp(std::floor(low / cell), 0.0, static_cast<double>(count));
  const double last = std::clamp(std::ceil(high / cell), 0.0, static_cast<double>(count));
  return {static_cast<std::size_t>(first), static_cast<std::size_t>(last)};
}

std::vector<Cell> cells_inside(const GridFrame& frame, const std::vector<MapPoint>& polygon) {
  const auto by_x = [](const MapPoint& a, const MapPoint& b) { return a.x < b.x; };
  const auto by_y = [](const MapPoint& a, const MapPoint& b) { return a.y < b.y; };
  const auto [west, east] = std::minmax_element(polygon.begin(), polygon.end(), by_x);
  const auto [south, north] = std::minmax_element(polygon.begin(), polygon.end(), by_y);
  const auto columns =
      cells_between(west->x - frame.left, east->x - frame.left, frame.cell_width, frame.columns);
  const auto rows =
      cells_between(frame.top - north->y, frame.top - south->y, frame.cell_height, frame.rows);
  std::vector<Cell> cells;
  for (std::size_t row = rows.first; row < rows.second; ++row) {
    for (std::size_t column = columns.first; column < columns.second; ++column) {
      if (inside(polygon, frame.center(row, column))) cells.push_back({row, column});
    }
  }
  return cells;
}

Expected<std::vector<Cell>> cells_of(const WaterGridsRequest& request, const RasterGrid& grid) {
  const GridFrame& frame = grid.frame;
  const auto& places = request.polygon.empty() ? request.points : request.polygon;
  Problems problems;
  for (const auto& place : places) {
    if (!frame.holds(place)) problems.push_back(outside(frame, place, grid.file));
  }
  if (!problems.empty()) return problems;
  std::vector<Cell> cells;
  if (!request.polygon.empty()) {
    cells = cells_inside(frame, request.polygon);
    if (cells.empty()) {
      return Problem{"smaller-than-a-cell", "No cell has its centre inside the outline.", grid.file,
                     "", "a larger outline, or points"};
    }
    return cells;
  }
  for (const auto& point : request.points) {
    const auto column = cells_between(point.x - frame.left, point.x - frame.left, frame.cell_width,
                                      frame.columns - 1);
    const auto row =
        cells_between(frame.top - point.y, frame.top - point.y, frame.cell_height, frame.rows - 1);
    cells.push_back({row.first, column.first});
  }
  return cells;
}

Problem below_zero(const RasterGrid& grid, Cell cell, const char* what) {
  const auto place = grid.frame.center(cell.row, cell.column);
  return {"negative", fmt::format("The {} at {}, {} is below zero.", what, place.x, place.y),
          grid.file, "", "0 or more; say what the negative numbers mean"};
}

/// Adds up what wet cells say.
class Sampling {
 public:
  Sampling(const WaterGridsRequest& request, const Grids& grids)
      : request_(request), grids_(grids) {}

  /// Returns a problem when the cell's values have no meaning.
  Problems look_at(Cell cell) {
    ++water_.cells;
    const auto depth = grids_.depth.at(cell.row, cell.column);
    const auto velocity = grids_.velocity.at(cell.row, cell.column);
    if (depth && *depth < 0) return {below_zero(grids_.depth, cell, "depth")};
    if (velocity && *velocity < 0) return {below_zero(grids_.velocity, cell, "velocity")};
    const bool nothing = depth && !(*depth > 0);
    if (nothing && request_.zero_depth == ZeroDepth::dry) {
      ++water_.dry;
    } else if (!depth || !velocity || nothing) {
      ++water_.without_data;
    } else {
      add_wet(cell, Length::of(*depth, request_.depth.unit),
              Velocity::of(*velocity, request_.velocity.unit));
    }
    return {};
  }

  SampledWater result() {
    if (water_.wet > 0) water_.mean_velocity = velocity_sum_ / static_cast<double>(water_.wet);
    return water_;
  }

 private:
  void add_wet(Cell cell, Length depth, Velocity velocity) {
    const bool first = water_.wet == 0;
    ++water_.wet;
    velocity_sum_ = velocity_sum_ + velocity;
    water_.least_depth = first ? depth : std::min(water_.least_depth, depth);
    water_.greatest_depth = std::max(water_.greatest_depth, depth);
    // Of cells equally fast the shallower one: there the same velocity moves more.
    const bool faster = velocity > water_.greatest_velocity ||
                        (!(velocity < water_.greatest_velocity) && depth < water_.depth_there);
    if (!first && !faster) return;
    water_.greatest_velocity = velocity;
    water_.depth_there = depth;
    water_.fastest = grids_.depth.frame.center(cell.row, cell.column);
    water_.water_level_there.reset();
    if (!grids_.water_level) return;
    if (const auto level = grids_.water_level->at(cell.row, cell.column)) {
      water_.water_level_there = Length::of(*level, request_.water_level->unit);
    }
  }

  const WaterGridsRequest& request_;
  const Grids& grids_;
  SampledWater water_;
  Velocity velocity_sum_;
};

void add_cautions(const WaterGridsRequest& request, SampledWater& water) {
  if (request.moment == GridMoment::greatest_of_each) {
    water.cautions.emplace_back(
        "The grids hold the greatest value of each cell. Depth and velocity may be of different "
        "moments, so what is computed from both is an upper bound.");
  }
  if (water.without_data > 0) {
    water.cautions.push_back(fmt::format("{} of {} cells hold no data and were passed over.",
                                         water.without_data, water.cells));
  }
  if (request.water_level) {
    water.cautions.push_back(fmt::format(
        "The water level is in {} as stated, not as the file may say: test it against a known "
        "elevation.",
        request.vertical_datum));
  }
  water.cautions.emplace_back(
      "A model of mean velocities over cells says nothing of turbulence within a cell, nor of the "
      "velocity at a bank's toe finer than its cells.");
}

}  // namespace

Expected<SampledWater> sample_water_grids(const WaterGridsRequest& request) {
  auto problems = request_problems(request);
  if (!problems.empty()) return problems;
  const auto grids = read_grids(request);
  if (!grids) return grids.problems();
  const auto cells = cells_of(request, grids->depth);
  if (!cells) return cells.problems();
  Sampling sampling(request, *grids);
  for (const Cell cell : *cells) {
    problems = sampling.look_at(cell);
    if (!problems.empty()) return problems;
  }
  SampledWater water = sampling.result();
  if (water.wet == 0) {
    const bool all_blank = water.dry == 0;
    return Problem{all_blank ? "no-data" : "dry",
                   all_blank ? "None of the cells looked at holds data."
                             : "None of the cells looked at is wet.",
                   request.depth.path, "", "a zone that the model covers and the water reaches"};
  }
  water.coordinate_name = grids->depth.coordinate_name;
  add_cautions(request, water);
  return water;
}

}  // namespace proofstone
