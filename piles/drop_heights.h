#pragma once

#include <vector>

#include "piles/vec3.h"

namespace proofstone::piles {

/// How high the space above a place is taken, on a grid: stones are let go just above what is
/// there.
class DropHeights {
 public:
  DropHeights(float half_x, float half_y, float cell);

  /// Takes the box from `low` to `high`.
  void fill(const Vec3& low, const Vec3& high);
  /// The lowest free centre over x, y for a ball of this radius, which is then taken.
  Vec3 drop(float x, float y, float radius);

 private:
  /// Cells from first up to, not including, last.
  struct Range {
    int first = 0;
    int last = 0;
  };
  Range cells(float low, float high, float half, int count) const;
  float& height(int column, int row) {
    return heights_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
                    static_cast<std::size_t>(column)];
  }

  float half_x_;
  float half_y_;
  float cell_;
  int columns_;
  int rows_;
  std::vector<float> heights_;
};

}  // namespace proofstone::piles
