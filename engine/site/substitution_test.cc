#include "engine/site/substitution.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

Expected<Substitution> study(const SubstituteRock& rock) {
  ExampleDocument example;
  example.items["sources"]["field"] = {
      {"name", "Field stone"}, {"specific_gravity", "2.55"}, {"angularity", "rounded"}};
  const auto site = site_from(example.document());
  EXPECT_TRUE(site);
  return study_substitution(*site, rock, Wording(UnitSystem::us_customary));
}

const ComparedRow* row(const Substitution& study, const std::string& what) {
  for (const auto& one : study.rows) {
    if (one.what.rfind(what, 0) == 0) return &one;
  }
  return nullptr;
}

double class_margin_in(const Substitution& study, std::size_t column) {
  const auto* found = row(study, "Stones against");
  EXPECT_NE(found, nullptr);
  if (found == nullptr || found->cells.size() <= column || !found->cells[column].margin) return 0;
  return found->cells[column].margin->value;
}

TEST(Substitution, LighterRockLeavesLessAndTakesALargerClass) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.specific_gravity = Dimensionless::number(2.3);
  const auto lighter = study(rock);
  ASSERT_TRUE(lighter);
  ASSERT_EQ(lighter->columns.size(), 3U);
  EXPECT_LT(class_margin_in(*lighter, 1), class_margin_in(*lighter, 0));
  EXPECT_GE(class_margin_in(*lighter, 2), class_margin_in(*lighter, 0) * (1 - 1e-9));
  EXPECT_EQ(row(*lighter, "Class")->cells[1].text, "Class III");
  EXPECT_NE(row(*lighter, "Class")->cells[2].text, "Class III");
  EXPECT_NE(lighter->finding.next.find("For the same safety specify"), std::string::npos);
}

TEST(Substitution, RoundedRockLeavesLessAndIsSaidToRollMoreReadily) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.angularity = Angularity::rounded;
  const auto rounded = study(rock);
  ASSERT_TRUE(rounded);
  EXPECT_LT(class_margin_in(*rounded, 1), class_margin_in(*rounded, 0));
}

TEST(Substitution, AnotherSourceBringsItsOwnRock) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.source = "field";
  const auto field = study(rock);
  ASSERT_TRUE(field);
  EXPECT_EQ(row(*field, "Source")->cells[1].text, "Field stone");
  EXPECT_EQ(row(*field, "Shape")->cells[1].text, "rounded");
  EXPECT_EQ(row(*field, "Specific gravity")->cells[1].text, "2.55");
}

TEST(Substitution, ANextClassUpLeavesMoreAndMayAskForAThickerLayer) {
  SubstituteRock rock;
  rock.zone = "bank";
  rock.rock_class = "fhwa-4";
  const auto up = study(rock);
  ASSERT_TRUE(up);
  EXPECT_GT(class_margin_in(*up, 1), class_margin_in(*up, 0));
  // Class IV has stones of 30 in, and the layer is 24 in thick.
  EXPECT_EQ(up->finding.outcome, Outcome::falls_short);
  EXPECT_NE(up->finding.sentence.find("too thin"), std::string::npos);
  EXPECT_EQ(row(*up, "Layer thickness")->cells[2].text, "30.0 in");
}

/// A bank on silty sand with bedding, filled with loam, topsoil over it.
ExampleDocument filled_bank() {
  ExampleDocument example;
  const auto curve = [](std::vector<std::pair<const char*, const char*>> points) {
    auto list = nlohmann::json::array();
    for (const auto& [size, smaller] : points) {
      list.push_back({{"size", size}, {"smaller", smaller}});
    }
    return list;
  };
  example.items["soils"]["sand"] = {
      {"name", "Silty sand"},
      {"gradation", curve({{"4.75 mm", "100 %"}, {"0.425 mm", "70 %"}, {"0.075 mm", "20 %"}})}};
  example.items["materials"]["loam"] = {
      {"name", "Loam"},
      {"gradation", curve({{"2 mm", "100 %"}, {"0.075 mm", "55 %"}, {"0.02 mm", "30 %"}})},
      {"porosity", "0.42"},
      {"loose_over_bank", "1.25"},
      {"in_place_over_bank", "0.90"}};
  example.items["materials"]["gravel"] = {
      {"name", "Gravel"},
      {"gradation", curve({{"75 mm", "100 %"}, {"25 mm", "55 %"}, {"5 mm", "10 %"}})}};
  example.items["mixes"]["fill"] = {
      {"name", "Soil-filled rock"},
      {"kind", "soil-filled"},
      {"class", "fhwa-3"},
      {"rock_voids", "0.40"},
      {"placing", "washed in"},
      {"rock_parts", "65"},
      {"parts", nlohmann::json::array({{{"material", "loam"}, {"parts", "35"}}})}};
  auto& zone = example.items["zones"]["bank"];
  zone["mix"] = "fill";
  zone["soil"] = "sand";
  zone["filter"] =
      nlohmann::json::array({{{"kind", "granular"}, {"bedding", "gravel"}, {"thickness", "9 in"}}});
  zone["cover"] = {{"from", "110 ft"}, {"topsoil", "6 in"}, {"blanket", {{"type", "3.B"}}}};
  return example;
}

TEST(Substitution, WhatTheRockIsMadeOfLiesOnAndIsCoveredWithStandsSideBySide) {
  const auto site = site_from(filled_bank().document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  SubstituteRock rock;
  rock.zone = "bank";
  rock.rock_class = "fhwa-4";
  const auto up = study_substitution(*site, rock, Wording(UnitSystem::us_customary));
  ASSERT_TRUE(up);
  const auto* mix = row(*up, "Soil-filled rock in Outer bank");
  ASSERT_NE(mix, nullptr);
  ASSERT_EQ(mix->cells.size(), up->columns.size());
  // The mix follows the zone into the other class: it is judged, not sent back for its class.
  EXPECT_EQ(mix->cells[0].outcome, Outcome::meets);
  EXPECT_EQ(mix->cells[1].outcome, Outcome::meets);
  int filters = 0;
  int covers = 0;
  const auto findings = assess(*site, UnitSystem::us_customary);
  for (const auto& finding : findings.findings) {
    if (finding.about.zone != "bank") continue;
    if (finding.topic == Topic::filter && row(*up, finding.title) != nullptr) ++filters;
    if (finding.topic == Topic::cover && row(*up, finding.title) != nullptr) ++covers;
  }
  EXPECT_GT(filters, 0);
  EXPECT_GT(covers, 0);
  const bool voids_named = std::any_of(
      up->finding.reasons.begin(), up->finding.reasons.end(),
      [](const std::string& reason) { return reason.find("weigh those") != std::string::npos; });
  EXPECT_TRUE(voids_named);
}

/// The bank of `filled_bank` without its fill, so that its filter decides.
ExampleDocument bare_bank_on_gravel() {
  auto example = filled_bank();
  example.items["zones"]["bank"].erase("mix");
  example.items["soils"]["sand"]["dispersive"] = "no";
  example.items["soils"]["sand"]["gradation"].push_back({{"size", "0.02 mm"}, {"smaller", "9 %"}});
  // A filter sand on the soil, a gravel over it.
  example.items["materials"]["sand"] = {{"name", "Filter sand"},
                                        {"gradation",
                                         {{{"size", "9.5 mm"}, {"smaller", "100 %"}},
                                          {{"size", "4.75 mm"}, {"smaller", "90 %"}},
                                          {{"size", "1.5 mm"}, {"smaller", "50 %"}},
                                          {{"size", "0.5 mm"}, {"smaller", "15 %"}},
                                          {{"size", "0.2 mm"}, {"smaller", "2 %"}}}}};
  example.items["materials"]["gravel"]["gradation"] = {{{"size", "75 mm"}, {"smaller", "100 %"}},
                                                       {{"size", "40 mm"}, {"smaller", "80 %"}},
                                                       {{"size", "10 mm"}, {"smaller", "18 %"}},
                                                       {{"size", "4 mm"}, {"smaller", "0 %"}}};
  example.items["zones"]["bank"]["filter"] =
      nlohmann::json::array({{{"kind", "granular"}, {"bedding", "sand"}, {"thickness", "6 in"}},
                             {{"kind", "granular"}, {"bedding", "gravel"}, {"thickness", "6 in"}}});
  return example;
}

// Stones so large that the gravel under them washes out: the stones gain, the filter loses, and a
// filter that serves is offered beside them.
TEST(Substitution, AFilterThatTheOtherRockNoLongerSuitsIsMended) {
  const auto site = site_from(bare_bank_on_gravel().document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  SubstituteRock rock;
  rock.zone = "bank";
  rock.rock_class = "fhwa-8";
  const auto up = study_substitution(*site, rock, Wording(UnitSystem::us_customary));
  ASSERT_TRUE(up);
  EXPECT_GT(class_margin_in(*up, 1), class_margin_in(*up, 0));
  EXPECT_NE(up->finding.sentence.find("Worse than with the rock specified"), std::string::npos)
      << up->finding.sentence;
  const auto* filter = row(*up, "Filter, from the soil up");
  ASSERT_NE(filter, nullptr);
  ASSERT_EQ(filter->cells.size(), 3U);
  EXPECT_EQ(filter->cells[0].text, filter->cells[1].text);
  const auto* judged = row(*up, "Filter of Outer bank");
  ASSERT_NE(judged, nullptr);
  EXPECT_TRUE(judged->cells[0].outcome != judged->cells[1].outcome);
  EXPECT_TRUE(judged->cells[2].outcome == judged->cells[0].outcome ||
              judged->cells[2].outcome == Outcome::meets)
      << filter->cells[2].text << " / " << up->finding.next;
  EXPECT_NE(filter->cells[2].text, filter->cells[1].text);
  EXPECT_NE(up->finding.next.find("Change the filter, from the soil up:"), std::string::npos)
      << up->finding.next;
  EXPECT_EQ(up->finding.next.find("Filter of Outer bank ("), std::string::npos) << up->finding.next;
}

// Smaller stones with smaller voids: loam that was washed in no longer is, and the proportions that
// serve stand beside those that do not.
TEST(Substitution, ProportionsOfTheMixStandBesideTheOriginal) {
  auto example = filled_bank();
  auto gravel = example.items["materials"]["loam"];
  gravel["name"] = "Pea gravel";
  gravel["gradation"] = {{{"size", "12 mm"}, {"smaller", "100 %"}},
                         {{"size", "6 mm"}, {"smaller", "40 %"}},
                         {{"size", "2 mm"}, {"smaller", "0 %"}}};
  example.items["materials"]["pea"] = gravel;
  example.items["mixes"]["fill"]["parts"][0]["material"] = "pea";
  example.items["mixes"]["fill"]["on_offer"] = {"loam", "pea"};
  const auto site = site_from(example.document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  SubstituteRock rock;
  rock.zone = "bank";
  rock.rock_class = "fhwa-1";
  const auto down = study_substitution(*site, rock, Wording(UnitSystem::us_customary));
  ASSERT_TRUE(down);
  const auto* parts = row(*down, "Proportions of the mix");
  ASSERT_NE(parts, nullptr);
  EXPECT_EQ(parts->cells[0].text, "65 of the rock to 35 of Pea gravel");
  EXPECT_EQ(parts->cells[1].text, parts->cells[0].text);
}

// Heavier rock, one class smaller, is as safe; but the gravel that was washed into the voids of the
// larger stones does not go into those of the smaller ones.
TEST(Substitution, AMixThatTheOtherRockNoLongerSuitsIsMended) {
  auto example = filled_bank();
  auto& materials = example.items["materials"];
  auto round = materials["loam"];
  round["name"] = "Round gravel";
  round["gradation"] = {{{"size", "32 mm"}, {"smaller", "100 %"}},
                        {{"size", "28 mm"}, {"smaller", "80 %"}},
                        {{"size", "10 mm"}, {"smaller", "20 %"}},
                        {{"size", "2 mm"}, {"smaller", "0 %"}}};
  materials["round"] = round;
  auto& mix = example.items["mixes"]["fill"];
  mix["parts"][0]["material"] = "round";
  mix["on_offer"] = {"loam", "round"};
  const auto site = site_from(example.document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  SubstituteRock rock;
  rock.zone = "bank";
  rock.rock_class = "fhwa-2";
  rock.specific_gravity = Dimensionless::number(3.5);
  const auto down = study_substitution(*site, rock, Wording(UnitSystem::us_customary));
  ASSERT_TRUE(down);
  ASSERT_EQ(down->columns.size(), 3U);
  EXPECT_EQ(row(*down, "Class")->cells[2].text, "Class II");
  const auto* judged = row(*down, "Soil-filled rock in Outer bank");
  ASSERT_NE(judged, nullptr);
  EXPECT_EQ(judged->cells[0].outcome, Outcome::meets);
  EXPECT_EQ(judged->cells[1].outcome, Outcome::falls_short);
  EXPECT_EQ(judged->cells[2].outcome, Outcome::meets);
  const auto* parts = row(*down, "Proportions of the mix");
  ASSERT_NE(parts, nullptr);
  EXPECT_EQ(parts->cells[1].text, parts->cells[0].text);
  EXPECT_NE(parts->cells[2].text, parts->cells[1].text);
  EXPECT_NE(down->finding.next.find("Change the mix: " + parts->cells[2].text), std::string::npos)
      << down->finding.next;
}

/// Walks, surveys and what was found wrong in other zones stand in nobody's way.
TEST(Substitution, IsStudiedBesideWhatWasPlacedElsewhere) {
  ExampleDocument example;
  auto& items = example.items;
  items["zones"]["other-bank"] = items["zones"]["bank"];
  items["placing_walks"]["walk"] = {{"name", "First strip"},
                                    {"zone", "other-bank"},
                                    {"who", "R. Salas"},
                                    {"when", "2026-07-14T17:20:00Z"},
                                    {"checks", {{"subgrade", {{"measured", {"0.03 ft"}}}}}}};
  items["layer_surveys"]["survey"] = {{"name", "First strip"},
                                      {"zone", "other-bank"},
                                      {"who", "R. Salas"},
                                      {"when", "2026-07-14T17:20:00Z"},
                                      {"thicknesses", {"22 in", "24 in"}}};
  items["nonconformances"]["thin"] = {
      {"name", "Thin at the toe"},
      {"zone", "other-bank"},
      {"opened", {{"who", "R. Salas"}, {"when", "2026-07-14T17:40:00Z"}, {"note", "18 in"}}}};
  const auto site = site_from(example.document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  SubstituteRock rock;
  rock.zone = "bank";
  rock.specific_gravity = Dimensionless::number(2.3);
  const Wording wording(UnitSystem::us_customary);
  const auto beside = study_substitution(*site, rock, wording);
  ASSERT_TRUE(beside);
  const auto alone = study(rock);
  ASSERT_TRUE(alone);
  EXPECT_EQ(beside->finding.sentence, alone->finding.sentence);
}

TEST(Substitution, WhatCannotBeStudiedIsNamed) {
  const auto code = [](const SubstituteRock& rock) {
    const auto asked = study(rock);
    return asked ? std::string() : asked.problems().front().code;
  };
  SubstituteRock rock;
  EXPECT_EQ(code(rock), "no-such-item");
  rock.zone = "bank";
  EXPECT_EQ(code(rock), "missing-field");
  rock.source = "moon";
  EXPECT_EQ(code(rock), "no-such-item");
  rock.source.clear();
  rock.rock_class = "feather";
  EXPECT_EQ(code(rock), "no-such-class");
  rock.rock_class.clear();
  rock.specific_gravity = Dimensionless::number(9);
  EXPECT_EQ(code(rock), "implausible");
}

}  // namespace
}  // namespace proofstone
