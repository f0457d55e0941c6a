#include "piles/drop_heights.h"

#include <algorithm>
#include <cmath>

namespace proofstone::piles {

DropHeights::DropHeights(float half_x, float half_y, float cell)
    : half_x_(half_x),
      half_y_(half_y),
      cell_(cell),
      columns_(static_cast<int>(std::ceil(2 * half_x / cell)) + 1),
      rows_(static_cast<int>(std::ceil(2 * half_y / cell)) + 1),
      heights_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), 0.0F) {}

DropHeights::Range DropHeights::cells(float low, float high, float half, int count) const {
  const int first = static_cast<int>(std::floor((low + half) / cell_));
  const int last = static_cast<int>(std::ceil((high + half) / cell_));
  return {std::clamp(first, 0, count), std::clamp(last, 0, count)};
}

void DropHeights::fill(const Vec3& low, const Vec3& high) {
  const Range across = cells(low.x(), high.x(), half_x_, columns_);
  const Range along = cells(low.y(), high.y(), half_y_, rows_);
  for (int row = along.first; row < along.last; ++row) {
    for (int column = across.first; column < across.last; ++column) {
      height(column, row) = std::max(height(column, row), high.z());
    }
  }
}

Vec3 DropHeights::drop(float x, float y, float radius) {
  const Range across = cells(x - radius, x + radius, half_x_, columns_);
  const Range along = cells(y - radius, y + radius, half_y_, rows_);
  float floor = 0;
  for (int row = along.first; row < along.last; ++row) {
    for (int column = across.first; column < across.last; ++column) {
      floor = std::max(floor, height(column, row));
    }
  }
  const Vec3 centre(x, y, floor + radius * 1.02F);
  const Vec3 reach(radius, radius, radius);
  fill(centre - reach, centre + reach);
  return centre;
}

}  // namespace proofstone::piles
