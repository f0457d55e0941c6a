#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

std::vector<TypicalSectionPicture> sections_of(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  if (!site) return {};
  auto sections = assess(*site, UnitSystem::us_customary).typical_sections;
  std::erase_if(sections, [](const auto& one) { return one.id.rfind("typical.", 0) != 0; });
  return sections;
}

TEST(TypicalSectionOf, ABankWithoutMoreIsItsLayer) {
  const auto sections = sections_of(ExampleDocument());
  ASSERT_EQ(sections.size(), 1u);
  const auto& section = sections.front();
  EXPECT_EQ(section.id, "typical.bank");
  ASSERT_EQ(section.parts.size(), 1u);
  EXPECT_NE(section.parts[0].label.find("kind of rock not stated"), std::string::npos);
  EXPECT_NEAR(section.surface.front().elevation.feet(), 104.3, 1e-9);
  EXPECT_NEAR(section.surface.back().elevation.feet(), 117, 1e-9);
  EXPECT_NEAR(section.rise_per_run, 12.7 / 32, 1e-9);
  EXPECT_EQ(section.water_levels.size(), 2u);
}

TEST(TypicalSectionOf, ShowsToeKeyFilterKindsAndCover) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["toe"] = {{"kind", "trench"}, {"depth", "4 ft"}};
  zone["top_key"] = {{"width", "3 ft"}, {"depth", "2 ft"}};
  zone["kinds"] = {{{"kind", "void-filled"}, {"up_to", "low"}},
                   {{"kind", "soil-filled"}, {"up_to", "top"}}};
  zone["cover"] = {{"from", "110 ft"}, {"topsoil", "6 in"}, {"blanket", {{"type", "3.B"}}}};
  zone["filter"] = {{{"kind", "granular"}, {"bedding", "coarse"}, {"thickness", "6 in"}},
                    {{"kind", "geotextile"}, {"opening_size", "0.21 mm"}, {"fabric", "nonwoven"}}};
  auto sections = sections_of(example);
  ASSERT_EQ(sections.size(), 1u);
  const auto& section = sections.front();
  EXPECT_NEAR(section.surface.front().elevation.feet(), 100.3, 1e-9);
  ASSERT_EQ(section.parts.size(), 2u);
  EXPECT_EQ(section.parts[0].kind, RockKind::void_filled);
  EXPECT_NEAR(section.parts[0].bottom.feet(), 100.3, 1e-9);
  EXPECT_EQ(section.parts[1].kind, RockKind::soil_filled);
  EXPECT_NEAR(section.parts[1].top.feet(), 117, 1e-9);
  ASSERT_EQ(section.under.size(), 2u);  // from the rock down
  EXPECT_EQ(section.under[0].label, "geotextile");
  EXPECT_NEAR(section.under[1].thickness.inches(), 6, 1e-9);
  ASSERT_EQ(section.blocks.size(), 1u);
  EXPECT_TRUE(section.blocks[0].is_key);
  ASSERT_TRUE(section.toe_depth && section.cover);
  EXPECT_NEAR(section.cover->from.feet(), 110, 1e-9);
  // 30 ft² stored at the thickness of the layer, 2 ft: 15 ft wide.
  zone["toe"] = {{"kind", "launchable"}, {"stored", "30 ft²"}};
  sections = sections_of(example);
  ASSERT_EQ(sections.front().blocks.size(), 2u);
  const auto& outline = sections.front().blocks[0].outline;
  EXPECT_NEAR((outline[1].station - outline[0].station).feet(), 15, 1e-9);
}

}  // namespace
}  // namespace proofstone
