#include "geodata/raster_grid.h"

#include <fmt/format.h>
#include <gdal_priv.h>
#include <ogr_spatialref.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <memory>

#include "geodata/coordinate_system.h"
#include "geodata/dataset.h"
#include "geodata/problem_in_file.h"

namespace proofstone {

namespace {

/// GDAL reports on its own to the terminal; here problems are values.
Dataset open_quietly(const std::string& path) {
  static const bool registered = [] {
    GDALAllRegister();
    return true;
  }();
  static_cast<void>(registered);
  CPLPushErrorHandler(CPLQuietErrorHandler);
  Dataset dataset(static_cast<GDALDataset*>(
      GDALOpenEx(path.c_str(), GDAL_OF_RASTER | GDAL_OF_READONLY, nullptr, nullptr, nullptr)));
  CPLPopErrorHandler();
  return dataset;
}

Problems band_problems(GDALDataset& dataset, const std::string& file) {
  if (dataset.GetRasterCount() != 1) {
    return {in_file(file, "not-one-band",
                    fmt::format("The file holds {} bands.", dataset.GetRasterCount()),
                    "one quantity in one band")};
  }
  GDALRasterBand& band = *dataset.GetRasterBand(1);
  if (GDALDataTypeIsComplex(band.GetRasterDataType()) != 0) {
    return {in_file(file, "complex-numbers", "The file holds complex numbers.", "real numbers")};
  }
  int has_scale = 0;
  int has_offset = 0;
  const double scale = band.GetScale(&has_scale);
  const double offset = band.GetOffset(&has_offset);
  const bool scaled =
      (has_scale != 0 && std::abs(scale - 1) > 0) || (has_offset != 0 && std::abs(offset) > 0);
  if (scaled) {
    return {in_file(file, "scaled-values", "The values carry a scale or an offset of their own.",
                    "values as they are meant")};
  }
  const auto cells = static_cast<std::size_t>(dataset.GetRasterXSize()) *
                     static_cast<std::size_t>(dataset.GetRasterYSize());
  if (cells > most_grid_cells) {
    return {in_file(file, "grid-too-large", fmt::format("The grid has {} cells.", cells),
                    "at most 100 million; cut it to the works")};
  }
  return {};
}

Expected<GridFrame> frame_of(GDALDataset& dataset, const std::string& file) {
  std::array<double, 6> transform{};
  if (dataset.GetGeoTransform(transform.data()) != CE_None) {
    return in_file(file, "no-georeference", "The file does not say where its cells lie.",
                   "a raster with its place");
  }
  const auto [left, width, row_turn, top, column_turn, height] = transform;
  const double tolerance = 1e-9 * std::abs(width);
  if (std::abs(row_turn) > tolerance || std::abs(column_turn) > tolerance) {
    return in_file(file, "rotated-grid", "The rows of the grid do not run east.",
                   "a north-up grid; resample it first");
  }
  if (!(width > 0) || !(height < 0)) {
    return in_file(file, "rotated-grid", "The grid is mirrored or stands upside down.",
                   "rows from north to south, columns from west to east");
  }
  return GridFrame{left,
                   top,
                   width,
                   -height,
                   static_cast<std::size_t>(dataset.GetRasterXSize()),
                   static_cast<std::size_t>(dataset.GetRasterYSize())};
}

Problems take_coordinate_system(GDALDataset& dataset, RasterGrid& grid) {
  const OGRSpatialReference* system = dataset.GetSpatialRef();
  auto problems = unmeasurable(system, grid.file);
  if (!problems.empty()) return problems;
  char* wkt = nullptr;
  if (system->exportToWkt(&wkt) == OGRERR_NONE && wkt != nullptr) grid.coordinate_system = wkt;
  CPLFree(wkt);
  const char* name = system->GetName();
  grid.coordinate_name = name == nullptr ? "unnamed" : name;
  return {};
}

/// Values become NaN where the file says there is no data. The no-data value of a file is a text
/// and the values are single precision, so both are compared as such.
void blank_no_data(GDALRasterBand& band, std::vector<float>& values) {
  int has_no_data = 0;
  const auto no_data = static_cast<float>(band.GetNoDataValue(&has_no_data));
  const float tolerance = 1e-6F * std::abs(no_data);
  for (float& value : values) {
    const bool blank = has_no_data != 0 && std::abs(value - no_data) <= tolerance;
    if (blank || !std::isfinite(value)) value = std::numeric_limits<float>::quiet_NaN();
  }
}

bool same(double a, double b, double cell) { return std::abs(a - b) <= 1e-6 * cell; }

}  // namespace

MapPoint GridFrame::center(std::size_t row, std::size_t column) const {
  return {left + cell_width * (static_cast<double>(column) + 0.5),
          top - cell_height * (static_cast<double>(row) + 0.5)};
}

bool GridFrame::holds(MapPoint point) const {
  return point.x >= left && point.x < right() && point.y <= top && point.y > bottom();
}

std::optional<double> RasterGrid::at(std::size_t row, std::size_t column) const {
  const float value = values[row * frame.columns + column];
  if (std::isnan(value)) return std::nullopt;
  return static_cast<double>(value);
}

Expected<RasterGrid> read_raster_grid(const std::string& path) {
  const Dataset dataset = open_quietly(path);
  if (!dataset) {
    return in_file(path, "not-readable", "This cannot be read as a raster.",
                   "a GeoTIFF with one band");
  }
  auto problems = band_problems(*dataset, path);
  if (!problems.empty()) return problems;
  const auto frame = frame_of(*dataset, path);
  if (!frame) return frame.problems();
  RasterGrid grid;
  grid.file = path;
  grid.frame = *frame;
  problems = take_coordinate_system(*dataset, grid);
  if (!problems.empty()) return problems;
  const int columns = dataset->GetRasterXSize();
  const int rows = dataset->GetRasterYSize();
  grid.values.resize(frame->columns * frame->rows);
  GDALRasterBand& band = *dataset->GetRasterBand(1);
  CPLPushErrorHandler(CPLQuietErrorHandler);
  const auto read = band.RasterIO(GF_Read, 0, 0, columns, rows, grid.values.data(), columns, rows,
                                  GDT_Float32, 0, 0, nullptr);
  CPLPopErrorHandler();
  if (read != CE_None) {
    return in_file(path, "not-readable", "The values of the raster break off or are damaged.",
                   "a whole file");
  }
  blank_no_data(band, grid.values);
  return grid;
}

Problems compare_frames(const RasterGrid& one, const RasterGrid& other) {
  const auto differ = [&](const std::string& what) {
    return Problems{in_file(other.file, "grids-differ",
                            fmt::format("This grid and {} differ in {}.", one.file, what),
                            "grids of the same cells, written by one run")};
  };
  const GridFrame& a = one.frame;
  const GridFrame& b = other.frame;
  if (!same(a.cell_width, b.cell_width, a.cell_width) ||
      !same(a.cell_height, b.cell_height, a.cell_height)) {
    return differ("the size of their cells");
  }
  if (!same(a.left, b.left, a.cell_width) || !same(a.top, b.top, a.cell_height)) {
    return differ("where their cells lie");
  }
  if (a.columns != b.columns || a.rows != b.rows) return differ("their extent");
  const OGRSpatialReference system_one(one.coordinate_system.c_str());
  const OGRSpatialReference system_other(other.coordinate_system.c_str());
  if (system_one.IsSame(&system_other) == 0) return differ("their coordinate systems");
  return {};
}

}  // namespace proofstone
