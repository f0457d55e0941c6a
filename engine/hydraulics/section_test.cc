#include "engine/hydraulics/section.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

namespace proofstone {
namespace {

SectionPoint feet(double station, double elevation, double n = 0.035) {
  return {Length::feet(station), Length::feet(elevation), Dimensionless::number(n)};
}

std::vector<SectionPoint> flood_plain_points() {
  return {feet(0, 110, 0.06),  feet(20, 104, 0.06),  feet(35, 103),
          feet(45, 98),        feet(60, 97),         feet(72, 98.5),
          feet(80, 103, 0.08), feet(120, 104, 0.08), feet(150, 110, 0.08)};
}

Section made(std::vector<SectionPoint> points) {
  auto section = Section::make(std::move(points));
  EXPECT_TRUE(section);
  return *section;
}

struct BadSection {
  const char* code;
  const char* where;
  std::vector<SectionPoint> points;
};

TEST(Section, RefusesWhatIsNoSectionAndSaysWhere) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const double infinity = std::numeric_limits<double>::infinity();
  const std::vector<BadSection> bad = {
      {"too-few-points", "section", {}},
      {"too-few-points", "section", {feet(0, 1), feet(1, 0)}},
      {"too-many-points", "section", std::vector<SectionPoint>(10'001, feet(0, 0))},
      {"not-a-number", "point 2, station", {feet(0, 1), feet(nan, 0), feet(2, 1)}},
      {"not-a-number", "point 3, elevation", {feet(0, 1), feet(1, 0), feet(2, infinity)}},
      {"roughness-out-of-range", "point 1, roughness", {feet(0, 1, 0), feet(1, 0), feet(2, 1)}},
      {"roughness-out-of-range", "point 2, roughness", {feet(0, 1), feet(1, 0, 0.6), feet(2, 1)}},
      {"roughness-out-of-range", "point 2, roughness", {feet(0, 1), feet(1, 0, nan), feet(2, 1)}},
      {"stations-fall", "point 2, station", {feet(2, 1), feet(1, 0), feet(0, 1)}},
      {"repeated-point", "point 3, station", {feet(0, 1), feet(1, 0), feet(1, 0), feet(2, 1)}},
      {"repeated-station",
       "point 4, station",
       {feet(0, 1), feet(1, 0), feet(1, 2), feet(1, 1), feet(2, 1)}},
      {"section-width", "section", {feet(0, 1), feet(1, 0), feet(1e7, 1)}},
      {"section-height", "section", {feet(0, 1), feet(1, 0), feet(2, 1e6)}},
  };
  for (const auto& one : bad) {
    const auto section = Section::make(one.points);
    ASSERT_FALSE(section) << one.code;
    EXPECT_EQ(section.problems().front().code, one.code);
    EXPECT_EQ(section.problems().front().where, one.where);
    EXPECT_FALSE(section.problems().front().allowed.empty());
  }
}

TEST(Section, NamesEveryBadPointAtOnce) {
  const auto section = Section::make({feet(0, 1, 9), feet(-1, 0), feet(-2, 1)});
  ASSERT_FALSE(section);
  EXPECT_EQ(section.problems().size(), 3u);
}

TEST(Section, LooksUpItsGround) {
  const Section section = made({feet(0, 5), feet(0, 1), feet(4, 0), feet(10, 3), feet(10, 8)});
  EXPECT_NEAR(section.lowest().feet(), 0, 1e-12);
  EXPECT_NEAR(section.highest().feet(), 8, 1e-12);
  EXPECT_NEAR(section.lower_end().feet(), 5, 1e-12);
  EXPECT_NEAR(section.ground_at(Length::feet(2)).feet(), 0.5, 1e-12);
  EXPECT_NEAR(section.ground_at(Length::feet(4)).feet(), 0, 1e-12);
  EXPECT_NEAR(section.ground_at(Length::feet(0)).feet(), 1, 1e-12) << "the foot of a wall";
  EXPECT_NEAR(section.ground_at(Length::feet(10)).feet(), 3, 1e-12) << "the foot of a wall";
  EXPECT_NEAR(section.ground_at(Length::feet(-1)).feet(), 5, 1e-12);
  EXPECT_NEAR(section.ground_at(Length::feet(99)).feet(), 8, 1e-12);
}

TEST(Section, DryAtAndBelowItsLowestGround) {
  const Section section = made(flood_plain_points());
  for (const double level : {97.0, 96.0, -5.0}) {
    const auto wet = section.wet(Length::feet(level));
    EXPECT_EQ(wet.area.si(), 0);
    EXPECT_EQ(wet.wetted_perimeter.si(), 0);
    EXPECT_EQ(wet.wet_stretches, 0);
    EXPECT_FALSE(wet.end_wall_added);
  }
}

// Sums over the ground, computed independently of this code.
TEST(Section, GeometryOfASurveyedSection) {
  const auto wet = made(flood_plain_points()).wet(Length::feet(105));
  EXPECT_NEAR(wet.area.square_feet(), 365.166667, 1e-6);
  EXPECT_NEAR(wet.wetted_perimeter.feet(), 111.110719, 1e-6);
  EXPECT_NEAR(wet.top_width.feet(), 108.333333, 1e-6);
  EXPECT_NEAR(wet.first_moment_si / unit::cubic_foot_factor, 995.222222, 1e-6);
  EXPECT_NEAR(wet.deepest.feet(), 8, 1e-12);
  EXPECT_EQ(wet.wet_stretches, 1);
}

TEST(Section, PartsAddUpToTheWhole) {
  const Section section = made(flood_plain_points());
  const auto level = Length::feet(104.5);
  const auto whole = section.wet(level);
  const double bounds[] = {0, 33, 47.5, 60, 119, 150};
  double area = 0, perimeter = 0, width = 0;
  for (int i = 0; i < 5; ++i) {
    const auto part =
        section.wet_between(Length::feet(bounds[i]), Length::feet(bounds[i + 1]), level);
    area += part.area.si();
    perimeter += part.wetted_perimeter.si();
    width += part.top_width.si();
  }
  EXPECT_NEAR(area, whole.area.si(), 1e-12);
  EXPECT_NEAR(perimeter, whole.wetted_perimeter.si(), 1e-12);
  EXPECT_NEAR(width, whole.top_width.si(), 1e-12);
}

TEST(Section, AWallAtADivisionBelongsToTheLowerSide) {
  const Section section = made({feet(0, 6), feet(0, 3), feet(10, 3), feet(10, 0), feet(20, 0),
                                feet(20, 3), feet(30, 3), feet(30, 6)});
  const auto level = Length::feet(4);
  const auto left = section.wet_between(Length::feet(0), Length::feet(10), level);
  const auto channel = section.wet_between(Length::feet(10), Length::feet(20), level);
  const auto right = section.wet_between(Length::feet(20), Length::feet(30), level);
  EXPECT_NEAR(left.wetted_perimeter.feet(), 10 + 1, 1e-12);
  EXPECT_NEAR(channel.wetted_perimeter.feet(), 10 + 3 + 3, 1e-12);
  EXPECT_NEAR(right.wetted_perimeter.feet(), 10 + 1, 1e-12);
}

TEST(Section, AddsAWallWhereTheSurveyEndsBelowTheWater) {
  const Section section = made({feet(0, 2), feet(5, 0), feet(10, 4)});
  const auto wet = section.wet(Length::feet(3));
  EXPECT_TRUE(wet.end_wall_added);
  EXPECT_NEAR(wet.wetted_perimeter.feet(), 1 + std::sqrt(29) + 0.75 * std::sqrt(41), 1e-12);
  EXPECT_FALSE(section.wet(Length::feet(2)).end_wall_added);
}

TEST(Section, CountsWaterBehindHigherGroundApart) {
  const Section section = made({feet(0, 9), feet(5, 0), feet(10, 6), feet(15, 3), feet(20, 9)});
  EXPECT_EQ(section.wet(Length::feet(2)).wet_stretches, 1);
  EXPECT_EQ(section.wet(Length::feet(4)).wet_stretches, 2);
  EXPECT_EQ(section.wet(Length::feet(7)).wet_stretches, 1);
}

TEST(Section, PerimeterGrowthIsTheDerivativeOfThePerimeter) {
  const Section section = made(flood_plain_points());
  for (const double level : {97.5, 99.3, 103.7, 106.0}) {
    const double step = 1e-5;
    const auto above = section.wet(Length::feet(level + step)).wetted_perimeter.feet();
    const auto below = section.wet(Length::feet(level - step)).wetted_perimeter.feet();
    EXPECT_NEAR(section.wet(Length::feet(level)).perimeter_growth, (above - below) / (2 * step),
                1e-5);
  }
}

}  // namespace
}  // namespace proofstone
