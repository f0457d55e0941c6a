#include "engine/mix/filled_mix.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "engine/blend/blend_examples.h"
#include "engine/mix/mix_design.h"
#include "engine/mix/mix_recipes.h"

namespace proofstone {
namespace {

MixFill loam() {
  return {"loam", curve_of_sieves({0.002, 0.02, 0.075, 0.425, 2}, {9, 31, 54, 83, 100}), 0.42,
          0.72};
}

FilledMix soil_filled(double rock, double soil) {
  return {{curve_of_sieves({150, 230, 300, 450}, {0, 40, 75, 100}), 0.40},
          rock,
          {loam()},
          {soil},
          MixPlacing::washed_in};
}

std::string code_of(const FilledMix& mix) {
  const auto balance = balance_of(mix);
  return balance ? "" : balance.problems().front().code;
}

TEST(FilledMix, SoilMustShrinkForThePublishedPartsToFit) {
  const auto balance = balance_of(soil_filled(65, 35));
  ASSERT_TRUE(balance);
  EXPECT_NEAR(balance->filling, 0.969, 0.0005);
  EXPECT_NEAR(balance->bulking, 1, 1e-12);
  EXPECT_NEAR(balance->compaction_that_fits.value_or(0), 0.743, 0.0005);
  auto measured_in_place = soil_filled(65, 35);
  measured_in_place.fills[0].in_place_over_loose = 1;
  const auto over = balance_of(measured_in_place);
  ASSERT_TRUE(over);
  EXPECT_NEAR(over->filling, 1.346, 0.0005);
  EXPECT_NEAR(over->bulking, 1.1385, 0.0005);
}

TEST(FilledMix, FineFillMixedInHoldsTheRockApartBeforeTheVoidsAreFull) {
  const auto balance = balance_of(soil_filled(65, 35));
  ASSERT_TRUE(balance);
  ASSERT_TRUE(balance->dilation.has_value());
  // A ratio of sizes near nothing: 1.10 to 1.13 by hand for the two sizes alone.
  EXPECT_GT(*balance->dilation, 1.05);
  EXPECT_LT(*balance->dilation, 1.20);
  const auto washes = can_be_washed_in(soil_filled(65, 35));
  ASSERT_TRUE(washes.has_value());
  EXPECT_TRUE(*washes);
}

TEST(FilledMix, FillTooLooseForThePackingModelGivesNoDilation) {
  auto mix = soil_filled(65, 35);
  mix.fills[0].porosity = 0.70;
  const auto balance = balance_of(mix);
  ASSERT_TRUE(balance);
  EXPECT_FALSE(balance->mix_density.has_value());
  EXPECT_FALSE(balance->dilation.has_value());
  ASSERT_EQ(balance->beyond_packing.size(), 1U);
  EXPECT_EQ(balance->beyond_packing[0].where, "loam");
  mix.fills.push_back(mix.fills.front());
  mix.fill_parts.push_back(10);
  const auto two = balance_of(mix);
  ASSERT_FALSE(two);
  EXPECT_EQ(two.problems().size(), 2U);
  EXPECT_EQ(code_of(mix), "too-loose");
}

TEST(FilledMix, RockOutsideThePackingModelIsNamedAsTheRock) {
  auto mix = soil_filled(65, 35);
  mix.rock.voids = 0.10;
  mix.rock.gradation = curve_of_sieves({290, 310}, {0, 100});
  const auto balance = balance_of(mix);
  ASSERT_TRUE(balance);
  EXPECT_FALSE(balance->dilation.has_value());
  ASSERT_EQ(balance->beyond_packing.size(), 1U);
  EXPECT_EQ(balance->beyond_packing[0].code, "too-dense");
  EXPECT_EQ(balance->beyond_packing[0].where, "rock");
}

TEST(FilledMix, WhatIsMissingOrImpossibleIsNamed) {
  auto mix = soil_filled(65, 35);
  mix.fills[0].in_place_over_loose.reset();
  EXPECT_EQ(code_of(mix), "factor-not-known");
  mix.fills[0].in_place_over_loose = 7;
  EXPECT_EQ(code_of(mix), "factor-outside");
  mix = soil_filled(65, 35);
  mix.fills[0].porosity.reset();
  EXPECT_EQ(code_of(mix), "");
  EXPECT_FALSE(balance_of(mix)->dilation.has_value());
  EXPECT_FALSE(mix_curve(mix, *balance_of(mix)));
  mix.fills.push_back(loam());
  mix.fill_parts.push_back(1);
  EXPECT_EQ(code_of(mix), "porosity-not-known");
  mix = soil_filled(65, 35);
  mix.rock.voids = 0.9;
  EXPECT_EQ(code_of(mix), "voids-outside");
  EXPECT_EQ(code_of(soil_filled(0, 35)), "not-positive");
  EXPECT_EQ(code_of(soil_filled(65, std::nan(""))), "not-positive");
  mix.fills.clear();
  mix.fill_parts.clear();
  mix.rock.voids = 0.4;
  EXPECT_EQ(code_of(mix), "no-fill");
}

TEST(FilledMix, TheCurveOfTheMixStandsBetweenThoseOfItsParts) {
  const auto mix = soil_filled(65, 35);
  const auto curve = mix_curve(mix, *balance_of(mix));
  ASSERT_TRUE(curve);
  // Solids: 0.6 of rock to 0.3877·0.58 of soil.
  EXPECT_NEAR(curve->percent_smaller(Length::millimeters(2)), 100 * 0.2249 / 0.8249, 0.05);
}

// Six parts of rock with voids of 0.40 and five and a half of loose fill at a density of 0.60 that
// would pack together to 0.80, computed apart from this engine.
TEST(FilledMix, FiveAndAHalfPartsToSixForceTheRockApart) {
  auto mix = soil_filled(6, 5.5);
  mix.fills[0].in_place_over_loose = 0.60 / 0.80;
  const auto balance = balance_of(mix);
  ASSERT_TRUE(balance);
  EXPECT_NEAR(balance->bulking, 7.725 / 6, 1e-9);
}

// The recalled recipe forces the rock apart by at least as much as if its fills packed to 0.85.
TEST(MixRecipes, TheRecalledVoidFilledRecipeForcesTheRockApart) {
  const auto* recipe = find_recipe("void-filled-large-rock");
  ASSERT_NE(recipe, nullptr);
  EXPECT_TRUE(recipe->unverified);
  FilledMix mix{{curve_of_sieves({150, 230, 300, 450}, {0, 40, 75, 100}), 0.40},
                recipe->rock_parts,
                recipe->fills,
                recipe->fill_parts,
                MixPlacing::mixed};
  auto soil = loam();
  soil.porosity = 0.40;
  soil.in_place_over_loose = 1;
  mix.fills.push_back(soil);
  mix.fill_parts.push_back(recipe->soil_parts);
  const auto balance = balance_of(mix);
  ASSERT_TRUE(balance);
  EXPECT_NEAR(balance->loose_ratio, 5.5 / 6, 1e-12);
  EXPECT_GT(balance->bulking, 1.25);
  EXPECT_LT(balance->bulking, 1.45);
  EXPECT_GT(balance->dilation.value_or(0), 1.25);
  const auto corrected = design_mix(mix);
  ASSERT_TRUE(corrected);
  EXPECT_LE(corrected->recipe.balance.dilation.value_or(9), most_dilation);
}

TEST(MixRecipes, AreReadAndServeTheirSizes) {
  EXPECT_EQ(published_recipes().size(), 4u);
  const auto* small = find_recipe("void-filled-small-rock");
  ASSERT_NE(small, nullptr);
  EXPECT_TRUE(small->serves(Length::inches(6)));
  EXPECT_FALSE(small->serves(Length::inches(9)));
  EXPECT_EQ(find_recipe("no such"), nullptr);
  EXPECT_FALSE(read_recipes("[]"));
  EXPECT_FALSE(read_recipes(R"({"recipes": [{"id": "x"}], "materials": []})"));
}

}  // namespace
}  // namespace proofstone
