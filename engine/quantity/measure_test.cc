#include "engine/quantity/measure.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

namespace proofstone {
namespace {

using Kind = QuantityKind;

double si_of(std::string_view text, Kind kind) {
  const auto parsed = parse_measure(text, kind);
  EXPECT_TRUE(parsed) << text << ": " << (parsed ? "" : parsed.problems().front().sentence());
  return parsed ? parsed->si : std::nan("");
}

std::string code_of(std::string_view text, Kind kind) {
  const auto parsed = parse_measure(text, kind);
  if (parsed) return "read as " + std::to_string(parsed->si);
  EXPECT_EQ(parsed.problems().size(), 1U);
  const Problem& problem = parsed.problems().front();
  EXPECT_FALSE(problem.what.empty());
  EXPECT_FALSE(problem.allowed.empty());
  return problem.code;
}

TEST(ParseMeasure, reads_the_spellings_of_the_trade) {
  EXPECT_DOUBLE_EQ(si_of("12 in", Kind::length), 0.3048);
  EXPECT_DOUBLE_EQ(si_of("12\"", Kind::length), 0.3048);
  EXPECT_DOUBLE_EQ(si_of("12″", Kind::length), 0.3048);
  EXPECT_DOUBLE_EQ(si_of("12 inches", Kind::length), 0.3048);
  EXPECT_DOUBLE_EQ(si_of("1'", Kind::length), 0.3048);
  EXPECT_DOUBLE_EQ(si_of("1 foot", Kind::length), 0.3048);
  EXPECT_DOUBLE_EQ(si_of("1ft.", Kind::length), 0.3048);
  EXPECT_DOUBLE_EQ(si_of("1 yd", Kind::length), 0.9144);
  EXPECT_DOUBLE_EQ(si_of("3937 US survey ft", Kind::length), 1200);
  EXPECT_DOUBLE_EQ(si_of("0.45 m", Kind::length), 0.45);
  EXPECT_DOUBLE_EQ(si_of("450 mm", Kind::length), 0.45);
  EXPECT_DOUBLE_EQ(si_of("45cm", Kind::length), 0.45);
  EXPECT_DOUBLE_EQ(si_of("10 fps", Kind::velocity), 3.048);
  EXPECT_DOUBLE_EQ(si_of("1 cfs", Kind::discharge), 0.028316846592);
  EXPECT_DOUBLE_EQ(si_of("1 ft3/s", Kind::discharge), 0.028316846592);
  EXPECT_DOUBLE_EQ(si_of("2 m³/s", Kind::discharge), 2);
  EXPECT_DOUBLE_EQ(si_of("1 ft²/s", Kind::unit_discharge), 0.09290304);
  EXPECT_DOUBLE_EQ(si_of("1 psf", Kind::stress), 4.4482216152605 / 0.09290304);
  EXPECT_DOUBLE_EQ(si_of("50 Pa", Kind::stress), 50);
  EXPECT_DOUBLE_EQ(si_of("26 kN/m3", Kind::unit_weight), 26000);
  EXPECT_DOUBLE_EQ(si_of("1 ton", Kind::mass), 907.18474);
  EXPECT_DOUBLE_EQ(si_of("1 tonne", Kind::mass), 1000);
  EXPECT_DOUBLE_EQ(si_of("10 lbs", Kind::mass), 4.5359237);
  EXPECT_DOUBLE_EQ(si_of("180 deg", Kind::angle), 3.14159265358979323846);
  EXPECT_DOUBLE_EQ(si_of("2.65", Kind::dimensionless), 2.65);
  EXPECT_DOUBLE_EQ(si_of("2 %", Kind::slope), 0.02);
  EXPECT_DOUBLE_EQ(si_of("0.0017", Kind::slope), 0.0017);
  EXPECT_DOUBLE_EQ(si_of("0.0017 ft/ft", Kind::slope), 0.0017);
}

TEST(ParseMeasure, pounds_a_cubic_foot_are_mass_or_weight_as_asked) {
  EXPECT_NEAR(si_of("165 lb/ft³", Kind::density), 2643.0464567, 1e-6);
  EXPECT_NEAR(si_of("165 pcf", Kind::unit_weight), 165 * 157.087463846, 1e-4);
}

TEST(ParseMeasure, reads_numbers_in_plain_and_exponent_notation) {
  EXPECT_DOUBLE_EQ(si_of("+1.5e3 m", Kind::length), 1500);
  EXPECT_DOUBLE_EQ(si_of("-2 m", Kind::length), -2);
  EXPECT_DOUBLE_EQ(si_of("−2 m", Kind::length), -2);
  EXPECT_DOUBLE_EQ(si_of(".5 m", Kind::length), 0.5);
  EXPECT_DOUBLE_EQ(si_of("5. m", Kind::length), 5);
  EXPECT_DOUBLE_EQ(si_of("5E-1m", Kind::length), 0.5);
  EXPECT_DOUBLE_EQ(si_of("  7\t m ", Kind::length), 7);
  EXPECT_DOUBLE_EQ(si_of("7\u00A0m", Kind::length), 7);
}

// The nearest double, as IEEE 754 asks; both numbers are known to trip careless conversions.
TEST(ParseMeasure, rounds_numbers_correctly) {
  EXPECT_EQ(si_of("2.2250738585072012e-308", Kind::dimensionless), 2.2250738585072014e-308);
  EXPECT_EQ(si_of("9007199254740993", Kind::dimensionless), 9007199254740992.0);
  EXPECT_EQ(si_of("0.1", Kind::dimensionless), 0.1);
}

TEST(ParseMeasure, reads_banks_as_vertical_to_horizontal_both_ways_round) {
  EXPECT_DOUBLE_EQ(si_of("1V:2.5H", Kind::slope), 0.4);
  EXPECT_DOUBLE_EQ(si_of("2.5H:1V", Kind::slope), 0.4);
  EXPECT_DOUBLE_EQ(si_of("2.5 h : 1 v", Kind::slope), 0.4);
  EXPECT_DOUBLE_EQ(si_of("1V:2.5H", Kind::angle), std::atan(0.4));
  EXPECT_DOUBLE_EQ(si_of("1V:0H", Kind::angle), std::atan(1.0) * 2);
  EXPECT_DOUBLE_EQ(si_of("0V:1H", Kind::slope), 0);
}

TEST(ParseMeasure, refuses_what_is_no_bank) {
  EXPECT_EQ(code_of("1V:0H", Kind::slope), "not-finite");
  EXPECT_EQ(code_of("0V:0H", Kind::angle), "not-a-slope");
  EXPECT_EQ(code_of("-1V:2H", Kind::slope), "not-a-slope");
  EXPECT_EQ(code_of("1V:1e999H", Kind::slope), "number-too-large");
  EXPECT_EQ(code_of("2.5:1", Kind::slope), "ambiguous-slope");
  EXPECT_EQ(code_of("1H:2H", Kind::slope), "unknown-unit");
  EXPECT_EQ(code_of("1V:2H", Kind::length), "wrong-kind");
}

TEST(ParseMeasure, refuses_numbers_that_could_be_read_two_ways) {
  EXPECT_EQ(code_of("0,45 m", Kind::length), "decimal-comma");
  EXPECT_EQ(code_of("12,5 in", Kind::length), "decimal-comma");
  EXPECT_EQ(code_of("1,234 ft", Kind::length), "thousands-separator");
  EXPECT_EQ(code_of("1,234.5 ft", Kind::length), "thousands-separator");
  EXPECT_EQ(code_of("1 234 ft", Kind::length), "thousands-separator");
  EXPECT_EQ(code_of("1 1/2 in", Kind::length), "fraction");
  EXPECT_EQ(code_of("1/2 in", Kind::length), "fraction");
  EXPECT_EQ(code_of("5 ft 3 in", Kind::length), "two-units");
  EXPECT_EQ(code_of("5'3\"", Kind::length), "two-units");
}

TEST(ParseMeasure, refuses_units_of_another_kind_and_says_what_they_are) {
  EXPECT_EQ(code_of("0.45 m", Kind::velocity), "wrong-kind");
  EXPECT_EQ(code_of("12 lb", Kind::length), "wrong-kind");
  EXPECT_EQ(code_of("12 cfs", Kind::velocity), "wrong-kind");
  EXPECT_EQ(code_of("33 deg", Kind::slope), "wrong-kind");
  const auto parsed = parse_measure("0.45 m", Kind::velocity);
  EXPECT_EQ(parsed.problems().front().sentence(),
            "“0.45 m” is a length; a velocity is wanted here. Allowed: ft/s, m/s, mph, km/h.");
}

TEST(ParseMeasure, refuses_missing_and_unknown_units) {
  EXPECT_EQ(code_of("12", Kind::length), "missing-unit");
  EXPECT_EQ(code_of("12 FT", Kind::length), "unknown-unit");
  EXPECT_EQ(code_of("12 furlong", Kind::length), "unknown-unit");
  EXPECT_EQ(code_of("12 m m", Kind::length), "unknown-unit");
  EXPECT_EQ(code_of("3 cms", Kind::discharge), "unknown-unit");
  EXPECT_EQ(code_of("3 ft^3/s", Kind::discharge), "unknown-unit");
  EXPECT_EQ(code_of("2.65 m", Kind::dimensionless), "wrong-kind");
}

TEST(ParseMeasure, refuses_what_is_no_finite_number) {
  for (const char* text : {"NaN ft", "nan", "inf m", "-Infinity m", "∞ m"}) {
    EXPECT_EQ(code_of(text, Kind::length), "not-finite") << text;
  }
  for (const char* text : {"abc", "ft", ".", "-", "e5 m", "--5 m", "$5", "m 5"}) {
    EXPECT_EQ(code_of(text, Kind::length), "not-a-number") << text;
  }
  EXPECT_EQ(code_of("1e999 m", Kind::length), "number-too-large");
  EXPECT_EQ(code_of("1e99999999999999999999 m", Kind::length), "number-too-large");
  EXPECT_EQ(code_of("1e308 tonne", Kind::mass), "number-too-large");
  EXPECT_EQ(code_of("1e-999 m", Kind::length), "number-too-small");
  EXPECT_EQ(code_of("0x10 m", Kind::length), "unknown-unit");
}

TEST(ParseMeasure, refuses_hostile_text) {
  EXPECT_EQ(code_of("", Kind::length), "empty-quantity");
  EXPECT_EQ(code_of(" \t\u00A0", Kind::length), "empty-quantity");
  EXPECT_EQ(code_of(std::string(1 << 20, '9'), Kind::length), "text-too-long");
  EXPECT_EQ(code_of("12 \xFF\xFE", Kind::length), "not-utf-8");
  EXPECT_EQ(code_of("\xC0\xAF", Kind::length), "not-utf-8");
  EXPECT_EQ(code_of(std::string_view("12\0 in", 6), Kind::length), "unknown-unit");
  EXPECT_EQ(code_of("12 in\n", Kind::length), "unknown-unit");
}

TEST(ParseQuantity, gives_the_type_that_is_asked_for) {
  const auto size = parse_quantity<Length>("12 in");
  ASSERT_TRUE(size);
  EXPECT_EQ(*size, Length::feet(1));
  EXPECT_FALSE(parse_quantity<Velocity>("12 in"));
}

std::string us(Measure value, LengthUse use = LengthUse::ground) {
  return display(value, UnitSystem::us_customary, use).text;
}
std::string si(Measure value, LengthUse use = LengthUse::ground) {
  return display(value, UnitSystem::si, use).text;
}

TEST(Display, shows_how_slowly_water_seeps) {
  EXPECT_EQ(si(measure(Velocity::meters_per_second(5.2e-8))), "5.2e-8 m/s");
  EXPECT_EQ(si(measure(Velocity::meters_per_second(1.51e-4))), "0.00015 m/s");
  EXPECT_EQ(si(measure(Velocity::meters_per_second(0))), "0.00 m/s");
}

TEST(Display, rounds_as_the_trade_does) {
  EXPECT_EQ(us(measure(Length::inches(12)), LengthUse::rock), "12.0 in");
  EXPECT_EQ(si(measure(Length::inches(12)), LengthUse::rock), "305 mm");
  EXPECT_EQ(us(measure(Length::feet(15))), "15.00 ft");
  EXPECT_EQ(si(measure(Length::meters(4.567))), "4.57 m");
  EXPECT_EQ(us(measure(Velocity::feet_per_second(10.54))), "10.5 ft/s");
  EXPECT_EQ(si(measure(Velocity::feet_per_second(10.54))), "3.21 m/s");
  EXPECT_EQ(us(measure(Stress::pounds_per_square_foot(1.2345))), "1.23 lb/ft²");
  EXPECT_EQ(si(measure(Stress::pascals(59.1))), "59 N/m²");
  EXPECT_EQ(us(measure(Discharge::cubic_feet_per_second(13540))), "13500 ft³/s");
  EXPECT_EQ(us(measure(Density::pounds_mass_per_cubic_foot(165))), "165 lb/ft³");
  EXPECT_EQ(si(measure(UnitWeight::pounds_per_cubic_foot(165))), "25.9 kN/m³");
  EXPECT_EQ(us(measure(Angle::degrees(26.565))), "26.6°");
  EXPECT_EQ(us(measure(Slope::ratio(0.0017))), "0.0017");
  EXPECT_EQ(us(measure(2.65)), "2.65");
}

TEST(Display, chooses_the_unit_by_size_where_the_trade_does) {
  EXPECT_EQ(us(measure(Mass::pounds(140.4))), "140 lb");
  EXPECT_EQ(us(measure(Mass::short_tons(460.4))), "460 ton");
  EXPECT_EQ(si(measure(Mass::kilograms(9000))), "9000 kg");
  EXPECT_EQ(si(measure(Mass::kilograms(12300))), "12.3 t");
  EXPECT_EQ(us(measure(Volume::cubic_feet(20))), "20 ft³");
  EXPECT_EQ(us(measure(Volume::cubic_yards(333.3))), "333 yd³");
}

TEST(Display, never_shows_something_as_nothing) {
  EXPECT_EQ(si(measure(Length::millimeters(0.345)), LengthUse::rock), "0.35 mm");
  EXPECT_EQ(si(measure(Stress::pascals(0.44))), "0.44 N/m²");
  EXPECT_EQ(us(measure(Velocity::feet_per_second(0.031))), "0.031 ft/s");
}

TEST(Display, shows_nothing_without_a_sign) {
  EXPECT_EQ(us(measure(Length::feet(0))), "0.00 ft");
  EXPECT_EQ(us(measure(Length::feet(-0.0))), "0.00 ft");
  EXPECT_EQ(si(measure(Length::meters(-1e-13))), "0.00 m");
}

TEST(Display, halves_go_away_from_zero_even_when_the_last_bit_is_missing) {
  EXPECT_EQ(us(measure(Length::inches(10.25)), LengthUse::rock), "10.3 in");
  EXPECT_EQ(si(measure(Length::meters(2.675))), "2.68 m");
  EXPECT_EQ(si(measure(Length::meters(-2.675))), "-2.68 m");
  EXPECT_EQ(si(measure(Length::meters(std::nextafter(0.125, 0.0)))), "0.13 m");
}

TEST(Display, carries_the_value_unrounded) {
  const auto shown = display(measure(Length::feet(1.23456)), UnitSystem::us_customary);
  EXPECT_NEAR(shown.value, 1.23456, 1e-15);
  EXPECT_EQ(shown.unit, "ft");
}

TEST(Display, says_when_there_is_no_number) {
  EXPECT_EQ(us(measure(Length::feet(std::nan("")))), "not a number ft");
  EXPECT_EQ(us(measure(Length::feet(std::numeric_limits<double>::infinity()))), "infinite ft");
}

TEST(Significant, keeps_figures_and_drops_trailing_zeros) {
  EXPECT_EQ(significant(13456, 3), "13500");
  EXPECT_EQ(significant(0.00170, 3), "0.0017");
  EXPECT_EQ(significant(0.0001, 3), "0.0001");
  EXPECT_EQ(significant(9999999, 7), "9999999");
  EXPECT_EQ(significant(9999999, 3), "1e7");
  EXPECT_EQ(significant(0.00009999, 3), "0.0001");
  EXPECT_EQ(significant(0.0000123456, 3), "1.23e-5");
  EXPECT_EQ(significant(-2.5, 3), "-2.5");
  EXPECT_EQ(significant(-0.0, 3), "0");
  EXPECT_EQ(significant(100, 2), "100");
  EXPECT_EQ(significant(2.345, 3), "2.35");
}

TEST(ExactText, writes_what_reads_back) {
  EXPECT_EQ(exact_text(measure(Length::feet(2)), unit::foot), "2 ft");
  EXPECT_EQ(exact_text(measure(Length::inches(11.5)), unit::inch), "11.5 in");
  EXPECT_EQ(exact_text(measure(2.65), unit::number), "2.65");
  EXPECT_EQ(exact_text(measure(Slope::percent(2)), unit::percent_slope), "2 %");
  // Not 7.299999999999999, which reads back to the same double.
  EXPECT_EQ(exact_text(measure(Length::feet(7.3)), unit::foot), "7.3 ft");
}

}  // namespace
}  // namespace proofstone
