#include "engine/hydraulics/section_flow.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace proofstone {
namespace {

SectionPoint at(Length station, Length elevation, double n) {
  return {station, elevation, Dimensionless::number(n)};
}
SectionPoint feet(double station, double elevation, double n = 0.035) {
  return at(Length::feet(station), Length::feet(elevation), n);
}
SectionPoint meters(double station, double elevation, double n = 0.03) {
  return at(Length::meters(station), Length::meters(elevation), n);
}

Section surveyed() {
  return *Section::make({feet(0, 110, 0.06), feet(20, 104, 0.06), feet(35, 103), feet(45, 98),
                         feet(60, 97), feet(72, 98.5), feet(80, 103, 0.08), feet(120, 104, 0.08),
                         feet(150, 110, 0.08)});
}
const std::vector<Length> bank_tops{Length::feet(35), Length::feet(80)};

Section compound() {
  return *Section::make({meters(0, 8, 0.08), meters(0, 3, 0.08), meters(40, 3, 0.03),
                         meters(40, 0, 0.03), meters(50, 0, 0.03), meters(50, 3, 0.08),
                         meters(90, 3, 0.08), meters(90, 8, 0.08)});
}
const std::vector<Length> channel_edges{Length::meters(40), Length::meters(50)};

constexpr double cubic_foot = unit::cubic_foot_factor;

// Zone values computed independently with k = 1.486, 0.005 % above the exact factor.
TEST(FlowAtLevel, SharesASurveyedSectionBetweenItsParts) {
  SectionFlow flow =
      flow_at_level(surveyed(), bank_tops, Length::feet(105), CompositeRoughness::horton);
  ASSERT_EQ(flow.parts.size(), 3u);
  EXPECT_NEAR(flow.parts[0].conveyance_si / cubic_foot / 714.888, 1, 1e-4);
  EXPECT_NEAR(flow.parts[1].conveyance_si / cubic_foot / 38454.772, 1, 1e-4);
  EXPECT_NEAR(flow.parts[2].conveyance_si / cubic_foot / 1442.793, 1, 1e-4);
  EXPECT_NEAR(flow.energy_coefficient.number(), 1.462279, 1e-6);
  EXPECT_NEAR(flow.parts[1].roughness.number(), 0.035, 1e-12);

  flow = carrying(flow, Discharge::cubic_feet_per_second(1624.4981));
  EXPECT_NEAR(flow.parts[0].velocity.feet_per_second(), 1.18326, 1e-4);
  EXPECT_NEAR(flow.parts[1].velocity.feet_per_second(), 5.52313, 1e-4);
  EXPECT_NEAR(flow.parts[2].velocity.feet_per_second(), 0.92339, 1e-4);
  EXPECT_NEAR(flow.mean_velocity().feet_per_second(), 4.44865, 1e-5);
  double total = 0;
  for (const auto& part : flow.parts) total += part.discharge.si();
  EXPECT_NEAR(total, flow.discharge.si(), 1e-12);
}

TEST(FlowAtLevel, DryIsAllZeroAndNotANumberNowhere) {
  SectionFlow flow =
      flow_at_level(surveyed(), bank_tops, Length::feet(90), CompositeRoughness::pavlovskii);
  flow = carrying(flow, Discharge::cubic_feet_per_second(1));
  EXPECT_EQ(flow.conveyance_si, 0);
  EXPECT_EQ(flow.mean_velocity().si(), 0);
  EXPECT_EQ(flow.hydraulic_radius().si(), 0);
  EXPECT_EQ(flow.froude_number.number(), 0);
  EXPECT_EQ(flow.energy_coefficient.number(), 1);
  for (const auto& part : flow.parts) EXPECT_EQ(part.roughness.number(), 0);
}

TEST(FlowAtLevel, LotterInsideOnePartEqualsDivision) {
  const auto level = Length::feet(105);
  const auto one = flow_at_level(surveyed(), {}, level, CompositeRoughness::lotter);
  const auto three = flow_at_level(surveyed(), bank_tops, level, CompositeRoughness::horton);
  EXPECT_NEAR(one.conveyance_si / three.conveyance_si, 1, 1e-12);
}

TEST(FlowAtLevel, LotterCountsAWallWithTheGroundItStandsOn) {
  // The channel's walls stand on its bed, whichever side one looks from.
  const Length level = Length::meters(4);
  const auto whole = flow_at_level(compound(), {}, level, CompositeRoughness::lotter);
  const auto parts = flow_at_level(compound(), channel_edges, level, CompositeRoughness::lotter);
  EXPECT_NEAR(whole.conveyance_si / parts.conveyance_si, 1, 1e-12);
}

TEST(FlowAtLevel, AWallCountsWithItsOwnRoughness) {
  // A flume: bed n 0.03 between concrete walls n 0.012, water 1 m deep.
  const Section flume = *Section::make(
      {meters(0, 2, 0.012), meters(0, 0, 0.03), meters(2, 0, 0.012), meters(2, 2, 0.012)});
  const auto flow = flow_at_level(flume, {}, Length::meters(1), CompositeRoughness::horton);
  const double n = std::pow((2 * std::pow(0.03, 1.5) + 2 * std::pow(0.012, 1.5)) / 4, 2.0 / 3.0);
  EXPECT_NEAR(flow.parts[0].roughness.number(), n, 1e-12);
}

TEST(NormalFlow, CarriesTheDischargeAndShowsItsWorking) {
  Steps steps;
  const auto flow = normal_flow(surveyed(), bank_tops, Discharge::cubic_feet_per_second(1500),
                                Slope::ratio(0.0016), CompositeRoughness::horton, steps);
  ASSERT_TRUE(flow);
  EXPECT_NEAR(flow->conveyance_si * 0.04, flow->discharge.si(), 1e-9);
  EXPECT_TRUE(flow->further_levels.empty());
  bool shows_level = false, shows_part = false;
  for (const auto& step : steps.lines()) {
    shows_level = shows_level || step.symbol == "w";
    shows_part = shows_part || step.symbol == "K2";
  }
  EXPECT_TRUE(shows_level);
  EXPECT_TRUE(shows_part);
}

TEST(NormalFlow, TheLowestOfSeveralLevelsIsGivenAndTheOthersNamed) {
  // One undivided part: conveyance falls when water spreads over the berms at 3 m.
  const Section berms =
      *Section::make({meters(0, 8), meters(0, 3), meters(40, 3), meters(40, 0), meters(50, 0),
                      meters(50, 3), meters(90, 3), meters(90, 8)});
  Steps steps;
  const auto flow = normal_flow(berms, {}, Discharge::cubic_meters_per_second(40),
                                Slope::ratio(0.001), CompositeRoughness::horton, steps);
  ASSERT_TRUE(flow);
  EXPECT_LT(flow->wet.deepest.meters(), 3);
  ASSERT_EQ(flow->further_levels.size(), 1u);
  const Length higher = flow->further_levels.front();
  EXPECT_GT(higher.meters(), 3);
  const auto there = flow_at_level(berms, {}, higher, CompositeRoughness::horton);
  EXPECT_NEAR(there.conveyance_si * std::sqrt(0.001), 40, 1e-9);
}

TEST(NormalFlow, NamesWhatStandsInTheWay) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  struct Case {
    const char* code;
    double discharge, slope;
    std::vector<Length> divisions;
  };
  const std::vector<Case> cases = {
      {"overtopped", 1e9, 0.001, {}},
      {"discharge-not-positive", 0, 0.001, {}},
      {"discharge-not-positive", -5, 0.001, {}},
      {"discharge-not-positive", nan, 0.001, {}},
      {"slope-not-positive", 10, 0, {}},
      {"slope-not-positive", 10, -0.1, {}},
      {"slope-not-positive", 10, nan, {}},
      {"division-outside", 10, 0.001, {Length::feet(500)}},
      {"division-outside", 10, 0.001, {Length::feet(80), Length::feet(35)}},
  };
  for (const auto& one : cases) {
    Steps steps;
    const auto flow =
        normal_flow(surveyed(), one.divisions, Discharge::cubic_meters_per_second(one.discharge),
                    Slope::ratio(one.slope), CompositeRoughness::horton, steps);
    ASSERT_FALSE(flow) << one.code;
    EXPECT_EQ(flow.problems().front().code, one.code);
  }
}

TEST(NormalFlow, OvertoppedSaysWhatTheSectionHolds) {
  Steps steps;
  const auto flow = normal_flow(surveyed(), bank_tops, Discharge::cubic_feet_per_second(1e6),
                                Slope::ratio(0.0016), CompositeRoughness::horton, steps);
  ASSERT_FALSE(flow);
  EXPECT_NE(flow.problems().front().what.find("it carries"), std::string::npos);
  EXPECT_NE(flow.problems().front().what.find("110"), std::string::npos);
}

TEST(NormalFlow, AFlatSectionHoldsNothing) {
  const Section flat = *Section::make({meters(0, 1), meters(5, 1), meters(9, 1)});
  Steps steps;
  const auto flow = normal_flow(flat, {}, Discharge::cubic_meters_per_second(1),
                                Slope::ratio(0.001), CompositeRoughness::horton, steps);
  ASSERT_FALSE(flow);
  EXPECT_EQ(flow.problems().front().code, "overtopped");
}

TEST(NormalFlow, ALargeSectionCarriesItsDischarge) {
  std::vector<SectionPoint> points;
  for (int i = 0; i < 2'000; ++i) {
    const double x = i * 0.5;
    const double bowl = 0.00002 * (x - 500) * (x - 500);
    points.push_back(meters(x, bowl + 0.05 * std::sin(i * 1.7), 0.02 + 0.001 * (i % 7)));
  }
  const Section section = *Section::make(points);
  Steps steps;
  for (const auto composite : {CompositeRoughness::horton, CompositeRoughness::lotter}) {
    const auto flow = normal_flow(section, {}, Discharge::cubic_meters_per_second(200),
                                  Slope::ratio(0.001), composite, steps);
    ASSERT_TRUE(flow);
    EXPECT_NEAR(flow->conveyance_si * std::sqrt(0.001), 200, 1e-6);
  }
}

TEST(CriticalFlows, FindsEveryLeastOfTheSpecificEnergy) {
  const auto flows =
      critical_flows(compound(), channel_edges, Discharge::cubic_meters_per_second(140),
                     CompositeRoughness::horton);
  ASSERT_TRUE(flows);
  ASSERT_EQ(flows->size(), 2u);
  EXPECT_LT((*flows)[0].specific_energy(), (*flows)[1].specific_energy());
  for (const auto& flow : *flows) {
    for (const double step : {-1e-3, 1e-3}) {
      const auto beside =
          carrying(flow_at_level(compound(), channel_edges, flow.water_level + Length::meters(step),
                                 CompositeRoughness::horton),
                   flow.discharge);
      EXPECT_GT(beside.specific_energy(), flow.specific_energy());
    }
  }
}

TEST(CriticalFlows, EveryCompositeFormFindsALeast) {
  for (const auto composite :
       {CompositeRoughness::horton, CompositeRoughness::pavlovskii, CompositeRoughness::lotter}) {
    const auto flows =
        critical_flows(surveyed(), bank_tops, Discharge::cubic_feet_per_second(2500), composite);
    ASSERT_TRUE(flows);
    for (const auto& flow : *flows) {
      for (const double step : {-1e-3, 1e-3}) {
        const auto beside =
            carrying(flow_at_level(surveyed(), bank_tops, flow.water_level + Length::meters(step),
                                   composite),
                     flow.discharge);
        EXPECT_GT(beside.specific_energy(), flow.specific_energy());
      }
    }
  }
}

TEST(CriticalFlows, NamesWhatStandsInTheWay) {
  const auto none = critical_flows(surveyed(), {}, Discharge::cubic_feet_per_second(0),
                                   CompositeRoughness::horton);
  ASSERT_FALSE(none);
  EXPECT_EQ(none.problems().front().code, "discharge-not-positive");
  const auto over = critical_flows(surveyed(), {}, Discharge::cubic_feet_per_second(1e9),
                                   CompositeRoughness::horton);
  ASSERT_FALSE(over);
  EXPECT_EQ(over.problems().front().code, "overtopped");
}

}  // namespace
}  // namespace proofstone
