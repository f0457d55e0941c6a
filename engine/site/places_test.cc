#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with its one zone moved to `place`, out of the stream, with a stated flood.
ExampleDocument example_at(const char* place, const json& water, const json& choices) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["place"] = place;
  for (const char* field : {"section", "bank", "toe_station", "top_station"}) zone.erase(field);
  zone["water"]["flood"] = water;
  zone["method_choices"] = choices;
  return example;
}

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

bool any_reason_has(const Finding& finding, const char* words) {
  return std::any_of(finding.reasons.begin(), finding.reasons.end(),
                     [&](const std::string& one) { return one.find(words) != std::string::npos; });
}

const json outlet_water = {
    {"from", "storm-drain model"}, {"discharge", "60 ft³/s"}, {"tailwater_depth", "2 ft"}};

TEST(Places, AnOutfallIsSizedByItsStatedWaterAndItsConduit) {
  const auto findings =
      assessed(example_at("outfall", outlet_water, {{"outfall-apron", {{"diameter", "4 ft"}}}}));
  const auto* apron = findings.find("rock-size.bank.flood.outfall-apron");
  ASSERT_NE(apron, nullptr);
  EXPECT_TRUE(apron->governs);
  EXPECT_EQ(findings.find("rock-size.bank.flood.isbash"), nullptr);
  const auto* chosen = findings.find("class.bank");
  ASSERT_NE(chosen, nullptr);
  EXPECT_EQ(chosen->about.method, "outfall-apron");
}

TEST(Places, AnOutfallWithoutAConduitSaysWhatIsMissing) {
  const auto findings = assessed(example_at("outfall", outlet_water, json::object()));
  EXPECT_EQ(findings.find("rock-size.bank.flood.outfall-apron"), nullptr);
  const auto* chosen = findings.find("class.bank");
  ASSERT_NE(chosen, nullptr);
  EXPECT_EQ(chosen->outcome, Outcome::ask_the_designer);
  EXPECT_TRUE(any_reason_has(*chosen, "diameter (D) is neither known"));
}

TEST(Places, AChuteIsSizedByEveryMethodThatKnowsEnough) {
  const json shape = {{"width", "20 ft"}, {"slope", "0.10"}};
  const auto findings =
      assessed(example_at("chute", {{"from", "hydrology report"}, {"discharge", "60 ft³/s"}},
                          {{"rock-chute", shape}, {"overtopping-abt-johnson", shape}}));
  const auto* robinson = findings.find("rock-size.bank.flood.rock-chute");
  const auto* abt = findings.find("rock-size.bank.flood.overtopping-abt-johnson");
  ASSERT_NE(robinson, nullptr);
  ASSERT_NE(abt, nullptr);
  EXPECT_TRUE(robinson->governs != abt->governs);
}

TEST(Places, ABasinThatFormsNoHoleIsRefusedByName) {
  const auto findings = assessed(example_at(
      "basin", {{"from", "culvert model"}, {"discharge", "135 ft³/s"}},
      {{"outfall-basin", {{"width", "6 ft"}, {"brink_depth", "4 ft"}, {"d50", "1 ft"}}}}));
  EXPECT_EQ(findings.find("rock-size.bank.flood.outfall-basin"), nullptr);
  const auto* chosen = findings.find("class.bank");
  ASSERT_NE(chosen, nullptr);
  EXPECT_TRUE(any_reason_has(*chosen, "no hole forms"));
}

TEST(Places, ADropIsSizedAtItsCriticalVelocity) {
  const auto findings =
      assessed(example_at("drop", {{"from", "channel model"}, {"discharge", "240 ft³/s"}},
                          {{"sloping-rock-drop", {{"width", "20 ft"}, {"slope", "7H:1V"}}}}));
  const auto* drop = findings.find("rock-size.bank.flood.sloping-rock-drop");
  ASSERT_NE(drop, nullptr);
  EXPECT_TRUE(drop->governs);
}

}  // namespace
}  // namespace proofstone
