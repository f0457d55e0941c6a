#include "engine/hydraulics/reach.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>
#include <utility>

#include "engine/hydraulics/interpolated_section.h"
#include "engine/hydraulics/reach_example.h"

namespace proofstone {
namespace {

using namespace reach_example;

TEST(Reach, NamesWhatIsWrongWithItsSections) {
  struct Case {
    const char* code;
    std::function<void(std::vector<ReachSection>&)> spoil;
  };
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto m = [](double v) { return Length::meters(v); };
  const std::vector<Case> cases = {
      {"section-count", [](auto& s) { s.resize(1, s[0]); }},
      {"section-count", [](auto& s) { s.clear(); }},
      {"length-not-positive", [&](auto& s) { s[0].to_next.channel = m(0); }},
      {"length-not-positive", [&](auto& s) { s[1].to_next.left = m(-4); }},
      {"length-not-positive", [&](auto& s) { s[1].to_next.right = m(nan); }},
      {"one-bank", [&](auto& s) { s[0].left_bank = m(0); }},
      {"banks-in-some",
       [&](auto& s) {
         s[1].left_bank = m(-3);
         s[1].right_bank = m(3);
       }},
      {"bank-outside",
       [&](auto& s) {
         s[0].left_bank = m(-300);
         s[0].right_bank = m(3);
       }},
      {"banks-crossed",
       [&](auto& s) {
         s[0].left_bank = m(3);
         s[0].right_bank = m(-3);
       }},
      {"ineffective-part", [&](auto& s) { s[0].ineffective = {{m(3), m(1), m(2)}}; }},
      {"ineffective-part",
       [&](auto& s) { s[0].ineffective = {{m(1), m(3), m(2)}, {m(2), m(4), m(2)}}; }},
      {"ineffective-part", [&](auto& s) { s[0].ineffective = {{m(1), m(3), m(nan)}}; }},
      {"loss-out-of-range", [](auto& s) { s[0].losses.expansion = Dimensionless::number(-0.1); }},
      {"energy-coefficient", [](auto& s) { s[0].energy_coefficient = Dimensionless::number(0.5); }},
  };
  for (const auto& one : cases) {
    auto sections = channel({{0.001, 100, 2}});
    one.spoil(sections);
    const auto reach = Reach::make(sections);
    ASSERT_FALSE(reach) << one.code;
    EXPECT_EQ(reach.problems().front().code, one.code);
  }
}

TEST(Reach, AStepThatAsksForTooManySectionsIsRefused) {
  const auto sections = channel({{0.001, 100, 2}});
  for (const double step : {0.0, -1.0, 1e-9, 1e-300}) {
    EXPECT_FALSE(Reach::make(sections, Length::meters(step))) << step;
  }
}

TEST(InterpolatedSection, RectanglesStayRectangles) {
  const auto section =
      interpolated_section(trapezoid(10, 0, 1, 0.03, 50), trapezoid(6, 0, 0, 0.05, 50), 0.25);
  ASSERT_TRUE(section) << section.problems().front().sentence();
  const Section& ground = section->section;
  ASSERT_EQ(ground.points().size(), 4u);
  EXPECT_NEAR((ground.right_end() - ground.left_end()).meters(), 9, 1e-12);
  const auto wet = ground.wet(ground.lowest() + Length::meters(2));
  EXPECT_NEAR(wet.area.si(), 18, 1e-9);
  EXPECT_NEAR(wet.wetted_perimeter.meters(), 13, 1e-9);
  EXPECT_NEAR(ground.points()[1].roughness.number(), 0.035, 1e-12);
}

TEST(InterpolatedSection, ATrapezoidBecomesTheNextOne) {
  const auto section =
      interpolated_section(trapezoid(10, 2, 1, 0.03, 50), trapezoid(6, 1, 0, 0.03, 50), 0.5);
  ASSERT_TRUE(section);
  const Section& ground = section->section;
  const auto wet = ground.wet(ground.lowest() + Length::meters(2));
  EXPECT_NEAR(ground.lowest().meters(), 0.5, 1e-12);
  EXPECT_NEAR(wet.area.si(), (8 + 1.5 * 2) * 2, 0.5);
}

TEST(InterpolatedSection, AWallTurnsIntoASlope) {
  const auto section =
      interpolated_section(trapezoid(10, 0, 0, 0.03, 50), trapezoid(10, 2, 0, 0.03, 50), 0.5);
  ASSERT_TRUE(section) << section.problems().front().sentence();
  EXPECT_NEAR(section->section.lowest().meters(), 0, 1e-12);
}

TEST(InterpolatedSection, BanksAndWallsOfACompoundSectionStayWhereTheyAre) {
  std::vector<SectionPoint> points;
  const auto add = [&](double x, double z, double n) {
    points.push_back({Length::meters(x), Length::meters(z), Dimensionless::number(n)});
  };
  add(0, 8, 0.06), add(0, 3, 0.06), add(40, 3, 0.03), add(40, 0, 0.03), add(50, 0, 0.03);
  add(50, 3, 0.06), add(90, 3, 0.06), add(90, 8, 0.06);
  ReachSection one{"a", *Section::make(points)};
  one.left_bank = Length::meters(40);
  one.right_bank = Length::meters(50);
  const auto between = interpolated_section(one, one, 0.4);
  ASSERT_TRUE(between) << between.problems().front().sentence();
  for (const double level : {1.0, 3.5, 7.0}) {
    for (const auto& [from, to] : {std::pair{0.0, 40.0}, {40.0, 50.0}, {50.0, 90.0}}) {
      const auto wet =
          one.section.wet_between(Length::meters(from), Length::meters(to), Length::meters(level));
      const auto same = between->section.wet_between(Length::meters(from), Length::meters(to),
                                                     Length::meters(level));
      EXPECT_NEAR(wet.area.si(), same.area.si(), 1e-9);
      EXPECT_NEAR(wet.wetted_perimeter.si(), same.wetted_perimeter.si(), 1e-9);
    }
  }
}

}  // namespace
}  // namespace proofstone
