// The typical section: whole whatever it is asked to show, true to scale, and the same lines in the
// picture and in the drawing.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>
#include <string>

#include "report/layered_section.h"
#include "report/markup_check.h"
#include "report/sample_pictures.h"
#include "report/typical_section_drawing.h"
#include "report/typical_section_picture.h"

namespace proofstone {
namespace {

const double nan = std::numeric_limits<double>::quiet_NaN();
const double infinite = std::numeric_limits<double>::infinity();
const std::string hostile = "</text><script>alert(1)</script>\"'&\x01\xFF\u202E🪨";

void expect_whole(const TypicalSectionPicture& picture, const std::string& what) {
  for (const double width : {240.0, 360.0, 900.0, 4000.0}) {
    for (const auto units : {UnitSystem::us_customary, UnitSystem::si}) {
      const auto svg = draw(picture, units, width);
      EXPECT_EQ(testing_markup::nesting_problem(svg), "") << what << ' ' << width;
      EXPECT_EQ(testing_markup::content_problem(svg), "") << what << ' ' << width;
      EXPECT_EQ(svg.find("<script"), std::string::npos);
      EXPECT_LT(svg.size(), 1000000U) << what;
      EXPECT_EQ(svg, draw(picture, units, width)) << what;
    }
  }
  layered_section(picture, UnitSystem::us_customary);
}

TEST(TypicalSection, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::typical_section(), "sample");
  expect_whole(samples::apron_section(), "apron");
  expect_whole({}, "empty");
  auto picture = samples::typical_section();
  picture.id = picture.title = picture.description = picture.thickness_text = hostile;
  picture.parts[0].label = picture.water_levels[0].label = picture.blocks[0].label = hostile;
  picture.cover->topsoil_label = hostile;
  expect_whole(picture, "hostile");
}

TEST(TypicalSection, IsWholeWhenPartsAreMissingOrNotFinite) {
  const std::vector<std::function<void(TypicalSectionPicture&)>> losses{
      [](auto& p) { p.ground.clear(); },
      [](auto& p) { p.surface.resize(1); },
      [](auto& p) { p.surface[1].elevation = Length::meters(nan); },
      [](auto& p) { p.thickness = {}; },
      [](auto& p) { p.thickness = Length::meters(infinite); },
      [](auto& p) { p.median_stone = Length::meters(nan); },
      [](auto& p) { p.median_stone = Length::millimeters(1); },
      [](auto& p) { p.parts.clear(); },
      [](auto& p) { p.parts[0].top = Length::meters(nan); },
      [](auto& p) { p.water_levels[0].level = Length::meters(infinite); },
      [](auto& p) { p.blocks[0].outline[1].station = Length::meters(nan); },
      [](auto& p) { p.blocks[0].outline.clear(); },
      [](auto& p) { p.toe_depth->to.elevation = Length::meters(nan); },
      [](auto& p) { p.cover->from = Length::feet(500); },
      [](auto& p) { p.cover->topsoil = {}; },
      [](auto& p) { p.cover->stake_spacing = Length::millimeters(1); },
      [](auto& p) { p.rise_per_run = 0; },
      [](auto& p) { p.dimensions = {{"nowhere", {Length::meters(nan), {}}, {}}}; },
      [](auto& p) { p.notes = {{"nowhere", {{}, Length::meters(infinite)}}}; },
      [](auto& p) { p.conduit = TypicalSectionPicture::Conduit{"none", {}, Length::meters(nan)}; },
      [](auto& p) { p.conduit = TypicalSectionPicture::Conduit{"none", {}, {}}; },
      [](auto& p) { p.level = true; },
      [](auto& p) { p.slope_at = GroundPoint{Length::meters(nan), {}}; },
      [](auto& p) { p.under[0].short_of_ends = Length::meters(nan); },
      [](auto& p) { p.under[0].short_of_ends = Length::feet(900); },
      [](auto& p) {
        p.structures = {{"none", {}}, {"nowhere", {{{}, Length::meters(nan)}, {}, {}}}};
      },
      [](auto& p) { p.in_plan = true; },
      [](auto& p) {
        p.in_plan = true;
        p.blocks.clear();
      },
      [](auto& p) { p.cover.reset(); }};
  for (const auto& lose : losses) {
    auto picture = samples::typical_section();
    lose(picture);
    expect_whole(picture, "part missing");
  }
}

TEST(TypicalSection, ShowsKindsByMoreThanTheirShade) {
  const auto svg = draw(samples::typical_section(), UnitSystem::us_customary, 900);
  for (const char* mark : {"soil-fill", "grain-fill", "class=\"stone\"", "class=\"bedding\"",
                           "class=\"fabric\"", "class=\"topsoil\"", "class=\"blanket\"",
                           "class=\"stake\"", "class=\"plants\"", "slope-triangle", "true scale"}) {
    EXPECT_NE(svg.find(mark), std::string::npos) << mark;
  }
}

TEST(TypicalSection, NamesEverythingAtEveryWidth) {
  for (const double width : {360.0, 900.0}) {
    const auto svg = draw(samples::typical_section(), UnitSystem::us_customary, width);
    for (const char* word : {"void-filled rock", "soil-filled rock", "bare rock", "Bedding, 6 in",
                             "Geotextile", "key at the top", "toe dug in 5 ft", "topsoil 6 in",
                             "blanket, type 3.B", "wedge stakes 18 in", "Design flood", "24 in"}) {
      EXPECT_NE(svg.find(word), std::string::npos) << word << ' ' << width;
    }
    EXPECT_NE(svg.find(">Design flood, 115.60 ft<"), std::string::npos) << width;  // told once
  }
}

const LayeredLine* line_on(const LayeredDrawing& drawing, const std::string& layer) {
  for (const auto& line : drawing.lines) {
    if (line.layer == layer) return &line;
  }
  return nullptr;
}

TEST(TypicalSection, ALevelApronShowsItsConduitAndNoSlope) {
  for (const double width : {320.0, 900.0}) {
    const auto svg = draw(samples::apron_section(), UnitSystem::us_customary, width);
    for (const char* word : {"conduit, 5.0 ft high", "apron 20.0 ft long", "upper end not stated",
                             "class=\"structure\"", "30 in", "Geotextile"}) {
      EXPECT_NE(svg.find(word), std::string::npos) << word << ' ' << width;
    }
    EXPECT_EQ(svg.find("slope-triangle"), std::string::npos);
  }
}

TEST(TypicalSection, ALevelApronIsDrawnOnItsLayersToScale) {
  const auto drawing = layered_section(samples::apron_section(), UnitSystem::us_customary);
  ASSERT_TRUE(drawing);
  const auto* conduit = line_on(*drawing, "STRUCTURES");
  ASSERT_NE(conduit, nullptr);
  EXPECT_NEAR(conduit->points[2].y - conduit->points[1].y, 5, 1e-9);
  const auto* rock = line_on(*drawing, "ROCK-BARE");
  ASSERT_NE(rock, nullptr);
  const auto by_x = [](const auto& a, const auto& b) { return a.x < b.x; };
  const auto [left, right] = std::minmax_element(rock->points.begin(), rock->points.end(), by_x);
  EXPECT_NEAR(right->x - left->x, 20, 1e-9);
  for (const auto& text : drawing->texts) {
    EXPECT_EQ(text.text.find("H:1V"), std::string::npos) << text.text;
  }
}

TypicalSectionPicture apron_from_above() {
  auto picture = samples::apron_section();
  const auto feet = [](double x, double y) {
    return GroundPoint{Length::feet(x), Length::feet(y)};
  };
  picture.in_plan = true;
  picture.blocks = {
      {"Class II, 30 in thick", {feet(0, -7.5), feet(20, -14), feet(20, 14), feet(0, 7.5)}, false}};
  picture.structures = {{"conduit", {feet(-5, -2.5), feet(0, -2.5), feet(0, 2.5), feet(-5, 2.5)}}};
  picture.dimensions = {{"20 ft long", feet(0, -17), feet(20, -17)}};
  return picture;
}

TEST(TypicalSection, AnApronFromAboveHasItsFlowAndNoGround) {
  expect_whole(apron_from_above(), "from above");
  for (const double width : {320.0, 900.0}) {
    const auto svg = draw(apron_from_above(), UnitSystem::us_customary, width);
    for (const char* word : {"class=\"flow\"", "class=\"structure\"", ">flow<", "20 ft long"}) {
      EXPECT_NE(svg.find(word), std::string::npos) << word << ' ' << width;
    }
    EXPECT_EQ(svg.find("slope-triangle"), std::string::npos);
  }
  const auto drawing = layered_section(apron_from_above(), UnitSystem::us_customary);
  ASSERT_TRUE(drawing);
  EXPECT_EQ(line_on(*drawing, "GROUND"), nullptr);
  EXPECT_NE(line_on(*drawing, "FLOW"), nullptr);
  const auto* rock = line_on(*drawing, "ROCK-BARE");
  ASSERT_NE(rock, nullptr);
  ASSERT_EQ(rock->points.size(), 4U);
  EXPECT_NEAR(rock->points[2].y - rock->points[1].y, 28, 1e-9);
}

// The key is dug through the bedding: the bedding ends at its edge.
TEST(TypicalSection, BeddingEndsAtAKey) {
  auto picture = samples::apron_section();
  const auto feet = [](double x, double y) {
    return GroundPoint{Length::feet(x), Length::feet(y)};
  };
  picture.under = {{"Bedding, 6 in", Length::inches(6)}};
  picture.blocks = {{"key", {feet(0, -2.5), feet(2, -4), feet(6, -4), feet(8, -2.5)}, true}};
  const auto drawing = layered_section(picture, UnitSystem::us_customary);
  ASSERT_TRUE(drawing);
  int areas = 0;
  for (const auto& line : drawing->lines) {
    if (line.layer != "BEDDING") continue;
    ++areas;
    for (const auto& point : line.points) EXPECT_GE(point.x, 8 - 1e-9);
  }
  EXPECT_EQ(areas, 1);
}

// A second drawing of the zone stands under the first, under its title, and keeps its size.
TEST(TypicalSection, ASecondDrawingIsSetBelowTheFirst) {
  auto drawing = *layered_section(samples::typical_section(), UnitSystem::us_customary);
  const auto second = *layered_section(samples::apron_section(), UnitSystem::us_customary);
  const auto lines = drawing.lines.size();
  const auto texts = drawing.texts.size();
  double lowest = infinite;
  for (const auto& line : drawing.lines) {
    for (const auto& point : line.points) lowest = std::min(lowest, point.y);
  }
  place_below(drawing, second);
  ASSERT_EQ(drawing.lines.size(), lines + second.lines.size());
  ASSERT_EQ(drawing.texts.size(), texts + 1 + second.texts.size());
  EXPECT_EQ(drawing.texts[texts].text, second.title);
  for (std::size_t i = 0; i < second.lines.size(); ++i) {
    const auto& moved = drawing.lines[lines + i].points;
    const auto& before = second.lines[i].points;
    for (std::size_t k = 0; k < moved.size(); ++k) {
      EXPECT_LT(moved[k].y, lowest);
      EXPECT_NEAR(moved[k].x - moved[0].x, before[k].x - before[0].x, 1e-9);
      EXPECT_NEAR(moved[k].y - moved[0].y, before[k].y - before[0].y, 1e-9);
    }
  }
}

// On a phone as on a desk, no text leaves the picture.
TEST(TypicalSection, KeepsItsTextInside) {
  for (const double width : {240.0, 320.0, 360.0, 900.0}) {
    for (const auto& picture : {samples::typical_section(), samples::apron_section()}) {
      const auto svg = draw(picture, UnitSystem::si, width);
      int texts = 0;
      for (auto at = svg.find("<text "); at != std::string::npos; at = svg.find("<text ", at + 1)) {
        const auto x = std::stod(svg.substr(svg.find(" x=\"", at) + 4));
        EXPECT_GE(x, 0) << width;
        EXPECT_LT(x, width - 6) << width;
        ++texts;
      }
      EXPECT_GT(texts, 10) << width;
    }
  }
}

// 24 in of rock on a slope of 2H:1V: the underside lies 2 ft from the surface, square to it.
TEST(TypicalSection, IsTrueToScaleInTheUnitOfTheDrawing) {
  const auto feet = layered_section(samples::typical_section(), UnitSystem::us_customary);
  const auto meters = layered_section(samples::typical_section(), UnitSystem::si);
  ASSERT_TRUE(feet && meters);
  EXPECT_EQ(feet->unit, "ft");
  EXPECT_EQ(meters->unit, "m");
  const auto* dimension = line_on(*feet, "DIMENSIONS");
  ASSERT_NE(dimension, nullptr);
  const auto& toe = dimension->points;  // the depth of the toe comes first
  EXPECT_NEAR(std::hypot(toe[1].x - toe[0].x, toe[1].y - toe[0].y), 5, 1e-9);
  const auto& thickness = feet->lines;
  bool found = false;
  for (const auto& line : thickness) {
    if (line.layer != "DIMENSIONS" || &line == dimension) continue;
    found = true;
    EXPECT_NEAR(
        std::hypot(line.points[1].x - line.points[0].x, line.points[1].y - line.points[0].y), 2,
        1e-6);
  }
  EXPECT_TRUE(found);
  const auto* ground = line_on(*meters, "GROUND");
  ASSERT_NE(ground, nullptr);
  EXPECT_NEAR(ground->points.front().y, 119.2 * 0.3048, 1e-9);
  const auto* soil = line_on(*feet, "TOPSOIL");
  ASSERT_NE(soil, nullptr);
  EXPECT_TRUE(soil->closed);
}

TEST(TypicalSection, DrawingHasItsLayersAndEveryWord) {
  const auto drawing = layered_section(samples::typical_section(), UnitSystem::us_customary);
  ASSERT_TRUE(drawing);
  std::set<std::string> layers;
  for (const auto& line : drawing->lines) layers.insert(line.layer);
  for (const char* layer :
       {"GROUND", "WATER", "ROCK-BARE", "ROCK-SOIL-FILLED", "ROCK-VOID-FILLED", "STONES", "BEDDING",
        "GEOTEXTILE", "TOPSOIL", "BLANKET", "STAKES", "TRENCHES", "DIMENSIONS", "TEXT"}) {
    EXPECT_TRUE(layers.contains(layer)) << layer;
  }
  EXPECT_EQ(drawing->texts.size(), 16u);
  // Words stand one under another and never on one another.
  for (std::size_t i = 1; i < drawing->texts.size(); ++i) {
    EXPECT_LE(drawing->texts[i].at.y, drawing->texts[i - 1].at.y - drawing->texts[i].height);
  }
  const auto json = layered_drawing_json(*drawing);
  EXPECT_EQ(json["lines"].size(), drawing->lines.size());
}

TEST(TypicalSection, ABankOnTheRightIsItsMirror) {
  auto picture = samples::typical_section();
  const auto mirror = [](auto& point) { point.station = Length::feet(240) - point.station; };
  for (auto& point : picture.ground) mirror(point);
  std::reverse(picture.ground.begin(), picture.ground.end());
  for (auto& point : picture.surface) mirror(point);
  for (auto& block : picture.blocks) {
    for (auto& point : block.outline) mirror(point);
  }
  mirror(picture.toe_depth->from);
  mirror(picture.toe_depth->to);
  const auto left = typical_section_drawing(samples::typical_section());
  const auto right = typical_section_drawing(picture);
  ASSERT_TRUE(left && right);
  EXPECT_TRUE(left->channel_on_right);
  EXPECT_FALSE(right->channel_on_right);
  EXPECT_NEAR(left->works.right - left->works.left, right->works.right - right->works.left, 1e-9);
  EXPECT_NEAR(left->slope_middle.x, 240 * 0.3048 - right->slope_middle.x, 1e-9);
  expect_whole(picture, "right bank");
}

}  // namespace
}  // namespace proofstone
