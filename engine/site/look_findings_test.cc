// Quick looks, mass ranges, counts of shape, and what is refused in looks.
#include <gtest/gtest.h>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

json look(const char* kind, const json& more) {
  json one = {{"name", "Look"}, {"kind", kind}, {"lot", "first"}};
  one.update(more);
  return one;
}

json quick(const char* smallest, const char* largest) {
  return look(
      "quick look",
      {{"smallest", smallest}, {"largest", largest}, {"shape", "blocky"}, {"fines", "little"}});
}

ExampleDocument with_look(const json& one) {
  ExampleDocument example;
  example.items["looks"]["extra"] = one;
  return example;
}

Findings findings_of(const ExampleDocument& example) {
  const auto site = read_site(example.text());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

Problem first_problem(const json& one) {
  const auto site = read_site(with_look(one).text());
  return site ? Problem{} : site.problems().front();
}

TEST(QuickLook, NeverGivesAVerdict) {
  for (const auto& one :
       {quick("8 in", "18 in"), quick("11 in", "13 in"), quick("1 in", "40 in")}) {
    const auto findings = findings_of(with_look(one));
    const auto* finding = findings.find("quick-look.first.extra");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->outcome, Outcome::not_yet_known);
    EXPECT_FALSE(finding->governs);
  }
}

TEST(QuickLook, ComparesWithTheMediansOfTheNeighbours) {
  // Class III of 12 in lies between 9 in and 15 in.
  const auto sentence = [](const json& one) {
    return findings_of(with_look(one)).find("quick-look.first.extra")->sentence;
  };
  EXPECT_NE(sentence(quick("9 in", "15 in")).find("looks right; not yet known"), std::string::npos);
  EXPECT_NE(sentence(quick("9.5 in", "15 in")).find("small end is missing"), std::string::npos);
  EXPECT_NE(sentence(quick("9 in", "14 in")).find("large end is missing"), std::string::npos);
  EXPECT_NE(sentence(quick("9 in", "25 in")).find("larger than"), std::string::npos);
}

TEST(QuickLook, LeavesTheMeasuredVerdictAsItIs) {
  const auto before = findings_of(ExampleDocument());
  const auto after = findings_of(with_look(quick("1 in", "40 in")));
  EXPECT_EQ(before.find("gradation.first")->sentence, after.find("gradation.first")->sentence);
  EXPECT_EQ(before.headline_outcome, after.headline_outcome);
}

TEST(QuickLook, HalfFilledAndSwappedFormsAreRefused) {
  auto one = quick("8 in", "18 in");
  one.erase("largest");
  EXPECT_EQ(first_problem(one).code, "missing-field");
  EXPECT_EQ(first_problem(quick("18 in", "8 in")).code, "swapped");
  EXPECT_EQ(first_problem(quick("-8 in", "18 in")).code, "not-positive");
  EXPECT_EQ(first_problem(quick("8 in", "2160 in")).code, "implausible");
  EXPECT_EQ(first_problem(quick("8 in", "450 mm")).code, "mixed-units");
  one = quick("8 in", "18 in");
  const json gap = {{"larger_than", "12 in"}, {"not_larger_than", "10 in"}};
  one["missing"] = json::array({gap});
  EXPECT_EQ(first_problem(one).where, "/looks/extra/missing/0/larger_than");
  one = quick("8 in", "18 in");
  one["place"] = {{"easting", "10 m"}};
  EXPECT_EQ(first_problem(one).where, "/looks/extra/place/northing");
  one = quick("8 in", "18 in");
  one["lot"] = "nowhere";
  EXPECT_EQ(first_problem(one).code, "no-such-item");
}

TEST(Looks, AStoneLargerThanTheLayerIsQuestioned) {
  const auto findings = findings_of(with_look(quick("8 in", "25 in")));
  const auto* finding = findings.find("stone-and-layer.first.extra");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->outcome, Outcome::ask_the_designer);
  EXPECT_EQ(findings_of(with_look(quick("8 in", "24 in"))).find("stone-and-layer.first.extra"),
            nullptr);
}

TEST(Looks, ACountInTwoUnitsIsRefused) {
  const auto count = [](const std::vector<std::string>& axes) {
    return look("stone count", {{"picking", "grid"}, {"stones", {{"axes", axes}}}});
  };
  EXPECT_EQ(first_problem(count({"12 in", "14 in", "300 mm"})).code, "mixed-units");
  EXPECT_EQ(first_problem(count({"12 in", "14 in", "300 mm"})).where, "/looks/extra/stones/axes/2");
  EXPECT_EQ(first_problem(count({"300 mm", "250 mm"})).code, "");
  // One unit, however it is spelled.
  EXPECT_EQ(first_problem(count({"12 in", "14 inches", "9.5in", "11 in.", "10\""})).code, "");
  EXPECT_EQ(first_problem(count({"12 in.", "1.2 ft"})).code, "mixed-units");
  EXPECT_EQ(first_problem(count({"3.5 ft", "3.5 US survey ft"})).code, "mixed-units");
  const json groups = {
      {{"not_larger_than", "12 in"}, {"mass", "900 lb"}, {"stones", 9}},
      {{"larger_than", "305 mm"}, {"not_larger_than", "18 in"}, {"mass", "900 lb"}, {"stones", 4}}};
  const auto weighed = first_problem(look("weighed sample", {{"groups", {{"groups", groups}}}}));
  EXPECT_EQ(weighed.code, "mixed-units");
  EXPECT_EQ(weighed.where, "/looks/extra/groups/groups/1/larger_than");
}

TEST(Looks, TheSameLookTwiceIsRefused) {
  auto example = with_look(quick("8 in", "18 in"));
  auto& looks = example.items["looks"];
  looks["extra"]["who"] = "L. Brandt";
  looks["extra"]["when"] = "2026-05-03T10:00:00Z";
  looks["other"] = looks["extra"];
  const auto site = read_site(example.text());
  ASSERT_FALSE(site);
  EXPECT_EQ(site.problems().front().code, "repeated-look");
  looks["other"]["when"] = "2026-05-03T10:05:00Z";
  EXPECT_TRUE(read_site(example.text()));
}

TEST(Looks, AClockThatIsWrongIsNamed) {
  auto one = quick("8 in", "18 in");
  one["when"] = "2031-01-01T00:00:00Z";
  const auto findings = findings_of(with_look(one));
  ASSERT_NE(findings.find("document.clock"), nullptr);
  EXPECT_EQ(findings_of(with_look(quick("8 in", "18 in"))).find("document.clock"), nullptr);
}

json range(const char* above, const char* up_to, const char* mass, int stones) {
  json one = {{"not_heavier_than", up_to}, {"mass", mass}, {"stones", stones}};
  if (above != nullptr) one["heavier_than"] = above;
  return one;
}

TEST(MassRanges, GiveTheSameCurveAsTheirSizesWeighed) {
  const json ranges = {range(nullptr, "40 lb", "1450 lb", 80),
                       range("40 lb", "200 lb", "11800 lb", 110),
                       range("200 lb", "640 lb", "11250 lb", 33)};
  auto example = with_look(look("mass ranges", {{"ranges", ranges}}));
  example.items["looks"].erase("count");
  const auto findings = findings_of(example);
  const auto* finding = findings.find("gradation.first.extra");
  ASSERT_NE(finding, nullptr);
  EXPECT_NE(finding->sentence.find("by mass ranges"), std::string::npos) << finding->sentence;
  // 1450 of 24500 lb, and 13250 of it: 5.92 % and 54.08 %.
  std::vector<double> shares;
  for (const auto& step : finding->steps.lines()) {
    if (step.symbol == "F1" || step.symbol == "F2") shares.push_back(step.value.si);
  }
  ASSERT_GE(shares.size(), 2U);
  EXPECT_NEAR(shares[0], 5.918, 0.001);
  EXPECT_NEAR(shares[1], 54.082, 0.001);
}

TEST(MassRanges, GapsAndMixedUnitsAreNamed) {
  EXPECT_EQ(first_problem(look("mass ranges", {{"ranges",
                                                {range(nullptr, "40 lb", "1 ton", 9),
                                                 range("20 kg", "90 kg", "1 ton", 9)}}}))
                .code,
            "mixed-units");
  const auto findings = findings_of(with_look(look(
      "mass ranges",
      {{"ranges", {range(nullptr, "40 lb", "1 ton", 9), range("90 lb", "200 lb", "1 ton", 9)}}})));
  EXPECT_EQ(findings.find("gradation.first.extra")->outcome, Outcome::not_yet_known);
}

json stones_of(int slender, int blocky) {
  json stones = json::array();
  for (int i = 0; i < slender + blocky; ++i) {
    stones.push_back({{"longest", "20 in"},
                      {"intermediate", "10 in"},
                      {"shortest", i < slender ? "6 in" : "9 in"}});
  }
  return look("shape count", {{"stones", stones}});
}

TEST(ShapeCount, SharesOfSlenderStonesAreJudgedWithTheirLimits) {
  const auto outcome = [](int slender, int blocky) {
    return findings_of(with_look(stones_of(slender, blocky))).find("shape.first.extra")->outcome;
  };
  EXPECT_EQ(outcome(0, 100), Outcome::meets);
  EXPECT_EQ(outcome(60, 40), Outcome::falls_short);
  EXPECT_EQ(outcome(3, 17), Outcome::not_yet_known);
}

TEST(ShapeCount, SwappedAxesAreRefused) {
  auto one = stones_of(0, 2);
  one["stones"][1]["shortest"] = "30 in";
  EXPECT_EQ(first_problem(one).code, "swapped");
  EXPECT_EQ(first_problem(one).where, "/looks/extra/stones/1/longest");
  one["stones"] = json::array();
  EXPECT_EQ(first_problem(one).code, "empty");
}

}  // namespace
}  // namespace proofstone
