#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/quantity/measure.h"
#include "geodata/raster_grid.h"

namespace proofstone {

/// A grid and the unit its numbers are in, as a person states it.
struct StatedGrid {
  std::string path;
  Unit unit = unit::meter;
};

/// What a depth of exactly nothing means in a grid; models differ and the file does not say.
enum class ZeroDepth { dry, no_data };

/// Whether the grids are of one moment or each cell holds its own greatest value.
enum class GridMoment { one_moment, greatest_of_each };

/// Water from the grids of a two-dimensional model, over a zone.
struct WaterGridsRequest {
  std::string from;  ///< which model and run, in words
  StatedGrid depth;
  StatedGrid velocity;  ///< magnitude
  std::optional<StatedGrid> water_level;
  std::string vertical_datum;  ///< of the water level, in words; needed with it
  ZeroDepth zero_depth = ZeroDepth::dry;
  GridMoment moment = GridMoment::one_moment;
  std::vector<MapPoint> polygon;  ///< the zone's outline; or
  std::vector<MapPoint> points;   ///< places in it
};

/// The water over a zone.
struct SampledWater {
  std::size_t cells = 0;  ///< looked at
  std::size_t wet = 0;
  std::size_t dry = 0;
  std::size_t without_data = 0;
  Velocity greatest_velocity;
  MapPoint fastest;  ///< where that is
  Length depth_there;
  std::optional<Length> water_level_there;
  Length least_depth;  ///< of the wet cells
  Length greatest_depth;
  Velocity mean_velocity;
  std::string coordinate_name;
  std::vector<std::string> cautions;
};

/// Samples the grids. A polygon takes the cells whose centres lie inside it, a point the cell it
/// lies in.
///
/// Problems: those of read_raster_grid and compare_frames; wrong-kind (a unit of another kind),
/// no-vertical-datum, no-place, bad-polygon, outside-grid, smaller-than-a-cell, no-data, negative
/// (a depth or a velocity below zero), dry (no wet cell at all).
Expected<SampledWater> sample_water_grids(const WaterGridsRequest& request);

}  // namespace proofstone
