#include "engine/blend/blended_curve.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

OfferedMaterial material(std::vector<GradationPoint> points) {
  return {"m", "M", *Gradation::make(std::move(points), {}), {}, {}, {}, {}};
}

// P = Σ f·P; halfway in log(size) between 4 and 16 in lies 8 in.
TEST(BlendedCurve, IsTheSharesOfTheCurvesAtEverySizeOfEither) {
  const auto fine = material({{Length::inches(4), 0}, {Length::inches(16), 100}});
  const auto coarse = material({{Length::inches(8), 0}, {Length::inches(32), 100}});
  const auto curve = blended_curve({fine, coarse}, {0.25, 0.75});
  ASSERT_EQ(curve.size(), 4U);
  EXPECT_NEAR(curve[0].percent_smaller, 0, 1e-9);
  EXPECT_NEAR(curve[1].percent_smaller, 0.25 * 50, 1e-9);
  EXPECT_NEAR(curve[2].percent_smaller, 0.25 * 100 + 0.75 * 50, 1e-9);
  EXPECT_NEAR(curve[3].percent_smaller, 100, 1e-9);
}

TEST(BlendedCurve, WhatHasNoShareLeavesNoTrace) {
  const auto one = material({{Length::inches(4), 0}, {Length::inches(16), 100}});
  const auto other = material({{Length::inches(5), 0}, {Length::inches(16), 100}});
  EXPECT_EQ(blended_curve({one, other}, {1, 0}).size(), 2U);
  EXPECT_EQ(blended_curve({one, other}, {0.5, 0.5}).size(), 3U);
  EXPECT_TRUE(blended_curve({}, {}).empty());
}

}  // namespace
}  // namespace proofstone
