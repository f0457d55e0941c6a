#include "engine/chute/rock_chute.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

std::size_t limits_not_kept(const char* q, const char* slope, const char* factor) {
  const auto evaluation = rock_chute_method().evaluate(
      {{"unit_discharge", q}, {"slope", slope}, {"safety_factor", factor}});
  EXPECT_TRUE(static_cast<bool>(evaluation));
  return evaluation ? evaluation->limits_not_kept.size() : 99;
}

TEST(RockChute, LimitsNotKeptAreNamed) {
  EXPECT_EQ(limits_not_kept("5 ft²/s", "0.25", "1.2"), 0U);
  EXPECT_EQ(limits_not_kept("5 ft²/s", "2.5H:1V", "1.2"), 0U);
  EXPECT_EQ(limits_not_kept("20 ft²/s", "0.40", "1.2"), 1U);  // 519 mm, tested to 278
  EXPECT_EQ(limits_not_kept("5 ft²/s", "0.25", "1.1"), 1U);
  EXPECT_EQ(limits_not_kept("5 ft²/s", "0.45", "1.2"), 1U);
  EXPECT_EQ(limits_not_kept("5 ft²/s", "0.015", "1.2"), 1U);
}

// The two forms meet near S = 0.1006 and leave no step worth naming at 10 %.
TEST(RockChute, TheTwoFormsMeetAtTenPercent) {
  RockChuteInputs below;
  below.unit_discharge = UnitDischarge::square_feet_per_second(5);
  below.slope = Slope::ratio(0.1 - 1e-9);
  RockChuteInputs at = below;
  at.slope = Slope::ratio(0.1);
  Steps steps;
  const double ratio = rock_chute(at, steps)->d50 / rock_chute(below, steps)->d50;
  EXPECT_GT(ratio, 1);
  EXPECT_LT(ratio, 1.004);
}

// US and SI constants are two prints of one equation.
TEST(RockChute, SiConstantsAgree) {
  for (const double S : {0.02, 0.05, 0.099, 0.1, 0.25, 0.4}) {
    RockChuteInputs in;
    in.unit_discharge = UnitDischarge::square_meters_per_second(0.5);
    in.slope = Slope::ratio(S);
    Steps steps;
    const double us = rock_chute(in, steps)->d50_at_failure.millimeters();
    const double si = S < 0.1 ? std::pow(0.5 * std::pow(S, 1.5) / 9.76e-7, 1 / 1.89)
                              : std::pow(0.5 * std::pow(S, 0.58) / 8.07e-6, 1 / 1.89);
    EXPECT_NEAR(us / si, 1, 0.0006) << S;
  }
}

}  // namespace
}  // namespace proofstone
