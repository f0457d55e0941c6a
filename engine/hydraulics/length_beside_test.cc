#include "engine/hydraulics/length_beside.h"

#include <gtest/gtest.h>

#include <cmath>

namespace proofstone {
namespace {

/// 200 m straight, then a left arc of 150 m radius through one radian, then 200 m straight.
Centreline left_bend() {
  std::vector<PlanPoint> points;
  const auto add = [&points](double x, double y) {
    points.push_back({Length::meters(x), Length::meters(y)});
  };
  for (int i = 0; i < 20; ++i) add(10.0 * i, 0);
  for (int i = 0; i <= 20; ++i) {
    const double a = 0.05 * i;
    add(200 + 150 * std::sin(a), 150 - 150 * std::cos(a));
  }
  for (int i = 1; i <= 20; ++i) {
    add(200 + 150 * std::sin(1.0) + 10 * i * std::cos(1.0),
        150 - 150 * std::cos(1.0) + 10 * i * std::sin(1.0));
  }
  return *Centreline::make(points);
}

double length(Length from, Length to, double offset_right) {
  Steps steps;
  const auto beside = length_beside(
      left_bend(), {from, to, Length::meters(offset_right), Length::meters(20)}, steps);
  EXPECT_TRUE(beside);
  return beside ? beside->meters() : 0;
}

// A circle's arc beside an arc: 150 m of centreline turn by one radian.
TEST(LengthBeside, IsLongerOutsideAndShorterInside) {
  const auto from = Length::meters(100);
  const auto to = Length::meters(450);
  EXPECT_NEAR(length(from, to, 12), 350 + 12, 0.2);
  EXPECT_NEAR(length(from, to, -12), 350 - 12, 0.2);
  EXPECT_NEAR(length(from, to, 0), 350, 1e-9);
}

TEST(LengthBeside, IsTheCentrelinesOwnWhereItIsStraight) {
  EXPECT_NEAR(length(Length::meters(20), Length::meters(140), 15), 120, 0.05);
}

TEST(LengthBeside, AStretchBeyondTheCentrelineIsRefused) {
  Steps steps;
  const auto beside = length_beside(
      left_bend(), {Length::meters(0), Length::meters(900), Length(), Length::meters(20)}, steps);
  ASSERT_FALSE(beside);
  EXPECT_EQ(beside.problems().front().code, "beyond-the-centreline");
}

}  // namespace
}  // namespace proofstone
