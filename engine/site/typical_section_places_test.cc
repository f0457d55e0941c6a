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
  EXPECT_FALSE(section_of(with_zone({{"place", "pier"}, {"section", "one"}}), "typical.bank"));
  EXPECT_FALSE(section_of(with_zone({{"place", "pier"}, {"section", "one"}}), "keys.bank"));
}

}  // namespace
}  // namespace proofstone
