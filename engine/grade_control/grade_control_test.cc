#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/grade_control/grouted_boulder_drop.h"
#include "engine/grade_control/low_drop.h"
#include "engine/grade_control/sloping_rock_drop.h"
#include "engine/grade_control/weighted_creep.h"

namespace proofstone {
namespace {

double boulder_inches(double Rp) {
  const auto boulder = boulder_for(Dimensionless::number(Rp));
  return boulder ? boulder->inches() : 0;
}

// The table prints 4.50–4.99, 5.00–5.59, … 7.50–8.00.
TEST(GroutedBoulderDrop, BouldersOfTheTable) {
  EXPECT_NEAR(boulder_inches(3.0), 18, 1e-9);
  EXPECT_NEAR(boulder_inches(4.99), 18, 1e-9);
  EXPECT_NEAR(boulder_inches(5.0), 24, 1e-9);
  EXPECT_NEAR(boulder_inches(5.59), 24, 1e-9);
  EXPECT_NEAR(boulder_inches(5.6), 30, 1e-9);
  EXPECT_NEAR(boulder_inches(6.4), 36, 1e-9);
  EXPECT_NEAR(boulder_inches(7.0), 42, 1e-9);
  EXPECT_NEAR(boulder_inches(7.5), 48, 1e-9);
  EXPECT_NEAR(boulder_inches(8.0), 48, 1e-9);
  EXPECT_FALSE(boulder_for(Dimensionless::number(8.01)));
}

std::size_t limits_not_kept(const Method& method, const nlohmann::json& inputs) {
  const auto evaluation = method.evaluate(inputs);
  EXPECT_TRUE(static_cast<bool>(evaluation));
  return evaluation ? evaluation->limits_not_kept.size() : 99;
}

TEST(GroutedBoulderDrop, LimitsOfTheSimplifiedDesignAreNamed) {
  const auto& method = grouted_boulder_drop_method();
  EXPECT_EQ(
      limits_not_kept(
          method, {{"unit_discharge", "30 ft²/s"}, {"slope", "4H:1V"}, {"drop_height", "5 ft"}}),
      0U);
  EXPECT_EQ(
      limits_not_kept(
          method, {{"unit_discharge", "36 ft²/s"}, {"slope", "3.5H:1V"}, {"drop_height", "6 ft"}}),
      3U);
}

// A spillway sheet of 1992 works with 5.8: the size shrinks to 60 %, and the limit is named.
TEST(SlopingRockDrop, TheLargerConstantIsNamed) {
  const auto& method = sloping_rock_drop_method();
  nlohmann::json inputs = {{"velocity", "10 ft/s"}, {"slope", "0.04"}};
  EXPECT_EQ(limits_not_kept(method, inputs), 0U);
  const double published = method.evaluate(inputs)->output("d50").si;
  inputs["constant"] = "5.8";
  EXPECT_EQ(limits_not_kept(method, inputs), 1U);
  EXPECT_NEAR(method.evaluate(inputs)->output("d50").si / published, 0.602, 0.0005);
}

TEST(SlopingRockDrop, LightRockIsNamed) {
  EXPECT_EQ(
      limits_not_kept(sloping_rock_drop_method(),
                      {{"velocity", "10 ft/s"}, {"slope", "0.04"}, {"specific_gravity", "2.45"}}),
      1U);
}

TEST(WeightedCreep, TooShortAWayIsALimitNotKept) {
  const auto& method = weighted_creep_method();
  EXPECT_EQ(
      limits_not_kept(method, {{"horizontal", "60 ft"}, {"vertical", "24 ft"}, {"head", "5 ft"}}),
      0U);
  EXPECT_EQ(
      limits_not_kept(method, {{"horizontal", "60 ft"}, {"vertical", "24 ft"}, {"head", "8 ft"}}),
      1U);
}

TEST(LowDrop, ADropAboveCriticalDepthIsNamed) {
  EXPECT_EQ(limits_not_kept(low_drop_method(),
                            {{"unit_discharge", "10 ft²/s"}, {"drop_height", "1.5 ft"}}),
            1U);
}

}  // namespace
}  // namespace proofstone
