#include "engine/sizing/fhwa_shear_lining.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/sizing/hec15_curves.h"

namespace proofstone {
namespace {

FhwaShearLiningInputs channel(double depth_ft, double slope, double side_z) {
  FhwaShearLiningInputs in;
  in.depth = Length::feet(depth_ft);
  in.slope = Slope::ratio(slope);
  in.bank_angle = side_z > 0 ? angle_of(Slope::ratio(1 / side_z)) : Angle{};
  return in;
}

FhwaShearLiningResult sized(const FhwaShearLiningInputs& in) {
  Steps steps;
  const auto result = fhwa_shear_lining(in, steps);
  EXPECT_TRUE(result);
  return *result;
}

// HEC-15 3rd ed. ch. 6 (recalled): ends and one point between.
TEST(Hec15, ShieldsParameterAndSafetyFactor) {
  EXPECT_NEAR(hec15::shields(3e4).f_star, 0.047, 1e-12);
  EXPECT_NEAR(hec15::shields(3e4).safety_factor, 1, 1e-12);
  EXPECT_NEAR(hec15::shields(1e5).f_star, 0.085625, 1e-12);
  EXPECT_NEAR(hec15::shields(1e5).safety_factor, 1.1875, 1e-12);
  EXPECT_NEAR(hec15::shields(2e5).f_star, 0.15, 1e-12);
  EXPECT_NEAR(hec15::shields(9e5).safety_factor, 1.5, 1e-12);
}

// The recalled branches meet within their own rounding; a slip in a constant would show here.
TEST(Hec15, BranchesMeet) {
  EXPECT_NEAR(hec15::side_shear_factor(1.5), hec15::side_shear_factor(1.5 + 1e-9), 0.002);
  EXPECT_NEAR(hec15::side_shear_factor(5), hec15::side_shear_factor(5 - 1e-9), 1e-6);
  EXPECT_NEAR(hec15::bend_factor(2), hec15::bend_factor(2 + 1e-9), 0.004);
  EXPECT_NEAR(hec15::bend_factor(10), hec15::bend_factor(10 - 1e-9), 1e-6);
}

// Computed from eq. 6.11 apart from this code: F* 0.15 and SF 1.5, then F* 0.10 and SF 1.25.
TEST(Hec15, SteepFactor) {
  hec15::SteepTrial trial;
  trial.k1 = 0.868;
  trial.d_s = 0.35 * 0.20;
  trial.slope = 0.20;
  trial.theta = std::atan(1.0 / 3);
  trial.phi = Angle::degrees(42).radians();
  trial.d50 = 0.40;
  trial.shields = {0.15, 1.5};
  EXPECT_NEAR(hec15::steep_factor(trial).value(), 1.44026, 2e-5);

  trial.k1 = 0.802;
  trial.d_s = 0.9 * 0.15;
  trial.slope = 0.15;
  trial.theta = std::atan(0.5);
  trial.phi = Angle::degrees(41).radians();
  trial.d50 = 1.0;
  trial.shields = {0.10, 1.25};
  EXPECT_NEAR(hec15::steep_factor(trial).value(), 1.92904, 2e-5);
}

TEST(Hec15, SteepFactorIsOneOnALevelBottom) {
  hec15::SteepTrial trial;
  trial.d_s = 0.3;
  trial.slope = 0.15;
  trial.phi = Angle::degrees(40).radians();
  trial.d50 = 1.0;
  trial.shields = {0.10, 1.25};
  EXPECT_NEAR(hec15::steep_factor(trial).value(), 1, 1e-12);
}

// Fixed point of the trials at Q 40 ft³/s, B 2 ft, Z 3, S 0.02, taken at the depth of its 0.5-ft
// row.
TEST(FhwaShearLining, TheSizeFoundIsExactlySufficient) {
  for (const double z : {0.0, 2.0, 3.0}) {
    for (const double slope : {0.004, 0.02, 0.07, 0.15}) {
      const auto in = channel(1.775, slope, z);
      auto at_found = in;
      at_found.trial_size = sized(in).d50_side;
      const auto result = sized(at_found);
      EXPECT_NEAR(result.required_at_trial / *at_found.trial_size, 1, 1e-9) << z << " " << slope;
      at_found.trial_size = 0.98 * sized(in).d50_side;
      EXPECT_GT(sized(at_found).required_at_trial, *at_found.trial_size);
    }
  }
}

TEST(FhwaShearLining, TheSideGetsMoreOnlyWhenSteeperThanThreeToOne) {
  const auto flat = sized(channel(2, 0.01, 3));
  EXPECT_EQ(flat.d50_side, flat.d50_bottom);
  const auto steep = sized(channel(2, 0.01, 2));
  EXPECT_NEAR(steep.d50_side / steep.d50_bottom,
              steep.side_shear.number() / steep.side_stability.number(), 1e-9);
  EXPECT_GT(steep.d50_side, steep.d50_bottom);
}

TEST(FhwaShearLining, BetweenFiveAndTenPercentTheLargerFormGoverns) {
  const auto in = channel(1, 0.075, 2);
  const double mild_only = sized(channel(1, 0.05, 2)).d50.feet() * 0.075 / 0.05;
  const auto result = sized(in);
  EXPECT_GT(result.steep_factor.number(), 1);
  EXPECT_GE(result.d50.feet(), 0.8 * mild_only);
  EXPECT_GE(result.d50, result.d50_bottom);
}

TEST(FhwaShearLining, LimitsNotKeptAreNamed) {
  const auto small = fhwa_shear_lining_method().evaluate(
      nlohmann::json{{"depth", "0.1 ft"}, {"slope", "0.001"}, {"bank_angle", "0°"}});
  ASSERT_TRUE(small);
  EXPECT_EQ(small->limits_not_kept.size(), 1u);
}

// Side 1V:1.6H, slope 8 %, repose 42°: rock of 0.97 ft holds, but a larger stone is asked for more
// safety than so steep a side can give.
TEST(FhwaShearLining, SaysWhereLargerRockFailsAgain) {
  const nlohmann::json steep = {{"depth", "0.5 ft"},
                                {"slope", "0.08"},
                                {"bank_angle", "1V:1.6H"},
                                {"angle_of_repose", "42°"}};
  const auto found = fhwa_shear_lining_method().evaluate(steep);
  ASSERT_TRUE(found);
  ASSERT_EQ(found->limits_not_kept.size(), 1u);
  EXPECT_NE(found->limits_not_kept.front().sentence.find("larger rock"), std::string::npos);
  auto larger = steep;
  larger["trial_size"] = "1.6 ft";
  const auto tried = fhwa_shear_lining_method().evaluate(larger);
  ASSERT_TRUE(tried);
  EXPECT_GT(tried->output("required_at_trial").unchecked_as<Length>().feet(), 1.6);
  auto flatter = steep;
  flatter["bank_angle"] = "1V:3H";
  EXPECT_TRUE(fhwa_shear_lining_method().evaluate(flatter)->limits_not_kept.empty());
}

TEST(FhwaShearLiningOfAZone, ReadsTheZone) {
  ZoneSetting zone;
  zone.bank_angle = angle_of(Slope::ratio(0.5));
  zone.bend_side = BendSide::outside;
  zone.bend_radius = Length::feet(300);
  zone.water_top_width = Length::feet(100);
  zone.toe_depth = Length::feet(5);
  zone.local_depth = Length::feet(4);
  zone.energy_slope = Slope::ratio(0.004);
  const auto answer = fhwa_shear_lining_method().size(zone);
  ASSERT_TRUE(answer.required);
  EXPECT_EQ(answer.required->percent_smaller, 50);
  EXPECT_NEAR(answer.evaluation.output("bend_factor").si, 1.8277, 1e-9);
  EXPECT_NEAR(
      answer.evaluation.output("shear_bottom").unchecked_as<Stress>().pounds_per_square_foot(),
      1.8277 * 62.4 * 5 * 0.004, 1e-9);

  zone.bend_side = BendSide::inside;
  EXPECT_NEAR(fhwa_shear_lining_method().size(zone).evaluation.output("bend_factor").si, 1, 0);
  zone.turbulence = Turbulence::high;
  EXPECT_TRUE(fhwa_shear_lining_method().size(zone).not_applicable);
}

}  // namespace
}  // namespace proofstone
