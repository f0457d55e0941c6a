#include "engine/hydraulics/lateral_distribution.h"

#include <gtest/gtest.h>

#include <cmath>

namespace proofstone {
namespace {

SectionPoint at(double station, double elevation) {
  return {Length::meters(station), Length::meters(elevation), Dimensionless::number(0.03)};
}

Section made(std::vector<SectionPoint> points) {
  auto section = Section::make(std::move(points));
  EXPECT_TRUE(section);
  return *section;
}

LateralWater water_of(double level) {
  LateralWater water;
  water.water_level = Length::meters(level);
  water.energy_slope = Slope::ratio(0.001);
  return water;
}

double velocity_at(const LateralDistribution& across, double station) {
  const auto cell = across.at(Length::meters(station));
  EXPECT_TRUE(cell);
  return cell ? cell->velocity.meters_per_second() : 0;
}

/// Between upright walls U² = (8gHS/f)·(1 − cosh(γy)/cosh(γb)), γ = √(2/λ)·(f/8)^¼/H, y from the
/// middle and b half the width: the solution on a level bed with still water at the walls.
TEST(LateralDistribution, BetweenUprightWallsItIsTheClosedForm) {
  const Section flume = made({at(0, 3), at(0, 0), at(6, 0), at(6, 3)});
  LateralWater water = water_of(2);
  water.friction_factors = {0.05, 0.05, 0.05};
  const double gamma = std::sqrt(2 / 0.07) * std::pow(0.05 / 8, 0.25) / 2;
  const double far = std::sqrt(8 * water.gravity_si * 2 * 0.001 / 0.05);
  double error_before = 0;
  for (const int cells : {100, 200, 400}) {
    water.cells = cells;
    const auto across = lateral_distribution(flume, water);
    ASSERT_TRUE(across);
    double error = 0;
    for (const double x : {0.5, 1.5, 3.0, 4.5}) {
      const double y = x - 3;
      const double exact = far * std::sqrt(1 - std::cosh(gamma * y) / std::cosh(gamma * 3));
      error = std::max(error, std::abs(velocity_at(*across, x) - exact));
    }
    EXPECT_LT(error, 2.0 / cells / cells * 100);
    if (error_before > 0) {
      EXPECT_LT(error, error_before / 3) << cells << " cells: second order";
    }
    error_before = error;
  }
}

TEST(LateralDistribution, OnWideLevelGroundItIsTheLocalBalance) {
  const Section wide = made({at(0, 4), at(8, 0), at(408, 0), at(416, 4)});
  const auto across = lateral_distribution(wide, water_of(2));
  ASSERT_TRUE(across);
  const double manning = std::pow(2, 2.0 / 3.0) * std::sqrt(0.001) / 0.03;
  EXPECT_NEAR(velocity_at(*across, 208), manning, 1e-6);
  EXPECT_NEAR(across->at(Length::meters(208))->shear.pascals(), 1000 * 9.80665 * 2 * 0.001, 1e-4);
}

TEST(LateralDistribution, ExchangeSlowsTheChannelAndDrivesTheBerm) {
  const Section berm = made({at(0, 4), at(4, 2), at(14, 2), at(18, 0), at(28, 0), at(36, 4)});
  LateralWater water = water_of(3);
  const auto mixed = lateral_distribution(berm, water);
  water.eddy_viscosity = 1e-3;
  const auto unmixed = lateral_distribution(berm, water);
  ASSERT_TRUE(mixed && unmixed);
  EXPECT_GT(velocity_at(*mixed, 13.9), velocity_at(*unmixed, 13.9));
  EXPECT_LT(velocity_at(*mixed, 18.1), velocity_at(*unmixed, 18.1));
}

TEST(LateralDistribution, WaterApartDoesNotMeet) {
  const Section island = made({at(0, 4), at(5, 0), at(10, 4), at(15, 1), at(20, 4)});
  const auto across = lateral_distribution(island, water_of(3));
  ASSERT_TRUE(across);
  EXPECT_FALSE(across->at(Length::meters(10)));
  int begins = 0;
  for (const auto& cell : across->cells) begins += cell.joined ? 0 : 1;
  EXPECT_EQ(begins, 2);
  EXPECT_NEAR(across->boundary_force_si / across->weight_force_si, 1, 1e-12);
}

TEST(LateralDistribution, RefusesWhatHasNoAnswer) {
  const Section section = made({at(0, 4), at(8, 0), at(18, 0), at(26, 4)});
  const auto code = [&](const LateralWater& water) {
    const auto across = lateral_distribution(section, water);
    return across ? std::string() : across.problems().front().code;
  };
  LateralWater water = water_of(-1);
  EXPECT_EQ(code(water), "dry");
  water = water_of(2);
  water.friction_factors = {0.05, 0.05};
  EXPECT_EQ(code(water), "lists-differ");
  water.friction_factors = {0.05, 0.05, -1};
  EXPECT_EQ(code(water), "not-positive");
  water = water_of(2);
  water.secondary_flow = {0.2, 0.2, 0.2};
  EXPECT_EQ(code(water), "flows-backwards");
  water = water_of(2);
  water.cells = 1;
  EXPECT_EQ(code(water), "cells-out-of-range");
}

}  // namespace
}  // namespace proofstone
