#include "engine/hydraulics/centreline.h"

#include <gtest/gtest.h>

#include <cmath>

namespace proofstone {
namespace {

PlanPoint at(double x, double y) { return {Length::meters(x), Length::meters(y)}; }

Centreline made(std::vector<PlanPoint> points) {
  auto centreline = Centreline::make(std::move(points));
  EXPECT_TRUE(centreline);
  return *centreline;
}

/// Straight, a left arc of `radius` through `turn`, straight, a right arc, straight.
std::vector<PlanPoint> s_bend(double radius, double turn, double straight, double spacing) {
  std::vector<PlanPoint> points;
  double x = 0, y = 0, heading = 0, curvature = 0;
  const auto walk = [&](double length) {
    const int steps = std::max(1, static_cast<int>(std::lround(length / spacing)));
    for (int i = 0; i < steps; ++i) {
      points.push_back(at(x, y));
      const double step = length / steps;
      const double middle = heading + curvature * step / 2;
      x += step * std::cos(middle);
      y += step * std::sin(middle);
      heading += curvature * step;
    }
  };
  walk(straight);
  curvature = 1 / radius;
  walk(radius * turn);
  curvature = 0;
  walk(straight);
  curvature = -1 / radius;
  walk(radius * turn);
  curvature = 0;
  walk(straight);
  points.push_back(at(x, y));
  return points;
}

TEST(ThreePointRadius, IsThatOfTheCircleThroughThem) {
  EXPECT_NEAR(1 / std::abs(three_point_curvature(at(0, 0), at(50, 10), at(100, 0))), 130, 1e-9);
  const auto on_circle = [](double degrees) {
    const double a = degrees * 3.14159265358979323846 / 180;
    return at(20 + 300 * std::cos(a), -5 + 300 * std::sin(a));
  };
  EXPECT_NEAR(1 / three_point_curvature(on_circle(3), on_circle(11), on_circle(90)), 300, 1e-9);
  EXPECT_LT(three_point_curvature(on_circle(90), on_circle(11), on_circle(3)), 0);
  EXPECT_NEAR(three_point_curvature(at(0, 0), at(1, 1), at(5, 5)), 0, 1e-15);
}

TEST(Centreline, FindsTheBendsOfAnSCurve) {
  const Length width = Length::meters(40);
  const auto curve = curvature_along(made(s_bend(160, 1.2, 300, 15)), width);
  ASSERT_TRUE(curve);
  const auto bends = bends_along(*curve, width);
  ASSERT_EQ(bends.size(), 2U);
  EXPECT_EQ(bends[0].outer_bank, BankSide::right);
  EXPECT_EQ(bends[1].outer_bank, BankSide::left);
  for (const PlanBend& bend : bends) {
    EXPECT_NEAR(bend.least_radius.meters(), 160, 2);
    EXPECT_NEAR(bend.mean_radius.meters(), 160, 10);
    EXPECT_NEAR(bend.turn.radians(), 1.2, 0.01);
  }
  EXPECT_NEAR(bends[0].begin.meters(), 300, 12);
  EXPECT_NEAR(bends[0].end.meters(), 300 + 192, 12);
}

TEST(Centreline, SmallErrorsOfDigitisingDoNotMakeBends) {
  std::vector<PlanPoint> points;
  for (int i = 0; i <= 60; ++i) points.push_back(at(10.0 * i, i % 2 == 0 ? 0.2 : -0.2));
  const Length width = Length::meters(40);
  const auto curve = curvature_along(made(points), width);
  ASSERT_TRUE(curve);
  EXPECT_TRUE(bends_along(*curve, width).empty());
}

TEST(Centreline, ResampledPlacesAreEvenAndKeepTheEnds) {
  const auto places = made(s_bend(160, 1.2, 300, 37)).resampled(Length::meters(10));
  ASSERT_TRUE(places);
  EXPECT_NEAR(places->front().x.meters(), 0, 1e-12);
  const auto apart = [&](std::size_t i) {
    return std::hypot(((*places)[i].x - (*places)[i - 1].x).meters(),
                      ((*places)[i].y - (*places)[i - 1].y).meters());
  };
  for (std::size_t i = 2; i < places->size(); ++i) EXPECT_NEAR(apart(i), apart(1), 0.01);
}

TEST(Centreline, RefusesWhatIsNoCentreline) {
  const auto code = [](std::vector<PlanPoint> points) {
    const auto centreline = Centreline::make(std::move(points));
    return centreline ? std::string() : centreline.problems().front().code;
  };
  EXPECT_EQ(code({at(0, 0), at(1, 0)}), "too-few-points");
  EXPECT_EQ(code({at(0, 0), at(1, 0), at(1, 0)}), "repeated-point");
  EXPECT_EQ(code({at(0, 0), at(1, std::nan("")), at(2, 0)}), "out-of-range");
  EXPECT_EQ(code({at(0, 0), at(1, 0), at(1e9, 0)}), "out-of-range");
  const auto line = made({at(0, 0), at(500'000, 0), at(1'000'000, 0)});
  EXPECT_EQ(curvature_along(line, Length::meters(1)).problems().front().code, "too-fine");
  EXPECT_EQ(curvature_along(line, Length()).problems().front().code, "width-not-positive");
}

}  // namespace
}  // namespace proofstone
