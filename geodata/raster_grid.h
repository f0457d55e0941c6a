#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// A place in the coordinates of a grid, in the grid's own unit.
struct MapPoint {
  double x = 0;
  double y = 0;
};

/// Where the cells of a grid lie: columns go with x, rows against y.
struct GridFrame {
  double left = 0;  ///< outer edge of the first column
  double top = 0;   ///< outer edge of the first row
  double cell_width = 0;
  double cell_height = 0;  ///< positive
  std::size_t columns = 0;
  std::size_t rows = 0;

  double right() const { return left + cell_width * static_cast<double>(columns); }
  double bottom() const { return top - cell_height * static_cast<double>(rows); }
  MapPoint center(std::size_t row, std::size_t column) const;
  bool holds(MapPoint point) const;
};

/// One band of numbers on a north-up grid in a projected coordinate system. What the numbers mean
/// and in which unit is never read from the file: files are wrong about it too often.
struct RasterGrid {
  std::string file;
  GridFrame frame;
  std::string coordinate_system;  ///< WKT
  std::string coordinate_name;    ///< for people
  std::vector<float> values;      ///< row by row from the top; NaN where there is no data

  /// The value of a cell; nothing where there is no data.
  std::optional<double> at(std::size_t row, std::size_t column) const;
};

/// Most cells of one grid: 100 million.
inline constexpr std::size_t most_grid_cells = 100'000'000;

/// Reads a raster file (GeoTIFF and what else GDAL reads as a raster). Values equal to the file's
/// own no-data value, as single precision, become NaN, infinities too.
///
/// Problems, each naming the file: not-readable, not-one-band, complex-numbers, scaled-values,
/// grid-too-large, no-georeference, rotated-grid, no-coordinate-system, not-projected,
/// stretched-projection (web Mercator, on which no length is true).
Expected<RasterGrid> read_raster_grid(const std::string& path);

/// What stands in the way of reading two grids cell by cell: nothing, or "grids-differ" saying in
/// what they differ.
Problems compare_frames(const RasterGrid& one, const RasterGrid& other);

}  // namespace proofstone
