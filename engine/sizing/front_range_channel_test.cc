#include "engine/sizing/front_range_channel.h"

#include <gtest/gtest.h>

#include <cmath>

namespace proofstone {
namespace {

std::string type_of(double x) {
  const auto type = front_range_type(Dimensionless::number(x));
  return type ? type->name : "none";
}

// The printed limits (recalled): below 3.3, 4.0, 4.6, 5.6, and to 6.4.
TEST(FrontRangeType, PrintedLimits) {
  EXPECT_EQ(type_of(3.29), "VL");
  EXPECT_EQ(type_of(3.3), "L");
  EXPECT_EQ(type_of(4.0), "M");
  EXPECT_EQ(type_of(4.6), "H");
  EXPECT_EQ(type_of(5.6), "VH");
  EXPECT_EQ(type_of(6.4), "VH");
  EXPECT_EQ(type_of(6.41), "none");
}

// The limits are 4.5·√d50 of the five types, rounded up in print.
TEST(FrontRangeType, LimitsAgreeWithTheEquation) {
  const double printed[] = {3.3, 4.0, 4.6, 5.6, 6.4};
  const double median_in[] = {6, 9, 12, 18, 24};
  const double unrounded[] = {3.18, 3.90, 4.50, 5.51, 6.36};
  for (int i = 0; i < 5; ++i) {
    const double x = 4.5 * std::sqrt(median_in[i] / 12);
    EXPECT_NEAR(x, unrounded[i], 0.01);
    EXPECT_GE(printed[i], x);
    EXPECT_LT(printed[i] - x, 0.13);
  }
}

ZoneSetting zone() {
  ZoneSetting setting;
  setting.average_velocity = Velocity::feet_per_second(8);
  setting.water_top_width = Length::feet(100);
  setting.energy_slope = Slope::ratio(0.01);
  setting.froude_number = Dimensionless::number(0.6);
  setting.bank_angle = angle_of(Slope::ratio(1.0 / 3));
  setting.rock.specific_gravity = Dimensionless::number(2.5);
  return setting;
}

TEST(FrontRangeOfAZone, ReadsTheZone) {
  auto setting = zone();
  const auto straight = front_range_channel_method().size(setting);
  ASSERT_TRUE(straight.required);
  EXPECT_NEAR(straight.required->size.inches(), 4.64, 0.01);
  EXPECT_TRUE(straight.evaluation.limits_not_kept.empty());
  setting.bend_side = BendSide::outside;
  setting.bend_radius = Length::feet(400);
  EXPECT_NEAR(front_range_channel_method().size(setting).required->size.inches(), 11.70, 0.03);
}

TEST(FrontRangeOfAZone, LimitsNotKeptAreNamed) {
  auto setting = zone();
  setting.average_velocity = Velocity::feet_per_second(25);
  setting.froude_number = Dimensionless::number(0.8);
  setting.rock.specific_gravity = Dimensionless::number(2.4);
  setting.bank_angle = angle_of(Slope::ratio(0.5));
  setting.bend_side = BendSide::outside;
  setting.bend_radius = Length::feet(150);
  const auto answer = front_range_channel_method().size(setting);
  ASSERT_TRUE(answer.required);
  EXPECT_EQ(answer.evaluation.limits_not_kept.size(), 6u);
  setting = zone();
  setting.bank_angle = angle_of(Slope::ratio(1 / 2.5));
  EXPECT_EQ(front_range_channel_method().size(setting).evaluation.limits_not_kept.size(), 1u);
}

TEST(FrontRangeOfAZone, SaysWhereItDoesNotApply) {
  auto setting = zone();
  setting.turbulence = Turbulence::high;
  EXPECT_TRUE(front_range_channel_method().size(setting).not_applicable);
}

}  // namespace
}  // namespace proofstone
