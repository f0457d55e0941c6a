#include "engine/site/reach_water.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with a second section 200 ft downstream, 0.62 ft lower, and a reach through both.
ExampleDocument with_reach(const json& downstream) {
  ExampleDocument example;
  auto below = example.items["sections"]["one"];
  below["name"] = "Section 2";
  for (auto& point : below["survey"]["points"]) {
    const auto text = point["elevation"].get<std::string>();
    const double elevation = std::stod(text.substr(0, text.find(' '))) - 0.62;
    point["elevation"] = std::to_string(elevation) + " ft";
  }
  example.items["sections"]["two"] = below;
  example.items["reaches"]["run"] = {
      {"name", "The run"},
      {"sections", {{{"section", "one"}, {"to_next", "200 ft"}}, {{"section", "two"}}}},
      {"greatest_step", "50 ft"},
      {"water", {{"flood", {{"downstream", downstream}}}}}};
  return example;
}

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

double value_of(const Findings& findings, const std::string& id, const std::string& key) {
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  if (finding == nullptr) return 0;
  for (const auto& value : finding->values) {
    if (value.key == key) return value.value.si;
  }
  ADD_FAILURE() << id << " states no " << key;
  return 0;
}

TEST(ReachWater, AZoneTakesItsWaterFromTheProfileOfItsReach) {
  const auto findings = assessed(with_reach({{"known", "level"}, {"level", "116.4 ft"}}));
  const double level = value_of(findings, "profile.run.flood", "water_level.one");
  EXPECT_EQ(value_of(findings, "water.bank.flood", "water_level"), level);
  EXPECT_GT(level, Length::feet(116.4).si());
  EXPECT_GT(level, value_of(assessed(ExampleDocument()), "water.bank.flood", "water_level"));
  EXPECT_NEAR(value_of(findings, "profile.run.flood", "water_level.two"), Length::feet(116.4).si(),
              1e-9);
}

TEST(ReachWater, ABedThatRisesDownstreamIsTold) {
  auto example = with_reach({{"known", "level"}, {"level", "117 ft"}});
  const auto told = [&example] {
    const auto findings = assessed(example);
    for (const auto& caution : findings.find("profile.run.flood")->cautions) {
      if (caution.find("adverse") != std::string::npos) return true;
    }
    return false;
  };
  EXPECT_FALSE(told());
  std::swap(example.items["sections"]["one"], example.items["sections"]["two"]);
  EXPECT_TRUE(told());
}

TEST(ReachWater, OneRegimeMayBeChosenForAFlowCase) {
  auto example = with_reach({{"known", "slope"}, {"slope", "0.0031"}});
  const auto mixed = assessed(example);
  auto& ends = example.items["reaches"]["run"]["water"]["flood"];
  ends["regime"] = "tranquil";
  const auto tranquil = assessed(example);
  const std::string id = "profile.run.flood";
  EXPECT_EQ(value_of(tranquil, id, "water_level.one"), value_of(mixed, id, "water_level.one"));
  EXPECT_EQ(tranquil.find(id)->cautions.size(), mixed.find(id)->cautions.size() + 1);
  ends["regime"] = "rapid";
  const auto refused = site_from(example.document());
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.problems().front().code, "missing-field");
  ends["upstream"] = {{"known", "critical"}};
  const auto rapid = assessed(example);
  EXPECT_LT(value_of(rapid, id, "water_level.two"), value_of(mixed, id, "water_level.two"));
  ends["regime"] = "sideways";
  EXPECT_FALSE(site_from(example.document()));
}

TEST(ReachWater, AFlowCaseWithoutABoundaryStaysUniform) {
  const auto findings = assessed(with_reach({{"known", "level"}, {"level", "116.4 ft"}}));
  EXPECT_EQ(findings.find("profile.run.low"), nullptr);
  EXPECT_EQ(value_of(findings, "water.bank.low", "water_level"),
            value_of(assessed(ExampleDocument()), "water.bank.low", "water_level"));
}

TEST(ReachWater, OnTheSameSlopeTheProfileIsUniformFlow) {
  const auto findings = assessed(with_reach({{"known", "slope"}, {"slope", "0.0031"}}));
  const auto uniform = assessed(ExampleDocument());
  EXPECT_NEAR(value_of(findings, "water.bank.flood", "water_level"),
              value_of(uniform, "water.bank.flood", "water_level"), 1e-6);
  EXPECT_NEAR(value_of(findings, "water.bank.flood", "average_velocity"),
              value_of(uniform, "water.bank.flood", "average_velocity"), 1e-6);
  EXPECT_EQ(findings.find("profile.run.flood")->outcome, Outcome::meets);
}

TEST(ReachWater, ABoundaryThatCannotBeUsedLeavesTheWaterUnknown) {
  const auto findings = assessed(with_reach({{"known", "level"}, {"level", "90 ft"}}));
  EXPECT_EQ(findings.find("profile.run.flood")->outcome, Outcome::not_yet_known);
  EXPECT_EQ(findings.find("water.bank.flood")->outcome, Outcome::not_yet_known);
  EXPECT_NE(findings.find("water.bank.flood")->sentence.find("The run"), std::string::npos);
}

TEST(ReachWater, WaterAboveTheSurveyAsksTheDesigner) {
  const auto findings = assessed(with_reach({{"known", "level"}, {"level", "125 ft"}}));
  const auto* profile = findings.find("profile.run.flood");
  EXPECT_EQ(profile->outcome, Outcome::ask_the_designer);
  EXPECT_FALSE(profile->reasons.empty());
}

TEST(ReachWater, EveryKindOfBoundaryIsRead) {
  const json rating = {{"known", "rating"},
                       {"rating",
                        {{{"discharge", "3000 ft³/s"}, {"level", "115 ft"}},
                         {{"discharge", "5000 ft³/s"}, {"level", "117 ft"}}}}};
  const auto findings = assessed(with_reach(rating));
  EXPECT_NEAR(value_of(findings, "profile.run.flood", "water_level.two"), Length::feet(116.2).si(),
              1e-9);
  EXPECT_NE(assessed(with_reach({{"known", "critical"}})).find("profile.run.flood"), nullptr);
}

TEST(ReachWater, WhatIsWrongWithAReachIsNamed) {
  struct Wrong {
    const char* pointer;
    json value;
    const char* code;
  };
  const std::vector<Wrong> wrongs = {
      {"/reaches/run/sections/0/to_next", "0 ft", "not-positive"},
      {"/reaches/run/sections/0/to_next", "-5 ft", "not-positive"},
      {"/reaches/run/sections/0/to_next", {{"left", "5 ft"}}, "missing-field"},
      {"/reaches/run/sections/0/section", "three", "no-such-item"},
      {"/reaches/run/sections/1/section", "one", "section-twice"},
      {"/reaches/run/sections/0/contraction", "1.5", "loss-out-of-range"},
      {"/reaches/run/sections/0/ineffective", {{{"left", "1 ft"}}}, "missing-field"},
      {"/reaches/run/sections", json::array({{{"section", "one"}}}), "section-count"},
      {"/reaches/run/sections", "one", ""},
      {"/reaches/run/friction", "none", "unknown-word"},
      {"/reaches/run/water", "deep", "not-an-object"},
      {"/reaches/run/water",
       {{"drought", {{"downstream", {{"known", "critical"}}}}}},
       "no-such-item"},
      {"/reaches/run/water/flood", json::object(), "missing-field"},
      {"/reaches/run/water/flood/downstream", {{"known", "slope"}, {"slope", "0"}}, "not-positive"},
      {"/reaches/run/water/flood/downstream", {{"known", "hope"}}, "unknown-word"},
      {"/reaches/run/water/flood/downstream", "3 ft", ""},
  };
  for (const auto& wrong : wrongs) {
    auto example = with_reach({{"known", "critical"}});
    example.items[json::json_pointer(wrong.pointer)] = wrong.value;
    const auto site = site_from(example.document());
    ASSERT_FALSE(site) << wrong.pointer << " = " << wrong.value;
    const auto& first = site.problems().front();
    if (*wrong.code != '\0') {
      EXPECT_EQ(first.code, wrong.code) << wrong.pointer << " " << first.sentence();
    }
    EXPECT_EQ(first.where.rfind("/reaches/run", 0), 0u) << first.where;
  }
}

}  // namespace
}  // namespace proofstone
