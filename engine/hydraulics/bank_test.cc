#include "engine/hydraulics/bank.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace proofstone {
namespace {

SectionPoint feet(double station, double elevation) {
  return {Length::feet(station), Length::feet(elevation), Dimensionless::number(0.035)};
}

// Bed of 140 ft, banks 1V:2H and 1V:3H, 20 ft high.
Section trapezoid() {
  return *Section::make({feet(0, 20), feet(40, 0), feet(180, 0), feet(240, 20)});
}

// The USACE examples read the depth on a plane bank as 0.8 of the toe's: 15 ft gives 12 ft.
TEST(BankGeometry, DepthOnAPlaneBankIsFourFifthsOfTheToes) {
  const auto bank =
      bank_geometry(trapezoid(), BankSide::left, std::nullopt, std::nullopt, Length::feet(15));
  ASSERT_TRUE(bank);
  EXPECT_NEAR(bank->toe_station.feet(), 40, 1e-12);
  EXPECT_NEAR(bank->toe_depth.feet(), 15, 1e-12);
  EXPECT_NEAR(bank->local_depth.feet(), 12, 1e-12);
  EXPECT_NEAR(bank->local_station.feet(), 34, 1e-12);
  EXPECT_NEAR(bank->top_station.feet(), 10, 1e-12);
  EXPECT_NEAR(std::tan(bank->angle.radians()), 0.5, 1e-12);
  EXPECT_NEAR(bank->wet_slope_length.feet(), 15 * std::sqrt(5), 1e-12);
  EXPECT_FALSE(bank->steps.lines().empty());
}

TEST(BankGeometry, TheOtherSideHasItsOwnToeAndAngle) {
  const auto bank =
      bank_geometry(trapezoid(), BankSide::right, std::nullopt, std::nullopt, Length::feet(15));
  ASSERT_TRUE(bank);
  EXPECT_NEAR(bank->toe_station.feet(), 180, 1e-12);
  EXPECT_NEAR(std::tan(bank->angle.radians()), 1.0 / 3, 1e-12);
  EXPECT_NEAR(bank->local_station.feet(), 189, 1e-12);
}

TEST(BankGeometry, AGivenTopBelowTheWaterLineBoundsTheAngle) {
  const Section broken =
      *Section::make({feet(0, 30), feet(20, 10), feet(40, 0), feet(60, 0), feet(90, 30)});
  const auto to_water =
      bank_geometry(broken, BankSide::left, std::nullopt, std::nullopt, Length::feet(20));
  const auto to_top =
      bank_geometry(broken, BankSide::left, std::nullopt, Length::feet(20), Length::feet(20));
  ASSERT_TRUE(to_water);
  ASSERT_TRUE(to_top);
  EXPECT_NEAR(std::tan(to_water->angle.radians()), 20.0 / 30, 1e-12);
  EXPECT_NEAR(to_water->steepest_angle.degrees(), 45, 1e-9);
  EXPECT_NEAR(std::tan(to_top->angle.radians()), 0.5, 1e-12);
  EXPECT_NEAR(to_top->top_elevation.feet(), 10, 1e-12);
  EXPECT_EQ(to_top->local_depth, to_water->local_depth) << "read on the whole wet slope";
  const auto above_water =
      bank_geometry(broken, BankSide::left, std::nullopt, Length::feet(1), Length::feet(20));
  ASSERT_TRUE(above_water);
  EXPECT_EQ(above_water->angle, to_water->angle);
}

TEST(BankGeometry, AWallOnTheToeIsABank) {
  const Section flume = *Section::make({feet(0, 9), feet(0, 0), feet(5, 0), feet(5, 9)});
  for (const auto side : {BankSide::left, BankSide::right}) {
    const auto bank = bank_geometry(flume, side, std::nullopt, std::nullopt, Length::feet(5));
    ASSERT_TRUE(bank);
    EXPECT_NEAR(bank->angle.degrees(), 90, 1e-9);
    EXPECT_NEAR(bank->local_depth.feet(), 4, 1e-12);
  }
  const auto across =
      bank_geometry(flume, BankSide::right, Length::feet(0), std::nullopt, Length::feet(5));
  ASSERT_TRUE(across);
  EXPECT_NEAR(across->top_station.feet(), 5, 1e-12) << "the wall behind the toe is no bank";
}

TEST(BankGeometry, NamesWhatStandsInTheWay) {
  struct Case {
    const char* code;
    std::optional<Length> toe, top;
    double level;
  };
  const std::vector<Case> cases = {
      {"dry", std::nullopt, std::nullopt, -1},
      {"dry", std::nullopt, std::nullopt, 0},
      {"dry", Length::feet(4), std::nullopt, 15},
      {"overtopped", std::nullopt, std::nullopt, 25},
      {"toe-outside", Length::feet(-4), std::nullopt, 15},
      {"top-on-wrong-side", std::nullopt, Length::feet(100), 15},
      {"top-on-wrong-side", std::nullopt, Length::feet(-100), 15},
      {"bank-not-rising", Length::feet(100), Length::feet(60), 15},
      {"not-a-number", std::nullopt, std::nullopt, std::numeric_limits<double>::quiet_NaN()},
  };
  for (const auto& one : cases) {
    const auto bank =
        bank_geometry(trapezoid(), BankSide::left, one.toe, one.top, Length::feet(one.level));
    ASSERT_FALSE(bank) << one.code;
    EXPECT_EQ(bank.problems().front().code, one.code);
  }
}

}  // namespace
}  // namespace proofstone
