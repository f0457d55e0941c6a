// A pile that no single material mends and two together do.
#include "engine/site/several_blend.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>

#include "engine/blend/blend_target.h"
#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/site/lot_evidence.h"
#include "engine/site/site_blend.h"

namespace proofstone {
namespace {

using nlohmann::json;

json stock(const char* name, const char* small, const char* large) {
  return {{"name", name},
          {"gradation", json::array({{{"size", small}, {"smaller", "0 %"}},
                                     {{"size", large}, {"smaller", "100 %"}}})}};
}

/// A pile of stones of 4 to 10 in for Class III, with stones of 11 to 15 and of 15.5 to 18.5 in on
/// offer: with the middle ones alone too much is smaller than 15.5 in, with the large ones alone
/// too little than 14 in.
ExampleDocument fine_pile() {
  ExampleDocument example;
  example.items["looks"]["count"]["stones"]["bins"] =
      json::array({{{"larger_than", "4 in"}, {"not_larger_than", "6 in"}, {"stones", 120}},
                   {{"larger_than", "6 in"}, {"not_larger_than", "8 in"}, {"stones", 140}},
                   {{"larger_than", "8 in"}, {"not_larger_than", "10 in"}, {"stones", 140}}});
  example.items["materials"] = {{"large", stock("Large stock", "15.5 in", "18.5 in")},
                                {"middle", stock("Middle stock", "11 in", "15 in")}};
  return example;
}

Site site_of(const ExampleDocument& example) {
  auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? *site : Site{};
}

std::optional<Finding> several_in(const Site& site) {
  const auto findings = assess(site, UnitSystem::us_customary);
  const auto* found = findings.find("remedy.first.blend-of-several");
  return found == nullptr ? std::nullopt : std::optional<Finding>(*found);
}

double value_of(const Finding& finding, const std::string& key) {
  for (const auto& value : finding.values) {
    if (value.key == key) return value.value.si;
  }
  ADD_FAILURE() << "no " << key;
  return 0;
}

/// The least that is added to a load, at what a load of each costs, by trying every round.
double least_by_trying(const Site& site, const std::vector<double>& costs) {
  const Wording wording(UnitSystem::us_customary);
  const auto evidence = weigh_lot(site, site.lots.at("first"), wording);
  std::vector<OfferedMaterial> rocks{{"first", "First", evidence.together->curve, {}, {}, {}, {}}};
  for (const auto& material : offered_materials(site)) rocks.push_back(material);
  const auto target = *blend_target(rocks, evidence.ordered->band);
  double least = std::numeric_limits<double>::infinity();
  for (int pile = 1; pile <= 10; ++pile) {
    for (int a = 0; pile + a <= 10; ++a) {
      for (int b = 0; pile + a + b <= 10; ++b) {
        const double all = pile + a + b;
        if (target.margin({pile / all, a / all, b / all}) < -1e-9) continue;
        least = std::min(least, (a * costs[0] + b * costs[1]) / all);
      }
    }
  }
  return least;
}

TEST(SeveralBlend, TwoMaterialsMendWhatNeitherMendsAlone) {
  const auto site = site_of(fine_pile());
  const auto found = several_in(site);
  ASSERT_TRUE(found);
  EXPECT_NE(found->sentence.find("of Large stock"), std::string::npos) << found->sentence;
  EXPECT_NE(found->sentence.find("of Middle stock"), std::string::npos) << found->sentence;
  EXPECT_NE(found->sentence.find("none takes less of the others"), std::string::npos);
  EXPECT_NE(found->outcome, Outcome::falls_short);
  EXPECT_LT(least_by_trying(site, {1, 1}), 1);
}

TEST(SeveralBlend, WhereAllHaveAPriceTheRoundIsTheCheapest) {
  auto example = fine_pile();
  example.items["materials"]["large"]["price"] = {{"amount", "50"}, {"per", "t"}};
  example.items["materials"]["middle"]["price"] = {{"amount", "20"}, {"per", "t"}};
  auto site = site_of(example);
  auto found = several_in(site);
  ASSERT_TRUE(found);
  EXPECT_NE(found->sentence.find("no whole loads of these materials cost less"), std::string::npos)
      << found->sentence;
  EXPECT_NEAR(value_of(*found, "cost_of_added"), least_by_trying(site, {50, 20}), 1e-6);
  // Dear middle stock: less of it.
  example.items["materials"]["middle"]["price"]["amount"] = "200";
  site = site_of(example);
  found = several_in(site);
  ASSERT_TRUE(found);
  EXPECT_NEAR(value_of(*found, "cost_of_added"), least_by_trying(site, {50, 200}), 1e-6);
}

TEST(SeveralBlend, IsNotOfferedWhereOneMaterialDoesAsWellOrThereIsOnlyOne) {
  auto example = fine_pile();
  example.items["materials"].erase("middle");
  EXPECT_FALSE(several_in(site_of(example)));
  // Soil is no rock to blend with.
  example.items["materials"]["loam"] = stock("Loam", "0.02 mm", "2 mm");
  EXPECT_FALSE(several_in(site_of(example)));
}

TEST(SeveralBlend, SoilAndBeddingAreNoRock) {
  const auto site = site_of(fine_pile());
  EXPECT_TRUE(is_rock(site.materials.at("middle")));
  auto loam = fine_pile();
  loam.items["materials"]["loam"] = stock("Loam", "0.02 mm", "2 mm");
  EXPECT_FALSE(is_rock(site_of(loam).materials.at("loam")));
}

}  // namespace
}  // namespace proofstone
