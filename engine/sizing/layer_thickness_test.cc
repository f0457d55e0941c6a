#include "engine/sizing/layer_thickness.h"

#include <gtest/gtest.h>

#include <cmath>

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

Expected<LayerThicknessResult> least_of(const RockClass& rock_class, Placement placement,
                                        LayerOfPlace at = {}) {
  Steps steps;
  auto result = layer_thickness(layer_of_class(rock_class, placement, at), steps);
  EXPECT_EQ(static_cast<bool>(result), !steps.lines().empty());
  return result;
}

// FHWA HEC-23 class III (recalled): largest stone 24 in, upper-limit D50 14 in.
TEST(LayerThickness, TheLargestStoneGoverns) {
  const auto thickness = least_of(twelve_inch_class(), Placement::dry);
  ASSERT_TRUE(thickness);
  EXPECT_NEAR(thickness->least.inches(), 24, 1e-9);
  EXPECT_NE(thickness->governed_by.find("largest stone"), std::string::npos);
}

TEST(LayerThickness, HalfAsMuchAgainUnderWater) {
  const auto thickness = least_of(twelve_inch_class(), Placement::under_water);
  ASSERT_TRUE(thickness);
  EXPECT_NEAR(thickness->least.inches(), 36, 1e-9);
  EXPECT_NE(thickness->governed_by.find("under water"), std::string::npos);
}

TEST(LayerThickness, TheClassesOwnManualGoesFirst) {
  auto rock_class = twelve_inch_class();
  rock_class.thickness_in_d50 = 1.75;
  const auto thickness = least_of(rock_class, Placement::dry);
  ASSERT_TRUE(thickness);
  EXPECT_NEAR(thickness->least.inches(), 21, 1e-9);
  EXPECT_NE(thickness->governed_by.find("own manual"), std::string::npos);
}

TEST(LayerThickness, AStatedLargestStoneIsUsedWhereTheBandIsOpen) {
  auto rock_class = of_band(
      {{15, Length::inches(4), Length::inches(8)}, {50, Length::inches(9), Length::inches(12)}});
  const auto open = least_of(rock_class, Placement::dry);
  ASSERT_TRUE(open);
  EXPECT_NEAR(open->least.inches(), 18, 1e-9);
  rock_class.largest_stone = Length::inches(21);
  const auto stated = least_of(rock_class, Placement::dry);
  ASSERT_TRUE(stated);
  EXPECT_NEAR(stated->least.inches(), 21, 1e-9);
}

// Class III is 12 in at the median; the rule of each place against D100 of 24 in.
TEST(LayerThickness, IsJudgedByTheRuleOfItsPlace) {
  const auto inches = [](LayerOfPlace at) {
    return least_of(twelve_inch_class(), Placement::dry, at)->least.inches();
  };
  LayerOfPlace at;
  for (const auto place : {ZonePlace::bank, ZonePlace::bed, ZonePlace::abutment}) {
    at.place = place;
    EXPECT_NEAR(inches(at), 24, 1e-9);
  }
  at.place = ZonePlace::chute;
  EXPECT_NEAR(inches(at), 24, 1e-9);
  at.place = ZonePlace::outfall;
  EXPECT_NEAR(inches(at), 2.4 * 12, 1e-9) << "between 10 and 14 in the deeper apron";
  at.place = ZonePlace::shore;
  // Cubes of 0.85·d³: 2·0.9473·14 = 26.5 and 1.25·0.9473·24 = 28.4 in.
  EXPECT_NEAR(inches(at), 1.25 * std::pow(0.85, 1.0 / 3) * 24, 1e-9);
  at.place = ZonePlace::pier;
  EXPECT_NEAR(inches(at), 36, 1e-9);
  at.contraction_scour = Length::feet(4);
  at.degradation = Length::feet(1);
  EXPECT_NEAR(inches(at), 60, 1e-9);
}

TEST(LayerThickness, TheRuleThatGovernsIsNamedWithItsSource) {
  LayerOfPlace at;
  at.place = ZonePlace::pier;
  const auto pier = least_of(twelve_inch_class(), Placement::under_water, at);
  EXPECT_NEAR(pier->least.inches(), 54, 1e-9);
  EXPECT_NE(pier->governed_by.find("round a pier"), std::string::npos);
  EXPECT_NE(pier->source.place.find("11"), std::string::npos);
  at.sized_by = SizedBy::usace_steep_slope;
  at.place = ZonePlace::bed;
  const auto steep = least_of(twelve_inch_class(), Placement::dry, at);
  EXPECT_NEAR(steep->least.inches(), 36, 1e-9);
  EXPECT_NE(steep->governed_by.find("steep-slope"), std::string::npos);
}

TEST(LayerThickness, AtAPierTheClassesOwnMultipleIsNotEnough) {
  auto rock_class = twelve_inch_class();
  rock_class.thickness_in_d50 = 1.75;
  LayerOfPlace at;
  at.place = ZonePlace::pier;
  EXPECT_NEAR(least_of(rock_class, Placement::dry, at)->least.inches(), 36, 1e-9);
}

}  // namespace
}  // namespace proofstone
