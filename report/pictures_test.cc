// The kinds of picture: whole and well formed whatever they are asked to show.
#include <gtest/gtest.h>

#include <functional>
#include <limits>
#include <sstream>
#include <string>

#include "report/gradation_picture.h"
#include "report/markup_check.h"
#include "report/method_sizes_picture.h"
#include "report/mix_picture.h"
#include "report/plan_picture.h"
#include "report/profile_picture.h"
#include "report/run_chart_picture.h"
#include "report/sample_pictures.h"
#include "report/section_picture.h"
#include "report/stones_picture.h"
#include "report/svg_canvas.h"

namespace proofstone {
namespace {

const double nan = std::numeric_limits<double>::quiet_NaN();
const double infinite = std::numeric_limits<double>::infinity();
const std::string hostile = "</text><script>alert(1)</script>\"'&\x01\xFF\u202E🪨";

/// Draws at every width and in both unit systems, and expects a whole picture each time.
template <class Picture>
void expect_whole(const Picture& picture, const std::string& what) {
  for (const double width : {240.0, 360.0, 900.0, 4000.0}) {
    for (const auto units : {UnitSystem::us_customary, UnitSystem::si}) {
      const auto svg = draw(picture, units, width);
      EXPECT_EQ(testing_markup::nesting_problem(svg), "") << what << ' ' << width;
      EXPECT_EQ(testing_markup::content_problem(svg), "") << what << ' ' << width;
      EXPECT_EQ(svg.find("<script"), std::string::npos);
      EXPECT_EQ(svg.find('\x01'), std::string::npos);
      EXPECT_EQ(svg.find("<svg "), 0U);
      EXPECT_NE(svg.find("</title>"), std::string::npos);
      EXPECT_NE(svg.find("</desc>"), std::string::npos);
      EXPECT_LT(svg.size(), 800000U) << what;
      EXPECT_EQ(svg, draw(picture, units, width)) << what;
    }
  }
}

/// Every text of a picture: where it stands and how it is anchored.
struct DrawnText {
  double x = 0;
  double y = 0;
  double size = 0;
};
std::vector<DrawnText> texts_of(const std::string& svg) {
  std::vector<DrawnText> texts;
  const auto number = [&](std::size_t tag, const std::string& name) {
    const auto at = svg.find(name + "=\"", tag) + name.size() + 2;
    return std::stod(svg.substr(at, svg.find('"', at) - at));
  };
  for (auto at = svg.find("<text "); at != std::string::npos; at = svg.find("<text ", at + 1)) {
    texts.push_back({number(at, " x"), number(at, " y"), number(at, "font-size")});
  }
  return texts;
}

/// The first point of the path that is drawn in this class: "M12.5 40…".
PixelPoint first_point_of(const std::string& svg, const std::string& drawn_as) {
  const auto at = svg.find("class=\"" + drawn_as + "\"");
  EXPECT_NE(at, std::string::npos);
  const auto move = svg.find("d=\"M", svg.rfind('<', at));
  std::istringstream numbers(svg.substr(move + 4, 40));
  PixelPoint point;
  numbers >> point.x >> point.y;
  return point;
}

TEST(PlanPicture, ItsFrameSaysWhereItLiesOnTheGround) {
  const auto picture = samples::plan();
  for (const double width : {390.0, 1000.0}) {
    const auto frame = frame_of(picture, width);
    ASSERT_TRUE(frame);
    const auto at = first_point_of(draw(picture, UnitSystem::si, width), "centreline");
    // The course begins at 0 ft east, 380 ft north.
    EXPECT_NEAR(frame->left + at.x * frame->metres_per_pixel, 0, frame->metres_per_pixel);
    EXPECT_NEAR(frame->top - at.y * frame->metres_per_pixel, 380 * 0.3048, frame->metres_per_pixel);
  }
  EXPECT_FALSE(frame_of(PlanPicture{}, 390));
}

TEST(PlanPicture, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::plan(), "sample");
  auto picture = samples::plan();
  picture.id = picture.title = picture.description = hostile;
  picture.bends[0].label = picture.zones[0].label = hostile;
  expect_whole(picture, "hostile");
}

TEST(PlanPicture, IsWholeWhenPartsAreMissingOrNotFinite) {
  expect_whole(PlanPicture{}, "empty");
  const std::vector<std::function<void(PlanPicture&)>> losses{
      [](auto& p) { p.course.clear(); },
      [](auto& p) { p.course.resize(1); },
      [](auto& p) { p.course.assign(5, {}); },
      [](auto& p) { p.course[3].x = Length::meters(nan); },
      [](auto& p) { p.course[3].y = Length::meters(infinite); },
      [](auto& p) { p.width = Length::meters(nan); },
      [](auto& p) { p.width = {}; },
      [](auto& p) { p.bends[0].line.clear(); },
      [](auto& p) { p.zones[0].line.resize(1); },
      [](auto& p) { p.zones.assign(60, p.zones[0]); }};
  for (const auto& lose : losses) {
    auto picture = samples::plan();
    lose(picture);
    expect_whole(picture, "part missing");
  }
}

TEST(SectionPicture, DrawsVelocityAndShearUnderTheGround) {
  const auto svg = draw(samples::section(), UnitSystem::us_customary, 360);
  EXPECT_NE(svg.find("velocity-strip"), std::string::npos);
  EXPECT_NE(svg.find("shear-strip"), std::string::npos);
  auto picture = samples::section();
  picture.across[3].velocity = Velocity::meters_per_second(nan);
  picture.across[4].left = Length::meters(infinite);
  picture.across[5].shear = Stress::pascals(-1);
  picture.across_of = hostile;
  expect_whole(picture, "hostile across");
  picture.across.clear();
  EXPECT_EQ(draw(picture, UnitSystem::si, 360).find("velocity-strip"), std::string::npos);
}

TEST(MixPicture, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::mix(), "sample");
  expect_whole(MixPicture{}, "empty");
  auto picture = samples::mix();
  picture.title = picture.bars[0].label = picture.bars[0].pieces[0].label = hostile;
  picture.bars[0].pieces[0].volume = nan;
  picture.bars[1].pieces[0].volume = -3;
  expect_whole(picture, "hostile");
}

TEST(MixPicture, DrawsEveryPieceToOneScale) {
  const auto svg = draw(samples::mix(), UnitSystem::si, 720);
  EXPECT_NE(svg.find("Native loam 0.54"), std::string::npos);
  EXPECT_NE(svg.find("class=\"open-voids\""), std::string::npos);
  for (const double width : {240.0, 720.0}) {
    for (const auto& text : texts_of(draw(samples::mix(), UnitSystem::si, width))) {
      EXPECT_LE(text.x, width);
      EXPECT_GE(text.x, 0);
    }
  }
}

TEST(MethodSizesPicture, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::method_sizes(), "sample");
  expect_whole(MethodSizesPicture{}, "empty");
  auto picture = samples::method_sizes();
  picture.id = picture.title = picture.description = picture.class_name = hostile;
  picture.rows[0].label = picture.rows[0].symbol = hostile;
  expect_whole(picture, "hostile");
}

TEST(MethodSizesPicture, LeavesOutWhatCannotBeDrawnAndNamesTheRest) {
  for (const double bad : {nan, infinite, -infinite, 0.0, -3.0}) {
    auto picture = samples::method_sizes();
    picture.rows[0].required = Length::meters(bad);
    picture.rows[1].class_least = Length::meters(bad);
    picture.rows[2].class_most = Length::meters(bad);
    picture.rows[1].weight = bad;
    expect_whole(picture, "bad size");
    const auto svg = draw(picture, UnitSystem::us_customary, 360);
    EXPECT_EQ(svg.find("USACE"), std::string::npos);
    EXPECT_NE(svg.find("Isbash"), std::string::npos);
  }
  const auto svg = draw(samples::method_sizes(), UnitSystem::us_customary, 900);
  EXPECT_NE(svg.find("weight 75 %, governs"), std::string::npos);
  EXPECT_NE(svg.find("outside its published range"), std::string::npos);
}

TEST(RunChartPicture, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::run_chart(), "sample");
  expect_whole(RunChartPicture{}, "empty");
  auto picture = samples::run_chart();
  picture.title = hostile;
  picture.points[2].label = hostile;
  picture.points[3].size = Length::inches(nan);
  picture.points[4].high = Length::inches(infinite);
  picture.target = Length::inches(-1);
  expect_whole(picture, "hostile");
}

TEST(RunChartPicture, DrawsEachLoadAndRingsTheAlarms) {
  const auto svg = draw(samples::run_chart(), UnitSystem::us_customary, 640);
  const auto count = [&](const std::string& part) {
    int found = 0;
    for (auto at = svg.find(part); at != std::string::npos; at = svg.find(part, at + 1)) ++found;
    return found;
  };
  EXPECT_EQ(count("class=\"load\""), 9 + 1);  // and one in the legend
  EXPECT_EQ(count("class=\"alarm\""), 2 + 1);
}

// On a phone as on a desk, no text leaves the picture on the left or below.
TEST(MethodSizesPicture, KeepsItsTextInside) {
  for (const double width : {240.0, 360.0, 900.0}) {
    for (const auto& text : texts_of(draw(samples::method_sizes(), UnitSystem::si, width))) {
      EXPECT_GE(text.x, 0) << width;
      EXPECT_LE(text.x, width) << width;
      EXPECT_GE(text.y, 0) << width;
    }
  }
}

TEST(GradationPicture, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::gradation(), "sample");
  auto picture = samples::gradation();
  picture.id = picture.title = picture.description = picture.class_name = hostile;
  picture.looks[0].name = hostile;
  picture.required[0].label = hostile;
  expect_whole(picture, "hostile");
}

TEST(GradationPicture, IsWholeWhenPartsAreMissing) {
  expect_whole(GradationPicture{}, "empty");
  const std::vector<std::function<void(GradationPicture&)>> losses{
      [](auto& p) { p.measured.clear(); },        [](auto& p) { p.coarse_limit.clear(); },
      [](auto& p) { p.fine_limit.clear(); },      [](auto& p) { p.looks.clear(); },
      [](auto& p) { p.required.clear(); },        [](auto& p) { p.measured.resize(1); },
      [](auto& p) { p.looks[0].points.clear(); }, [](auto& p) { p.coarse_limit.resize(1); }};
  for (const auto& lose : losses) {
    auto picture = samples::gradation();
    lose(picture);
    expect_whole(picture, "part missing");
  }
}

TEST(GradationPicture, LeavesOutWhatCannotBeDrawn) {
  for (const double bad : {nan, infinite, -infinite, 0.0, -3.0}) {
    auto picture = samples::gradation();
    picture.measured[2].size = Length::meters(bad);
    picture.coarse_limit[0].size = Length::meters(bad);
    picture.required[1].size = Length::meters(bad);
    expect_whole(picture, "bad size");
    picture = samples::gradation();
    picture.measured[2].percent = bad;
    picture.measured[3].interval = {bad, bad};
    picture.looks[1].points[1].percent_smaller = bad;
    picture.required[2].percent = bad;
    picture.confidence = bad;
    expect_whole(picture, "bad percent");
  }
}

TEST(GradationPicture, HoldsExtremeSizesOnItsAxis) {
  auto picture = samples::gradation();
  picture.measured.front().size = Length::meters(1e-9);
  picture.measured.back().size = Length::meters(1e9);
  expect_whole(picture, "extremes");
}

TEST(GradationPicture, NamesEveryMethodWithItsOutcomeAtEveryWidth) {
  const auto picture = samples::gradation();
  for (const double width : {360.0, 900.0, 1600.0}) {
    const auto svg = draw(picture, UnitSystem::us_customary, width);
    for (const std::string word : {"USACE", "FHWA", "Isbash", "Front Range", "Count on the pile",
                                   "Weighed load", "Class III", "Measured"}) {
      EXPECT_NE(svg.find(word), std::string::npos) << word << ' ' << width;
    }
    EXPECT_NE(svg.find("D30 ≥ 8.1"), std::string::npos);
  }
  EXPECT_NE(draw(picture, UnitSystem::si, 900).find("D30 ≥ 206 mm, meets"), std::string::npos);
}

TEST(Pictures, HaveLegibleTextInsideThePicture) {
  for (const double width : {360.0, 900.0}) {
    for (const auto& svg : {draw(samples::gradation(), UnitSystem::us_customary, width),
                            draw(samples::section(), UnitSystem::us_customary, width),
                            draw(samples::stones(), UnitSystem::us_customary, width)}) {
      for (const auto& text : texts_of(svg)) {
        EXPECT_GE(text.size, 12);
        EXPECT_GE(text.x, 0);
        EXPECT_LE(text.x, width);
        EXPECT_GE(text.y, 0);
      }
    }
  }
}

TEST(Pictures, UseNoColourButTheInks) {
  for (const auto& svg : {draw(samples::gradation(), UnitSystem::us_customary, 900),
                          draw(samples::section(), UnitSystem::us_customary, 900),
                          draw(samples::stones(), UnitSystem::us_customary, 900)}) {
    for (const std::string attribute : {" fill=\"", " stroke=\""}) {
      for (auto at = svg.find(attribute); at != std::string::npos;
           at = svg.find(attribute, at + 1)) {
        const auto value = svg.substr(at + attribute.size(), 6);
        EXPECT_TRUE(value == "none\" " || value.substr(0, 4) == "none" || value == "var(--")
            << value;
      }
    }
  }
}

TEST(ProfilePicture, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::profile(), "sample");
  expect_whole(ProfilePicture{}, "empty");
  auto picture = samples::profile();
  picture.id = picture.title = picture.description = hostile;
  picture.places[0].name = picture.water_lines[0].name = hostile;
  expect_whole(picture, "hostile");
  for (const double bad : {nan, infinite, -infinite}) {
    auto broken = samples::profile();
    broken.places[1].bed = broken.water_lines[0].points[1].level = Length::meters(bad);
    broken.water_lines[1].jumps[0].level_after = Length::meters(bad);
    expect_whole(broken, "not finite");
  }
  auto flat = samples::profile();
  for (auto& place : flat.places) place.distance = place.bed = Length::meters(0);
  for (auto& line : flat.water_lines) {
    for (auto& point : line.points) point = {};
  }
  expect_whole(flat, "no extent");
}

TEST(ProfilePicture, MarksJumpsAndNamesSectionsAndWater) {
  const auto svg = draw(samples::profile(), UnitSystem::us_customary, 900);
  for (const char* said :
       {"class=\"jump\"", "hydraulic jump", "Section 3+00", "Design flood", "Base flow",
        "critical level", "lower bank", "Distance downstream, ft"}) {
    EXPECT_NE(svg.find(said), std::string::npos) << said;
  }
}

TEST(SectionPicture, IsWholeForGoodAndForHostileContent) {
  expect_whole(samples::section(), "sample");
  auto picture = samples::section();
  picture.id = picture.title = picture.description = hostile;
  picture.water_levels[0].name = hostile;
  picture.layers[0].label = hostile;
  expect_whole(picture, "hostile");
}

TEST(SectionPicture, IsWholeWhenPartsAreMissing) {
  expect_whole(SectionPicture{}, "empty");
  const std::vector<std::function<void(SectionPicture&)>> losses{
      [](auto& p) { p.ground.clear(); },
      [](auto& p) { p.ground.resize(1); },
      [](auto& p) { p.ground.resize(2); },
      [](auto& p) { p.water_levels.clear(); },
      [](auto& p) { p.layers.clear(); },
      [](auto& p) { p.layers[0].surface.clear(); },
      [](auto& p) { p.layers[0].surface.resize(1); },
      [](auto& p) { p.layers[0].thickness = Length(); },
      [](auto& p) { p.layers[0].median_stone = Length(); },
  };
  for (const auto& lose : losses) {
    auto picture = samples::section();
    lose(picture);
    expect_whole(picture, "part missing");
  }
}

TEST(SectionPicture, LeavesOutWhatCannotBeDrawn) {
  for (const double bad : {nan, infinite, -infinite}) {
    auto picture = samples::section();
    picture.ground[2].elevation = Length::meters(bad);
    picture.ground[3].station = Length::meters(bad);
    picture.water_levels[0].level = Length::meters(bad);
    picture.layers[0].surface[0].elevation = Length::meters(bad);
    expect_whole(picture, "bad ground");
    picture = samples::section();
    picture.layers[0].thickness = Length::meters(bad);
    expect_whole(picture, "bad thickness");
    picture = samples::section();
    picture.layers[0].median_stone = Length::meters(bad);
    expect_whole(picture, "bad stone");
  }
}

TEST(SectionPicture, HoldsExtremes) {
  auto wall = samples::section();
  for (auto& point : wall.ground) point.station = Length::feet(5);
  expect_whole(wall, "all at one station");
  auto flat = samples::section();
  for (auto& point : flat.ground) point.elevation = Length::feet(100);
  expect_whole(flat, "flat");
  auto vast = samples::section();
  vast.ground.back().station = Length::meters(1e5);
  vast.layers[0].surface.back().station = Length::meters(9e4);
  expect_whole(vast, "100 km");
  auto dust = samples::section();
  dust.layers[0].median_stone = Length::meters(1e-9);
  expect_whole(dust, "dust");
  auto boulder = samples::section();
  boulder.layers[0].median_stone = Length::meters(1e6);
  boulder.layers[0].thickness = Length::meters(1e6);
  expect_whole(boulder, "boulder");
  auto drowned = samples::section();
  drowned.water_levels[0].level = Length::meters(1e6);
  drowned.water_levels[1].level = Length::meters(-1e6);
  expect_whole(drowned, "far levels");
}

TEST(SectionPicture, StatesHowItsHeightsAreDrawn) {
  const auto flat = draw(samples::section(), UnitSystem::us_customary, 900);
  EXPECT_NE(flat.find("heights drawn 3 times as large as lengths"), std::string::npos);
  auto steep = samples::section();
  for (auto& point : steep.ground) point.station = 0.15 * point.station;
  steep.layers.clear();
  const auto true_scale = draw(steep, UnitSystem::us_customary, 900);
  EXPECT_NE(true_scale.find("true scale"), std::string::npos);
  EXPECT_EQ(true_scale.find("heights drawn"), std::string::npos);
}

TEST(SectionPicture, DrawsStonesAtSizeAndNamesEverything) {
  for (const double width : {360.0, 900.0}) {
    const auto svg = draw(samples::section(), UnitSystem::us_customary, width);
    std::size_t stones = 0;
    for (auto at = svg.find("class=\"stone\""); at != std::string::npos;
         at = svg.find("class=\"stone\"", at + 1)) {
      ++stones;
    }
    EXPECT_GT(stones, 20U);
    EXPECT_LE(stones, 600U);
    for (const std::string word :
         {"Design flood, 115.60 ft", "Frequent flow, 111.20 ft", "Base flow, 106.10 ft",
          "Class III", "thickness 24.0 in", "stones at size", "Elevation, ft", "Station, ft"}) {
      EXPECT_NE(svg.find(word), std::string::npos) << word << ' ' << width;
    }
  }
}

TEST(StonesPicture, IsWholeForGoodHostileAndMissingContent) {
  expect_whole(samples::stones(), "sample");
  expect_whole(StonesPicture{}, "empty");
  auto picture = samples::stones();
  picture.id = picture.title = hostile;
  picture.rows[0].label = hostile;
  picture.rows[0].stones[0].label = hostile;
  picture.rows[1].stones.clear();
  expect_whole(picture, "hostile");
  for (const double bad : {nan, infinite, -infinite, 0.0, -3.0, 1e-12, 1e12}) {
    picture = samples::stones();
    picture.rows[0].stones[1].size = Length::meters(bad);
    expect_whole(picture, "bad size");
  }
}

TEST(StonesPicture, BreaksARowThatIsTooLong) {
  auto picture = samples::stones();
  for (int i = 0; i < 40; ++i) picture.rows[0].stones.push_back({"stone", Length::inches(10)});
  expect_whole(picture, "long row");
  for (const auto& text : texts_of(draw(picture, UnitSystem::us_customary, 360))) {
    EXPECT_LE(text.x, 360);
  }
}

}  // namespace
}  // namespace proofstone
