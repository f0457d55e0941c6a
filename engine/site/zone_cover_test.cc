#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/cover/blanket_types.h"
#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with a frequent flow and a cover from that level up.
ExampleDocument with_cover() {
  ExampleDocument example;
  example.items["flow_cases"]["often"] = {
      {"name", "Frequent flow"}, {"purpose", "frequent"}, {"discharge", "1250 ft³/s"}};
  auto& zone = example.items["zones"]["bank"];
  zone["cover"] = {
      {"from", "often"},
      {"topsoil", "6 in"},
      {"soil", {{"soil", "sc"}, {"plasticity_index", "16"}, {"void_ratio", "0.5"}}},
      {"seed", "Native grasses"},
      {"plants", "long-native-grass"},
      {"months_to_establish", "18"},
      {"blanket", {{"type", "3.B"}, {"roll_width", "6.67 ft"}, {"roll_length", "108 ft"}}},
      {"stakes", {{"length", "18 in"}, {"spacing", "2 ft"}}},
      {"top_trench", {{"width", "6 in"}, {"depth", "6 in"}, {"back_from_crest", "1 ft"}}},
      {"water_edge_trench", {{"width", "6 in"}, {"depth", "6 in"}}},
      {"stream", "perennial"},
      {"length", "100 ft"}};
  return example;
}

json& cover_of(ExampleDocument& example) { return example.items["zones"]["bank"]["cover"]; }

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

Finding finding_of(const ExampleDocument& example, const std::string& part) {
  const auto findings = assessed(example);
  const auto* found = findings.find("cover.bank." + part);
  EXPECT_NE(found, nullptr) << part;
  return found != nullptr ? *found : Finding{};
}

double value_of(const Finding& finding, const std::string& key) {
  const auto found = std::find_if(finding.values.begin(), finding.values.end(),
                                  [&](const StatedValue& value) { return value.key == key; });
  EXPECT_NE(found, finding.values.end()) << key;
  return found == finding.values.end() ? 0 : found->value.si;
}

TEST(BlanketTypes, StandInTheCatalogWithTheirStanding) {
  ASSERT_EQ(blanket_types().size(), 14u);
  const auto* type = find_blanket_type("3.B");
  ASSERT_NE(type, nullptr);
  EXPECT_NEAR(type->tabulated_shear.pounds_per_square_foot(), 2.0, 1e-12);
  EXPECT_NEAR(type->months->number(), 24, 1e-12);
  EXPECT_EQ(type->source.standing, SourceStanding::memory);
  EXPECT_FALSE(find_blanket_type("5.A")->months);
  EXPECT_EQ(find_blanket_type("5.A")->source.standing, SourceStanding::published);
  EXPECT_EQ(find_blanket_type("6.A"), nullptr);
  EXPECT_FALSE(read_blanket_types(R"({"types": [{"id": "X"}]})"));
  EXPECT_FALSE(read_blanket_types("[]"));
}

TEST(ZoneCover, IsAsLongAsItsZoneStatesWhereItStatesNoLengthOfItsOwn) {
  auto example = with_cover();
  const auto area = value_of(finding_of(example, "quantities"), "area");
  cover_of(example).erase("length");
  example.items["zones"]["bank"]["extent"] = {{"length", "200 ft"}};
  EXPECT_NEAR(value_of(finding_of(example, "quantities"), "area"), 2 * area, 1e-9);
}

TEST(ZoneCover, AZoneWithoutCoverSaysNothingOfIt) {
  for (const auto& finding : assessed(ExampleDocument()).findings) {
    EXPECT_NE(finding.topic, Topic::cover) << finding.id;
  }
}

TEST(ZoneCover, ACoverAboveTheFrequentFlowMeetsWhatIsAsked) {
  const auto findings = assessed(with_cover());
  int counted = 0;
  for (const auto& finding : findings.findings) {
    if (finding.topic != Topic::cover) continue;
    ++counted;
    EXPECT_EQ(finding.outcome, Outcome::meets) << finding.id << ": " << finding.sentence;
    EXPECT_FALSE(finding.sentence.empty()) << finding.id;
    EXPECT_FALSE(finding.next.empty()) << finding.id;
    EXPECT_FALSE(finding.sources.empty()) << finding.id;
  }
  EXPECT_EQ(counted, 7);
}

// Twice 6 in by 6 in in trenches; grid 2 ft on both edges and in the field.
TEST(ZoneCover, CountsStakesRollsAndSoil) {
  const auto quantities = finding_of(with_cover(), "quantities");
  const double area = value_of(quantities, "area") / 0.09290304;
  EXPECT_NEAR(value_of(quantities, "topsoil") / 0.028316846592, area / 2, 1e-6);
  const double down = area / 100 + 2;
  EXPECT_NEAR(value_of(quantities, "rolls"), std::ceil(std::ceil((down - 0.5) / 6.17) * 99 / 107),
              1e-9);
  const auto stakes = finding_of(with_cover(), "stakes");
  EXPECT_NEAR(value_of(stakes, "stakes"), std::ceil(area / 4) + 101, 1e-9);
}

TEST(ZoneCover, FormulaAndTableAreBothShownWhereTheFlowReachesTheCover) {
  auto example = with_cover();
  cover_of(example)["from"] = "108 ft";
  const auto fresh = finding_of(example, "often.new");
  const double tau = value_of(fresh, "shear");
  const double formula = value_of(fresh, "formula_shear");
  EXPECT_GT(tau, 0);
  // SC, PI 16, e 0.5 bears 3.285 N/m²; τl 2 lb/ft²: 70.66 N/m².
  EXPECT_NEAR(formula, 70.66, 0.15);
  EXPECT_NEAR(value_of(fresh, "tabulated_shear") / 47.880259, 2.0, 1e-6);
  EXPECT_EQ(fresh.outcome, tau <= formula ? Outcome::meets : Outcome::ask_the_designer);
  EXPECT_NE(fresh.sentence.find("by its seed bed and"), std::string::npos) << fresh.sentence;
  // Fine sand bears 1 N/m²: the formula falls far below the table, and the two disagree deeper.
  cover_of(example)["soil"] = {{"soil", "non-cohesive"}, {"d75", "0.5 mm"}};
  cover_of(example)["from"] = "106 ft";
  const auto deeper = finding_of(example, "often.new");
  EXPECT_LT(value_of(deeper, "formula_shear"), value_of(deeper, "tabulated_shear") / 2);
  EXPECT_GT(value_of(deeper, "shear"), value_of(deeper, "formula_shear"));
  EXPECT_NE(deeper.outcome, Outcome::meets);
  EXPECT_GT(value_of(deeper, "survives_from"), value_of(finding_of(example, "bottom"), "from"));
}

TEST(ZoneCover, WhatIsMissingIsNotYetKnown) {
  auto example = with_cover();
  cover_of(example)["from"] = "108 ft";
  cover_of(example).erase("soil");
  cover_of(example).erase("plants");
  EXPECT_EQ(finding_of(example, "often.new").outcome, Outcome::not_yet_known);
  EXPECT_EQ(finding_of(example, "often.grown").outcome, Outcome::not_yet_known);
  cover_of(example)["soil"] = {{"soil", "sc"}};
  const auto fresh = finding_of(example, "often.new");
  EXPECT_EQ(fresh.outcome, Outcome::not_yet_known);
  EXPECT_FALSE(fresh.reasons.empty());
  for (const char* field : {"months_to_establish", "length", "top_trench"}) {
    cover_of(example).erase(field);
  }
  for (const char* part : {"blanket", "stakes", "trenches", "quantities"}) {
    EXPECT_EQ(finding_of(example, part).outcome, Outcome::not_yet_known) << part;
  }
  example.items["flow_cases"].erase("often");
  EXPECT_EQ(finding_of(example, "water").outcome, Outcome::not_yet_known);
}

TEST(ZoneCover, APermanentMatIsNotTakenAtItsGrownShear) {
  auto example = with_cover();
  cover_of(example)["from"] = "108 ft";
  cover_of(example)["blanket"]["type"] = "5.A";
  EXPECT_EQ(finding_of(example, "often.new").outcome, Outcome::not_yet_known);
  EXPECT_EQ(finding_of(example, "blanket").outcome, Outcome::ask_the_designer);
  cover_of(example)["blanket"]["tested_shear"] = "3 lb/ft²";
  EXPECT_EQ(finding_of(example, "often.new").outcome, Outcome::meets);
}

TEST(ZoneCover, ABlanketSuitsItsSlopeAndTime) {
  auto example = with_cover();
  cover_of(example)["blanket"]["type"] = "1.A";
  const auto blanket = finding_of(example, "blanket");
  EXPECT_EQ(blanket.outcome, Outcome::falls_short);
  EXPECT_NE(blanket.sentence.find("meant for slopes"), std::string::npos);
  EXPECT_NE(blanket.sentence.find("lasts 3 months"), std::string::npos);
  EXPECT_NE(blanket.reasons.front().find("3.B and 4"), std::string::npos) << blanket.reasons[0];
  cover_of(example).erase("blanket");
  EXPECT_EQ(finding_of(example, "blanket").outcome, Outcome::ask_the_designer);
}

// Common practice, no source.
TEST(ZoneCover, PerennialAndDrySwaleDiffer) {
  auto example = with_cover();
  cover_of(example)["from"] = "toe";
  EXPECT_EQ(finding_of(example, "bottom").outcome, Outcome::falls_short);
  cover_of(example)["stream"] = "dry swale";
  EXPECT_EQ(finding_of(example, "bottom").outcome,
            Outcome::ask_the_designer);  // a base flow stands
  example.items["flow_cases"].erase("low");
  EXPECT_EQ(finding_of(example, "bottom").outcome, Outcome::meets);
  cover_of(example)["from"] = "often";
  EXPECT_EQ(finding_of(example, "bottom").outcome, Outcome::ask_the_designer);
  cover_of(example).erase("stream");
  EXPECT_EQ(finding_of(example, "bottom").outcome, Outcome::not_yet_known);
  auto& zone = example.items["zones"]["bank"];
  zone["place"] = "bed";
  for (const char* field : {"bank", "bend"}) zone.erase(field);
  cover_of(example)["stream"] = "dry swale";
  EXPECT_EQ(finding_of(example, "bottom").outcome, Outcome::meets);
  cover_of(example)["stream"] = "perennial";
  EXPECT_EQ(finding_of(example, "bottom").outcome, Outcome::falls_short);
}

TEST(ZoneCover, TheTrenchAtTheWatersEdgeLeavesTheRockWhole) {
  auto example = with_cover();
  cover_of(example)["water_edge_trench"]["depth"] = "7 in";
  const auto trenches = finding_of(example, "trenches");
  EXPECT_EQ(trenches.outcome, Outcome::falls_short);
  EXPECT_TRUE(trenches.governs);
  EXPECT_NE(trenches.sentence.find("cuts into the rock"), std::string::npos);
  example = with_cover();
  cover_of(example)["top_trench"] = {{"width", "4 in"}, {"depth", "6 in"}};
  EXPECT_EQ(finding_of(example, "trenches").outcome, Outcome::falls_short);
}

TEST(ZoneCover, StakesReachThroughTheTopsoilAndAreEnough) {
  auto example = with_cover();
  cover_of(example)["stakes"]["length"] = "6 in";
  EXPECT_EQ(finding_of(example, "stakes").outcome, Outcome::falls_short);
  cover_of(example)["stakes"] = {{"length", "18 in"}, {"spacing", "2 ft"}, {"count", "20"}};
  EXPECT_EQ(finding_of(example, "stakes").outcome, Outcome::falls_short);
  cover_of(example)["stakes"] = {{"length", "18 in"}, {"spacing", "4 ft"}};
  EXPECT_EQ(finding_of(example, "stakes").outcome, Outcome::ask_the_designer);
  cover_of(example)["stakes"]["length"] = "30 in";
  EXPECT_EQ(finding_of(example, "stakes").outcome, Outcome::ask_the_designer);
}

TEST(ZoneCover, OutsideStreamsItIsNotJudged) {
  auto example = with_cover();
  auto& zone = example.items["zones"]["bank"];
  zone["place"] = "chute";
  for (const char* field : {"section", "bank"}) zone.erase(field);
  EXPECT_EQ(finding_of(example, "bottom").outcome, Outcome::not_yet_known);
}

/// A shore with its water at 100 ft, waves of 2 ft and a slope of 1V:3H of 40 ft of rock.
ExampleDocument with_shore_cover(const char* from) {
  auto example = with_cover();
  auto& zone = example.items["zones"]["bank"];
  for (const char* field : {"bank", "bend", "section"}) zone.erase(field);
  zone["place"] = "shore";
  zone["extent"] = {{"slope_length", "40 ft"}, {"length", "200 ft"}};
  zone["water"] = {{"flood",
                    {{"from", "wind record"},
                     {"wave_height", "2 ft"},
                     {"depth", "4 ft"},
                     {"water_level", "100 ft"}}}};
  zone["method_choices"] = {{"hudson", {{"slope", "1V:3H"}}},
                            {"revetment-run-up", {{"period", "3 s"}}}};
  zone["cover"]["from"] = from;
  zone["cover"].erase("stream");
  zone["cover"].erase("length");
  return example;
}

// ξ = (1/3)/√(2π·2/(32.174·9)) = 1.6; Rmax = 2·1.022·1.6/(1 + 0.247·1.6) = 2.34 ft.
TEST(CoverOfAShore, LiesAboveTheReachOfTheWaves) {
  const auto low = finding_of(with_shore_cover("101.5 ft"), "bottom");
  EXPECT_EQ(low.outcome, Outcome::falls_short) << low.sentence;
  EXPECT_NE(low.next.find("Begin the cover at 102.3"), std::string::npos) << low.next;
  const auto high = finding_of(with_shore_cover("102.5 ft"), "bottom");
  EXPECT_EQ(high.outcome, Outcome::meets) << high.sentence;
  EXPECT_NE(high.sentence.find("run up to 102.3"), std::string::npos) << high.sentence;
}

TEST(CoverOfAShore, WithoutAPeriodTheReachIsNotKnownButTheWaveItselfIs) {
  auto example = with_shore_cover("102.5 ft");
  example.items["zones"]["bank"]["method_choices"].erase("revetment-run-up");
  auto edge = finding_of(example, "bottom");
  EXPECT_EQ(edge.outcome, Outcome::not_yet_known);
  EXPECT_NE(edge.next.find("period"), std::string::npos);
  example.items["zones"]["bank"]["cover"]["from"] = "100.5 ft";
  edge = finding_of(example, "bottom");
  EXPECT_EQ(edge.outcome, Outcome::falls_short) << edge.sentence;
}

// The rock ends 40/√10 = 12.65 ft above its foot at 96 ft; from 102.5 ft that leaves 19.4 ft.
TEST(CoverOfAShore, IsHeldAndCountedLikeThatOfABank) {
  const auto example = with_shore_cover("102.5 ft");
  const auto counted = finding_of(example, "quantities");
  EXPECT_NEAR(value_of(counted, "area"),
              200 * (96 + 40 / std::sqrt(10.0) - 102.5) * std::sqrt(10.0) * 0.09290304, 0.01);
  EXPECT_EQ(finding_of(example, "trenches").outcome, Outcome::meets);
  EXPECT_FALSE(finding_of(example, "stakes").sentence.empty());
  const auto findings = assessed(example);
  ASSERT_FALSE(findings.typical_sections.empty());
  EXPECT_TRUE(findings.typical_sections.front().cover.has_value());
  auto cut = example;
  cut.items["zones"]["bank"]["cover"]["water_edge_trench"]["depth"] = "12 in";
  EXPECT_EQ(finding_of(cut, "trenches").outcome, Outcome::falls_short);
}

}  // namespace
}  // namespace proofstone
