// Walks, hold points and nonconformances of a zone, from the document to the findings.
#include <gtest/gtest.h>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with a toe, so that its checks are: subgrade, toe, bucket, drop, handling,
/// thickness, surface.
ExampleDocument bank() {
  ExampleDocument example;
  example.items["zones"]["bank"]["toe"] = {{"kind", "trench"}, {"depth", "5 ft"}};
  return example;
}

json walk_at(const char* when, const json& checks) {
  return {
      {"name", "Walk"}, {"zone", "bank"}, {"who", "L. Brandt"}, {"when", when}, {"checks", checks}};
}

json passed(std::vector<std::string> lengths) { return {{"measured", std::move(lengths)}}; }

const char* const morning = "2026-05-03T08:00:00Z";
const char* const noon = "2026-05-03T12:00:00Z";
const char* const evening = "2026-05-03T18:00:00Z";

const std::vector<std::string> level{"0.02 ft", "-0.05 ft", "0.08 ft"};
const std::vector<std::string> deep{"5 ft", "5.2 ft", "5.1 ft"};

Findings findings_of(const ExampleDocument& example) {
  const auto site = read_site(example.text());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

Problem first_problem(const ExampleDocument& example) {
  const auto site = read_site(example.text());
  return site ? Problem{} : site.problems().front();
}

Outcome outcome(const Findings& findings, const std::string& id) {
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  return finding == nullptr ? Outcome::ask_the_designer : finding->outcome;
}

TEST(ZonePlacing, BeforeAnythingIsSeenTheChecksAreListedAndDoNotSpeakForTheZone) {
  const auto findings = findings_of(bank());
  const auto* list = findings.find("placing-checks.bank");
  ASSERT_NE(list, nullptr);
  EXPECT_EQ(list->outcome, Outcome::not_yet_known);
  EXPECT_FALSE(list->governs);
  EXPECT_EQ(list->reasons.size(), 7U);
  EXPECT_EQ(findings.find("placing-check.bank.toe"), nullptr);
  EXPECT_EQ(findings.headline.find("Placing of"), std::string::npos) << findings.headline;
}

TEST(ZonePlacing, HoldPointsAreReleasedInOrder) {
  auto example = bank();
  example.items["placing_walks"]["one"] = walk_at(morning, {{"subgrade", passed(level)}});
  auto findings = findings_of(example);
  EXPECT_EQ(outcome(findings, "placing-check.bank.subgrade"), Outcome::meets);
  EXPECT_NE(findings.find("placing-checks.bank")->sentence.find("held at: Depth of the toe"),
            std::string::npos);
  example.items["placing_walks"]["two"] = walk_at(noon, {{"toe", passed(deep)}});
  findings = findings_of(example);
  EXPECT_NE(findings.find("placing-checks.bank")->sentence.find("held at: Thickness of the rock"),
            std::string::npos);
  EXPECT_TRUE(findings.find("placing-checks.bank")->governs);
}

TEST(ZonePlacing, AHoldPointIsNotReleasedWhileACheckBeforeItIsOpen) {
  auto example = bank();
  example.items["placing_walks"]["one"] =
      walk_at(morning, {{"subgrade", passed(level)}, {"toe", passed(deep)}});
  example.items["layer_surveys"]["first"] = {
      {"name", "Survey"},
      {"zone", "bank"},
      {"when", noon},
      {"thicknesses", {"25 in", "26 in", "25 in", "27 in", "26 in"}}};
  auto findings = findings_of(example);
  const auto* thickness = findings.find("placing-check.bank.thickness");
  EXPECT_EQ(thickness->outcome, Outcome::not_yet_known);
  EXPECT_NE(thickness->sentence.find("not released"), std::string::npos) << thickness->sentence;
  example.items["placing_walks"]["two"] = walk_at(noon, {{"bucket", passed({"4 ft"})},
                                                         {"drop", passed({"1 ft"})},
                                                         {"handling", {{"result", "pass"}}}});
  findings = findings_of(example);
  EXPECT_EQ(outcome(findings, "placing-check.bank.thickness"), Outcome::meets);
  EXPECT_EQ(findings.find("placing-checks.bank")->sentence.find("held at"), std::string::npos);
}

TEST(ZonePlacing, WorkThatWentAheadOfAHoldPointIsNamed) {
  auto example = bank();
  example.items["placing_walks"]["one"] =
      walk_at(morning, {{"subgrade", passed(level)}, {"handling", {{"result", "pass"}}}});
  example.items["placing_walks"]["two"] = walk_at(noon, {{"toe", passed(deep)}});
  const auto findings = findings_of(example);
  EXPECT_EQ(outcome(findings, "placing-check.bank.handling"), Outcome::ask_the_designer);
  EXPECT_EQ(outcome(findings, "placing-check.bank.toe"), Outcome::meets);
  // Checks of one stage do not wait for one another.
  auto toe_first = bank();
  toe_first.items["placing_walks"]["one"] = walk_at(morning, {{"toe", passed(deep)}});
  const auto sentence = findings_of(toe_first).find("placing-check.bank.toe")->sentence;
  EXPECT_NE(sentence.find("pass, but not released"), std::string::npos) << sentence;
}

TEST(ZonePlacing, AFailureWithoutANonconformanceSaysSoAndOneThatIsClosedWantsANewLook) {
  auto example = bank();
  example.items["placing_walks"]["one"] =
      walk_at(morning, {{"subgrade", passed(level)}, {"toe", passed({"5 ft", "4.2 ft", "5 ft"})}});
  auto findings = findings_of(example);
  EXPECT_EQ(outcome(findings, "placing-check.bank.toe"), Outcome::falls_short);
  EXPECT_NE(findings.find("placing-check.bank.toe")->next.find("no nonconformance"),
            std::string::npos);

  auto& one = example.items["nonconformances"]["shallow-toe"];
  one = {{"name", "Toe too shallow"},
         {"zone", "bank"},
         {"check", "toe"},
         {"opened", {{"who", "L. Brandt"}, {"when", morning}}}};
  findings = findings_of(example);
  EXPECT_EQ(outcome(findings, "nonconformance.shallow-toe"), Outcome::falls_short);
  EXPECT_EQ(outcome(findings, "placing-checks.bank"), Outcome::falls_short);

  one["disposition"] = {{"kind", "rework"}, {"who", "M. Okafor"}, {"when", noon}};
  findings = findings_of(example);
  EXPECT_EQ(outcome(findings, "nonconformance.shallow-toe"), Outcome::not_yet_known);

  one["closed"] = {{"who", "L. Brandt"}, {"when", evening}};
  findings = findings_of(example);
  EXPECT_EQ(outcome(findings, "placing-check.bank.toe"), Outcome::not_yet_known);
  example.items["placing_walks"]["two"] = walk_at(evening, {{"toe", passed(deep)}});
  EXPECT_EQ(outcome(findings_of(example), "placing-check.bank.toe"), Outcome::meets);
}

TEST(ZonePlacing, UsedAsItIsOnlyWithTheEngineersName) {
  auto example = bank();
  example.items["placing_walks"]["one"] = walk_at(morning, {{"surface", passed({"4 in"})}});
  auto& one = example.items["nonconformances"]["rough"];
  one = {{"name", "Rough surface"},
         {"zone", "bank"},
         {"check", "surface"},
         {"opened", {{"who", "L. Brandt"}, {"when", morning}}},
         {"disposition", {{"kind", "use as is"}, {"who", "M. Okafor"}, {"when", noon}}},
         {"closed", {{"who", "M. Okafor"}, {"when", evening}}}};
  EXPECT_EQ(first_problem(example).code, "missing-approval");
  EXPECT_EQ(first_problem(example).where, "/nonconformances/rough/disposition/approved_by");
  one["disposition"]["approved_by"] = "M. Okafor, P.E.";
  const auto findings = findings_of(example);
  EXPECT_NE(findings.find("placing-check.bank.surface")->sentence.find("approved by M. Okafor"),
            std::string::npos);
}

TEST(ZonePlacing, SurveysOfTheLayerDecideItsThickness) {
  auto example = bank();
  example.items["layer_surveys"]["first"] = {
      {"name", "Survey"},      {"zone", "bank"},
      {"who", "L. Brandt"},    {"when", morning},
      {"instrument", "probe"}, {"thicknesses", {"25 in", "26 in", "25 in", "27 in", "26 in"}}};
  const auto thick = findings_of(example);
  EXPECT_NE(thick.find("placing-check.bank.thickness")->sentence.find("pass"), std::string::npos);
  example.items["layer_surveys"]["first"]["thicknesses"] = {"20 in", "21 in", "20 in"};
  EXPECT_EQ(outcome(findings_of(example), "placing-check.bank.thickness"), Outcome::falls_short);
}

/// The bank filled with two of rock to one of coarse material, its ground and toe seen.
ExampleDocument filled_bank() {
  auto example = bank();
  const json part = {{"material", "coarse"}, {"parts", "1"}};
  example.items["mixes"]["fill"] = {{"name", "Soil fill"},
                                    {"kind", "soil-filled"},
                                    {"rock_voids", "0.4"},
                                    {"rock_parts", "2"},
                                    {"parts", json::array({part})}};
  example.items["zones"]["bank"]["mix"] = "fill";
  example.items["placing_walks"]["ground"] =
      walk_at(morning, {{"subgrade", passed(level)}, {"toe", passed(deep)}});
  return example;
}

json tally(const json& loads) { return {{"mix", {{"loads", loads}}}}; }

TEST(ZonePlacing, LoadsAreTalliedAgainstTheRecipe) {
  auto example = filled_bank();
  const auto tallied = [&example](int rock, int fill) {
    example.items["placing_walks"]["one"] =
        walk_at(noon, tally({{"rock", rock}, {"coarse", fill}}));
    return outcome(findings_of(example), "placing-check.bank.mix");
  };
  EXPECT_EQ(tallied(10, 5), Outcome::meets);
  EXPECT_EQ(tallied(10, 8), Outcome::falls_short);
  EXPECT_EQ(tallied(0, 8), Outcome::not_yet_known);
  // In the sum as the recipe asks, but not by day: what was mixed on a day lies so in the ground.
  tallied(10, 2);
  example.items["placing_walks"]["two"] =
      walk_at("2026-06-09T10:00:00Z", tally({{"rock", 10}, {"coarse", 8}}));
  const auto by_day = findings_of(example);
  EXPECT_EQ(outcome(by_day, "placing-check.bank.mix"), Outcome::ask_the_designer);
}

TEST(ZonePlacing, LoadsOfAPartThatWasTakenOutOfTheMixAreKeptAndTold) {
  auto example = filled_bank();
  example.items["placing_walks"]["one"] =
      walk_at(noon, tally({{"rock", 10}, {"coarse", 5}, {"gold", 8}}));
  const auto findings = findings_of(example);
  const auto* mix = findings.find("placing-check.bank.mix");
  ASSERT_NE(mix, nullptr);
  EXPECT_EQ(mix->outcome, Outcome::ask_the_designer);
  EXPECT_NE(mix->next.find("8 loads of gold"), std::string::npos) << mix->next;
  EXPECT_NE(mix->next.find("rock, coarse"), std::string::npos) << mix->next;
  // A mix whose parts are all taken out has no recipe: what was tallied waits for the next one.
  example.items["mixes"]["fill"].erase("parts");
  example.items["mixes"]["fill"].erase("rock_parts");
  const auto without = findings_of(example);
  EXPECT_EQ(outcome(without, "placing-check.bank.mix"), Outcome::not_yet_known);
  EXPECT_EQ(without.find("unasked-checks.bank"), nullptr);
  // A zone that is filled no longer asks for no tally, and what was tallied is told all the same.
  example.items["zones"]["bank"].erase("mix");
  const auto bare = findings_of(example);
  ASSERT_NE(bare.find("unasked-checks.bank"), nullptr);
  EXPECT_NE(bare.find("unasked-checks.bank")->sentence.find("mix"), std::string::npos);
}

TEST(ZonePlacing, AMixWithoutPartsAsksForItsRecipeAndPassesByNoOnesEye) {
  auto example = filled_bank();
  example.items["mixes"]["fill"].erase("parts");
  example.items["mixes"]["fill"].erase("rock_parts");
  example.items["placing_walks"]["one"] = walk_at(noon, {{"mix", {{"result", "pass"}}}});
  const auto findings = findings_of(example);
  const auto* mix = findings.find("placing-check.bank.mix");
  ASSERT_NE(mix, nullptr);
  EXPECT_EQ(mix->outcome, Outcome::not_yet_known);
  EXPECT_NE(mix->next.find("Ask the designer for the recipe"), std::string::npos) << mix->next;
  // Filled by its kinds alone, it wants a mix all the same.
  example.items["zones"]["bank"].erase("mix");
  example.items["zones"]["bank"]["kinds"] = {{{"kind", "void-filled"}, {"up_to", "top"}}};
  EXPECT_EQ(outcome(findings_of(example), "placing-check.bank.mix"), Outcome::not_yet_known);
  // What the eye rejects fails without a recipe too.
  example.items["placing_walks"]["one"] = walk_at(noon, {{"mix", {{"result", "fail"}}}});
  EXPECT_EQ(outcome(findings_of(example), "placing-check.bank.mix"), Outcome::falls_short);
}

TEST(ZonePlacing, BadEntriesAreRefusedWhereTheyStand) {
  const auto problem = [](const json& checks) {
    auto example = bank();
    example.items["placing_walks"]["one"] = walk_at(morning, checks);
    return first_problem(example);
  };
  EXPECT_EQ(problem({{"toe", json::object()}}).code, "half-filled");
  EXPECT_EQ(problem({{"toe", passed({"-5 ft"})}}).code, "negative");
  EXPECT_EQ(problem({{"toe", passed({"5 ft", "500 ft"})}}).where,
            "/placing_walks/one/checks/toe/measured/1");
  EXPECT_EQ(problem({{"toe", passed({"5"})}}).code, "missing-unit");
  EXPECT_EQ(problem({{"toe", {{"result", "maybe"}}}}).code, "unknown-word");
  EXPECT_EQ(problem({{"toe", {{"result", "pass"}, {"photos", json::array({"pic.jpg"})}}}}).code,
            "not-a-hash");
  EXPECT_EQ(problem({{"thickness", passed({"24 in"})}}).code, "not-measured-here");
  EXPECT_EQ(problem({{"toe", {{"loads", {{"rock", 3}}}}}}).code, "no-loads-here");
  EXPECT_EQ(problem(json::object()).code, "not-an-object");
  EXPECT_EQ(problem({{"subgrade", passed({"-0.05 ft"})}}).code, "");
}

TEST(ZonePlacing, BadNonconformancesAreRefusedWhereTheyStand) {
  const json good = {
      {"name", "One"},
      {"zone", "bank"},
      {"opened", {{"who", "L. Brandt"}, {"when", noon}}},
      {"disposition", {{"kind", "rework"}, {"who", "M. Okafor"}, {"when", evening}}}};
  const auto code = [&good](const char* pointer, const json& value) {
    auto example = bank();
    auto one = good;
    one[json::json_pointer(pointer)] = value;
    example.items["nonconformances"]["one"] = one;
    return first_problem(example).code;
  };
  EXPECT_EQ(code("/name", "One"), "");
  EXPECT_EQ(code("/zone", "moon"), "no-such-item");
  EXPECT_EQ(code("/check", "paint"), "");
  EXPECT_EQ(code("/lot", "first"), "one-of");
  EXPECT_EQ(code("/disposition/when", morning), "clock-backwards");
  EXPECT_EQ(code("/disposition/kind", "forget it"), "unknown-word");
  EXPECT_EQ(code("/closed", {{"who", "L. Brandt"}, {"when", noon}}), "clock-backwards");
  EXPECT_EQ(code("/closed", {{"who", "L. Brandt"}}), "missing-field");
  EXPECT_EQ(code("/opened/when", "yesterday"), "bad-time");
}

TEST(ZonePlacing, WhatWasTakenDownOutlivesAChangeOfTheDesign) {
  auto example = bank();
  example.items["placing_walks"]["one"] =
      walk_at(morning, {{"subgrade", passed(level)}, {"bedding-1", passed({"6 in"})}});
  const auto findings = findings_of(example);
  const auto* unasked = findings.find("unasked-checks.bank");
  ASSERT_NE(unasked, nullptr);
  EXPECT_EQ(unasked->outcome, Outcome::ask_the_designer);
  EXPECT_NE(unasked->sentence.find("bedding-1"), std::string::npos);
  EXPECT_NE(unasked->next.find("subgrade"), std::string::npos);
  EXPECT_EQ(outcome(findings, "placing-check.bank.subgrade"), Outcome::meets);
  EXPECT_EQ(findings_of(bank()).find("unasked-checks.bank"), nullptr);
}

TEST(ZonePlacing, EachUnitSystemSaysTheSame) {
  auto example = bank();
  example.items["placing_walks"]["one"] =
      walk_at(morning, {{"subgrade", passed(level)}, {"toe", passed({"4 ft", "5 ft", "6 ft"})}});
  const auto site = read_site(example.text());
  ASSERT_TRUE(site);
  const auto us = assess(*site, UnitSystem::us_customary);
  const auto si = assess(*site, UnitSystem::si);
  for (const auto& finding : us.findings) {
    const auto* same = si.find(finding.id);
    ASSERT_NE(same, nullptr) << finding.id;
    EXPECT_EQ(same->outcome, finding.outcome) << finding.id;
  }
}

}  // namespace
}  // namespace proofstone
