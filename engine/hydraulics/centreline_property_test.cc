#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <vector>

#include "engine/hydraulics/centreline.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

/// A course of straight steps that turn a little at each point.
std::vector<PlanPoint> any_course() {
  std::vector<PlanPoint> points;
  double x = 0, y = 0, heading = 0;
  const int count = *rc::gen::inRange(5, 25);
  for (int i = 0; i < count; ++i) {
    points.push_back({Length::meters(x), Length::meters(y)});
    heading += between(-0.6, 0.6);
    const double step = between(20, 60);
    x += step * std::cos(heading);
    y += step * std::sin(heading);
  }
  return points;
}

std::vector<PlanBend> bends_of(std::vector<PlanPoint> points, double width) {
  const auto centreline = Centreline::make(std::move(points));
  RC_ASSERT(static_cast<bool>(centreline));
  const auto curve = curvature_along(*centreline, Length::meters(width));
  RC_ASSERT(static_cast<bool>(curve));
  return bends_along(*curve, Length::meters(width));
}

bool close(Length a, Length b) { return std::abs((a - b).meters()) <= 1e-6 * (1 + a.meters()); }

RC_GTEST_PROP(CentrelineProperties, AMirroredCourseHasItsBendsOnTheOtherSide, ()) {
  const auto points = any_course();
  std::vector<PlanPoint> image;
  for (const PlanPoint& point : points) image.push_back({point.x, -1.0 * point.y});
  const auto bends = bends_of(points, 30);
  const auto mirrored = bends_of(image, 30);
  RC_ASSERT(bends.size() == mirrored.size());
  for (std::size_t i = 0; i < bends.size(); ++i) {
    RC_ASSERT(close(bends[i].least_radius, mirrored[i].least_radius));
    RC_ASSERT(bends[i].outer_bank != mirrored[i].outer_bank);
  }
}

// Turned by right angles and scaled by powers of two, which a double holds without rounding: else a
// radius or a length that stands on a threshold would fall to either side of it.
RC_GTEST_PROP(CentrelineProperties, TurningTheMapChangesNothing, ()) {
  const auto points = any_course();
  std::vector<PlanPoint> turned;
  for (const PlanPoint& point : points) turned.push_back({-1.0 * point.y, point.x});
  const auto bends = bends_of(points, 30);
  const auto same = bends_of(turned, 30);
  RC_ASSERT(bends.size() == same.size());
  for (std::size_t i = 0; i < bends.size(); ++i) {
    RC_ASSERT(close(bends[i].least_radius, same[i].least_radius));
    RC_ASSERT(close(bends[i].begin, same[i].begin));
  }
}

RC_GTEST_PROP(CentrelineProperties, ALargerPlanHasLargerRadii, ()) {
  const auto points = any_course();
  const double scale = *rc::gen::element(0.125, 0.25, 0.5, 2.0, 4.0, 8.0);
  std::vector<PlanPoint> larger;
  for (const PlanPoint& point : points) larger.push_back({scale * point.x, scale * point.y});
  const auto bends = bends_of(points, 30);
  const auto scaled = bends_of(larger, 30 * scale);
  RC_ASSERT(bends.size() == scaled.size());
  for (std::size_t i = 0; i < bends.size(); ++i) {
    RC_ASSERT(close(scale * bends[i].least_radius, scaled[i].least_radius));
  }
}

}  // namespace
}  // namespace proofstone
