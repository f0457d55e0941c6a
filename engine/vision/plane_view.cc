#include "engine/vision/plane_view.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <cstddef>

namespace proofstone {
namespace {

/// Moves and scales places so that their middle is the origin and they lie √2 from it on the mean.
Eigen::Matrix3d normalising(const Eigen::MatrixX2d& places) {
  const Eigen::RowVector2d middle = places.colwise().mean();
  const double distance = (places.rowwise() - middle).rowwise().norm().mean();
  const double scale = std::sqrt(2.0) / distance;
  Eigen::Matrix3d to = Eigen::Matrix3d::Identity();
  to(0, 0) = to(1, 1) = scale;
  to(0, 2) = -scale * middle.x();
  to(1, 2) = -scale * middle.y();
  return to;
}

}  // namespace

std::optional<PlaneView> PlaneView::through(std::span<const SeenPoint> seen) {
  if (seen.size() < 4) return std::nullopt;
  const auto count = static_cast<Eigen::Index>(seen.size());
  Eigen::MatrixX2d plane(count, 2);
  Eigen::MatrixX2d picture(count, 2);
  for (Eigen::Index i = 0; i < count; ++i) {
    const auto& one = seen[static_cast<std::size_t>(i)];
    plane.row(i) << one.on_plane.x, one.on_plane.y;
    picture.row(i) << one.on_picture.x, one.on_picture.y;
  }
  const Eigen::Matrix3d from_plane = normalising(plane);
  const Eigen::Matrix3d from_picture = normalising(picture);
  if (!from_plane.allFinite() || !from_picture.allFinite()) return std::nullopt;

  // In normalised coordinates the last element of the map is never near 0 for a plane in sight of
  // the camera, so it is set to 1 and the others are solved for.
  using Normal = Eigen::Matrix<double, 8, 8>;
  using Unknowns = Eigen::Matrix<double, 8, 1>;
  Normal normal = Normal::Zero();
  Unknowns right = Unknowns::Zero();
  for (Eigen::Index i = 0; i < count; ++i) {
    const Eigen::Vector3d p = from_plane * Eigen::Vector3d(plane(i, 0), plane(i, 1), 1);
    const Eigen::Vector3d q = from_picture * Eigen::Vector3d(picture(i, 0), picture(i, 1), 1);
    Unknowns across;
    across << p.x(), p.y(), 1, 0, 0, 0, -q.x() * p.x(), -q.x() * p.y();
    Unknowns down;
    down << 0, 0, 0, p.x(), p.y(), 1, -q.y() * p.x(), -q.y() * p.y();
    normal += across * across.transpose() + down * down.transpose();
    right += across * q.x() + down * q.y();
  }
  Eigen::FullPivLU<Normal> solver(normal);
  constexpr double least_pivot = 1e-10;
  solver.setThreshold(least_pivot);
  if (!solver.isInvertible()) return std::nullopt;
  const Unknowns h = solver.solve(right);
  Eigen::Matrix3d normalised;
  normalised << h(0), h(1), h(2), h(3), h(4), h(5), h(6), h(7), 1;
  const Eigen::Matrix3d map = from_picture.inverse() * normalised * from_plane;
  if (!map.allFinite() || std::abs(normalised.determinant()) < least_pivot) return std::nullopt;

  PlaneView view;
  std::size_t at = 0;
  for (int row = 0; row < 3; ++row) {
    for (int column = 0; column < 3; ++column) view.map_[at++] = map(row, column);
  }
  return view;
}

PhotoPoint PlaneView::on_picture(PlanePoint point) const {
  const auto& m = map_;
  const double w = m[6] * point.x + m[7] * point.y + m[8];
  return {(m[0] * point.x + m[1] * point.y + m[2]) / w,
          (m[3] * point.x + m[4] * point.y + m[5]) / w};
}

PlaneView::Stretch PlaneView::stretch_at(PlanePoint point) const {
  const auto& m = map_;
  const double w = m[6] * point.x + m[7] * point.y + m[8];
  const auto at = on_picture(point);
  const double xx = (m[0] - at.x * m[6]) / w;
  const double xy = (m[1] - at.x * m[7]) / w;
  const double yx = (m[3] - at.y * m[6]) / w;
  const double yy = (m[4] - at.y * m[7]) / w;
  // Singular values of a 2 × 2 matrix from its norm and determinant.
  const double squares = xx * xx + xy * xy + yx * yx + yy * yy;
  const double twice_area = 2 * std::abs(xx * yy - xy * yx);
  const double sum = std::sqrt(squares + twice_area);
  const double difference = std::sqrt(std::max(0.0, squares - twice_area));
  return {(sum + difference) / 2, (sum - difference) / 2};
}

double PlaneView::misfit(std::span<const SeenPoint> seen) const {
  double squares = 0;
  for (const auto& one : seen) {
    const double off = pixels_between(on_picture(one.on_plane), one.on_picture);
    squares += off * off;
  }
  return std::sqrt(squares / static_cast<double>(seen.size()));
}

}  // namespace proofstone
