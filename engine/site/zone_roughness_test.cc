#include "engine/site/zone_roughness.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/hydraulics/lined_section.h"
#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/sizing/lining_roughness_balance.h"

namespace proofstone {
namespace {

using nlohmann::json;

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

double value_of(const Findings& findings, const std::string& id, const std::string& key) {
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  if (finding == nullptr) return std::nan("");
  for (const auto& value : finding->values) {
    if (value.key == key) return value.value.si;
  }
  return std::nan("");
}

/// A trapezoid whose whole wetted ground is the bed zone's rock: bottom 40 ft, banks 1V:2H, so high
/// that the water stays inside the bank stations at the ends.
ExampleDocument lined_trapezoid() {
  ExampleDocument example;
  auto& items = example.items;
  items.erase("lots");
  items.erase("looks");
  items.erase("materials");
  items["flow_cases"] = {
      {"flood", {{"name", "Flood"}, {"purpose", "design"}, {"discharge", "3000 ft³/s"}}}};
  const auto point = [](const char* station, const char* elevation) {
    return json{{"station", station}, {"elevation", elevation}, {"roughness", "0.03"}};
  };
  items["sections"]["one"] = {{"name", "Trapezoid"},
                              {"energy_slope", "0.004"},
                              {"survey",
                               {{"points",
                                 {point("0 ft", "130 ft"), point("60 ft", "100 ft"),
                                  point("100 ft", "100 ft"), point("160 ft", "130 ft")}}}}};
  items["zones"] = {{"bed",
                     {{"name", "Bed"},
                      {"section", "one"},
                      {"place", "bed"},
                      {"channel_form", "trapezoidal"},
                      {"class", "fhwa-3"},
                      {"source", "knob"},
                      {"governing", "usace-bank-and-bed"},
                      {"layer_thickness", "24 in"}}}};
  return example;
}

// The same channel by the method for a trapezoid, another way through the same balance.
TEST(ZoneRoughness, AgreesWithTheBalanceOfATrapezoid) {
  const auto findings = assessed(lined_trapezoid());
  const std::string id = "roughness.bed.flood";
  ASSERT_NE(findings.find(id), nullptr);
  const auto* fhwa3 = find_rock_class("fhwa-3");
  ASSERT_NE(fhwa3, nullptr);
  const auto d30 = least_size_of(*fhwa3, 30);
  // The class states no D90 on its fine side: D85 stands in, and for the level the largest D90.
  ASSERT_FALSE(least_size_of(*fhwa3, 90));
  const auto d90 = least_size_of(*fhwa3, 85);
  const auto level_d90 = fhwa3->band.largest_size_at(90);
  ASSERT_TRUE(d30 && d90 && level_d90);
  LiningRoughnessInputs in;
  in.bottom_width = Length::feet(40);
  in.side_slope = Slope::ratio(0.5);
  in.bed_slope = Slope::ratio(0.004);
  in.discharge = Discharge::cubic_feet_per_second(3000);
  in.place = ZonePlace::bed;
  in.specific_gravity = Dimensionless::number(2.625);
  in.d90_over_d30 = Dimensionless::number(*d90 / *d30);
  in.chosen_d90 = *level_d90;
  Steps steps;
  const auto balance = lining_roughness_balance(in, steps);
  ASSERT_TRUE(balance) << balance.problems().front().sentence();
  EXPECT_NEAR(value_of(findings, id, "balancing_size") / balance->d30.si(), 1, 1e-6);
  EXPECT_NEAR(value_of(findings, id, "low_roughness") / balance->roughness.number(), 1, 1e-6);
  EXPECT_NEAR(value_of(findings, id, "low_velocity") / balance->velocity.si(), 1, 1e-6);
  EXPECT_NEAR(value_of(findings, id, "high_level"),
              Length::feet(100).si() + balance->level_depth.si(), 1e-6);
  EXPECT_EQ(value_of(findings, id, "balancing_sizes"), 1);
}

TEST(ZoneRoughness, TheHighRoughnessNeverGivesTheLowerLevel) {
  const auto findings = assessed(ExampleDocument());
  const std::string id = "roughness.bank.flood";
  EXPECT_GE(value_of(findings, id, "high_level"), value_of(findings, id, "low_level"));
  EXPECT_GT(value_of(findings, id, "balancing_size"), 0);
  EXPECT_FALSE(findings.find(id)->steps.lines().empty());
  EXPECT_EQ(findings.find("roughness.bank.low"), nullptr);
}

TEST(ZoneRoughness, RockPlacedUnderWaterStandsDeeper) {
  auto example = lined_trapezoid();
  const double dry = value_of(assessed(example), "roughness.bed.flood", "high_level");
  example.items["zones"]["bed"]["placement"] = "under water";
  const auto findings = assessed(example);
  EXPECT_GT(value_of(findings, "roughness.bed.flood", "high_level"), dry);
}

TEST(ZoneRoughness, SaysNothingWhereTheZoneStatesItsWater) {
  auto example = lined_trapezoid();
  example.items["zones"]["bed"]["water"]["flood"] = {{"from", "model"}, {"velocity", "9 ft/s"}};
  EXPECT_EQ(assessed(example).find("roughness.bed.flood"), nullptr);
}

TEST(ZoneRoughness, WaterThatLeavesTheSectionIsToldAndNotGuessed) {
  auto example = lined_trapezoid();
  example.items["flow_cases"]["flood"]["discharge"] = "61000 ft³/s";
  const auto findings = assessed(example);
  const auto* finding = findings.find("roughness.bed.flood");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->outcome, Outcome::not_yet_known);
  EXPECT_NE(finding->sentence.find("cannot hold"), std::string::npos) << finding->sentence;
}

TEST(LinedSection, PutsPointsWhereTheRockBeginsAndEnds) {
  const auto n = Dimensionless::number(0.03);
  const auto at = [&](double station, double elevation) {
    return SectionPoint{Length::meters(station), Length::meters(elevation), n};
  };
  const auto section = Section::make({at(0, 5), at(10, 0), at(20, 0), at(20, 3), at(30, 5)});
  ASSERT_TRUE(section);
  const auto lined = with_roughness(*section, {Length::meters(4), Length::meters(20)},
                                    Dimensionless::number(0.05));
  ASSERT_TRUE(lined);
  const auto& points = lined->points();
  ASSERT_EQ(points.size(), 6u);
  EXPECT_NEAR(points[1].elevation.meters(), 3, 1e-12);
  const std::vector<double> expected{0.03, 0.05, 0.05, 0.03, 0.03, 0.03};
  for (std::size_t i = 0; i < points.size(); ++i) {
    EXPECT_EQ(points[i].roughness.number(), expected[i]) << i;
  }
  const auto level = Length::meters(4);
  EXPECT_NEAR(lined->wet(level).area.si(), section->wet(level).area.si(), 1e-12);
}

}  // namespace
}  // namespace proofstone
