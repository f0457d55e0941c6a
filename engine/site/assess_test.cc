#include "engine/site/assess.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

#include "engine/site/example_document.h"
#include "engine/site/findings_text.h"

namespace proofstone {
namespace {

using nlohmann::json;

Findings assessed(const ExampleDocument& example, UnitSystem units = UnitSystem::us_customary) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, units) : Findings{};
}

double margin_of(const Findings& findings, const std::string& id) {
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  return finding != nullptr && finding->margin ? finding->margin->value : std::nan("");
}

const std::vector<std::string> methods = {"usace-bank-and-bed", "fhwa-shear-lining", "isbash",
                                          "front-range-channel"};

TEST(Assess, CarriesOneZoneFromFloodToVerdict) {
  const auto findings = assessed(ExampleDocument());
  EXPECT_NE(findings.find("water.bank.flood"), nullptr);
  EXPECT_NE(findings.find("water.bank.low"), nullptr);
  EXPECT_NE(findings.find("class.bank"), nullptr);
  EXPECT_NE(findings.find("layer.bank"), nullptr);
  EXPECT_NE(findings.find("gradation.first.count"), nullptr);
  EXPECT_NE(findings.find("gradation.first"), nullptr);
  EXPECT_NE(findings.find("rock-in-zone.bank.first"), nullptr);
  for (const auto& method : methods) {
    EXPECT_NE(findings.find("rock-size.bank.flood." + method), nullptr) << method;
    EXPECT_NE(findings.find("rock-in-zone.bank.first.flood." + method), nullptr) << method;
  }
  EXPECT_EQ(findings.gradation_pictures.size(), 1u);
  EXPECT_EQ(findings.section_pictures.size(), 1u);
  EXPECT_EQ(findings.section_pictures[0].layers.size(), 1u);
}

TEST(Assess, WhatIsStatedOfTheWaterStandsBeforeWhatIsComputed) {
  ExampleDocument example;
  const double computed = margin_of(assessed(example), "rock-size.bank.flood.isbash");
  auto& stated = example.items["zones"]["bank"]["water"]["flood"];
  stated = {{"from", "model of 2026"}, {"velocity", "20 ft/s"}};
  const auto findings = assessed(example);
  EXPECT_LT(margin_of(findings, "rock-size.bank.flood.isbash"), computed);
  const auto* water = findings.find("water.bank.flood");
  ASSERT_NE(water, nullptr);
  EXPECT_EQ(water->sources.back().sentence(), "model of 2026 (stated for this site)");
}

TEST(Assess, AZoneWithoutASectionHasTheWaterItStates) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["place"] = "pier";
  for (const char* field : {"section", "bank", "toe_station", "top_station"}) zone.erase(field);
  zone["water"]["flood"] = {{"from", "model of 2026"}, {"velocity", "9 ft/s"}, {"depth", "6 ft"}};
  const auto findings = assessed(example);
  // The section is left, and is drawn as it was surveyed.
  ASSERT_EQ(findings.section_pictures.size(), 1u);
  EXPECT_EQ(findings.section_pictures[0].id.rfind("section.alone.", 0), 0u);
  EXPECT_FALSE(findings.section_pictures[0].ground.empty());
  EXPECT_TRUE(findings.section_pictures[0].layers.empty());
  const auto* flood = findings.find("water.bank.flood");
  ASSERT_NE(flood, nullptr);
  EXPECT_EQ(flood->outcome, Outcome::meets);
  EXPECT_EQ(flood->sentence, "Stated by model of 2026: velocity 9.0 ft/s and depth 6.00 ft.");
  EXPECT_EQ(findings.find("water.bank.low"), nullptr);
  EXPECT_EQ(findings.find("rock-size.bank.flood.isbash"), nullptr);
  zone.erase("water");
  const auto unknown = assessed(example);
  ASSERT_NE(unknown.find("water.bank.flood"), nullptr);
  EXPECT_EQ(unknown.find("water.bank.flood")->outcome, Outcome::not_yet_known);
}

TEST(Assess, EveryFindingIsWhole) {
  std::set<std::string> ids;
  const auto findings = assessed(ExampleDocument());
  for (const auto& finding : findings.findings) {
    EXPECT_TRUE(ids.insert(finding.id).second) << finding.id << " stands twice";
    EXPECT_FALSE(finding.title.empty()) << finding.id;
    EXPECT_FALSE(finding.sentence.empty()) << finding.id;
    EXPECT_FALSE(finding.next.empty()) << finding.id;
    EXPECT_FALSE(finding.sources.empty()) << finding.id;
    // Nothing is computed about sending rock back.
    if (finding.id != "remedy.first.return") {
      EXPECT_FALSE(finding.steps.lines().empty()) << finding.id;
    }
    for (const auto& step : finding.steps.lines()) {
      EXPECT_TRUE(std::isfinite(step.value.si)) << finding.id << " " << step.symbol;
    }
  }
}

TEST(Assess, TheMethodThatLeavesLeastMarginGoverns) {
  const auto findings = assessed(ExampleDocument());
  const double governing = margin_of(findings, "class.bank");
  for (const auto& method : methods) {
    const auto* finding = findings.find("rock-size.bank.flood." + method);
    ASSERT_NE(finding, nullptr);
    if (!finding->limits_not_kept.empty()) continue;
    EXPECT_LE(governing, finding->margin->value + 1e-12) << method;
  }
}

TEST(Assess, ADesignersMethodGovernsWhenChosen) {
  ExampleDocument example;
  example.items["zones"]["bank"]["governing"] = "isbash";
  const auto findings = assessed(example);
  EXPECT_EQ(findings.find("class.bank")->about.method, "isbash");
  EXPECT_EQ(findings.find("rock-in-zone.bank.first")->about.method, "isbash");
}

TEST(Assess, AMethodForComparisonGovernsOnceTheDesignerHasChosenItsInputs) {
  const std::string method = "side-slope-stability-factor";
  const std::string id = "rock-size.bank.flood." + method;
  ExampleDocument example;
  const auto compared = assessed(example);
  ASSERT_NE(compared.find(id), nullptr);
  EXPECT_LT(margin_of(compared, id), margin_of(compared, "class.bank"));
  EXPECT_FALSE(compared.find(id)->governs);
  EXPECT_EQ(compared.find(id)->outcome, Outcome::ask_the_designer);
  EXPECT_NE(compared.find(id)->sentence.find("comparison"), std::string::npos);
  example.items["zones"]["bank"]["method_choices"] = {
      {method, {{"stability_factor", "1.5"}, {"flow_angle", "0°"}}}};
  const auto chosen = assessed(example);
  EXPECT_EQ(chosen.find("class.bank")->about.method, method);
  EXPECT_EQ(chosen.find(id)->outcome, Outcome::falls_short);
}

TEST(Assess, TheAnalyticSideSlopeFactorAsksForMoreThanThePublishedCurve) {
  ExampleDocument curve;
  ExampleDocument analytic;
  analytic.items["zones"]["bank"]["method_choices"] = {
      {"usace-bank-and-bed", {{"side_slope_factor", "analytic"}}}};
  const std::string id = "rock-size.bank.flood.usace-bank-and-bed";
  EXPECT_LT(margin_of(assessed(analytic), id), 0.9 * margin_of(assessed(curve), id));
}

TEST(Assess, MoreWaterNeverLeavesMoreMargin) {
  double before = 1e9;
  for (int discharge = 1000; discharge <= 4600; discharge += 400) {
    ExampleDocument example;
    example.items["flow_cases"]["flood"]["discharge"] = std::to_string(discharge) + " ft³/s";
    const double margin = margin_of(assessed(example), "rock-size.bank.flood.usace-bank-and-bed");
    EXPECT_LT(margin, before) << discharge;
    before = margin;
  }
}

TEST(Assess, LighterRockLeavesLessMargin) {
  ExampleDocument light;
  light.items["sources"]["knob"]["specific_gravity_tests"] = {"2.40", "2.42"};
  const std::string id = "rock-in-zone.bank.first.flood.usace-bank-and-bed";
  EXPECT_LT(margin_of(assessed(light), id), margin_of(assessed(ExampleDocument()), id));
}

TEST(Assess, UnitsChangeWordsAndNothingElse) {
  const auto us = json::parse(findings_text(assessed(ExampleDocument(), UnitSystem::us_customary)));
  const auto si = json::parse(findings_text(assessed(ExampleDocument(), UnitSystem::si)));
  ASSERT_EQ(us["findings"].size(), si["findings"].size());
  for (std::size_t i = 0; i < us["findings"].size(); ++i) {
    const auto& a = us["findings"][i];
    const auto& b = si["findings"][i];
    EXPECT_EQ(a["id"], b["id"]);
    EXPECT_EQ(a["outcome"], b["outcome"]);
    ASSERT_EQ(a["steps"].size(), b["steps"].size());
    for (std::size_t k = 0; k < a["steps"].size(); ++k) {
      EXPECT_EQ(a["steps"][k]["si"], b["steps"][k]["si"]);
    }
  }
  EXPECT_NE(us["findings"][0]["sentence"], si["findings"][0]["sentence"]);
}

TEST(Assess, ADocumentInMetresGivesTheSameAnswer) {
  ExampleDocument metric;
  metric.items["flow_cases"]["flood"]["discharge"] = "118.9307556864 m³/s";
  metric.items["zones"]["bank"]["bend"]["radius"] = "115.824 m";
  const std::string id = "rock-size.bank.flood.usace-bank-and-bed";
  EXPECT_NEAR(margin_of(assessed(metric), id), margin_of(assessed(ExampleDocument()), id), 1e-9);
}

TEST(Assess, SaysWhatIsMissingInsteadOfGuessing) {
  ExampleDocument no_looks;
  no_looks.items["looks"] = json::object();
  auto findings = assessed(no_looks);
  EXPECT_EQ(findings.find("gradation.first")->outcome, Outcome::not_yet_known);
  EXPECT_EQ(findings.find("rock-in-zone.bank.first")->outcome, Outcome::not_yet_known);

  ExampleDocument no_flood;
  no_flood.items["flow_cases"].erase("flood");
  findings = assessed(no_flood);
  EXPECT_NE(findings.find("document.design flow case"), nullptr);
  EXPECT_EQ(findings.headline_outcome, Outcome::ask_the_designer);
}

TEST(Assess, WaterAboveTheSurveyStandsBetweenWallsAndIsMarked) {
  ExampleDocument example;
  example.items["flow_cases"]["flood"]["discharge"] = "400000 ft³/s";
  const auto findings = assessed(example);
  const auto* water = findings.find("water.bank.flood");
  EXPECT_EQ(water->outcome, Outcome::ask_the_designer);
  EXPECT_NE(water->next.find("extend the section"), std::string::npos);
  ASSERT_FALSE(water->reasons.empty());
  EXPECT_NE(water->reasons.front().find("cannot hold"), std::string::npos);
  EXPECT_EQ(findings.find("class.bank")->outcome, Outcome::falls_short);
}

TEST(Assess, FineRockFallsShortAndTheBlendMendsIt) {
  ExampleDocument example;
  example.items["looks"]["count"]["stones"]["bins"] = json::parse(R"([
    {"larger_than": "3 in", "not_larger_than": "5 in", "stones": 20},
    {"larger_than": "5 in", "not_larger_than": "8 in", "stones": 110},
    {"larger_than": "8 in", "not_larger_than": "11 in", "stones": 160},
    {"larger_than": "11 in", "not_larger_than": "16 in", "stones": 90},
    {"larger_than": "16 in", "not_larger_than": "20 in", "stones": 20}])");
  const auto findings = assessed(example);
  EXPECT_EQ(findings.find("gradation.first")->outcome, Outcome::falls_short);
  const auto* blend = findings.find("remedy.first.blend.coarse");
  ASSERT_NE(blend, nullptr);
  EXPECT_EQ(findings.headline_outcome, Outcome::falls_short);
}

TEST(Assess, LooksThatContradictAreNotPutTogether) {
  ExampleDocument example;
  example.items["looks"]["other"] = example.items["looks"]["count"];
  example.items["looks"]["other"]["stones"]["bins"] = json::parse(R"([
    {"larger_than": "12 in", "not_larger_than": "16 in", "stones": 20},
    {"larger_than": "16 in", "not_larger_than": "22 in", "stones": 80}])");
  const auto findings = assessed(example);
  ASSERT_NE(findings.find("same-rock.first"), nullptr);
  EXPECT_EQ(findings.find("gradation.first")->outcome, Outcome::ask_the_designer);
}

}  // namespace
}  // namespace proofstone
