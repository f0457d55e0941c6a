#include "engine/hydraulics/profile.h"

#include <gtest/gtest.h>

#include <limits>
#include <utility>

#include "engine/hydraulics/reach_example.h"

namespace proofstone {
namespace {

using namespace reach_example;

// The values of these profiles were worked out apart from this engine.
TEST(Profile, BackwaterRisesAsTheStandardStepSays) {
  struct Case {
    FrictionMean mean;
    double at_100, at_500, at_1000;
  };
  for (const Case& one : {Case{FrictionMean::arithmetic, 3.425133, 3.153059, 2.889259},
                          Case{FrictionMean::average_conveyance, 3.425087, 3.152824, 2.888869},
                          Case{FrictionMean::geometric, 3.425102, 3.152902, 2.888999},
                          Case{FrictionMean::harmonic, 3.425072, 3.152745, 2.888739}}) {
    ProfileCase flow_case = flow(computed_discharge, Boundary::known(Length::meters(3.5)));
    flow_case.friction = one.mean;
    const auto profile = solved(channel({{0.001, 1000, 10}}), flow_case);
    EXPECT_NEAR(depth_above_end(profile, 100), one.at_100, 1e-6) << friction_mean_name(one.mean);
    EXPECT_NEAR(depth_above_end(profile, 500), one.at_500, 1e-6) << friction_mean_name(one.mean);
    EXPECT_NEAR(depth_above_end(profile, 1000), one.at_1000, 1e-6) << friction_mean_name(one.mean);
  }
}

TEST(Profile, DrawdownToAnOverfall) {
  const auto profile = solved(channel({{0.001, 900, 900}, {0.001, 100, 1600}}),
                              flow(computed_discharge, Boundary::critical()));
  EXPECT_NEAR(profile.sections.back().flow.wet.deepest.meters(), 1.595795, 1e-6);
  EXPECT_TRUE(profile.sections.back().has(ProfileNote::control));
  EXPECT_NEAR(depth_above_end(profile, 50), 1.98910, 2e-4);
  EXPECT_NEAR(depth_above_end(profile, 100), 2.10748, 2e-4);
  EXPECT_NEAR(depth_above_end(profile, 200), 2.24113, 2e-4);
  EXPECT_NEAR(depth_above_end(profile, 500), 2.41539, 2e-4);
  EXPECT_NEAR(depth_above_end(profile, 1000), 2.51200, 2e-4);
  EXPECT_TRUE(profile.jumps.empty());
}

TEST(Profile, RapidFlowBelowABreakOfSlope) {
  const auto profile = solved(channel({{0.001, 100, 10}, {0.02, 100, 800}}),
                              flow(computed_discharge, Boundary::normal(Slope::ratio(0.02))));
  const auto depth_below_break = [&](double x) { return depth_above_end(profile, 100 - x); };
  EXPECT_EQ(profile.sections[10].regime, FlowRegime::critical);
  EXPECT_TRUE(profile.sections[10].has(ProfileNote::control));
  EXPECT_FALSE(profile.sections[10].has(ProfileNote::critical_assumed));
  EXPECT_EQ(profile.sections.back().regime, FlowRegime::supercritical);
  EXPECT_NEAR(depth_below_break(5), 1.39374, 2e-4);
  EXPECT_NEAR(depth_below_break(10), 1.33467, 2e-4);
  EXPECT_NEAR(depth_below_break(20), 1.27148, 2e-4);
  EXPECT_NEAR(depth_below_break(50), 1.20055, 2e-4);
  EXPECT_TRUE(profile.jumps.empty());
}

TEST(Profile, AJumpStandsOnTheSteepReach) {
  const auto profile = solved(channel({{0.02, 60, 960}, {0.001, 200, 200}}),
                              flow(computed_discharge, Boundary::normal(Slope::ratio(0.001)),
                                   Boundary::normal(Slope::ratio(0.02))));
  ASSERT_EQ(profile.jumps.size(), 1u);
  EXPECT_NEAR(60 - profile.jumps[0].distance.meters(), 18.310, 0.02);
  EXPECT_NEAR(profile.jumps[0].froude_before.number(), 1.71971, 1e-3);
}

TEST(Profile, RapidFlowRunsPastTheBreakBeforeItJumps) {
  for (const auto& [steep, runs_on] : {std::pair{0.06, 3.1237}, {0.10, 17.3673}}) {
    const auto profile = solved(channel({{steep, 50, 100}, {0.001, 60, 2400}}),
                                flow(computed_discharge, Boundary::normal(Slope::ratio(0.001)),
                                     Boundary::normal(Slope::ratio(steep))));
    ASSERT_EQ(profile.jumps.size(), 1u);
    EXPECT_NEAR(profile.jumps[0].distance.meters() - 50, runs_on, 0.01) << steep;
    EXPECT_GT(profile.jumps[0].energy_lost.meters(), 0);
  }
}

TEST(Profile, InterpolatedSectionsFollowAPrismaticChannel) {
  const auto given = channel({{0.001, 1000, 10}});
  const std::vector<ReachSection> two = {trapezoid(6, 2, 1, 0.025 / to_standard_gravity, 1000),
                                         trapezoid(6, 2, 0, 0.025 / to_standard_gravity, 1)};
  const auto reach = Reach::make(two, Length::meters(100));
  ASSERT_TRUE(reach);
  ASSERT_EQ(reach->sections().size(), 11u);
  const auto flow_case = flow(computed_discharge, Boundary::known(Length::meters(3.5)));
  const auto interpolated = water_profile(*reach, flow_case);
  ASSERT_TRUE(interpolated);
  const auto surveyed = solved(given, flow_case);
  for (std::size_t i = 0; i < surveyed.sections.size(); ++i) {
    EXPECT_NEAR(interpolated->sections[i].flow.water_level.meters(),
                surveyed.sections[i].flow.water_level.meters(), 1e-9);
    EXPECT_EQ(interpolated->sections[i].interpolated, i % 10 != 0);
  }
}

TEST(Profile, WaterAboveTheEndsIsHeldByAWallAndMarked) {
  auto sections = channel({{0.001, 100, 2}});
  ProfileCase flow_case = flow(20'000, Boundary::normal(Slope::ratio(0.001)));
  const auto profile = solved(sections, flow_case);
  for (const auto& section : profile.sections) {
    EXPECT_TRUE(section.has(ProfileNote::section_extended));
    EXPECT_GT(section.flow.wet.deepest.meters(), 20);
  }
}

TEST(Profile, ARatingTableIsReadBetweenItsLinesAndNotBeyond) {
  const auto q = [](double v) { return Discharge::cubic_meters_per_second(v); };
  const auto table = Boundary::rated({{q(40), Length::meters(3)}, {q(60), Length::meters(4)}});
  const auto profile = solved(channel({{0.001, 1000, 10}}), flow(50, table));
  EXPECT_NEAR(profile.sections.back().flow.water_level.meters(), 3.5, 1e-12);
  const auto reach = Reach::make(channel({{0.001, 1000, 10}}));
  const auto outside = water_profile(*reach, flow(70, table));
  ASSERT_FALSE(outside);
  EXPECT_EQ(outside.problems().front().code, "rating-outside");
}

TEST(Profile, AnIneffectivePartStandsStillUntilItIsOverflowed) {
  auto sections = channel({{0.001, 200, 2}});
  const auto whole =
      solved(sections, flow(computed_discharge, Boundary::known(Length::meters(2.2))));
  for (auto& section : sections) {
    section.ineffective = {{Length::meters(-50), Length::meters(-2), Length::meters(2.8)}};
  }
  const auto part =
      solved(sections, flow(computed_discharge, Boundary::known(Length::meters(2.2))));
  EXPECT_GT(part.sections.front().flow.water_level, whole.sections.front().flow.water_level);
  EXPECT_LT(part.sections.back().flow.wet.area, whole.sections.back().flow.wet.area);
  const auto high = solved(sections, flow(computed_discharge, Boundary::known(Length::meters(3))));
  EXPECT_NEAR(high.sections.back().flow.wet.area.si(), (6 + 2 * 3) * 3, 1e-9);
}

TEST(Profile, OverbankLengthsAreWeightedByWhatFlowsThere) {
  // A compound channel whose flood plains take a short cut.
  const auto section = [](double bed, double plain_length) {
    std::vector<SectionPoint> points;
    const auto add = [&](double x, double z, double n) {
      points.push_back({Length::meters(x), Length::meters(bed + z), Dimensionless::number(n)});
    };
    add(0, 8, 0.06), add(0, 3, 0.06), add(40, 3, 0.03), add(40, 0, 0.03), add(50, 0, 0.03);
    add(50, 3, 0.06), add(90, 3, 0.06), add(90, 8, 0.06);
    ReachSection one{"", *Section::make(points)};
    one.left_bank = Length::meters(40);
    one.right_bank = Length::meters(50);
    one.to_next = {Length::meters(plain_length), Length::meters(200), Length::meters(plain_length)};
    return one;
  };
  const auto rise = [&](double plain_length) {
    const auto profile = solved({section(0.2, plain_length), section(0, plain_length)},
                                flow(200, Boundary::known(Length::meters(4.5))));
    return profile.sections.front().energy_level.meters();
  };
  EXPECT_LT(rise(100), rise(200));
  EXPECT_LT(rise(200), rise(300));
}

TEST(Profile, ACompoundSectionTellsOfItsOtherCriticalDepths) {
  std::vector<SectionPoint> points;
  const auto add = [&](double x, double z, double n) {
    points.push_back({Length::meters(x), Length::meters(z), Dimensionless::number(n)});
  };
  add(0, 8, 0.08), add(0, 3, 0.08), add(40, 3, 0.03), add(40, 0, 0.03), add(50, 0, 0.03);
  add(50, 3, 0.08), add(90, 3, 0.08), add(90, 8, 0.08);
  ReachSection one{"", *Section::make(points)};
  one.left_bank = Length::meters(40);
  one.right_bank = Length::meters(50);
  one.to_next = ReachLengths::all(Length::meters(100));
  const auto profile = solved({one, one}, flow(140 * to_standard_gravity, Boundary::critical()));
  const auto& last = profile.sections.back();
  EXPECT_TRUE(last.has(ProfileNote::several_critical));
  EXPECT_NEAR(last.critical_level.meters(), 3.441653, 1e-5);
  ASSERT_EQ(last.further_critical_levels.size(), 1u);
  EXPECT_NEAR(last.further_critical_levels[0].meters(), 2.713495, 1e-5);
}

TEST(Profile, NamesWhatStandsInTheWay) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto reach = Reach::make(channel({{0.001, 100, 2}}));
  const auto level = [](double v) { return Boundary::known(Length::meters(v)); };
  const auto q = [](double v) { return Discharge::cubic_meters_per_second(v); };
  struct Case {
    const char* code;
    ProfileCase flow_case;
  };
  ProfileCase rapid = flow(10, Boundary::critical());
  rapid.regime = ProfileRegime::supercritical;
  const std::vector<Case> cases = {
      {"discharge-not-positive", flow(0, level(2))},
      {"discharge-not-positive", flow(-3, level(2))},
      {"discharge-not-positive", flow(nan, level(2))},
      {"slope-not-positive", flow(10, Boundary::normal(Slope::ratio(0)))},
      {"slope-not-positive", flow(10, Boundary::normal(Slope::ratio(-0.01)))},
      {"slope-not-positive", flow(10, Boundary::normal(Slope::ratio(nan)))},
      {"level-not-above-bed", flow(10, level(-1))},
      {"level-not-above-bed", flow(10, level(nan))},
      {"slope-not-positive", flow(10, level(2), Boundary::normal(Slope::ratio(-1)))},
      {"rating-too-short", flow(10, Boundary::rated({{q(1), Length::meters(1)}}))},
      {"rating-unsorted",
       flow(10, Boundary::rated({{q(20), Length::meters(1)}, {q(1), Length::meters(2)}}))},
      {"no-upstream-boundary", rapid},
  };
  for (const auto& one : cases) {
    const auto profile = water_profile(*reach, one.flow_case);
    ASSERT_FALSE(profile) << one.code;
    EXPECT_EQ(profile.problems().front().code, one.code);
  }
}

TEST(Profile, ABoundaryOnTheWrongSideOfCriticalIsNotUsed) {
  const auto profile = solved(channel({{0.001, 100, 2}}),
                              flow(computed_discharge, Boundary::known(Length::meters(1))));
  EXPECT_TRUE(profile.sections.back().has(ProfileNote::boundary_not_used));
  EXPECT_EQ(profile.sections.back().regime, FlowRegime::critical);
}

TEST(Profile, AnAdverseBedIsNoHindrance) {
  const auto profile = solved(channel({{0.001, 100, 4}, {-0.002, 100, 4}}),
                              flow(computed_discharge, Boundary::known(Length::meters(3))));
  for (std::size_t i = 1; i < profile.sections.size(); ++i) {
    EXPECT_LE(profile.sections[i].energy_level, profile.sections[i - 1].energy_level);
  }
}

}  // namespace
}  // namespace proofstone
