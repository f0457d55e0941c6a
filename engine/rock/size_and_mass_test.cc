#include "engine/rock/size_and_mass.h"

#include <gtest/gtest.h>

#include <utility>

#include "engine/rock/rock_properties.h"

namespace proofstone {
namespace {

constexpr Density table_density = Density::pounds_mass_per_cubic_foot(165);

double pounds(double inches, SizeMeaning meaning, Density density = table_density) {
  return stone_mass(Length::inches(inches), meaning, density).pounds();
}

// FHWA FP-14, Table 705-1, D100 of classes 1 to 8, which prints two or three figures (published).
TEST(StoneMass, of_the_intermediate_axis_is_that_of_the_federal_table) {
  for (const auto& [inches, printed] : {std::pair{15.0, 270.0},
                                        {21, 750},
                                        {27, 1600},
                                        {33, 2900},
                                        {39, 4850},
                                        {45, 7400},
                                        {54, 12800},
                                        {66, 23400}}) {
    EXPECT_NEAR(pounds(inches, SizeMeaning::intermediate_axis), printed, 0.027 * printed) << inches;
  }
}

// USACE EM 1110-2-1601 (1994), Table 3-1, W100 at 165 lb/ft³, printed to the pound (from memory).
TEST(StoneMass, of_the_sphere_is_that_of_the_corps_table) {
  for (const auto& [inches, printed] : {std::pair{9.0, 36.0},
                                        {12, 86},
                                        {15, 169},
                                        {18, 292},
                                        {24, 691},
                                        {30, 1350},
                                        {42, 3704},
                                        {48, 5529}}) {
    EXPECT_NEAR(pounds(inches, SizeMeaning::sphere), printed, 1) << inches;
  }
}

// Colorado highway Table 506-2 at specific gravity 2.5, in a project specification of 3 Feb 2006
// (Colorado DRMS document 627058, pp. 54-55; published). Its 12-in row prints 85 lb for 81.7.
TEST(StoneMass, of_the_sphere_is_that_of_the_highway_table) {
  const auto density = Density::pounds_mass_per_cubic_foot(2.5 * 62.4);
  for (const auto& [inches, printed] : {std::pair{3.0, 1.3},
                                        {4, 3},
                                        {6, 10},
                                        {9, 35},
                                        {15, 160},
                                        {18, 275},
                                        {21, 440},
                                        {24, 650},
                                        {30, 1280},
                                        {33, 1700},
                                        {42, 3500}}) {
    EXPECT_NEAR(pounds(inches, SizeMeaning::sphere, density), printed, 0.03 * printed) << inches;
  }
}

// BC Riprap Installation Guide, Table 205-B, class 500 at specific gravity 2.640, rounded to 5 mm
// (published): 50, 500, 1500 and 2500 kg.
TEST(StoneSize, of_a_sphere_is_that_of_the_provincial_table) {
  const auto density = Density::kilograms_per_cubic_meter(2640);
  for (const auto& [kilograms, printed] :
       {std::pair{50.0, 330.0}, {500, 715}, {1500, 1030}, {2500, 1220}}) {
    const auto size = stone_size(Mass::kilograms(kilograms), SizeMeaning::sphere, density);
    EXPECT_NEAR(size.millimeters(), printed, 3) << kilograms;
  }
}

TEST(ConvertSize, keeps_the_mass) {
  // The cube root of 0.85·6/π: the same stone measures 1.175 times more as a sphere.
  EXPECT_NEAR(convert_size(Length::inches(12), SizeMeaning::intermediate_axis, SizeMeaning::sphere)
                  .inches(),
              12 * 1.1752, 0.001);
  EXPECT_EQ(convert_size(Length::inches(12), SizeMeaning::sieve, SizeMeaning::sieve),
            Length::inches(12));
  EXPECT_NEAR(
      convert_size(Length::inches(12), SizeMeaning::sieve, SizeMeaning::intermediate_axis).inches(),
      12, 1e-12);
}

TEST(RockProperties, are_named) {
  EXPECT_EQ(angularity_name(Angularity::angular), "angular");
  EXPECT_EQ(angularity_name(Angularity::rounded), "rounded");
}

}  // namespace
}  // namespace proofstone
