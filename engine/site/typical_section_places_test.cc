// Typical sections of other places than banks, and the key at the ends of a bank.
#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

std::optional<Picture> section_of(const ExampleDocument& example, const std::string& id) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  if (!site) return std::nullopt;
  for (const auto& section : assess(*site, UnitSystem::us_customary).typical_sections) {
    if (section.id == id) return section;
  }
  return std::nullopt;
}

ExampleDocument with_zone(const nlohmann::json& zone) {
  ExampleDocument example;
  auto& bank = example.items["zones"]["bank"];
  for (const char* field : {"bank", "bend", "section"}) bank.erase(field);
  bank.update(zone);
  return example;
}

bool notes(const Picture& picture, const std::string& words) {
  for (const auto& note : picture.notes) {
    if (note.label.find(words) != std::string::npos) return true;
  }
  return false;
}

TEST(TypicalSectionPlaces, ABedIsSeenAcrossFromBankTopToBankTop) {
  auto example = with_zone({{"place", "bed"}, {"section", "one"}});
  example.items["zones"]["bank"]["kinds"] =
      nlohmann::json::array({{{"kind", "void-filled"}, {"up_to", "top"}}});
  example.items["zones"]["bank"]["filter"] =
      nlohmann::json::array({{{"kind", "granular"}, {"bedding", "coarse"}, {"thickness", "6 in"}}});
  const auto bed = section_of(example, "typical.bank");
  ASSERT_TRUE(bed);
  EXPECT_TRUE(bed->level);
  EXPECT_TRUE(bed->slope_text.empty());
  ASSERT_EQ(bed->surface.size(), 5U);
  EXPECT_NEAR(bed->surface.back().station.feet(), 26, 1e-9);
  EXPECT_NEAR(bed->surface.front().station.feet(), 124, 1e-9);
  EXPECT_NEAR(bed->surface.front().elevation.feet(), 112.3, 1e-9);
  ASSERT_EQ(bed->parts.size(), 1U);
  EXPECT_EQ(bed->parts[0].kind, RockKind::void_filled);
  EXPECT_EQ(bed->under.size(), 1U);
  ASSERT_EQ(bed->dimensions.size(), 1U);
  EXPECT_EQ(bed->dimensions[0].label, "lined 98.00 ft wide, from bank top to bank top");
  EXPECT_EQ(bed->water_levels.size(), 2U);
}

// 1V:3H and 4 ft of water: the foot is 4 ft below the still water, and 30 ft of slope rise
// 30/√10 = 9.49 ft.
TEST(TypicalSectionPlaces, AShoreIsDrawnUpTheSlopeThatItsMethodIsGiven) {
  const auto example = with_zone(
      {{"place", "shore"},
       {"extent", {{"slope_length", "30 ft"}}},
       {"toe", {{"kind", "trench"}, {"depth", "2.5 ft"}}},
       {"water",
        {{"flood", {{"from", "wind record"}, {"wave_height", "2.1 ft"}, {"depth", "4 ft"}}}}},
       {"method_choices", {{"hudson", {{"slope", "1V:3H"}}}}}});
  const auto shore = section_of(example, "typical.bank");
  ASSERT_TRUE(shore);
  EXPECT_FALSE(shore->level);
  EXPECT_NEAR(shore->rise_per_run, 1.0 / 3, 1e-9);
  EXPECT_EQ(shore->slope_text, "3");
  // The trench goes on at the slope: 2.5 ft down, 7.5 ft out.
  EXPECT_NEAR(shore->surface.front().elevation.feet(), -6.5, 1e-9);
  EXPECT_NEAR(shore->surface.front().station.feet(), 7.5, 1e-9);
  EXPECT_NEAR(shore->surface.back().elevation.feet(), 30 / std::sqrt(10) - 4, 1e-9);
  ASSERT_TRUE(shore->toe_depth);
  EXPECT_TRUE(shore->notes.empty());
  ASSERT_EQ(shore->water_levels.size(), 1U);
  EXPECT_NEAR(shore->water_levels[0].level.feet(), 0, 1e-12);
  ASSERT_EQ(shore->dimensions.size(), 1U);
  const auto& wave = shore->dimensions[0];
  EXPECT_NEAR((wave.from.elevation - wave.to.elevation).feet(), 2.1, 1e-9);
}

TEST(TypicalSectionPlaces, EndsOfAShoreThatNobodyStatesAreNamed) {
  auto zone =
      nlohmann::json{{"place", "shore"},
                     {"water", {{"flood", {{"from", "wind record"}, {"wave_height", "2.1 ft"}}}}},
                     {"method_choices", {{"hudson", {{"slope", "1V:3H"}}}}}};
  const auto shore = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(shore);
  EXPECT_TRUE(notes(*shore, "upper end of the rock not stated"));
  EXPECT_TRUE(notes(*shore, "depth at the foot not stated"));
  EXPECT_NEAR(shore->surface.front().elevation.feet(), -2.1, 1e-9);
  EXPECT_NEAR(shore->surface.back().elevation.feet(), 2.1, 1e-9);
  zone.erase("method_choices");
  EXPECT_FALSE(section_of(with_zone(zone), "typical.bank"));
}

nlohmann::json outfall() {
  return {{"place", "outfall"},
          {"water",
           {{"flood",
             {{"from", "culvert hydraulics"},
              {"discharge", "85 ft³/s"},
              {"tailwater_depth", "2 ft"}}}}},
          {"method_choices", {{"outfall-apron", {{"diameter", "5 ft"}}}}}};
}

TEST(TypicalSectionPlaces, AnApronIsAsLongAsItsMethodAsksOrAsIsStated) {
  auto zone = outfall();
  auto apron = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(apron);
  EXPECT_TRUE(apron->level);
  ASSERT_TRUE(apron->conduit);
  EXPECT_NEAR(apron->conduit->height.feet(), 5, 1e-9);
  ASSERT_EQ(apron->water_levels.size(), 1U);
  EXPECT_NEAR(apron->water_levels[0].level.feet(), 2, 1e-9);
  // HEC-14 Table 10.1: aprons are 4 to 8 diameters long.
  const double length = apron->surface.front().station.feet();
  EXPECT_GE(length, 4 * 5 - 1e-9);
  EXPECT_LE(length, 8 * 5 + 1e-9);
  EXPECT_NE(apron->dimensions[0].label.find("Rock apron at a culvert outlet"), std::string::npos);
  EXPECT_NE(apron->dimensions[0].label.find("wide at its end"), std::string::npos);
  zone["extent"] = {{"length", "44 ft"}};
  apron = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(apron);
  EXPECT_NEAR(apron->surface.front().station.feet(), 44, 1e-9);
  EXPECT_NE(apron->dimensions[0].label.find("apron 44.00 ft long, as stated"), std::string::npos)
      << apron->dimensions[0].label;
  zone = outfall();
  zone.erase("method_choices");
  EXPECT_FALSE(section_of(with_zone(zone), "typical.bank"));
}

// 2 ft of layer; a key twice as deep, its sides 1:1, seen square to the slope.
TEST(TypicalSectionPlaces, TheKeyAtTheEndsIsSeenAlongTheBank) {
  const auto keys = section_of(ExampleDocument(), "keys.bank");
  ASSERT_TRUE(keys);
  EXPECT_TRUE(keys->level);
  ASSERT_FALSE(keys->blocks.empty());
  const auto& outline = keys->blocks[0].outline;
  ASSERT_EQ(outline.size(), 4U);
  EXPECT_NEAR(outline[0].elevation.feet(), -2, 1e-9);
  EXPECT_NEAR(outline[1].elevation.feet(), -4, 1e-9);
  EXPECT_NEAR((outline[1].station - outline[0].station).feet(), 2, 1e-9);
  EXPECT_NEAR((outline[3].station - outline[2].station).feet(), 2, 1e-9);
  EXPECT_EQ(keys->dimensions.size(), 3U);
  EXPECT_TRUE(notes(*keys, "its other end is the mirror"));
}

TEST(TypicalSectionPlaces, PlacesWithoutLinesHaveNone) {
  EXPECT_FALSE(section_of(with_zone({{"place", "chute"}, {"section", "one"}}), "typical.bank"));
  EXPECT_FALSE(section_of(with_zone({{"place", "pier"}, {"section", "one"}}), "keys.bank"));
}

TEST(TypicalSectionPlaces, AnApronIsSeenFromAboveAsWideAsItsMethodAsks) {
  const auto plan = section_of(with_zone(outfall()), "plan-view.bank");
  ASSERT_TRUE(plan);
  EXPECT_TRUE(plan->in_plan);
  ASSERT_EQ(plan->blocks.size(), 1U);
  const auto& outline = plan->blocks[0].outline;
  ASSERT_EQ(outline.size(), 4U);
  // HEC-14: 3·D at the conduit, 3·D + ⅔·L at the end.
  const double length = outline[1].station.feet();
  EXPECT_NEAR((outline[3].elevation - outline[0].elevation).feet(), 15, 1e-9);
  EXPECT_NEAR((outline[2].elevation - outline[1].elevation).feet(), 15 + 2.0 / 3 * length, 1e-9);
  ASSERT_EQ(plan->structures.size(), 1U);
  EXPECT_EQ(plan->dimensions.size(), 3U);
}

nlohmann::json chute(const char* place) {
  return {{"place", place},
          {"water", {{"flood", {{"from", "hydrology report"}, {"discharge", "100 ft³/s"}}}}},
          {"extent", {{"length", "50 ft"}}},
          {"method_choices", {{"rock-chute", {{"width", "20 ft"}, {"slope", "0.25"}}}}}};
}

// 50 ft down a slope of 4H:1V: run 48.51 ft, fall 12.13 ft.
TEST(TypicalSectionPlaces, AChuteIsSeenAlongTheFlowWithTheApronOfItsMethod) {
  auto zone = chute("chute");
  auto section = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(section);
  EXPECT_EQ(section->slope_text, "4");
  ASSERT_EQ(section->surface.size(), 3U);
  EXPECT_NEAR(section->surface[1].station.feet(), 50 * 4 / std::sqrt(17), 1e-9);
  EXPECT_NEAR(section->surface[1].elevation.feet(), -50 / std::sqrt(17), 1e-9);
  EXPECT_GT(section->surface[0].station, section->surface[1].station);
  EXPECT_EQ(section->dimensions.size(), 3U);
  zone.erase("extent");
  section = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(section);
  EXPECT_TRUE(notes(*section, "length of the face not stated"));
  zone.erase("method_choices");
  EXPECT_FALSE(section_of(with_zone(zone), "typical.bank"));
}

TEST(TypicalSectionPlaces, ADropShowsItsFallAndTailwater) {
  nlohmann::json zone = {
      {"place", "drop"},
      {"water",
       {{"flood",
         {{"from", "channel model"}, {"discharge", "480 ft³/s"}, {"tailwater_depth", "3 ft"}}}}},
      {"method_choices",
       {{"sloping-rock-drop", {{"width", "20 ft"}, {"slope", "7H:1V"}}},
        {"grouted-boulder-drop",
         {{"width", "20 ft"}, {"slope", "7H:1V"}, {"drop_height", "4 ft"}}}}}};
  const auto section = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(section);
  EXPECT_NEAR(section->surface.front().elevation.feet(), -4, 1e-9);
  EXPECT_NEAR(section->surface.front().station.feet(), 28, 1e-9);
  ASSERT_EQ(section->water_levels.size(), 1U);
  EXPECT_NEAR(section->water_levels[0].level.feet(), -1, 1e-9);
}

// HEC-14 basin example of checks/outfall-basin.json: hs 6.156 ft, pool 61.6 ft, basin 92.3 ft.
TEST(TypicalSectionPlaces, ABasinIsAsDeepAndLongAsItsMethodAsks) {
  const nlohmann::json zone = {
      {"place", "basin"},
      {"water",
       {{"flood",
         {{"from", "culvert hydraulics"},
          {"discharge", "800 ft³/s"},
          {"tailwater_depth", "2 ft"}}}}},
      {"method_choices",
       {{"outfall-basin",
         {{"shape", "box"}, {"width", "8 ft"}, {"brink_depth", "4 ft"}, {"d50", "1.8 ft"}}}}}};
  const auto section = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(section);
  ASSERT_EQ(section->surface.size(), 5U);
  const double deep = -section->surface[2].elevation.feet();
  EXPECT_GT(deep, 2 * 1.8);
  EXPECT_NEAR(section->surface[1].station.feet(), std::max(10 * deep, 24.0), 1e-6);
  EXPECT_NEAR(section->surface[0].station.feet(), std::max(15 * deep, 32.0), 1e-6);
  EXPECT_TRUE(notes(*section, "drawn at 2H:1V"));
  EXPECT_EQ(section->dimensions.size(), 3U);
}

nlohmann::json bridge(const char* place, const nlohmann::json& choices) {
  return {{"place", place},
          {"water",
           {{"flood", {{"from", "bridge hydraulics"}, {"velocity", "8 ft/s"}, {"depth", "9 ft"}}}}},
          {"method_choices", choices}};
}

TEST(TypicalSectionPlaces, APierIsSeenAcrossTheFlowWithRockAndFilterRoundIt) {
  auto zone =
      bridge("pier", {{"pier-riprap-layout", {{"pier_width", "4 ft"}, {"pier_length", "30 ft"}}}});
  zone["filter"] =
      nlohmann::json::array({{{"kind", "granular"}, {"bedding", "coarse"}, {"thickness", "6 in"}}});
  const auto pier = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(pier);
  // Twice the width on each side: 2 + 8 ft from the middle; the filter two thirds as far.
  EXPECT_NEAR(pier->surface.front().station.feet(), 10, 1e-9);
  ASSERT_EQ(pier->structures.size(), 1U);
  ASSERT_EQ(pier->under.size(), 1U);
  EXPECT_NEAR(pier->under[0].short_of_ends.feet(), 8.0 / 3, 1e-9);
  ASSERT_EQ(pier->water_levels.size(), 1U);
  EXPECT_NEAR(pier->water_levels[0].level.feet(), 9, 1e-9);
  EXPECT_FALSE(notes(*pier, "as they may be"));
}

TEST(TypicalSectionPlaces, APierOfUnknownWidthIsDrawnAsItMayBeAndSaysWhatIsMissing) {
  const auto pier = section_of(with_zone(bridge("pier", nlohmann::json::object())), "typical.bank");
  ASSERT_TRUE(pier);
  EXPECT_EQ(pier->structures.size(), 1U);
  EXPECT_TRUE(pier->dimensions.empty());
  EXPECT_TRUE(notes(*pier, "give pier_width under method_choices, pier-riprap-layout"));
}

TEST(TypicalSectionPlaces, AnAbutmentStandsAsAWallOrSpillsThrough) {
  auto zone = bridge("abutment", nlohmann::json::object());
  auto abutment = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(abutment);
  // 2·y_o, at most 25 ft.
  EXPECT_NEAR(abutment->surface.front().station.feet(), 18, 1e-9);
  EXPECT_EQ(abutment->structures.size(), 1U);
  EXPECT_TRUE(abutment->slope_text.empty());
  zone = bridge("abutment", {{"abutment-riprap", {{"form", "spill-through"}}}});
  abutment = section_of(with_zone(zone), "typical.bank");
  ASSERT_TRUE(abutment);
  // 9 ft of water and 2 ft more.
  EXPECT_NEAR(abutment->surface.back().elevation.feet(), 11, 1e-9);
  EXPECT_EQ(abutment->slope_text, "2");
  EXPECT_TRUE(notes(*abutment, "slope of the fill not stated"));
}

}  // namespace
}  // namespace proofstone
