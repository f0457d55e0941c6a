#pragma once

#include <vector>

#include "piles/scene.h"

namespace proofstone::piles {

/// How high the surface of a pile is, on a grid over its place: what a plumb line let down along z
/// meets first.
class SurfaceMap {
 public:
  /// Of all the scene holds when it is called; the stones lie within `half_x` and `half_y`.
  SurfaceMap(const Scene& scene, float half_x, float half_y, float cell);

  float cell() const { return cell_; }
  float half_x() const { return half_x_; }
  float half_y() const { return half_y_; }
  /// The height of the cell that holds x, y, or of the nearest.
  float height(float x, float y) const;
  /// The map averaged over squares that reach `radius` to each side.
  SurfaceMap averaged(float radius) const;
  /// The plane through the map around x, y: its point there and its normal.
  struct Plane {
    Vec3 point;
    Vec3 normal;
  };
  Plane plane_at(float x, float y, float radius) const;
  /// The lowest height at which a ball of this radius over x, y touches nothing but at one point.
  float ball_centre(float x, float y, float radius) const;

  int columns() const { return columns_; }
  int rows() const { return rows_; }
  float column_x(int column) const { return (static_cast<float>(column) + 0.5F) * cell_ - half_x_; }
  float row_y(int row) const { return (static_cast<float>(row) + 0.5F) * cell_ - half_y_; }
  float at(int column, int row) const { return heights_[index(column, row)]; }

 private:
  std::size_t index(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
           static_cast<std::size_t>(column);
  }
  int column_of(float x) const;
  int row_of(float y) const;

  float half_x_;
  float half_y_;
  float cell_;
  int columns_;
  int rows_;
  std::vector<float> heights_;
};

}  // namespace proofstone::piles
