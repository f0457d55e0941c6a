#pragma once

#include <vector>

#include "engine/finding/problem.h"
#include "engine/hydraulics/bank.h"

namespace proofstone {

/// A place in plan; x to the east and y to the north.
struct PlanPoint {
  Length x;
  Length y;
};

/// The centreline of a channel in plan, running downstream.
///
/// Invariant: 3 to 10,000 points, finite, at most 10,000 km from the origin and none closer than
/// 1 mm to the next.
class Centreline {
 public:
  /// Problems name the point ("point 4").
  static Expected<Centreline> make(std::vector<PlanPoint> points);

  const std::vector<PlanPoint>& points() const { return points_; }
  /// Places at equal distances along a smooth line through all points, the first and the last
  /// included; no further apart than `spacing`. Problem "too-fine" above 20,000 places.
  Expected<std::vector<PlanPoint>> resampled(Length spacing) const;

 private:
  explicit Centreline(std::vector<PlanPoint> points) : points_(std::move(points)) {}
  std::vector<PlanPoint> points_;
};

/// Curvature of the circle through three places, 1/m: positive where the way a–b–c turns left.
/// r = |ab|·|bc|·|ca|/(4·area); zero on a straight line. Precondition: no two of them coincide.
double three_point_curvature(const PlanPoint& a, const PlanPoint& b, const PlanPoint& c);

/// One place along a centreline.
struct CurvePoint {
  Length along;  ///< from the first point, downstream
  PlanPoint place;
  double curvature_si = 0;  ///< 1/m, smoothed over one width; positive turns left
};

/// The centreline resampled at a quarter of the water's width, with the three-point curvature
/// smoothed over one width: a digitising error e moves a curvature over a chord 2L by 2e/L², so
/// nothing finer than the width means anything (common practice).
Expected<std::vector<CurvePoint>> curvature_along(const Centreline& centreline, Length width);

/// A stretch of centreline that turns one way.
struct PlanBend {
  Length begin;  ///< upstream tangent point, from the first point of the centreline
  Length end;    ///< downstream tangent point
  Angle turn;    ///< by how much the course turns; always positive
  BankSide outer_bank = BankSide::left;
  Length least_radius;  ///< of the smoothed centreline
  Length mean_radius;   ///< length over turn
};

/// The stretches in which the radius is below `limit` widths (ten: above that bend curves read 1 or
/// close to it), from upstream to downstream. The tangent points are where the smoothed curvature
/// crosses that limit: for round bends within a third of a width of the arc's own ends.
std::vector<PlanBend> bends_along(const std::vector<CurvePoint>& curve, Length width,
                                  double limit = 10);

}  // namespace proofstone
