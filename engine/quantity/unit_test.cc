#include "engine/quantity/unit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>
#include <string>
#include <utility>

#include "engine/quantity/quantity.h"

namespace proofstone {
namespace {

void expect_close(double value, double expected) {
  EXPECT_NEAR(value, expected, 1e-11 * std::abs(expected));
}

// Conversion factors of NIST SP 811 (2008), Appendix B, worked out to 12 figures from the defined
// values of foot, pound and standard gravity.
TEST(Unit, factors_agree_with_the_published_ones) {
  expect_close(Stress::pounds_per_square_foot(1).pascals(), 47.8802589803);
  expect_close(UnitWeight::pounds_per_cubic_foot(1).newtons_per_cubic_meter(), 157.087463846);
  expect_close(Density::pounds_mass_per_cubic_foot(1).kilograms_per_cubic_meter(), 16.0184633740);
  expect_close(Discharge::cubic_meters_per_second(1).cubic_feet_per_second(), 35.3146667215);
  expect_close(Mass::tonnes(1).short_tons(), 1.10231131092);
  expect_close(Mass::short_tons(1).pounds(), 2000);
  expect_close(Volume::cubic_yards(1).cubic_meters(), 0.764554857984);
  expect_close(Volume::cubic_yards(1).cubic_feet(), 27);
  expect_close(UnitDischarge::square_feet_per_second(1).square_meters_per_second(), 0.09290304);
  expect_close(standard_gravity.feet_per_second_squared(), 32.1740485564);
}

TEST(Unit, twelve_inches_are_one_foot_to_the_last_bit) {
  EXPECT_EQ(Length::inches(12), Length::feet(1));
  expect_close(Length::inches(1).millimeters(), 25.4);
}

// A mile of international feet is 1609.344 m, of survey feet 1609.34721869 m.
TEST(Unit, survey_foot_is_a_unit_of_its_own) {
  expect_close(Length::feet(5280).meters(), 1609.344);
  expect_close(Length::survey_feet(5280).meters(), 1609.34721869);
}

// 1 mi is 5280 ft and 1 h 3600 s, by definition.
TEST(Unit, miles_and_hours) {
  expect_close(Length::miles(1).feet(), 5280);
  expect_close(Velocity::miles_per_hour(60).feet_per_second(), 88);
  expect_close(Velocity::of(36, unit::kilometer_per_hour).meters_per_second(), 10);
  expect_close(Duration::hours(1.5).minutes(), 90);
  expect_close(Duration::minutes(2).seconds(), 120);
}

TEST(Unit, slope_and_angle_of_a_bank) {
  expect_close(angle_of(Slope::ratio(1.0 / 2)).degrees(), 26.5650511771);
  expect_close(slope_of(Angle::degrees(45)).ratio(), 1);
}

TEST(Unit, no_spelling_means_two_units_of_one_kind) {
  std::set<std::pair<QuantityKind, std::string>> seen;
  for (const auto& [spelling, unit] : unit_spellings()) {
    EXPECT_TRUE(seen.emplace(unit.kind, spelling).second) << spelling;
    EXPECT_GT(unit.si_factor, 0) << spelling;
  }
}

TEST(Unit, every_kind_has_a_name_and_units) {
  for (const auto& entry : unit_spellings()) {
    EXPECT_FALSE(kind_name(entry.unit.kind).empty());
  }
  EXPECT_EQ(allowed_units(QuantityKind::velocity), "ft/s, m/s, mph, km/h");
  EXPECT_EQ(allowed_units(QuantityKind::slope), "no unit, ft/ft, m/m, %, 1V:2.5H");
  EXPECT_EQ(allowed_units(QuantityKind::dimensionless), "no unit, %");
}

}  // namespace
}  // namespace proofstone
