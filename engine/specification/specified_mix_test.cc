#include "engine/specification/specified_mix.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/mix/filled_mix.h"
#include "engine/site/example_document.h"
#include "engine/site/mix_verdict.h"

namespace proofstone {
namespace {

using nlohmann::json;

ExampleDocument with_mix() {
  ExampleDocument example;
  example.items["materials"]["loam"] = {{"name", "Loam"},
                                        {"gradation",
                                         {{{"size", "0.02 mm"}, {"smaller", "30 %"}},
                                          {{"size", "0.075 mm"}, {"smaller", "55 %"}},
                                          {{"size", "2 mm"}, {"smaller", "100 %"}}}},
                                        {"porosity", "0.42"},
                                        {"loose_over_bank", "1.25"},
                                        {"in_place_over_bank", "0.90"}};
  example.items["mixes"]["fill"] = {
      {"name", "Soil-filled rock"}, {"kind", "soil-filled"},
      {"rock_voids", "0.40"},       {"placing", "washed in"},
      {"rock_parts", "65"},         {"parts", {{{"material", "loam"}, {"parts", "35"}}}}};
  example.items["zones"]["bank"]["mix"] = "fill";
  return example;
}

SpecifiedMix only_mix(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site);
  if (!site) return {};
  const auto mixes = specified_mixes(*site);
  EXPECT_EQ(mixes.size(), 1U);
  return mixes.empty() ? SpecifiedMix{} : mixes.front();
}

TEST(SpecifiedMix, NoZoneNamesOne) {
  const auto site = site_from(ExampleDocument().document());
  ASSERT_TRUE(site);
  EXPECT_TRUE(specified_mixes(*site).empty());
}

// 65 : 35 by loose volume, swell 1.25 and shrink 0.90, voids 0.40: c = 0.72, S = 0.969 by hand.
TEST(SpecifiedMix, HoldsPartsVolumesAndTheRangeThatIsAccepted) {
  const auto mix = only_mix(with_mix());
  EXPECT_EQ(mix.outcome, Outcome::meets) << mix.sentence;
  EXPECT_EQ(mix.kind, "soil-filled");
  EXPECT_EQ(mix.zones.size(), 1U);
  EXPECT_NEAR(mix.rock_share, 0.65, 1e-12);
  EXPECT_NEAR(mix.rock.number(), 1, 1e-12);
  ASSERT_EQ(mix.fills.size(), 1U);
  const auto& fill = mix.fills.front();
  EXPECT_NEAR(fill.share, 0.35, 1e-12);
  EXPECT_NEAR(fill.loose.number(), 35.0 / 65, 1e-12);
  ASSERT_TRUE(fill.bank.has_value());
  EXPECT_NEAR(fill.bank->number(), 35.0 / 65 / 1.25, 1e-12);
  const double filling = 35.0 / 65 * 0.72 / 0.40;
  EXPECT_NEAR(mix.filling.number(), filling, 1e-12);
  ASSERT_TRUE(mix.tolerance.has_value());
  EXPECT_NEAR(mix.tolerance->least, least_filling / filling, 1e-12);
  EXPECT_NEAR(mix.tolerance->most, 1 / filling, 1e-12);
}

TEST(SpecifiedMix, SharesOfABatchSumToOne) {
  auto example = with_mix();
  example.items["materials"]["more"] = example.items["materials"]["loam"];
  example.items["mixes"]["fill"]["parts"] = json::array(
      {{{"material", "loam"}, {"parts", "20"}}, {{"material", "more"}, {"parts", "13"}}});
  const auto mix = only_mix(example);
  ASSERT_EQ(mix.fills.size(), 2U);
  EXPECT_NEAR(mix.rock_share + mix.fills[0].share + mix.fills[1].share, 1, 1e-12);
}

TEST(SpecifiedMix, WhatIsNotGoodHasNoRangeAndSaysWhy) {
  auto example = with_mix();
  example.items["mixes"]["fill"]["parts"] = json::array({{{"material", "loam"}, {"parts", "60"}}});
  const auto mix = only_mix(example);
  EXPECT_EQ(mix.outcome, Outcome::falls_short);
  EXPECT_FALSE(mix.tolerance.has_value());
  EXPECT_NE(mix.sentence.find("forces the rock apart"), std::string::npos) << mix.sentence;
  EXPECT_LT(mix.rock.number(), 1);
}

TEST(SpecifiedMix, BesideStatedPartsThatDoNotMeetStandThoseThatDo) {
  auto example = with_mix();
  example.items["mixes"]["fill"]["parts"] = json::array({{{"material", "loam"}, {"parts", "60"}}});
  const auto mix = only_mix(example);
  EXPECT_FALSE(mix.designed);
  ASSERT_EQ(mix.beside.size(), 1U);
  const auto& beside = mix.beside.front();
  EXPECT_TRUE(beside.designed);
  EXPECT_EQ(beside.outcome, Outcome::meets) << beside.sentence;
  EXPECT_EQ(beside.rock_class, mix.rock_class);
  ASSERT_EQ(beside.fills.size(), 1U);
  EXPECT_LE(beside.rock_parts + beside.fills[0].parts, 12);
  EXPECT_NEAR(beside.filling.number(), beside.fills[0].parts / beside.rock_parts * 0.72 / 0.40,
              1e-6);
  EXPECT_LE(beside.filling.number(), 1);
  EXPECT_GE(beside.filling.number(), least_filling - 1e-9);
  EXPECT_TRUE(beside.tolerance.has_value());
  EXPECT_TRUE(only_mix(with_mix()).beside.empty());
}

TEST(SpecifiedMix, WhyNothingStandsBesideIsSaid) {
  auto example = with_mix();
  auto& fill = example.items["mixes"]["fill"];
  fill["parts"] = json::array({{{"material", "loam"}, {"parts", "60"}}});
  fill["on_offer"] = {"silt"};
  example.items["materials"]["silt"] = example.items["materials"]["loam"];
  example.items["materials"]["silt"]["name"] = "Silt";
  example.items["materials"]["silt"].erase("porosity");
  const auto mix = only_mix(example);
  EXPECT_TRUE(mix.beside.empty());
  ASSERT_EQ(mix.none_beside.size(), 1U);
  EXPECT_NE(mix.none_beside[0].find("Silt: Its porosity in place is not known"), std::string::npos)
      << mix.none_beside[0];
}

TEST(SpecifiedMix, WithoutPartsIsDesignedInBuckets) {
  auto example = with_mix();
  auto& fill = example.items["mixes"]["fill"];
  fill.erase("rock_parts");
  fill.erase("parts");
  fill["on_offer"] = {"loam"};
  fill["bucket"] = "3 yd3";
  const auto mix = only_mix(example);
  EXPECT_TRUE(mix.problems.empty());
  EXPECT_TRUE(mix.designed);
  EXPECT_EQ(mix.outcome, Outcome::meets) << mix.sentence;
  EXPECT_LE(mix.filling.number(), 1);
  ASSERT_TRUE(mix.batch_in_place.has_value());
  EXPECT_NEAR(mix.batch_in_place->cubic_yards(), 3 * mix.rock_parts / mix.rock.number(), 1e-9);
}

TEST(SpecifiedMix, MixedBeforePlacingIsOrderedOnlyWhereTheStonesKeepContact) {
  auto example = with_mix();
  example.items["mixes"]["fill"]["placing"] = "mixed before placing";
  const auto mix = only_mix(example);
  ASSERT_TRUE(mix.dilation.has_value());
  EXPECT_GT(mix.dilation->number(), most_dilation);
  EXPECT_EQ(mix.outcome, Outcome::ask_the_designer);
  EXPECT_FALSE(mix.tolerance.has_value());
}

TEST(SpecifiedMix, NamesWhatIsMissing) {
  auto example = with_mix();
  example.items["mixes"]["fill"].erase("rock_voids");
  const auto mix = only_mix(example);
  ASSERT_EQ(mix.problems.size(), 1U);
  EXPECT_NE(mix.problems[0].find("voids of the rock"), std::string::npos);
}

}  // namespace
}  // namespace proofstone
