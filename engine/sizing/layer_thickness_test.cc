#include "engine/sizing/layer_thickness.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

RockClass of_band(std::vector<SizeWindow> windows) {
  auto band = GradationBand::from_size_windows(std::move(windows), GradationBasis{});
  EXPECT_TRUE(band);
  return RockClass{"test", "test", "test", Length::inches(12), *band, {}, {}, {}, {}};
}

RockClass twelve_inch_class() {
  return of_band({{15, Length::inches(7.3), Length::inches(10.5)},
                  {50, Length::inches(11.5), Length::inches(14)},
                  {85, Length::inches(15.5), Length::inches(18.5)},
                  {100, std::nullopt, Length::inches(24)}});
}

// FHWA HEC-23 class III (recalled): largest stone 24 in, upper-limit D50 14 in.
TEST(LayerThickness, TheLargestStoneGoverns) {
  const auto thickness = least_layer_thickness(twelve_inch_class(), Placement::dry);
  ASSERT_TRUE(thickness);
  EXPECT_NEAR(thickness->least.inches(), 24, 1e-9);
  EXPECT_NE(thickness->governed_by.find("largest stone"), std::string::npos);
  EXPECT_FALSE(thickness->steps.lines().empty());
}

TEST(LayerThickness, HalfAsMuchAgainUnderWater) {
  const auto thickness = least_layer_thickness(twelve_inch_class(), Placement::under_water);
  ASSERT_TRUE(thickness);
  EXPECT_NEAR(thickness->least.inches(), 36, 1e-9);
  EXPECT_NE(thickness->governed_by.find("under water"), std::string::npos);
}

TEST(LayerThickness, TheClassesOwnManualGoesFirst) {
  auto rock_class = twelve_inch_class();
  rock_class.thickness_in_d50 = 1.75;
  const auto thickness = least_layer_thickness(rock_class, Placement::dry);
  ASSERT_TRUE(thickness);
  EXPECT_NEAR(thickness->least.inches(), 21, 1e-9);
  EXPECT_NE(thickness->governed_by.find("own manual"), std::string::npos);
}

TEST(LayerThickness, AStatedLargestStoneIsUsedWhereTheBandIsOpen) {
  auto rock_class = of_band(
      {{15, Length::inches(4), Length::inches(8)}, {50, Length::inches(9), Length::inches(12)}});
  const auto open = least_layer_thickness(rock_class, Placement::dry);
  ASSERT_TRUE(open);
  EXPECT_NEAR(open->least.inches(), 18, 1e-9);
  rock_class.largest_stone = Length::inches(21);
  const auto stated = least_layer_thickness(rock_class, Placement::dry);
  ASSERT_TRUE(stated);
  EXPECT_NEAR(stated->least.inches(), 21, 1e-9);
}

}  // namespace
}  // namespace proofstone
