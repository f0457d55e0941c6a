#include "engine/sizing/isbash.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

ZoneSetting zone() {
  ZoneSetting setting;
  setting.average_velocity = Velocity::feet_per_second(7.1);
  setting.water_top_width = Length::feet(200);
  return setting;
}

TEST(IsbashOfAZone, TurbulencePicksTheCoefficient) {
  auto setting = zone();
  const auto low = isbash_method().size(setting);
  setting.turbulence = Turbulence::high;
  const auto high = isbash_method().size(setting);
  ASSERT_TRUE(low.required);
  ASSERT_TRUE(high.required);
  EXPECT_NEAR(high.required->size / low.required->size, 1.947, 0.001);
  EXPECT_EQ(low.required->percent_smaller, 50);
}

TEST(IsbashOfAZone, TheOutsideOfABendTakesTheBankVelocity) {
  auto setting = zone();
  const auto straight = isbash_method().size(setting);
  setting.bend_side = BendSide::outside;
  EXPECT_TRUE(isbash_method().size(setting).not_applicable) << "no radius";
  setting.bend_radius = Length::feet(620);
  const auto bend = isbash_method().size(setting);
  ASSERT_TRUE(bend.required);
  EXPECT_NEAR(bend.required->size / straight.required->size, 1.484 * 1.484, 0.002);
}

}  // namespace
}  // namespace proofstone
