#include "engine/sizing/side_slope_stability_factor.h"

#include <gtest/gtest.h>

#include <cmath>

namespace proofstone {
namespace {

StabilityCase level_flow(double eta, double bank_degrees, double repose_degrees) {
  StabilityCase at;
  at.eta = eta;
  at.theta = Angle::degrees(bank_degrees).radians();
  at.phi = Angle::degrees(repose_degrees).radians();
  return at;
}

// HDS-6: with level flow the general form closes to SF = (Sm/2)[√(ζ²+4) − ζ], Sm = tanφ/tanθ,
// ζ = Sm·η·secθ.
TEST(StabilityMoments, LevelFlowIsTheClosedForm) {
  for (const double bank : {5.0, 18.5, 25.0, 33.0}) {
    for (const double eta : {0.05, 0.31, 0.83, 2.0}) {
      const auto at = level_flow(eta, bank, 42);
      const double sm = std::tan(at.phi) / std::tan(at.theta);
      const double zeta = sm * eta / std::cos(at.theta);
      const double closed = sm / 2 * (std::sqrt(zeta * zeta + 4) - zeta);
      EXPECT_NEAR(stability_moments(at).factor / closed, 1, 1e-12) << bank << " " << eta;
    }
  }
}

// HDS-6 sec. 6.12.1, p. 6.65: repose 40° and stability number 0.95 leave a factor of 1 on a bed of
// 2.35° (4.1 %) in the direction of the fall.
TEST(StabilityMoments, FlowStraightDownTheSlopeIsTheBedForm) {
  auto at = level_flow(0.95, 2.364, 40);
  at.lambda = Angle::degrees(90).radians();
  const double bed =
      std::cos(at.theta) * std::tan(at.phi) / (at.eta * std::tan(at.phi) + std::sin(at.theta));
  EXPECT_NEAR(stability_moments(at).factor, bed, 1e-12);
  EXPECT_NEAR(bed, 1, 0.0005);
}

TEST(StabilityMoments, WaterDownTheSlopeIsWorseAndUpTheSlopeBetter) {
  auto down = level_flow(0.24, 26.57, 42);
  auto up = down;
  down.lambda = Angle::degrees(15).radians();
  up.lambda = Angle::degrees(-15).radians();
  const double level = stability_moments(level_flow(0.24, 26.57, 42)).factor;
  EXPECT_LT(stability_moments(down).factor, level);
  EXPECT_GT(stability_moments(up).factor, level);
}

TEST(StabilityMoments, OnALevelBedTheFactorIsOneOverTheNumber) {
  EXPECT_NEAR(stability_moments(level_flow(0.4, 0, 40)).factor, 2.5, 1e-12);
}

TEST(StabilityMoments, ASlopingBedIsWorseThanALevelOne) {
  auto at = level_flow(0.68, 18.5, 40);
  at.lambda = Angle::degrees(20).radians();
  const double level = stability_moments(at).factor;
  at.theta_0 = Angle::degrees(0.5).radians();
  EXPECT_LT(stability_moments(at).factor, level);
}

SideSlopeStabilityFactorInputs bank() {
  SideSlopeStabilityFactorInputs in;
  in.shear = Stress::pascals(95.8);
  in.bank_angle = Angle::degrees(20);
  return in;
}

TEST(SideSlopeStabilityFactor, TheSizeRequiredReachesTheFactorExactly) {
  for (const double flow : {-40.0, 0.0, 35.0}) {
    auto in = bank();
    in.flow_angle = Angle::degrees(flow);
    Steps steps;
    const auto required = side_slope_stability_factor(in, steps);
    ASSERT_TRUE(required);
    in.trial_size = required->d50;
    const auto tried = side_slope_stability_factor(in, steps);
    ASSERT_TRUE(tried);
    EXPECT_NEAR(tried->stability_factor.number(), 1.5, 1e-9) << flow;
    in.trial_size = 1.1 * required->d50;
    EXPECT_GT(side_slope_stability_factor(in, steps)->stability_factor.number(), 1.5) << flow;
  }
}

TEST(SideSlopeStabilityFactor, AVelocityGoesBeforeAShear) {
  auto in = bank();
  in.reference_velocity = Velocity::feet_per_second(8);
  Steps steps;
  const auto both = side_slope_stability_factor(in, steps);
  in.shear.reset();
  const auto alone = side_slope_stability_factor(in, steps);
  ASSERT_TRUE(both);
  ASSERT_TRUE(alone);
  EXPECT_EQ(both->d50, alone->d50);
  in.mean_velocity = Velocity::feet_per_second(8);
  const auto two = side_slope_stability_factor(in, steps);
  ASSERT_FALSE(two);
  EXPECT_EQ(two.problems().front().code, "one-of");
}

// Mean velocity 8 ft/s in 10 ft of water is 6.172 ft/s one stone of 1.5 ft above the bed.
TEST(SideSlopeStabilityFactor, AMeanVelocityActsByItsVelocityAtTheStone) {
  auto in = bank();
  in.shear.reset();
  in.mean_velocity = Velocity::feet_per_second(8);
  in.depth = Length::feet(10);
  in.trial_size = Length::feet(1.5);
  Steps steps;
  const auto by_mean = side_slope_stability_factor(in, steps);
  ASSERT_TRUE(by_mean);
  auto at_stone = in;
  at_stone.mean_velocity.reset();
  at_stone.reference_velocity = Velocity::feet_per_second(6.172);
  EXPECT_NEAR(by_mean->stability_factor.number(),
              side_slope_stability_factor(at_stone, steps)->stability_factor.number(), 0.0005);
  in.trial_size = by_mean->d50;
  EXPECT_NEAR(side_slope_stability_factor(in, steps)->stability_factor.number(), 1.5, 1e-9);
  in.depth.reset();
  EXPECT_FALSE(side_slope_stability_factor(in, steps));
}

TEST(SideSlopeStabilityFactor, NoStoneAsLargeAsTheWaterIsDeep) {
  auto in = bank();
  in.shear.reset();
  in.mean_velocity = Velocity::feet_per_second(30);
  in.depth = Length::feet(1);
  Steps steps;
  const auto result = side_slope_stability_factor(in, steps);
  ASSERT_FALSE(result);
  EXPECT_EQ(result.problems().front().code, "no-stable-size");
}

}  // namespace
}  // namespace proofstone
