#include "engine/mix/mix_design.h"

#include <gtest/gtest.h>

#include "engine/blend/blend_examples.h"

namespace proofstone {
namespace {

MixFill loam() {
  return {"loam", curve_of_sieves({0.002, 0.02, 0.075, 0.425, 2}, {9, 31, 54, 83, 100}), 0.42,
          0.72};
}

FilledMix to_design() {
  return {{curve_of_sieves({150, 230, 300, 450}, {0, 40, 75, 100}), 0.40},
          1,
          {loam()},
          {1},
          MixPlacing::washed_in};
}

TEST(MixDesign, WashedInFillsTheVoidsAndMixedKeepsTheContact) {
  auto mix = to_design();
  // Nine buckets to five fill just to the brim: 5/9·0.72/0.40.
  const auto washed = design_mix(mix, 14);
  ASSERT_TRUE(washed);
  EXPECT_GT(washed->full, 0);
  EXPECT_EQ(washed->recipe.rock_buckets, 9);
  EXPECT_NEAR(washed->recipe.balance.filling, 1, 1e-9);
  mix.placing = MixPlacing::mixed;
  const auto mixed = design_mix(mix);
  ASSERT_TRUE(mixed);
  // Mixed in, nothing fills the voids and leaves the stones touching: how far apart is told.
  EXPECT_EQ(mixed->full, 0);
  EXPECT_GT(mixed->dilation_to_fill.value_or(0), most_dilation);
  EXPECT_LE(mixed->recipe.balance.dilation.value_or(9), most_dilation);
  EXPECT_LT(mixed->recipe.balance.filling, washed->recipe.balance.filling);
  EXPECT_LE(mixed->recipe.buckets(), 12);
  // What the design says of a recipe is what its parts come to.
  const auto again = balance_of(with_recipe(mix, mixed->recipe));
  ASSERT_TRUE(again);
  EXPECT_NEAR(again->filling, mixed->recipe.balance.filling, 1e-6);
  EXPECT_NEAR(again->dilation.value_or(0), mixed->recipe.balance.dilation.value_or(1), 1e-6);
}

TEST(MixDesign, BadQuestionsAreNamed) {
  auto mix = to_design();
  EXPECT_EQ(design_mix(mix, 1).problems().front().code, "buckets-out-of-range");
  EXPECT_EQ(design_mix(mix, 1000).problems().front().code, "buckets-out-of-range");
  mix.fills[0].porosity.reset();
  EXPECT_EQ(design_mix(mix).problems().front().code, "porosity-not-known");
  auto coarse = to_design();
  coarse.placing = MixPlacing::mixed;
  coarse.fills[0].gradation = curve_of_sieves({100, 200}, {0, 100});
  EXPECT_EQ(design_mix(coarse, 4).problems().front().code, "no-recipe");
}

// The model is asked of what is proposed as of what is stated: what it does not reach is refused.
TEST(MixDesign, FillThatThePackingModelDoesNotReachIsRefused) {
  for (const auto placing : {MixPlacing::mixed, MixPlacing::washed_in}) {
    auto mix = to_design();
    mix.placing = placing;
    mix.fills[0].porosity = 0.70;
    const auto one = design_mix(mix);
    ASSERT_FALSE(one);
    EXPECT_EQ(one.problems().front().code, "too-loose");
    EXPECT_EQ(one.problems().front().where, "loam");
    EXPECT_NE(one.problems().front().allowed.find("a porosity of 0.10 to 0.6"), std::string::npos)
        << one.problems().front().sentence();
    mix.fills.push_back(loam());
    // Of two, the other is designed with and the first is named.
    const auto one_of_two = design_mix(mix);
    ASSERT_TRUE(one_of_two);
    ASSERT_EQ(one_of_two->left_out.size(), 1U);
    EXPECT_EQ(one_of_two->left_out.front().where, "loam");
    EXPECT_EQ(one_of_two->recipe.fill_buckets[0], 0);
    EXPECT_GT(one_of_two->recipe.fill_buckets[1], 0);
    EXPECT_EQ(one_of_two->recipe.balance.solids.size(), 2U);
    mix.fills[1].porosity = 0.69;
    const auto two = design_mix(mix);
    ASSERT_FALSE(two);
    EXPECT_EQ(two.problems().size(), 2U);
  }
}

TEST(MixDesign, FillTooCoarseToBeWashedInIsLeftOutAlone) {
  auto mix = to_design();
  mix.fills.push_back({"cobbles", curve_of_sieves({50, 100}, {0, 100}), 0.42, 0.9});
  const auto made = design_mix(mix);
  ASSERT_TRUE(made);
  ASSERT_EQ(made->left_out.size(), 1U);
  EXPECT_EQ(made->left_out.front().code, "too-coarse");
  EXPECT_EQ(made->recipe.fill_buckets[1], 0);
  mix.fills.erase(mix.fills.begin());
  EXPECT_EQ(design_mix(mix).problems().front().code, "too-coarse");
}

// What the judge calls better is taken before what is merely fuller; where none is, the fullest.
TEST(MixDesign, ProportionsThatKeepMoreComeBeforeFullerOnes) {
  const auto mix = to_design();
  const auto fullest = design_mix(mix, 14);
  ASSERT_TRUE(fullest);
  const auto leaner = [&](const FilledMix& made, const MixBalance&) {
    MixFitness fitness;
    fitness.as_filter = made.rock_parts > 12 ? Outcome::falls_short : Outcome::ask_the_designer;
    fitness.stability =
        made.fill_parts[0] / made.rock_parts < 0.54 ? Outcome::meets : Outcome::falls_short;
    return fitness;
  };
  const auto made = design_mix(mix, 14, leaner);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->fitness.stability, Outcome::meets);
  EXPECT_LT(made->recipe.balance.filling, fullest->recipe.balance.filling);
  EXPECT_GE(made->recipe.balance.filling, least_filling - 1e-9);
  EXPECT_EQ(made->full_both, 0);
  EXPECT_GT(made->full_stable, 0);
  EXPECT_LT(made->full_stable, made->full);
  const auto none = design_mix(mix, 14, [](const FilledMix&, const MixBalance&) {
    return MixFitness{Outcome::falls_short, Outcome::falls_short, 0};
  });
  ASSERT_TRUE(none);
  EXPECT_EQ(none->recipe.buckets(), fullest->recipe.buckets());
  EXPECT_EQ(none->full_as_filter, 0);
}

TEST(MixDesign, RockThatThePackingModelDoesNotReachIsRefused) {
  auto mix = to_design();
  mix.rock = {curve_of_sieves({290, 310}, {0, 100}), 0.10};
  const auto recipe = design_mix(mix);
  ASSERT_FALSE(recipe);
  EXPECT_EQ(recipe.problems().front().code, "too-dense");
}

// What the refusal allows is taken, and a hundredth beyond it is not.
TEST(MixDesign, WhatARefusalAllowsIsTaken) {
  auto mix = to_design();
  mix.fills[0].porosity = 0.70;
  const auto refused = design_mix(mix);
  ASSERT_FALSE(refused);
  const auto& allowed = refused.problems().front().allowed;
  const double most = std::stod(allowed.substr(allowed.rfind(' ')));
  ASSERT_LT(most, 0.69);
  mix.fills[0].porosity = most;
  EXPECT_TRUE(design_mix(mix));
  mix.fills[0].porosity = most + 0.01;
  EXPECT_FALSE(design_mix(mix));
}

}  // namespace
}  // namespace proofstone
