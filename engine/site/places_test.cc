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
  EXPECT_TRUE(any_reason_has(*chosen, "/outfall-basin/")) << "located under the method";
}

TEST(Places, ALayerIsJudgedByTheRuleOfItsPlace) {
  const auto layer_at = [](const char* place, const json& choices) {
    const auto findings = assessed(example_at(
        place, {{"from", "report"}, {"discharge", "60 ft³/s"}, {"velocity", "8 ft/s"}}, choices));
    const auto* layer = findings.find("layer.bank");
    EXPECT_NE(layer, nullptr);
    return *layer;
  };
  // 24 in of a 12-in class.
  const auto pier = layer_at("pier", json::object());
  EXPECT_EQ(pier.outcome, Outcome::falls_short);
  EXPECT_NEAR(pier.margin->value, 24.0 / 36.0, 1e-9);
  EXPECT_NE(pier.sentence.find("round a pier"), std::string::npos) << pier.sentence;
  EXPECT_EQ(layer_at("chute", json::object()).outcome, Outcome::meets);
  EXPECT_NEAR(layer_at("outfall", json::object()).margin->value, 24.0 / (2.4 * 12), 1e-9);
  EXPECT_EQ(layer_at("abutment", json::object()).outcome, Outcome::meets);
}

TEST(Places, ContractionScourStatedAtAPierMakesTheLayer) {
  auto example = example_at("pier", {{"from", "report"}, {"velocity", "8 ft/s"}}, json::object());
  example.items["zones"]["bank"]["scour"] = {{"contraction", "5 ft"}, {"long_term", "2 ft"}};
  const auto findings = assessed(example);
  const auto* layer = findings.find("layer.bank");
  ASSERT_NE(layer, nullptr);
  EXPECT_NEAR(layer->margin->value, 2.0 / 7.0, 1e-9);
}

TEST(Places, TheToeOfAShoreGoesOneWaveHeightDown) {
  const json waves = {{"from", "wave study"}, {"wave_height", "3 ft"}};
  auto example = example_at("shore", waves, {{"hudson", {{"slope", "1V:2H"}}}});
  const auto toe_of = [&example] {
    const auto findings = assessed(example);
    const auto* toe = findings.find("toe.bank.flood");
    EXPECT_NE(toe, nullptr);
    return *toe;
  };
  EXPECT_EQ(toe_of().outcome, Outcome::not_yet_known);
  auto& zone = example.items["zones"]["bank"];
  zone["toe"] = {{"kind", "trench"}, {"depth", "2 ft"}};
  EXPECT_EQ(toe_of().outcome, Outcome::falls_short);
  EXPECT_NEAR(toe_of().margin->value, 2.0 / 3.0, 1e-9);
  zone["toe"]["depth"] = "3 ft";
  EXPECT_EQ(toe_of().outcome, Outcome::meets);
  zone["toe"] = {{"kind", "launchable"}, {"stored", "20 ft²"}};
  EXPECT_EQ(toe_of().outcome, Outcome::ask_the_designer);
  zone["toe"] = {{"kind", "thickened"}, {"width", "1 ft"}, {"thickness", "4 ft"}};
  EXPECT_EQ(toe_of().outcome, Outcome::falls_short);
  zone["method_choices"]["wave-toe"] = {{"damage", "none"}};
  EXPECT_EQ(toe_of().outcome, Outcome::not_yet_known);
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
