#include "engine/site/zone_toe.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/rock/embedded_catalog.h"
#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

Finding toe_of(const ExampleDocument& example) {
  const auto findings = assessed(example);
  const auto* toe = findings.find("toe.bank.flood");
  EXPECT_NE(toe, nullptr);
  return toe != nullptr ? *toe : Finding{};
}

double value_of(const Finding& finding, const std::string& key) {
  const auto found = std::find_if(finding.values.begin(), finding.values.end(),
                                  [&](const StatedValue& value) { return value.key == key; });
  EXPECT_NE(found, finding.values.end()) << key;
  return found == finding.values.end() ? 0 : found->value.si;
}

bool says(const Finding& finding, const std::string& words) {
  return std::any_of(finding.reasons.begin(), finding.reasons.end(),
                     [&](const std::string& one) { return one.find(words) != std::string::npos; });
}

/// The example's bank with 4 ft of scour, stated, and a factor of 1.5: 6 ft.
ExampleDocument with_scour() {
  ExampleDocument example;
  example.items["zones"]["bank"]["scour"] = {
      {"long_term", "1 ft"}, {"contraction", "2 ft"}, {"local", "1 ft"}, {"safety_factor", "1.5"}};
  return example;
}

std::string first_problem(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  return site ? "" : site.problems().front().where + " " + site.problems().front().code;
}

TEST(ZoneToe, AZoneThatDoesNotSpeakOfScourHasNoToeFinding) {
  EXPECT_EQ(assessed(ExampleDocument()).find("toe.bank.flood"), nullptr);
}

TEST(ZoneToe, OnlyDesignFlowsAreLookedAt) {
  EXPECT_EQ(assessed(with_scour()).find("toe.bank.low"), nullptr);
}

TEST(ZoneToe, WithoutAToeItIsNotYetKnown) {
  const auto toe = toe_of(with_scour());
  EXPECT_EQ(toe.outcome, Outcome::not_yet_known);
  EXPECT_NEAR(value_of(toe, "required_depth"), 6 * 0.3048, 1e-12);
  EXPECT_TRUE(says(toe,
                   "Left out and counted as nothing: general scour and bend scour and "
                   "troughs of bedforms"));
  EXPECT_TRUE(toe.governs);
}

TEST(ZoneToe, ATrenchIsJudgedByItsDepth) {
  auto example = with_scour();
  auto& drawn = example.items["zones"]["bank"]["toe"];
  drawn = {{"kind", "trench"}, {"depth", "6 ft"}};
  EXPECT_EQ(toe_of(example).outcome, Outcome::meets);
  drawn["depth"] = "4.5 ft";
  const auto toe = toe_of(example);
  EXPECT_EQ(toe.outcome, Outcome::falls_short);
  EXPECT_NEAR(toe.margin->value, 0.75, 1e-9);
}

// 2 ft thick, 6 ft to launch, dry: 2·6·√5·1.25 = 33.541 ft².
TEST(ZoneToe, ALaunchableToeIsJudgedByItsRock) {
  auto example = with_scour();
  auto& drawn = example.items["zones"]["bank"]["toe"];
  drawn = {{"kind", "launchable"}, {"stored", "33.6 ft²"}};
  auto toe = toe_of(example);
  EXPECT_EQ(toe.outcome, Outcome::meets);
  EXPECT_NEAR(value_of(toe, "launch_rock") / 0.09290304, 33.541, 0.001);
  // 33.541 ft³ of rock of the mean specific gravity 2.625 with 38 % of voids.
  EXPECT_NEAR(value_of(toe, "launch_mass") / 0.45359237, 33.541 * 2.625 * 0.62 * 62.4, 0.2);
  drawn["stored"] = "20 ft²";
  toe = toe_of(example);
  EXPECT_EQ(toe.outcome, Outcome::falls_short);
  EXPECT_NEAR(toe.margin->value, 20 / 33.541, 1e-4);
  example.items["zones"]["bank"]["placement"] = "under water";
  EXPECT_NEAR(toe_of(example).margin->value, 20 / (33.541 * 1.5 / 1.25), 1e-4);
}

TEST(ZoneToe, AFootBelowTheBedHasLessToLaunch) {
  auto example = with_scour();
  example.items["zones"]["bank"]["toe"] = {
      {"kind", "launchable"}, {"stored", "20 ft²"}, {"depth", "3 ft"}};
  EXPECT_NEAR(toe_of(example).margin->value, 20 / (33.541 / 2), 1e-3);
}

// 10 ft wide and 5 ft thick holds 10·(5 − 2) = 30 ft² beyond the 2-ft layer.
TEST(ZoneToe, AThickenedToeIsJudgedByItsExtraRock) {
  auto example = with_scour();
  example.items["zones"]["bank"]["toe"] = {
      {"kind", "thickened"}, {"width", "10 ft"}, {"thickness", "5 ft"}};
  EXPECT_NEAR(toe_of(example).margin->value, 30 / 33.541, 1e-4);
}

TEST(ZoneToe, MethodsTakeTheWaterOfTheZone) {
  auto example = with_scour();
  auto& zone = example.items["zones"]["bank"];
  zone["scour"] = {{"methods", {"hec11-toe-depth"}}, {"bed_d50", "0.05 ft"}};
  zone["toe"] = {{"kind", "trench"}, {"depth", "9.5 ft"}};
  const auto toe = toe_of(example);
  EXPECT_NEAR(value_of(toe, "required_depth") / 0.3048, 9.037, 0.001);
  EXPECT_EQ(toe.outcome, Outcome::meets);
  // What the method warns of is said beside the finding.
  EXPECT_TRUE(std::any_of(toe.cautions.begin(), toe.cautions.end(), [](const std::string& one) {
    return one.find("lowest point of the bed") != std::string::npos;
  }));
}

TEST(ZoneToe, ABendAsksHowSharpItIs) {
  auto example = with_scour();
  auto& zone = example.items["zones"]["bank"];
  zone["scour"]["methods"] = {"lacey-scour"};
  zone["scour"]["bed_d50"] = "0.5 mm";
  zone["toe"] = {{"kind", "trench"}, {"depth", "60 ft"}};
  auto toe = toe_of(example);
  EXPECT_EQ(toe.outcome, Outcome::not_yet_known);
  EXPECT_TRUE(says(toe, "lacey-scour could not be computed"));
  zone["scour"]["situation"] = "severe bend";
  toe = toe_of(example);
  EXPECT_EQ(toe.outcome, Outcome::meets);
  EXPECT_TRUE(says(toe, "General scour by Lacey: "));
}

TEST(ZoneToe, OutsideItsRangeAMethodIsShownAndNeverCounted) {
  auto example = with_scour();
  auto& zone = example.items["zones"]["bank"];
  zone["scour"]["methods"] = {"maynord-bend-scour"};
  zone["toe"] = {{"kind", "trench"}, {"depth", "60 ft"}};
  // The channel is narrower than twenty times its depth.
  const auto toe = toe_of(example);
  EXPECT_TRUE(says(toe, "outside its published range and not counted"));
  EXPECT_NEAR(value_of(toe, "required_depth"), 6 * 0.3048, 1e-12);
  EXPECT_EQ(toe.outcome, Outcome::ask_the_designer);
}

TEST(ZoneToe, TheDesignersOwnInputsStandOverTheZones) {
  auto example = with_scour();
  auto& zone = example.items["zones"]["bank"];
  zone["scour"] = {{"methods", {"antidune-allowance"}}, {"safety_factor", "1"}};
  zone["method_choices"] = {{"antidune-allowance", {{"velocity", "7.1 ft/s"}, {"depth", "9 ft"}}}};
  EXPECT_NEAR(value_of(toe_of(example), "required_depth") / 0.3048, 0.0137 * 7.1 * 7.1, 1e-9);
}

TEST(ZoneToe, WhatIsWrongInTheDocumentIsNamed) {
  auto example = with_scour();
  auto& zone = example.items["zones"]["bank"];
  zone["scour"]["methods"] = {"isbash"};
  EXPECT_EQ(first_problem(example), "/zones/bank/scour/methods/0 unknown-method");
  zone["scour"]["methods"] = {"lacey-scour", "lacey-scour"};
  EXPECT_EQ(first_problem(example), "/zones/bank/scour/methods/1 repeated");
  zone["scour"].erase("methods");
  zone["scour"]["safety_factor"] = "0.5";
  EXPECT_EQ(first_problem(example), "/zones/bank/scour/safety_factor outside-allowed");
  zone["scour"]["safety_factor"] = "1.5";
  zone["toe"] = {{"kind", "trench"}};
  EXPECT_EQ(first_problem(example), "/zones/bank/toe/depth missing-field");
  zone["toe"] = {{"kind", "trench"}, {"depth", "4 ft"}, {"stored", "20 ft²"}};
  EXPECT_EQ(first_problem(example), "/zones/bank/toe/stored unknown-field");
}

TEST(ZoneToe, TheSchemaNamesTheMethodsTheEngineKnows) {
  const auto& schemas = embedded_schemas();
  const auto site = std::find_if(schemas.begin(), schemas.end(), [](const EmbeddedFile& file) {
    return file.name == "site.schema.json";
  });
  ASSERT_NE(site, schemas.end());
  const auto schema = json::parse(site->text);
  const auto& methods = schema["$defs"]["scour"]["properties"]["methods"]["items"]["enum"];
  EXPECT_EQ(methods.get<std::vector<std::string>>(), scour_method_ids());
}

}  // namespace
}  // namespace proofstone
