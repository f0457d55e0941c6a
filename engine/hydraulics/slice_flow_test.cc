#include "engine/hydraulics/slice_flow.h"

#include <gtest/gtest.h>

#include <cmath>

namespace proofstone {
namespace {

/// 10 m wide at the bottom, sides 1V:2H, 4 m high.
Section trapezoid() {
  const auto n = Dimensionless::number(0.03);
  const auto section = Section::make({{Length::meters(0), Length::meters(4), n},
                                      {Length::meters(8), Length::meters(0), n},
                                      {Length::meters(18), Length::meters(0), n},
                                      {Length::meters(26), Length::meters(4), n}});
  EXPECT_TRUE(section);
  return *section;
}

const SliceWater two_meters_deep{Length::meters(2), Discharge::cubic_meters_per_second(40),
                                 Slope::ratio(0.001)};

SliceExtent whole(const Section& section, double greatest_width) {
  return {section.left_end(), section.right_end(), Length::meters(greatest_width)};
}

TEST(SliceFlow, LeavesDryGroundOutAndCutsWideGround) {
  const Section section = trapezoid();
  const auto coarse = slice_flow(section, whole(section, 0), two_meters_deep);
  ASSERT_TRUE(coarse);
  EXPECT_EQ(coarse->size(), 3U);
  EXPECT_NEAR(coarse->front().top_width.meters(), 4, 1e-12);
  const auto fine = slice_flow(section, whole(section, 1), two_meters_deep);
  ASSERT_TRUE(fine);
  EXPECT_EQ(fine->size(), 18U);
  EXPECT_EQ(slice_at(*fine, Length::meters(1)), nullptr);
  ASSERT_NE(slice_at(*fine, Length::meters(13.5)), nullptr);
}

TEST(SliceFlow, NarrowSlicesFollowDepthToTheTwoThirds) {
  const Section section = trapezoid();
  const auto fine = slice_flow(section, whole(section, 0.05), two_meters_deep);
  ASSERT_TRUE(fine);
  const FlowSlice* bed = slice_at(*fine, Length::meters(13));
  const FlowSlice* bank = slice_at(*fine, Length::meters(6.025));
  ASSERT_TRUE(bed != nullptr && bank != nullptr);
  const double d = bank->mean_depth.meters();
  const double ratio = std::pow(d / 2 / std::sqrt(1.25), 2.0 / 3.0);
  EXPECT_NEAR(bank->velocity / bed->velocity, ratio, 1e-9);
  EXPECT_NEAR(bank->shear / bed->shear, d / 2 / std::sqrt(1.25), 1e-9);
}

TEST(SliceFlow, AnUprightWallSlowsTheSliceBesideIt) {
  const auto n = Dimensionless::number(0.03);
  const auto flume = Section::make({{Length::meters(0), Length::meters(3), n},
                                    {Length::meters(0), Length::meters(0), n},
                                    {Length::meters(6), Length::meters(0), n},
                                    {Length::meters(6), Length::meters(3), n}});
  ASSERT_TRUE(flume);
  const auto slices = slice_flow(*flume, whole(*flume, 1), two_meters_deep);
  ASSERT_TRUE(slices);
  ASSERT_EQ(slices->size(), 6U);
  EXPECT_NEAR(slices->front().wetted_perimeter.meters(), 3, 1e-12);
  EXPECT_NEAR((*slices)[2].wetted_perimeter.meters(), 1, 1e-12);
  EXPECT_LT(slices->front().velocity, (*slices)[2].velocity);
}

TEST(SliceFlow, RefusesWhatHasNoAnswer) {
  const Section section = trapezoid();
  const auto code = [&](const SliceExtent& extent, const SliceWater& water) {
    const auto slices = slice_flow(section, extent, water);
    return slices ? std::string() : slices.problems().front().code;
  };
  SliceWater water = two_meters_deep;
  EXPECT_EQ(code({Length::meters(-1), Length::meters(5), {}}, water), "extent-outside");
  EXPECT_EQ(code({Length::meters(5), Length::meters(5), {}}, water), "extent-outside");
  EXPECT_EQ(code(whole(section, 1e-5), water), "too-many-slices");
  EXPECT_EQ(code({Length::meters(0), Length::meters(3), {}}, water), "dry");
  water.discharge = {};
  EXPECT_EQ(code(whole(section, 1), water), "discharge-not-positive");
  water = two_meters_deep;
  water.energy_slope = Slope::ratio(-0.001);
  EXPECT_EQ(code(whole(section, 1), water), "slope-not-positive");
  water = two_meters_deep;
  water.water_level = Length::meters(std::nan(""));
  EXPECT_EQ(code(whole(section, 1), water), "not-a-number");
}

}  // namespace
}  // namespace proofstone
