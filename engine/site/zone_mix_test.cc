#include "engine/site/zone_mix.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/site/proposed_mix.h"

namespace proofstone {
namespace {

using nlohmann::json;

json loam() {
  return {{"name", "Loam"},
          {"gradation",
           {{{"size", "0.02 mm"}, {"smaller", "30 %"}},
            {{"size", "0.075 mm"}, {"smaller", "55 %"}},
            {{"size", "2 mm"}, {"smaller", "100 %"}}}},
          {"specific_gravity", "2.65"},
          {"porosity", "0.42"},
          {"loose_over_bank", "1.25"},
          {"in_place_over_bank", "0.90"},
          {"load", "16 ton"},
          {"price", {{"amount", "6"}, {"per", "ton"}}}};
}

ExampleDocument with_mix() {
  ExampleDocument example;
  example.items["materials"]["loam"] = loam();
  example.items["mixes"]["fill"] = {
      {"name", "Soil-filled rock"}, {"kind", "soil-filled"},
      {"rock_voids", "0.40"},       {"placing", "washed in"},
      {"rock_parts", "65"},         {"parts", {{{"material", "loam"}, {"parts", "35"}}}}};
  example.items["zones"]["bank"]["mix"] = "fill";
  return example;
}

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

Finding found(const ExampleDocument& example, const char* id) {
  const auto findings = assessed(example);
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  return finding != nullptr ? *finding : Finding{};
}

double value_of(const Finding& finding, const std::string& key) {
  const auto at = std::find_if(finding.values.begin(), finding.values.end(),
                               [&](const StatedValue& value) { return value.key == key; });
  EXPECT_NE(at, finding.values.end()) << key;
  return at == finding.values.end() ? 0 : at->value.si;
}

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

std::string first_code(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  return site ? "" : site.problems().front().code;
}

TEST(ZoneMix, AZoneWithoutAMixSaysNothingOfOne) {
  const auto findings = assessed(ExampleDocument());
  EXPECT_EQ(findings.find("mix.bank"), nullptr);
  EXPECT_TRUE(findings.mix_pictures.empty());
}

TEST(ZoneMix, ProportionsThatAreProposedAreJudgedAsIfTheyStood) {
  auto example = with_mix();
  auto& mix = example.items["mixes"]["fill"];
  mix.erase("parts");
  mix.erase("rock_parts");
  const auto site = site_from(example.document());
  ASSERT_TRUE(site);
  const Wording wording(UnitSystem::us_customary);
  const auto proposed = propose_mix(*site, "bank", wording);
  ASSERT_TRUE(proposed) << proposed.problems().front().sentence();
  ASSERT_FALSE(proposed->mix.parts.empty());
  EXPECT_GT(proposed->mix.rock_parts, 0);
  EXPECT_TRUE(proposed->said.picture.has_value());
  // Put into the document, they come to the same.
  mix["rock_parts"] = significant(proposed->mix.rock_parts, 6);
  for (const auto& part : proposed->mix.parts) {
    mix["parts"].push_back({{"material", part.material}, {"parts", significant(part.parts, 6)}});
  }
  const auto stands = found(example, "mix.bank");
  EXPECT_EQ(proposed->said.findings.front().outcome, stands.outcome);
  EXPECT_DOUBLE_EQ(value_of(proposed->said.findings.front(), "filling"),
                   value_of(stands, "filling"));

  EXPECT_EQ(propose_mix(*site, "nowhere", wording).problems().front().where, "/zone");
  const auto without = site_from(ExampleDocument().document());
  EXPECT_EQ(propose_mix(*without, "bank", wording).problems().front().code, "no-mix");
}

TEST(ZoneMix, FillLooserThanThePackingModelReachesIsNotYetKnown) {
  auto example = with_mix();
  example.items["materials"]["loam"]["porosity"] = "0.70";
  example.items["mixes"]["fill"]["placing"] = "mixed before placing";
  const auto mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::not_yet_known) << mix.sentence;
  EXPECT_TRUE(says(mix.sentence, "looser than the packing model reaches")) << mix.sentence;
  EXPECT_FALSE(says(mix.sentence, "inf")) << mix.sentence;
  EXPECT_TRUE(says(mix.next, "Loam, a porosity of 0.11 to 0.69")) << mix.next;
  // Nothing is proposed with what the model does not reach.
  const auto proposed = found(example, "mix-proposed.bank");
  EXPECT_EQ(proposed.outcome, Outcome::not_yet_known) << proposed.sentence;
  EXPECT_TRUE(says(proposed.sentence, "No proportions")) << proposed.sentence;
  EXPECT_TRUE(says(proposed.next, "Loam, a porosity of 0.11 to 0.69")) << proposed.next;
}

TEST(ZoneMix, OfTwoFillsTooLooseEachIsToldWhatIsAllowed) {
  auto example = with_mix();
  example.items["materials"]["loam"]["porosity"] = "0.70";
  example.items["materials"]["silt"] = example.items["materials"]["loam"];
  example.items["materials"]["silt"]["name"] = "Silt";
  auto& parts = example.items["mixes"]["fill"]["parts"];
  parts.push_back({{"material", "silt"}, {"parts", "5"}});
  const auto mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::not_yet_known);
  EXPECT_EQ(mix.reasons.size(), 2U);
  EXPECT_TRUE(says(mix.next, "Loam, a porosity of 0.11 to 0.69")) << mix.next;
  EXPECT_TRUE(says(mix.next, "Silt, a porosity of 0.11 to 0.69")) << mix.next;
}

TEST(ZoneMix, SoilWashedInThatShrinksEnoughMeets) {
  const auto mix = found(with_mix(), "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::meets) << mix.sentence;
  EXPECT_TRUE(mix.governs);
  EXPECT_NEAR(value_of(mix, "filling"), 0.969, 5e-4);
  EXPECT_NEAR(value_of(mix, "bulking"), 1, 1e-12);
  // A yard of layer is a yard of rock and 35/65 of loose loam.
  EXPECT_NEAR(value_of(mix, "fill_1_loose"), 35.0 / 65 * 0.764554857984, 1e-9);
  EXPECT_NEAR(value_of(mix, "fill_1_bank"), 35.0 / 65 * 0.764554857984 / 1.25, 1e-9);
  EXPECT_GT(value_of(mix, "fill_1_loads"), 0);
  EXPECT_FALSE(mix.next.empty());
  const auto findings = assessed(with_mix());
  ASSERT_EQ(findings.mix_pictures.size(), 1u);
  EXPECT_EQ(findings.mix_pictures[0].bars.size(), 3u);
}

TEST(ZoneMix, SoilThatDoesNotShrinkForcesTheRockApartAndTheFindingSaysWhy) {
  auto example = with_mix();
  example.items["materials"]["loam"]["in_place_over_bank"] = "1.25";
  const auto mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::falls_short);
  EXPECT_TRUE(says(mix.sentence, "fit only if the loose fill ends at 0.74")) << mix.sentence;
  EXPECT_TRUE(says(mix.next, "at most 28.6 %")) << mix.next;
  ASSERT_TRUE(mix.margin.has_value());
  EXPECT_NEAR(mix.margin->value, 1 / 1.346, 0.001);
  const auto proposed = found(example, "mix-proposed.bank");
  EXPECT_LE(value_of(proposed, "filling"), 1 + 1e-9);
}

TEST(ZoneMix, MixedBeforePlacingItGoesToTheDesigner) {
  auto example = with_mix();
  example.items["mixes"]["fill"]["placing"] = "mixed before placing";
  const auto mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::ask_the_designer);
  EXPECT_TRUE(says(mix.sentence, "holds the rock apart")) << mix.sentence;
  EXPECT_TRUE(says(mix.next, "Wash the fill into rock that already lies")) << mix.next;
  const auto proposed = found(example, "mix-proposed.bank");
  EXPECT_LE(value_of(proposed, "dilation"), 1.05 + 1e-9);
}

TEST(ZoneMix, TheRecalledRecipeForcesTheRockApartAndACorrectedOneIsOffered) {
  auto example = with_mix();
  example.items["mixes"]["fill"] = {{"name", "Void-filled rock"},
                                    {"kind", "void-filled"},
                                    {"rock_voids", "0.40"},
                                    {"recipe", "void-filled-large-rock"},
                                    {"soil", "loam"}};
  const auto mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::falls_short);
  EXPECT_GT(value_of(mix, "bulking"), 1.2);
  EXPECT_GT(value_of(mix, "dilation"), 1.2);
  const auto recalled =
      std::any_of(mix.reasons.begin(), mix.reasons.end(),
                  [](const std::string& reason) { return says(reason, "Recalled with doubt"); });
  EXPECT_TRUE(recalled);
  const auto proposed = found(example, "mix-proposed.bank");
  EXPECT_LE(value_of(proposed, "dilation"), 1.05 + 1e-9);
}

TEST(ZoneMix, WhatIsMissingIsNamed) {
  auto example = with_mix();
  example.items["mixes"]["fill"].erase("rock_voids");
  auto mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::not_yet_known);
  EXPECT_TRUE(says(mix.next, "voids of the rock"));
  example = with_mix();
  example.items["materials"]["loam"].erase("loose_over_bank");
  mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::not_yet_known);
  EXPECT_FALSE(mix.reasons.empty());
  example = with_mix();
  example.items["mixes"]["fill"]["placing"] = "mixed before placing";
  example.items["materials"]["loam"].erase("porosity");
  mix = found(example, "mix.bank");
  EXPECT_EQ(mix.outcome, Outcome::not_yet_known);
  EXPECT_TRUE(says(mix.next, "porosity"));
}

TEST(ZoneMix, AMixWithoutPartsIsDesigned) {
  auto example = with_mix();
  example.items["mixes"]["fill"].erase("parts");
  example.items["mixes"]["fill"].erase("rock_parts");
  const auto findings = assessed(example);
  EXPECT_EQ(findings.find("mix.bank"), nullptr);
  const auto* proposed = findings.find("mix-proposed.bank");
  ASSERT_NE(proposed, nullptr);
  EXPECT_TRUE(proposed->governs);
  EXPECT_EQ(proposed->outcome, Outcome::meets) << proposed->sentence;
}

json points(const std::vector<std::pair<const char*, const char*>>& curve) {
  auto list = json::array();
  for (const auto& [size, smaller] : curve) list.push_back({{"size", size}, {"smaller", smaller}});
  return list;
}

/// A mix to be designed, on a silty sand, of the materials of the document.
ExampleDocument to_design() {
  auto example = with_mix();
  example.items["mixes"]["fill"].erase("parts");
  example.items["mixes"]["fill"].erase("rock_parts");
  example.items["soils"]["sand"] = {{"name", "Silty sand"},
                                    {"gradation", points({{"0.005 mm", "6 %"},
                                                          {"0.02 mm", "11 %"},
                                                          {"0.075 mm", "24 %"},
                                                          {"0.425 mm", "72 %"},
                                                          {"2 mm", "94 %"},
                                                          {"4.75 mm", "98 %"},
                                                          {"9.5 mm", "100 %"}})},
                                    {"dispersive", "no"}};
  example.items["zones"]["bank"]["soil"] = "sand";
  return example;
}

TEST(MixDesignInZone, OneMaterialThatIsTooLooseIsLeftOutAloneAndNamed) {
  auto example = to_design();
  example.items["materials"]["fluff"] = loam();
  example.items["materials"]["fluff"]["name"] = "Fluff";
  example.items["materials"]["fluff"]["porosity"] = "0.70";
  example.items["materials"]["unknown"] = loam();
  example.items["materials"]["unknown"]["name"] = "Unknown";
  example.items["materials"]["unknown"].erase("porosity");
  const auto proposed = found(example, "mix-proposed.bank");
  EXPECT_TRUE(says(proposed.sentence, "of Loam")) << proposed.sentence;
  EXPECT_FALSE(says(proposed.sentence, "Fluff")) << proposed.sentence;
  const auto named = [&](const std::string& words) {
    return std::any_of(proposed.reasons.begin(), proposed.reasons.end(),
                       [&](const std::string& reason) { return says(reason, words); });
  };
  EXPECT_TRUE(named("Left out of the proportions: Fluff"));
  EXPECT_TRUE(named("Left out of the proportions: Unknown"));
}

// Loam lets no water out of a sand that drains: which condition cannot be kept, and why, is said.
TEST(MixDesignInZone, WhatCannotBeKeptIsSaidWithItsReason) {
  const auto proposed = found(to_design(), "mix-proposed.bank");
  EXPECT_TRUE(says(proposed.sentence, "fill the voids and leave the stones touching") ||
              says(proposed.sentence, "fills the voids and leaves the stones touching"))
      << proposed.sentence;
  EXPECT_TRUE(says(proposed.sentence, "own fine grains")) << proposed.sentence;
  EXPECT_TRUE(says(proposed.next, "bedding") || says(proposed.next, "cover")) << proposed.next;
  // A designed mix is judged as a filter like a stated one.
  const auto stability = found(to_design(), "mix-stability.bank");
  EXPECT_NE(stability.outcome, Outcome::meets);
  auto no_soil = to_design();
  no_soil.items["zones"]["bank"].erase("soil");
  EXPECT_TRUE(says(found(no_soil, "mix-proposed.bank").sentence, "the zone states no soil"));
}

// Of two fills that both fill the voids the one is taken that keeps the sand below.
TEST(MixDesignInZone, TheFillThatKeepsTheSoilIsPreferred) {
  auto example = to_design();
  auto gravel = loam();
  gravel["name"] = "Open gravel";
  gravel["gradation"] = points({{"2 mm", "0 %"}, {"5 mm", "60 %"}, {"9 mm", "100 %"}});
  auto sand = loam();
  sand["name"] = "Filter sand";
  sand["gradation"] =
      points({{"0.1 mm", "0 %"}, {"0.3 mm", "18 %"}, {"1 mm", "60 %"}, {"4 mm", "100 %"}});
  example.items["materials"] = {{"gravel", gravel}, {"sand", sand}};
  const auto proposed = found(example, "mix-proposed.bank");
  EXPECT_TRUE(says(proposed.sentence, "Filter sand")) << proposed.sentence;
  EXPECT_FALSE(says(proposed.sentence, "None of them keeps the soil")) << proposed.sentence;
  example.items["materials"].erase("sand");
  const auto without = found(example, "mix-proposed.bank");
  EXPECT_TRUE(says(without.sentence, "None of them keeps the soil below. The nearest: "))
      << without.sentence;
  EXPECT_TRUE(says(without.next, "Put bedding or a fabric below")) << without.next;
}

TEST(MixDesignInZone, MixedBeforePlacingSaysHowFarApartAFullMixHoldsTheRock) {
  auto example = to_design();
  example.items["mixes"]["fill"]["placing"] = "mixed before placing";
  const auto proposed = found(example, "mix-proposed.bank");
  EXPECT_TRUE(says(proposed.sentence, "what fills them holds the rock apart by 1."))
      << proposed.sentence;
}

TEST(ZoneMix, AFillWhoseCurveStopsTooSoonIsNamedWithItsPlaceAndTheMend) {
  const auto stability = found(with_mix(), "mix-stability.bank");
  EXPECT_TRUE(std::any_of(
      stability.reasons.begin(), stability.reasons.end(), [](const std::string& reason) {
        return says(reason, "Loam: its curve ends at 0.02 mm") && says(reason, "No. 200") &&
               says(reason, "/materials/loam/gradation");
      }));
}

TEST(MixReader, BadMixesAreNamed) {
  const auto with = [](const std::string& pointer, const json& value) {
    auto example = with_mix();
    example.items[json::json_pointer(pointer)] = value;
    return first_code(example);
  };
  EXPECT_EQ(first_code(with_mix()), "");
  EXPECT_EQ(with("/zones/bank/mix", "none"), "no-such-item");
  EXPECT_EQ(with("/mixes/fill/kind", "sand-filled"), "unknown-word");
  EXPECT_EQ(with("/mixes/fill/rock_voids", "1.4"), "implausible");
  EXPECT_EQ(with("/mixes/fill/rock_voids", "NaN"), "not-finite");
  EXPECT_EQ(with("/mixes/fill/parts/0/parts", "0"), "not-positive");
  EXPECT_EQ(with("/mixes/fill/parts/0/parts", "-35"), "not-positive");
  EXPECT_EQ(with("/mixes/fill/parts/0/material", "gold"), "no-such-item");
  EXPECT_EQ(with("/mixes/fill/recipe", "no-such"), "no-such-item");
  EXPECT_EQ(with("/mixes/fill/class", "no-such"), "no-such-class");
  EXPECT_EQ(with("/mixes/fill/most_buckets", 1000), "not-a-whole-number");
  EXPECT_EQ(with("/mixes/fill/bucket", "0 yd³"), "not-positive");
  EXPECT_EQ(with("/mixes/fill/hope", "much"), "unknown-field");
  EXPECT_EQ(with("/materials/loam/porosity", "0.95"), "implausible");
  EXPECT_EQ(with("/materials/loam/price/amount", "-3"), "implausible");
  EXPECT_EQ(with("/materials/loam/price/per", "handful"), "unknown-word");
  EXPECT_EQ(with("/materials/loam/load", "-16 ton"), "not-positive");
  auto twice = with_mix();
  auto& parts = twice.items["mixes"]["fill"]["parts"];
  parts.push_back(parts[0]);
  EXPECT_EQ(first_code(twice), "repeated");
}

}  // namespace
}  // namespace proofstone
