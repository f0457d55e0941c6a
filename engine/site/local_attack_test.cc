#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

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

/// A quarter circle of 400 ft turning right between straight reaches of 400 ft, flowing east and
/// then south: the left bank is outside from 400 to 1028 ft.
json right_bend() {
  json points = json::array();
  const auto add = [&points](double x, double y) {
    points.push_back(
        {{"easting", fmt::format("{:.3f} ft", x)}, {"northing", fmt::format("{:.3f} ft", y)}});
  };
  for (int i = 0; i < 10; ++i) add(-400 + 40 * i, 400);
  for (int i = 0; i <= 16; ++i) {
    const double a = i * 3.14159265358979323846 / 32;
    add(400 * std::sin(a), 400 * std::cos(a));
  }
  for (int i = 1; i <= 10; ++i) add(400, -40 * i);
  return {{"name", "Main channel"}, {"course", {{"points", points}}}};
}

ExampleDocument with_course(const std::string& from, const std::string& to) {
  ExampleDocument example;
  example.items["centrelines"]["main"] = right_bend();
  auto& zone = example.items["zones"]["bank"];
  zone.erase("bend");
  zone["along"] = {{"centreline", "main"}, {"from", from}, {"to", to}};
  return example;
}

TEST(LocalAttack, StatesTheSliceAtTheZonesOwnPlace) {
  const auto findings = assessed(ExampleDocument());
  const std::string id = "water.bank.flood";
  const double slice = value_of(findings, id, "slice_velocity");
  const double depth = value_of(findings, id, "local_depth");
  EXPECT_GT(slice, 0);
  EXPECT_LT(slice, value_of(findings, id, "average_velocity") * 1.5);
  EXPECT_NEAR(value_of(findings, id, "unit_discharge") / slice, depth, 0.1 * depth);
  EXPECT_NEAR(value_of(findings, id, "slice_froude_number"), slice / std::sqrt(9.80665 * depth),
              0.1);
  EXPECT_GT(value_of(findings, id, "bend_velocity"), slice);
  EXPECT_GT(value_of(findings, id, "bend_shear"), value_of(findings, id, "slice_shear"));
}

TEST(LocalAttack, IsLeftOutWhereTheVelocityIsStated) {
  ExampleDocument example;
  example.items["zones"]["bank"]["water"]["flood"] = {{"from", "model"}, {"velocity", "9 ft/s"}};
  EXPECT_TRUE(std::isnan(value_of(assessed(example), "water.bank.flood", "slice_velocity")));
}

TEST(ZoneInPlan, TakesTheBendOfTheCentreline) {
  const auto findings = assessed(with_course("450 ft", "900 ft"));
  const double rise = value_of(findings, "water.bank.flood", "superelevation");
  const double v = value_of(findings, "water.bank.flood", "average_velocity");
  const double w = value_of(findings, "water.bank.flood", "top_width");
  EXPECT_NEAR(rise, 0.5 * v * v * w / (9.80665 * 400 * 0.3048), 0.03 * rise);
  ASSERT_EQ(findings.plan_pictures.size(), 1U);
  EXPECT_EQ(findings.plan_pictures[0].bends.size(), 1U);
  EXPECT_EQ(findings.plan_pictures[0].zones.size(), 1U);
}

TEST(ZoneInPlan, FeelsABendFromAboveForAWhileAndThenNoMore) {
  const auto near = assessed(with_course("1040 ft", "1090 ft"));
  EXPECT_FALSE(std::isnan(value_of(near, "water.bank.flood", "superelevation")));
  // It is sized as in the bend: by the same velocity at the bank as a zone that lies in it.
  const auto in_bend = assessed(with_course("450 ft", "900 ft"));
  EXPECT_EQ(value_of(near, "water.bank.flood", "bend_velocity"),
            value_of(in_bend, "water.bank.flood", "bend_velocity"));
  const std::string usace = "rock-size.bank.flood.usace-bank-and-bed";
  EXPECT_EQ(value_of(near, usace, "required_size"), value_of(in_bend, usace, "required_size"));
  const double decayed = value_of(near, "water.bank.flood", "bend_ratio_here");
  EXPECT_GE(decayed, 1);
  EXPECT_LE(decayed * value_of(near, "water.bank.flood", "average_velocity"),
            value_of(near, "water.bank.flood", "bend_velocity") * (1 + 1e-12));
  const auto above = assessed(with_course("0 ft", "200 ft"));
  EXPECT_TRUE(std::isnan(value_of(above, "water.bank.flood", "superelevation")));
}

TEST(ZoneInPlan, TheOtherBankIsInside) {
  auto example = with_course("450 ft", "900 ft");
  auto mirrored = right_bend();
  for (auto& point : mirrored["course"]["points"]) {
    const auto y = point["northing"].get<std::string>();
    point["northing"] = y.front() == '-' ? y.substr(1) : "-" + y;
  }
  example.items["centrelines"]["main"] = mirrored;
  EXPECT_TRUE(std::isnan(value_of(assessed(example), "water.bank.flood", "bend_velocity")));
}

TEST(ZoneInPlan, AStatedRadiusStandsAndTheDifferenceIsNoted) {
  auto example = with_course("450 ft", "900 ft");
  example.items["zones"]["bank"]["bend"] = {{"side", "outside"}, {"radius", "800 ft"}};
  const auto findings = assessed(example);
  const auto* water = findings.find("water.bank.flood");
  ASSERT_NE(water, nullptr);
  const auto noted =
      std::find_if(water->cautions.begin(), water->cautions.end(),
                   [](const std::string& text) { return text.find("800") != std::string::npos; });
  EXPECT_NE(noted, water->cautions.end());
  const double v = value_of(findings, "water.bank.flood", "average_velocity");
  const double w = value_of(findings, "water.bank.flood", "top_width");
  EXPECT_NEAR(value_of(findings, "water.bank.flood", "superelevation"),
              0.5 * v * v * w / (9.80665 * 800 * 0.3048), 1e-9);
}

TEST(TopOfRock, ComparesTheZonesTopWithTheRule) {
  ExampleDocument example;
  EXPECT_EQ(assessed(example).find("top.bank"), nullptr);
  auto& zone = example.items["zones"]["bank"];
  zone["top_station"] = "26 ft";
  zone["freeboard"] = {{"rule", "usace-riprap"}, {"waves", "30 ft"}};
  const auto low = assessed(example);
  ASSERT_NE(low.find("top.bank"), nullptr);
  EXPECT_EQ(low.find("top.bank")->outcome, Outcome::falls_short);
  EXPECT_NEAR(value_of(low, "top.bank", "wanted_top"),
              value_of(low, "water.bank.flood", "water_level") + 32.5 * 0.3048 +
                  value_of(low, "water.bank.flood", "superelevation"),
              1e-9);
  zone["freeboard"] = {{"rule", "tall"}};
  EXPECT_EQ(assessed(example).find("top.bank")->outcome, Outcome::not_yet_known);
  zone["freeboard"] = {{"rule", "usace-riprap"}};
  zone.erase("top_station");
  EXPECT_EQ(assessed(example).find("top.bank")->outcome, Outcome::not_yet_known);
}

TEST(FrequentWater, TellsHowHighEachFlowStands) {
  ExampleDocument example;
  example.items["flow_cases"]["low"]["days_per_year"] = "12";
  const auto findings = assessed(example);
  const double low = value_of(findings, "stages.bank", "wet_share.low");
  const double flood = value_of(findings, "stages.bank", "wet_share.flood");
  EXPECT_GT(low, 0);
  EXPECT_GT(flood, low);
  EXPECT_LE(flood, 1);
  EXPECT_NE(findings.find("stages.bank")->sentence.find("12 days a year"), std::string::npos);
}

}  // namespace
}  // namespace proofstone
