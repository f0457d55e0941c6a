#include "engine/site/zone_chance.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with what a designer might state of its outer bank.
json with_uncertainty(const json& by_method) {
  ExampleDocument example;
  example.items["zones"].begin().value()["uncertainty"] = by_method;
  return example.document();
}

json stated() {
  return {{"usace-bank-and-bed",
           {{"from", "two gauged floods against the computed profile"},
            {"inputs",
             {{"average_velocity", {{"variation", "10 %"}}},
              {"local_depth", {{"distribution", "normal"}, {"variation", "5 %"}}},
              {"specific_gravity", {{"variation", "2 %"}}}}},
            {"available_size", {{"variation", "8 %"}}}}}};
}

std::vector<Finding> chances(const Findings& findings) {
  std::vector<Finding> found;
  for (const auto& finding : findings.findings) {
    if (finding.topic == Topic::chance) found.push_back(finding);
  }
  return found;
}

double value_of(const Finding& finding, const std::string& key) {
  for (const auto& value : finding.values) {
    if (value.key == key) return value.value.si;
  }
  ADD_FAILURE() << key;
  return 0;
}

Findings assessed(const json& document) {
  const auto site = site_from(document);
  EXPECT_TRUE(site) << site.problems().front().sentence();
  return assess(*site, UnitSystem::us_customary);
}

TEST(ChanceInAZone, NothingStatedNothingSaid) {
  EXPECT_TRUE(chances(assessed(ExampleDocument().document())).empty());
}

TEST(ChanceInAZone, IsFoundThreeWaysAndRanked) {
  const auto found = chances(assessed(with_uncertainty(stated())));
  ASSERT_FALSE(found.empty());
  const auto& finding = found.front();
  EXPECT_EQ(finding.outcome, Outcome::ask_the_designer) << "no accepted chance is stated";
  EXPECT_NE(finding.sentence.find("Average velocity matters most"), std::string::npos)
      << finding.sentence;
  const double chance = value_of(finding, "chance");
  EXPECT_GT(chance, 0);
  EXPECT_LT(chance, 1);
  EXPECT_NEAR(value_of(finding, "sampled_chance"), chance,
              5 * value_of(finding, "sampled_error") + 0.001);
  EXPECT_NEAR(value_of(finding, "first_order_chance"), chance, 0.02);
  EXPECT_GT(value_of(finding, "share.average_velocity"), 0.7);
  EXPECT_FALSE(finding.steps.lines().empty());
  EXPECT_FALSE(finding.reasons.empty()) << "who stated it";
}

TEST(ChanceInAZone, TheSafetyFactorAskedForIsNoPropertyOfTheRock) {
  const auto plain = with_uncertainty(stated());
  ExampleDocument example;
  auto& zone = example.items["zones"].begin().value();
  zone["uncertainty"] = stated();
  zone["method_choices"]["usace-bank-and-bed"]["safety_factor"] = "1.5";
  const auto with_margin = chances(assessed(example.document()));
  const auto without = chances(assessed(plain));
  ASSERT_EQ(with_margin.size(), without.size());
  EXPECT_EQ(value_of(with_margin.front(), "chance"), value_of(without.front(), "chance"));
}

TEST(ChanceInAZone, AnAcceptedChanceDecides) {
  auto document = stated();
  document["usace-bank-and-bed"]["accepted_chance"] = "99.99 %";
  EXPECT_EQ(chances(assessed(with_uncertainty(document))).front().outcome, Outcome::meets);
  document["usace-bank-and-bed"]["accepted_chance"] = "0.0000001 %";
  EXPECT_EQ(chances(assessed(with_uncertainty(document))).front().outcome, Outcome::falls_short);
}

/// A shore under waves, of a class that measures stones by the intermediate axis; Hudson asks for a
/// mass.
json shore_with_uncertainty() {
  ExampleDocument example;
  auto& zone = example.items["zones"].begin().value();
  for (const char* field : {"section", "bank", "bend"}) zone.erase(field);
  zone["place"] = "shore";
  zone["water"]["flood"] = {{"from", "wave study"}, {"wave_height", "2 ft"}};
  zone["method_choices"]["hudson"] = {{"slope", "1V:2H"}};
  zone["uncertainty"]["hudson"] = {{"from", "wave study"},
                                   {"inputs", {{"wave_height", {{"variation", "10 %"}}}}}};
  return example.document();
}

TEST(ChanceInAZone, AMassIsHeldAgainstTheClassInTheClassesOwnMeaningOfSize) {
  const auto findings = assessed(shore_with_uncertainty());
  const auto* sized = findings.find("rock-size.bank.flood.hudson");
  const auto* chance = findings.find("chance.bank.flood.hudson");
  ASSERT_NE(sized, nullptr);
  ASSERT_NE(chance, nullptr);
  ASSERT_TRUE(sized->margin);
  const auto& lines = chance->steps.lines();
  const auto at_means =
      std::find_if(lines.begin(), lines.end(), [](const Step& step) { return step.symbol == "G"; });
  ASSERT_NE(at_means, lines.end());
  // Hudson has no safety factor: the margin at the means is that of the finding on the size. Taken
  // as a sphere, the stone would be 1.175 times as large and the logarithm 0.16 less.
  EXPECT_NEAR(at_means->value.si, std::log(sized->margin->value), 1e-9);
}

TEST(ChanceInAZone, CorrelationNamesQuantitiesWithASpread) {
  auto document = stated();
  document["usace-bank-and-bed"]["correlations"] = json::array(
      {{{"first", "average_velocity"}, {"second", "local_depth"}, {"coefficient", "0.8"}}});
  const auto together = chances(assessed(with_uncertainty(document)));
  const auto apart = chances(assessed(with_uncertainty(stated())));
  EXPECT_NE(value_of(together.front(), "beta"), value_of(apart.front(), "beta"));
  document["usace-bank-and-bed"]["correlations"][0]["second"] = "bank_angle";
  const auto wrong = chances(assessed(with_uncertainty(document)));
  EXPECT_EQ(wrong.front().outcome, Outcome::not_yet_known);
}

TEST(ChanceInAZone, WhatIsMissingIsSaid) {
  auto document = stated();
  document["usace-bank-and-bed"]["inputs"]["average_velocity"] = {{"distribution", "uniform"},
                                                                  {"low", "5 ft/s"}};
  const auto found = chances(assessed(with_uncertainty(document)));
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found.front().outcome, Outcome::not_yet_known);
}

TEST(UncertaintyInADocument, BadStatementsAreProblems) {
  const auto first_code = [](const json& by_method) {
    const auto site = site_from(with_uncertainty(by_method));
    return site ? std::string("read") : site.problems().front().code;
  };
  EXPECT_EQ(first_code(stated()), "read");
  EXPECT_EQ(first_code({{"no-method", {{"from", "x"}}}}), "unknown-method");
  EXPECT_EQ(first_code({{"isbash", json::object()}}), "missing-field");
  EXPECT_EQ(first_code({{"isbash", {{"from", "x"}, {"inputs", {{"turbulence", json::object()}}}}}}),
            "cannot-vary");
  EXPECT_EQ(
      first_code({{"isbash", {{"from", "x"}, {"inputs", {{"velocity", {{"variation", "-1"}}}}}}}}),
      "outside-allowed");
  EXPECT_EQ(
      first_code({{"isbash", {{"from", "x"}, {"inputs", {{"velocity", {{"mean", "8 in"}}}}}}}}),
      "wrong-kind");
}

TEST(ChanceText, IsRoundedAsPeopleReadIt) {
  EXPECT_EQ(chance_text(0.1653), "17 %");
  EXPECT_EQ(chance_text(0.00412), "0.41 %");
  EXPECT_EQ(chance_text(1e-9), "less than 0.0001 %");
  EXPECT_EQ(chance_text(1), "more than 99.9 %");
}

}  // namespace
}  // namespace proofstone
