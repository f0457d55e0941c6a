#include "engine/hydraulics/uniform_flow_near.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

Section valley() {
  const auto at = [](double station, double elevation) {
    return SectionPoint{Length::feet(station), Length::feet(elevation),
                        Dimensionless::number(0.035)};
  };
  auto section = Section::make({at(0, 119), at(26, 117), at(50, 105), at(58, 104.3), at(94, 105.9),
                                at(124, 112.3), at(240, 119.6)});
  EXPECT_TRUE(section);
  return std::move(*section);
}

TEST(UniformFlowNear, IsTheNormalFlowFromWhereverItBegins) {
  const Section section = valley();
  const std::vector<Length> banks{Length::feet(26), Length::feet(124)};
  for (const double discharge : {5.0, 400.0, 4200.0}) {
    const UniformFlowCase sought{Discharge::cubic_feet_per_second(discharge), Slope::ratio(0.003),
                                 CompositeRoughness::horton};
    Steps steps;
    const auto whole =
        normal_flow(section, banks, sought.discharge, sought.slope, sought.composite, steps);
    ASSERT_TRUE(whole);
    for (const double near : {0.0, 104.4, 106.0, 112.0, 118.0, 500.0}) {
      const auto flow = uniform_flow_near(section, banks, sought, Length::feet(near));
      ASSERT_TRUE(flow) << flow.problems().front().sentence();
      EXPECT_NEAR(flow->water_level.si(), whole->water_level.si(), 1e-9) << discharge << near;
      EXPECT_NEAR(flow->mean_velocity().si(), whole->mean_velocity().si(), 1e-8);
    }
  }
}

TEST(UniformFlowNear, WaterAboveTheSurveyIsAProblem) {
  const UniformFlowCase sought{Discharge::cubic_feet_per_second(1e6), Slope::ratio(0.003),
                               CompositeRoughness::horton};
  const auto flow = uniform_flow_near(valley(), {}, sought, Length::feet(110));
  ASSERT_FALSE(flow);
  EXPECT_EQ(flow.problems().front().code, "overtopped");
}

}  // namespace
}  // namespace proofstone
