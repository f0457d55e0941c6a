#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/sizing/abutment_riprap.h"
#include "engine/sizing/california_bank_and_shore.h"
#include "engine/sizing/escarameia_may.h"
#include "engine/sizing/fhwa_revetment.h"
#include "engine/sizing/fhwa_stability_factor_revetment.h"
#include "engine/sizing/isbash.h"
#include "engine/sizing/pier_riprap.h"
#include "engine/sizing/pilarczyk.h"
#include "engine/sizing/side_slope_stability_factor.h"
#include "engine/sizing/stilling_basin_riprap.h"
#include "engine/sizing/tractive_force.h"
#include "engine/sizing/usace_bank_and_bed.h"
#include "engine/sizing/usace_steep_slope.h"

namespace proofstone {
namespace {

ZoneSetting outer_bank() {
  ZoneSetting setting;
  setting.bank_angle = angle_of(Slope::ratio(0.5));
  setting.bend_side = BendSide::outside;
  setting.bend_radius = Length::feet(620);
  setting.average_velocity = Velocity::feet_per_second(7.1);
  setting.water_top_width = Length::feet(200);
  setting.mean_depth = Length::feet(9);
  setting.toe_depth = Length::feet(15);
  setting.local_depth = Length::feet(12);
  setting.energy_slope = Slope::ratio(0.001);
  setting.froude_number = Dimensionless::number(0.35);
  return setting;
}

double output(const SizingAnswer& answer, const char* key) {
  return answer.evaluation.output(key).si;
}

TEST(FhwaRevetmentOfAZone, IsTheUsaceEquationWithItsOwnMedianSize) {
  const auto fhwa = fhwa_revetment_method().size(outer_bank());
  const auto usace = usace_bank_and_bed_method().size(outer_bank());
  ASSERT_TRUE(fhwa.required);
  ASSERT_TRUE(usace.required);
  EXPECT_EQ(fhwa.required->percent_smaller, 50);
  EXPECT_NEAR(fhwa.required->size / usace.required->size, 1.20, 1e-12);
  EXPECT_FALSE(fhwa.for_comparison);
}

TEST(FhwaStabilityFactorRevetmentOfAZone, TakesTheUpperEndOfTheTableForTheBend) {
  EXPECT_EQ(hec11_stability_factor(std::nullopt).number(), 1.2);
  EXPECT_EQ(hec11_stability_factor(31.0).number(), 1.2);
  EXPECT_EQ(hec11_stability_factor(20.0).number(), 1.6);
  EXPECT_EQ(hec11_stability_factor(3.1).number(), 2.0);
  const auto answer = fhwa_stability_factor_revetment_method().size(outer_bank());
  ASSERT_TRUE(answer.required);
  EXPECT_NEAR(output(answer, "csf"), std::pow(2.0 / 1.2, 1.5), 1e-12);
}

TEST(MethodsForComparison, GovernOnceTheDesignerHasChosenWhatTheZoneDoesNotTell) {
  auto setting = outer_bank();
  const auto& method = fhwa_stability_factor_revetment_method();
  ASSERT_TRUE(method.size(setting).for_comparison);
  nlohmann::json choices = {{"fhwa-stability-factor-revetment", {{"stability_factor", "1.6"}}}};
  setting.method_choices = &choices;
  const auto chosen = method.size(setting);
  EXPECT_FALSE(chosen.for_comparison);
  EXPECT_NEAR(output(chosen, "csf"), std::pow(1.6 / 1.2, 1.5), 1e-12);
  choices = {{"fhwa-stability-factor-revetment", {{"use", "bank"}}}};
  EXPECT_TRUE(method.size(setting).for_comparison) << "another choice does not tell it";
}

TEST(MethodsForComparison, AreThoseWithInputsThatAZoneDoesNotTell) {
  for (const SizingMethod* method :
       {&side_slope_stability_factor_method(), &tractive_force_method(), &pilarczyk_method(),
        &escarameia_may_method(), &california_bank_and_shore_method()}) {
    const auto answer = method->size(outer_bank());
    ASSERT_TRUE(answer.required) << method->description().id;
    EXPECT_TRUE(answer.for_comparison) << method->description().id;
  }
}

TEST(UsaceSteepSlopeOfAZone, SpeaksOfSteepBedsOnly) {
  auto setting = outer_bank();
  EXPECT_TRUE(usace_steep_slope_method().size(setting).not_applicable);
  setting.place = ZonePlace::bed;
  EXPECT_TRUE(usace_steep_slope_method().size(setting).not_applicable);
  setting.energy_slope = Slope::percent(5);
  const auto steep = usace_steep_slope_method().size(setting);
  ASSERT_TRUE(steep.required);
  EXPECT_TRUE(steep.evaluation.limits_not_kept.empty());
  setting.energy_slope = Slope::percent(21);
  setting.rock.specific_gravity = Dimensionless::number(2.5);
  setting.rock.angularity = Angularity::rounded;
  EXPECT_EQ(usace_steep_slope_method().size(setting).evaluation.limits_not_kept.size(), 3u);
}

TEST(StillingBasinRiprapOfAZone, SpeaksOfHighTurbulenceOnly) {
  auto setting = outer_bank();
  EXPECT_TRUE(stilling_basin_riprap_method().size(setting).not_applicable);
  setting.turbulence = Turbulence::high;
  const auto basin = stilling_basin_riprap_method().size(setting);
  ASSERT_TRUE(basin.required);
  EXPECT_NEAR(basin.required->size.feet(), 0.0122 * std::pow(7.1, 2.06), 1e-12);
  for (const SizingMethod* method :
       {&fhwa_revetment_method(), &fhwa_stability_factor_revetment_method(),
        &side_slope_stability_factor_method(), &tractive_force_method(), &pilarczyk_method(),
        &california_bank_and_shore_method()}) {
    EXPECT_TRUE(method->size(setting).not_applicable) << method->description().id;
  }
}

TEST(EscarameiaMayOfAZone, BelowStructuresTheVelocityNearTheBedIsAskedFor) {
  auto setting = outer_bank();
  setting.turbulence = Turbulence::high;
  const auto asked = escarameia_may_method().size(setting);
  EXPECT_FALSE(asked.required);
  ASSERT_FALSE(asked.problems.empty());
  EXPECT_EQ(asked.problems.front().where, "/escarameia-may/bottom_velocity");
  const nlohmann::json choices = {{"escarameia-may", {{"bottom_velocity", "2.5 m/s"}}}};
  setting.method_choices = &choices;
  ASSERT_TRUE(escarameia_may_method().size(setting).required);
}

TEST(TractiveForce, SideFactorsOfTheFarWesternForm) {
  const auto at = [](double z) {
    return far_western_side_factor(angle_of(Slope::ratio(1 / z))).number();
  };
  EXPECT_NEAR(at(1.75), 0.63, 1e-9);
  EXPECT_NEAR(at(2.25), 0.76, 1e-9) << "straight between printed values";
  EXPECT_NEAR(at(3.0001), 0.8706, 0.0001) << "by formula beyond the table";
  EXPECT_NEAR(at(1.2), 0.52, 1e-9) << "held at the first value; the limit says so";
  EXPECT_EQ(far_western_side_factor(Angle{}).number(), 1);
  EXPECT_EQ(far_western_bend_factor(10.0).number(), 0.90);
  EXPECT_EQ(far_western_bend_factor(5.0).number(), 0.60);
  EXPECT_EQ(far_western_bend_factor(13.0).number(), 1.0);
}

TEST(TractiveForceOfAZone, ASharperBendThanPrintedIsALimit) {
  const auto answer = tractive_force_method().size(outer_bank());
  ASSERT_TRUE(answer.required);
  EXPECT_EQ(answer.required->percent_smaller, 75);
  ASSERT_EQ(answer.evaluation.limits_not_kept.size(), 1u) << "R/W 3.1";
}

// 0.692 in the guidelines for piers is the Isbash form with C 1.202.
TEST(Isbash, LowTurbulenceIsThePierCoefficient) {
  EXPECT_NEAR(1 / (1.20 * 1.20), 0.692, 0.003);
  EXPECT_NEAR(1 / (1.202 * 1.202), 0.692, 0.0005);
}

TEST(Pilarczyk, TheDepthFactorFallsInWithOneInShallowWater) {
  PilarczykInputs in;
  in.velocity = Velocity::meters_per_second(3);
  in.profile = VelocityProfile::developed;
  in.roughness_stones = Dimensionless::number(3);
  double before = 0;
  for (int i = 1; i <= 60; ++i) {
    in.depth = Length::meters(3 - 0.049 * i);
    Steps steps;
    const auto result = pilarczyk(in, steps);
    ASSERT_TRUE(result);
    EXPECT_LE(result->depth_factor.number(), 1);
    EXPECT_GE(result->dn50.meters(), before - 1e-12) << "shallower water, larger stone";
    before = result->dn50.meters();
  }
  EXPECT_NEAR(before, 0.75 / 1.65 * 9 / (2 * 9.80665), 1e-9);
}

TEST(PierRiprapOfAZone, TakesTheCarefulFactorsUntilOthersAreChosen) {
  ZoneSetting setting;
  setting.place = ZonePlace::pier;
  setting.average_velocity = Velocity::feet_per_second(8);
  const auto careful = pier_riprap_method().size(setting);
  ASSERT_TRUE(careful.required);
  EXPECT_NEAR(output(careful, "design_velocity"), 1.7 * 1.7 * 8 * 0.3048, 1e-12);
  const nlohmann::json choices = {
      {"pier-riprap", {{"local_velocity", "9 ft/s"}, {"nose", "round"}}}};
  setting.method_choices = &choices;
  const auto chosen = pier_riprap_method().size(setting);
  EXPECT_NEAR(output(chosen, "design_velocity"), 1.5 * 9 * 0.3048, 1e-12);
  setting.place = ZonePlace::bank;
  EXPECT_TRUE(pier_riprap_method().size(setting).not_applicable);
}

TEST(AbutmentRiprapOfAZone, TakesTheWallUntilAnotherFormIsChosen) {
  ZoneSetting setting;
  setting.place = ZonePlace::abutment;
  setting.average_velocity = Velocity::feet_per_second(7);
  const auto shallow = abutment_riprap_method().size(setting);
  EXPECT_FALSE(shallow.required) << "no depth is stated";
  ASSERT_FALSE(shallow.problems.empty());
  setting.local_depth = Length::feet(6);
  const auto wall = abutment_riprap_method().size(setting);
  ASSERT_TRUE(wall.required);
  EXPECT_NEAR(wall.required->size.feet(), 0.9407, 0.002);
  const nlohmann::json choices = {{"abutment-riprap", {{"form", "spill-through"}}}};
  setting.method_choices = &choices;
  EXPECT_NEAR(abutment_riprap_method().size(setting).required->size.feet(), 0.8208, 0.002);
}

}  // namespace
}  // namespace proofstone
