#include "piles/surface_map.h"

#include <algorithm>
#include <cmath>

namespace proofstone::piles {

SurfaceMap::SurfaceMap(const Scene& scene, float half_x, float half_y, float cell)
    : half_x_(half_x),
      half_y_(half_y),
      cell_(cell),
      columns_(static_cast<int>(std::ceil(2 * half_x / cell))),
      rows_(static_cast<int>(std::ceil(2 * half_y / cell))),
      heights_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), 0.0F) {
  const float above = 100 * (half_x + half_y);
  for (int row = 0; row < rows_; ++row) {
    for (int column = 0; column < columns_; ++column) {
      const auto hit = scene.first_hit({column_x(column), row_y(row), above}, {0, 0, -1});
      if (hit) heights_[index(column, row)] = std::max(0.0F, above - hit->distance);
    }
  }
}

int SurfaceMap::column_of(float x) const {
  return std::clamp(static_cast<int>(std::floor((x + half_x_) / cell_)), 0, columns_ - 1);
}

int SurfaceMap::row_of(float y) const {
  return std::clamp(static_cast<int>(std::floor((y + half_y_) / cell_)), 0, rows_ - 1);
}

float SurfaceMap::height(float x, float y) const { return at(column_of(x), row_of(y)); }

SurfaceMap SurfaceMap::averaged(float radius) const {
  // Along rows and then along columns.
  const int reach = std::max(1, static_cast<int>(std::lround(radius / cell_)));
  SurfaceMap half_done = *this;
  SurfaceMap done = *this;
  for (int row = 0; row < rows_; ++row) {
    for (int column = 0; column < columns_; ++column) {
      const int first = std::max(0, column - reach);
      const int last = std::min(columns_ - 1, column + reach);
      float sum = 0;
      for (int near = first; near <= last; ++near) sum += at(near, row);
      half_done.heights_[index(column, row)] = sum / static_cast<float>(last - first + 1);
    }
  }
  for (int row = 0; row < rows_; ++row) {
    const int first = std::max(0, row - reach);
    const int last = std::min(rows_ - 1, row + reach);
    for (int column = 0; column < columns_; ++column) {
      float sum = 0;
      for (int near = first; near <= last; ++near) sum += half_done.at(column, near);
      done.heights_[index(column, row)] = sum / static_cast<float>(last - first + 1);
    }
  }
  return done;
}

SurfaceMap::Plane SurfaceMap::plane_at(float x, float y, float radius) const {
  // Least squares over a square that is even about its middle, but for the borders of the map.
  double n = 0, sx = 0, sy = 0, sz = 0, sxx = 0, syy = 0, sxz = 0, syz = 0;
  for (int row = row_of(y - radius); row <= row_of(y + radius); ++row) {
    for (int column = column_of(x - radius); column <= column_of(x + radius); ++column) {
      const double u = column_x(column);
      const double v = row_y(row);
      const double z = at(column, row);
      n += 1;
      sx += u;
      sy += v;
      sz += z;
      sxx += u * u;
      syy += v * v;
      sxz += u * z;
      syz += v * z;
    }
  }
  // The grid is a full rectangle, so the two slopes do not mix.
  const double slope_x = (sxz - sx * sz / n) / (sxx - sx * sx / n);
  const double slope_y = (syz - sy * sz / n) / (syy - sy * sy / n);
  const double height_here = sz / n + slope_x * (x - sx / n) + slope_y * (y - sy / n);
  return {Vec3(x, y, static_cast<float>(height_here)),
          Vec3(static_cast<float>(-slope_x), static_cast<float>(-slope_y), 1).normalized()};
}

float SurfaceMap::ball_centre(float x, float y, float radius) const {
  float centre = radius;
  for (int row = row_of(y - radius); row <= row_of(y + radius); ++row) {
    for (int column = column_of(x - radius); column <= column_of(x + radius); ++column) {
      const float u = column_x(column) - x;
      const float v = row_y(row) - y;
      const float room = radius * radius - u * u - v * v;
      if (room > 0) centre = std::max(centre, at(column, row) + std::sqrt(room));
    }
  }
  return centre;
}

}  // namespace proofstone::piles
