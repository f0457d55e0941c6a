// Decisions about a lot, from the document to the findings: counts, comparisons, remedies, zones.
#include <gtest/gtest.h>

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

Findings findings_of(const ExampleDocument& example) {
  const auto site = read_site(example.text());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

/// A count of single stones, spread evenly from one size to another.
json count_between(const std::string& lot, double from, double to, int stones) {
  json axes = json::array();
  for (int i = 0; i < stones; ++i) {
    // Neither sorted nor random: a step that goes round all of them.
    const double part = (i * 37 % stones + 0.5) / stones;
    axes.push_back(fmt::format("{:.2f} in", from + part * (to - from)));
  }
  json look = {{"name", "Count"}, {"kind", "stone count"}, {"lot", lot}, {"picking", "grid"}};
  look["stones"]["axes"] = axes;
  return look;
}

bool has_reason(const Finding& finding, const std::string& text) {
  for (const auto& reason : finding.reasons) {
    if (reason.find(text) != std::string::npos) return true;
  }
  return false;
}

TEST(LotDecision, SaysWhichRisksItWasPassedAt) {
  ExampleDocument example;
  const auto usual = findings_of(example);
  const auto* finding = usual.find("gradation.first");
  ASSERT_NE(finding, nullptr);
  EXPECT_TRUE(has_reason(*finding, "not stated, from the confidence"));
  example.items["evidence"] = {{"owners_risk", "10 %"}, {"producers_risk", "2 %"}};
  const auto stated = findings_of(example);
  EXPECT_TRUE(has_reason(*stated.find("gradation.first"), "owner's risk of 10 %"));
  EXPECT_FALSE(has_reason(*stated.find("gradation.first"), "not stated"));
  example.items["evidence"]["owners_risk"] = "80 %";
  EXPECT_FALSE(read_site(example.text()));
}

TEST(LotDecision, CountTellsWhetherToStop) {
  ExampleDocument example;
  example.items["looks"].clear();
  example.items["looks"]["count"] = count_between("first", 4, 8, 200);
  const auto findings = findings_of(example);
  const auto* count = findings.find("count.first.count");
  ASSERT_NE(count, nullptr);
  EXPECT_EQ(count->outcome, Outcome::falls_short) << count->sentence;
  EXPECT_NE(count->sentence.find("may stop"), std::string::npos);
  EXPECT_TRUE(has_reason(*count, "turn away, since stone"));
  ASSERT_EQ(findings.sequential_counts.size(), 1U);
  const auto& picture = findings.sequential_counts.front();
  EXPECT_EQ(picture.path.size(), 200U);
  EXPECT_GT(picture.path.back(), 100);
  EXPECT_TRUE(std::is_sorted(picture.path.begin(), picture.path.end()));
}

TEST(LotDecision, LotWithoutLooksIsPlannedFor) {
  ExampleDocument example;
  example.items["looks"].clear();
  const auto findings = findings_of(example);
  const auto* plan = findings.find("count-plan.first");
  ASSERT_NE(plan, nullptr);
  EXPECT_EQ(plan->outcome, Outcome::not_yet_known);
  ASSERT_EQ(plan->values.size(), 1U);
  EXPECT_GT(plan->values[0].value.si, 100);
}

TEST(CompareRock, OtherRockThanTheReferenceIsSeen) {
  ExampleDocument example;
  example.items["lots"]["accepted"] = example.items["lots"]["first"];
  example.items["lots"]["accepted"]["name"] = "Accepted pile";
  example.items["lots"]["accepted"]["reference"] = "yes";
  example.items["looks"].clear();
  example.items["looks"]["old"] = count_between("accepted", 6, 20, 100);
  example.items["looks"]["new"] = count_between("first", 6, 20, 100);
  const auto alike = findings_of(example);
  ASSERT_NE(alike.find("compare.first.reference"), nullptr);
  EXPECT_EQ(alike.find("compare.first.reference")->outcome, Outcome::meets);
  EXPECT_EQ(alike.find("compare.accepted.reference"), nullptr);
  example.items["looks"]["new"] = count_between("first", 4, 14, 100);
  const auto other = findings_of(example);
  EXPECT_EQ(other.find("compare.first.reference")->outcome, Outcome::ask_the_designer);
}

TEST(CompareRock, SidesOfASegregatedPile) {
  ExampleDocument example;
  example.items["looks"].clear();
  example.items["looks"]["north"] = count_between("first", 4, 12, 80);
  example.items["looks"]["south"] = count_between("first", 10, 22, 80);
  example.items["looks"]["north"]["side"] = "north face";
  example.items["looks"]["south"]["side"] = "south face";
  const auto findings = findings_of(example);
  const auto* sides = findings.find("compare.first.sides.1");
  ASSERT_NE(sides, nullptr);
  EXPECT_EQ(sides->outcome, Outcome::falls_short);
  EXPECT_EQ(sides->about.method, "two-piles");
  EXPECT_EQ(findings.find("compare.first.sides.2"), nullptr);
}

TEST(CompareRock, LoadAgainstTheRest) {
  ExampleDocument example;
  example.items["loads"]["load-9"] = {
      {"lot", "first"}, {"when", "2026-05-20T09:00:00Z"}, {"ticket", "4709"}};
  example.items["looks"].clear();
  example.items["looks"]["pile"] = count_between("first", 6, 20, 100);
  example.items["looks"]["one"] = count_between("first", 3, 9, 60);
  example.items["looks"]["one"]["load"] = "load-9";
  const auto findings = findings_of(example);
  const auto* load = findings.find("compare.first.load.load-9");
  ASSERT_NE(load, nullptr);
  EXPECT_EQ(load->outcome, Outcome::falls_short) << load->sentence;
  example.items["looks"]["one"]["load"] = "load-10";
  const auto site = read_site(example.text());
  ASSERT_FALSE(site);
  EXPECT_EQ(site.problems().front().code, "no-such-item");
}

TEST(Remedies, StandInOneListWithTheReason) {
  ExampleDocument example;
  example.items["looks"].clear();
  example.items["looks"]["count"] = count_between("first", 3, 40, 150);
  example.items["lots"]["first"]["available"] = "200 ton";
  const auto findings = findings_of(example);
  const auto* scalp = findings.find("remedy.first.scalp");
  ASSERT_NE(scalp, nullptr);
  EXPECT_NE(scalp->sentence.find("% of the mass"), std::string::npos) << scalp->sentence;
  std::size_t remedies = 0;
  int last = -1;
  const auto order = [](Outcome outcome) {
    return outcome == Outcome::meets              ? 0
           : outcome == Outcome::not_yet_known    ? 1
           : outcome == Outcome::ask_the_designer ? 2
                                                  : 3;
  };
  for (const auto& finding : findings.findings) {
    if (finding.topic != Topic::remedy) continue;
    ++remedies;
    ASSERT_FALSE(finding.reasons.empty());
    EXPECT_EQ(finding.reasons.front().find(fmt::format("Remedy {} of", remedies)), 0U);
    EXPECT_GE(order(finding.outcome), last);
    last = order(finding.outcome);
  }
  EXPECT_GE(remedies, 3U);
}

TEST(LotsInZones, CheapestLotThatHoldsServesTheZone) {
  ExampleDocument example;
  example.items["ordering"] = {{"voids", "38 %"}};
  const auto zone = example.items["lots"]["first"]["zones"][0].get<std::string>();
  example.items["zones"][zone]["extent"] = {{"length", "200 ft"}, {"slope_length", "20 ft"}};
  example.items["looks"].clear();
  example.items["looks"]["one"] = count_between("first", 14, 30, 150);
  example.items["lots"]["second"] = example.items["lots"]["first"];
  example.items["lots"]["second"]["name"] = "Second pile";
  example.items["looks"]["two"] = count_between("second", 14, 30, 150);
  example.items["lots"]["first"]["price"] = {{"amount", "50"}, {"per", "ton"}};
  example.items["lots"]["second"]["price"] = {{"amount", "40"}, {"per", "ton"}};
  const auto findings = findings_of(example);
  const auto* choice = findings.find("lots-in-zones");
  ASSERT_NE(choice, nullptr);
  EXPECT_EQ(choice->outcome, Outcome::meets) << choice->sentence;
  EXPECT_EQ(choice->sentence.find("Second pile to"), 0U) << choice->sentence;
  example.items["lots"]["second"]["available"] = "5 ton";
  const auto scarce = findings_of(example);
  EXPECT_NE(scarce.find("lots-in-zones")->sentence.find("to"), std::string::npos);
  EXPECT_NE(scarce.find("lots-in-zones")->sentence.find("Second pile to"), 0U);
}

TEST(RockAsPlaced, LayerIsHeldAgainstTheMeasuredStones) {
  ExampleDocument example;
  example.items["looks"].clear();
  example.items["looks"]["count"] = count_between("first", 6, 22, 150);
  example.items["layer_surveys"]["probe"] = {
      {"name", "Probe"},
      {"zone", "bank"},
      {"thicknesses", {"24 in", "25 in", "24.5 in", "26 in", "25.5 in", "24.8 in"}}};
  const auto good = findings_of(example);
  const auto* placed = good.find("as-placed.bank.first.probe");
  ASSERT_NE(placed, nullptr);
  EXPECT_EQ(placed->outcome, Outcome::meets) << placed->sentence;
  example.items["looks"]["count"] = count_between("first", 6, 30, 150);
  const auto large = findings_of(example);
  EXPECT_EQ(large.find("as-placed.bank.first.probe")->outcome, Outcome::falls_short);
}

TEST(LoadsWithinLimits, ShareOfTheLot) {
  ExampleDocument example;
  int hour = 0;
  for (const double size : {11.9, 12.1, 12.6, 12.0, 12.3}) {
    example.items["loads"][fmt::format("load-{}", hour)] = {
        {"lot", "first"},
        {"when", fmt::format("2026-05-20T{:02d}:00:00Z", hour)},
        {"median_size", fmt::format("{} in", size)}};
    ++hour;
  }
  const auto findings = findings_of(example);
  const auto* within = findings.find("supply.first.within-limits");
  ASSERT_NE(within, nullptr);
  EXPECT_EQ(within->about.method, "percent-within-limits");
  EXPECT_FALSE(within->values.empty());
}

}  // namespace
}  // namespace proofstone
