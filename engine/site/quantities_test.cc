#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/site/quantities.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example's bank over 100 ft, with trucks and prices.
ExampleDocument ordered() {
  ExampleDocument example;
  example.items["zones"]["bank"]["extent"] = {{"length", "100 ft"}};
  example.items["zones"]["bank"]["toe_station"] = "50 ft";
  example.items["zones"]["bank"]["top_station"] = "26 ft";
  example.items["ordering"] = {{"spare", "10 %"},
                               {"trucks", {{{"name", "big"}, {"load", "20 ton"}}}}};
  example.items["prices"] = {{"currency", "USD"},
                             {"from", "a test"},
                             {"items", {{"rock", {{"amount", "50"}, {"per", "1 ton"}}}}}};
  return example;
}

QuantityTable table_of(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? quantities_of(*site, Wording(UnitSystem::us_customary)) : QuantityTable{};
}

const QuantityRow* row(const std::vector<QuantityRow>& rows, const std::string& item) {
  const auto found = std::find_if(rows.begin(), rows.end(),
                                  [&](const QuantityRow& one) { return one.item == item; });
  return found == rows.end() ? nullptr : &*found;
}

double amount(const QuantityTable& table, const std::string& item, const Unit& unit) {
  const auto* found = row(table.totals, item);
  EXPECT_NE(found, nullptr) << item;
  if (found == nullptr || !found->amount) return 0;
  return found->amount->si / unit.si_factor;
}

std::string first_problem(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  return site ? "" : site.problems().front().where + " " + site.problems().front().code;
}

// From station 26 at 117 ft to station 50 at 105 ft the bank is √(24² + 12²) = 26.833 ft long.
TEST(ZoneQuantities, AreSlopeTimesLengthTimesThickness) {
  const auto table = table_of(ordered());
  ASSERT_TRUE(table.complete());
  const double slope = std::sqrt(24.0 * 24 + 12.0 * 12);
  EXPECT_NEAR(amount(table, "slope-area", unit::square_foot), slope * 100, 1e-6);
  EXPECT_NEAR(amount(table, "rock-layer", unit::cubic_foot), slope * 100 * 2, 1e-6);
  const double tons = slope * 200 * 2.625 * 0.62 * 62.4 / 2000;
  EXPECT_NEAR(amount(table, "rock-mass", unit::short_ton), tons, 1e-6);
  EXPECT_NEAR(amount(table, "rock-ordered", unit::short_ton), 1.1 * tons, 1e-6);
  EXPECT_NEAR(amount(table, "loads.big", unit::number), std::ceil(1.1 * tons / 20), 1e-12);
  ASSERT_TRUE(table.cost);
  EXPECT_NEAR(*table.cost, 50 * 1.1 * tons, 1e-6);
}

TEST(ZoneQuantities, TheToeAddsItsRock) {
  auto example = ordered();
  auto& zone = example.items["zones"]["bank"];
  zone["toe"] = {{"kind", "launchable"}, {"stored", "30 ft²"}};
  EXPECT_NEAR(amount(table_of(example), "rock-toe", unit::cubic_foot), 3000, 1e-6);
  zone["toe"] = {{"kind", "thickened"}, {"width", "10 ft"}, {"thickness", "5 ft"}};
  EXPECT_NEAR(amount(table_of(example), "rock-toe", unit::cubic_foot), 3000, 1e-6);
  zone["toe"] = {{"kind", "trench"}, {"depth", "6 ft"}};
  // The bank stands at 2H:1V: T·d·√5 for each foot.
  EXPECT_NEAR(amount(table_of(example), "rock-toe", unit::cubic_foot), 2 * 6 * std::sqrt(5.0) * 100,
              0.5);
}

TEST(ZoneQuantities, APriceByVolumeIsOfTheVolumeOrdered) {
  auto example = ordered();
  example.items["prices"]["classes"] = {{"fhwa-3", {{"amount", "80"}, {"per", "1 yd³"}}}};
  const auto table = table_of(example);
  ASSERT_TRUE(table.cost);
  EXPECT_NEAR(*table.cost, 80 * 1.1 * amount(table, "rock-layer", unit::cubic_yard), 1e-6);
  EXPECT_EQ(table.without_price.size(), 2U);  // placing and excavation
}

TEST(ZoneQuantities, TrucksCarryTheOrderOfAllZonesTogether) {
  auto example = ordered();
  auto second = example.items["zones"]["bank"];
  second["name"] = "Second";
  example.items["zones"]["second"] = second;
  const auto one = table_of(ordered());
  const auto two = table_of(example);
  const double tons = amount(one, "rock-ordered", unit::short_ton);
  EXPECT_NEAR(amount(two, "rock-ordered", unit::short_ton), 2 * tons, 1e-6);
  EXPECT_NEAR(amount(two, "loads.big", unit::number), std::ceil(2 * tons / 20), 1e-12);
}

TEST(ZoneQuantities, WhatIsMissingIsNamed) {
  auto example = ordered();
  example.items["zones"]["bank"].erase("extent");
  const auto table = table_of(example);
  EXPECT_FALSE(table.complete());
  ASSERT_EQ(table.zones.size(), 1U);
  EXPECT_NE(table.zones[0].missing.front().find("How long the zone is"), std::string::npos);
  const auto* ordered_row = row(table.totals, "rock-ordered");
  ASSERT_NE(ordered_row, nullptr);
  EXPECT_FALSE(ordered_row->amount);
  EXPECT_TRUE(ordered_row->partial);
  EXPECT_FALSE(table.cost);
  const auto site = site_from(example.document());
  const auto findings = assess(*site, UnitSystem::us_customary);
  const auto* finding = findings.find("quantities.bank");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->outcome, Outcome::not_yet_known);
  EXPECT_NE(finding->next.find("state length under extent"), std::string::npos);
}

TEST(ZoneQuantities, AStatedAreaStandsBeforeWhatIsMeasured) {
  auto example = ordered();
  example.items["zones"]["bank"]["extent"] = {{"area", "400 yd²"}};
  EXPECT_NEAR(amount(table_of(example), "slope-area", unit::square_foot), 3600, 1e-9);
}

TEST(ZoneQuantities, BeddingAndGeotextileAreCountedWithTheirSpareAndOverlaps) {
  auto example = ordered();
  auto& zone = example.items["zones"]["bank"];
  zone["filter"] =
      json::array({json{{"kind", "granular"}, {"bedding", "coarse"}, {"thickness", "6 in"}}});
  zone["extent"]["slope_length"] = "30 ft";
  auto table = table_of(example);
  // 100 ft by 30 ft by half a foot, and a tenth to spare.
  EXPECT_NEAR(amount(table, "bedding", unit::cubic_foot), 1650, 1e-6);
  EXPECT_NEAR(amount(table, "excavation", unit::cubic_foot), 6000 + 1500, 1e-6);
  zone["filter"] = json::array(
      {json{{"kind", "geotextile"}, {"opening_size", "0.2 mm"}, {"fabric", "nonwoven"}}});
  table = table_of(example);
  // Eight strips of 15 ft, each lapping the next by a foot.
  EXPECT_NEAR(amount(table, "geotextile", unit::square_foot), 8 * 15 * 30, 1e-6);
  zone["placement"] = "under water";
  EXPECT_NEAR(amount(table_of(example), "geotextile", unit::square_foot), 9 * 15 * 30, 1e-6);
}

ExampleDocument ordered_and_filled() {
  auto example = ordered();
  example.items["materials"]["loam"] = {{"name", "Loam"},
                                        {"gradation",
                                         {{{"size", "0.02 mm"}, {"smaller", "30 %"}},
                                          {{"size", "0.075 mm"}, {"smaller", "55 %"}},
                                          {{"size", "2 mm"}, {"smaller", "100 %"}}}},
                                        {"specific_gravity", "2.65"},
                                        {"porosity", "0.42"},
                                        {"loose_over_bank", "1.25"},
                                        {"in_place_over_bank", "0.90"},
                                        {"load", "16 ton"}};
  example.items["mixes"]["fill"] = {
      {"name", "Soil-filled rock"}, {"kind", "soil-filled"},
      {"rock_voids", "0.40"},       {"placing", "washed in"},
      {"rock_parts", "65"},         {"parts", {{{"material", "loam"}, {"parts", "35"}}}}};
  example.items["zones"]["bank"]["mix"] = "fill";
  example.items["prices"]["items"]["fill"] = {{"amount", "18"}, {"per", "1 yd³"}};
  return example;
}

// The layer is 26.833 ft · 100 ft · 2 ft; to each volume of rock 35/65 loose, swell 1.25 and
// shrink 0.90, solids 0.58 of what is in place.
TEST(ZoneQuantities, TheFillIsCountedLooseInTheGroundAndInPlace) {
  const auto table = table_of(ordered_and_filled());
  ASSERT_TRUE(table.complete()) << table.zones.front().missing.front();
  const double layer = std::sqrt(24.0 * 24 + 12.0 * 12) * 200;
  const double loose = 1.1 * layer * 35 / 65;
  const double in_place = layer * 35 / 65 * 0.72;
  EXPECT_NEAR(amount(table, "fill", unit::cubic_foot), loose, 1e-6);
  EXPECT_NEAR(amount(table, "fill-bank", unit::cubic_foot), loose / 1.25, 1e-6);
  EXPECT_NEAR(amount(table, "fill-in-place", unit::cubic_foot), in_place, 1e-6);
  EXPECT_LE(in_place, 0.4 * layer);
  const double tons = 1.1 * in_place * 0.58 * 2.65 * 62.4 / 2000;
  EXPECT_NEAR(amount(table, "fill-loads", unit::number), std::ceil(tons / 16), 1e-12);
  const auto* fill = row(table.totals, "fill");
  ASSERT_TRUE(fill != nullptr && fill->cost);
  EXPECT_NEAR(*fill->cost, 18 * loose / 27, 1e-6);
}

TEST(ZoneQuantities, AMaterialsOwnPriceStandsBeforeThatOfFill) {
  auto example = ordered_and_filled();
  example.items["materials"]["loam"]["price"] = {{"amount", "6"}, {"per", "ton"}};
  const auto table = table_of(example);
  const auto* fill = row(table.totals, "fill");
  ASSERT_TRUE(fill != nullptr && fill->cost);
  const double tons =
      1.1 * std::sqrt(24.0 * 24 + 12.0 * 12) * 200 * 35 / 65 * 0.72 * 0.58 * 2.65 * 62.4 / 2000;
  EXPECT_NEAR(*fill->cost, 6 * tons, 1e-6);
}

TEST(ZoneQuantities, AFillThatCannotBeCountedIsNamed) {
  auto example = ordered_and_filled();
  example.items["mixes"]["fill"].erase("rock_voids");
  auto table = table_of(example);
  EXPECT_FALSE(table.complete());
  ASSERT_NE(row(table.totals, "fill"), nullptr);
  EXPECT_FALSE(row(table.totals, "fill")->amount);
}

// The bank goes from 105 to 117 ft at one slope: filled up to 110 ft it takes 5/12 of the fill.
TEST(ZoneQuantities, AFillOnAPartOfTheSlopeIsCountedThere) {
  const auto whole = table_of(ordered_and_filled());
  auto example = ordered_and_filled();
  example.items["zones"]["bank"]["kinds"] = json::array(
      {{{"kind", "void-filled"}, {"up_to", "110 ft"}}, {{"kind", "bare"}, {"up_to", "top"}}});
  const auto part = table_of(example);
  for (const char* item : {"fill", "fill-bank", "fill-in-place"}) {
    EXPECT_NEAR(amount(part, item, unit::cubic_foot),
                5.0 / 12 * amount(whole, item, unit::cubic_foot), 1e-6)
        << item;
  }
  EXPECT_NEAR(amount(part, "rock-layer", unit::cubic_foot),
              amount(whole, "rock-layer", unit::cubic_foot), 1e-9);
  // Of two fills the mix of the zone is one: the other is named.
  example.items["zones"]["bank"]["kinds"] =
      json::array({{{"kind", "void-filled"}, {"up_to", "110 ft"}},
                   {{"kind", "soil-filled"}, {"up_to", "top"}}});
  const auto two = table_of(example);
  EXPECT_NEAR(amount(two, "fill", unit::cubic_foot),
              7.0 / 12 * amount(whole, "fill", unit::cubic_foot), 1e-6);
  ASSERT_FALSE(two.complete());
  EXPECT_NE(two.zones.front().missing.back().find("a zone of its own"), std::string::npos);
}

TEST(ZoneQuantities, AThickerLayerNeverTakesLess) {
  double before = 0;
  for (const char* thickness : {"18 in", "24 in", "30 in", "48 in"}) {
    auto example = ordered_and_filled();
    example.items["zones"]["bank"]["layer_thickness"] = thickness;
    const auto table = table_of(example);
    const double now =
        amount(table, "rock-mass", unit::short_ton) + amount(table, "fill", unit::cubic_foot);
    EXPECT_GT(now, before) << thickness;
    before = now;
  }
}

TEST(ZoneQuantities, NoneAreAskedForWhereTheDocumentSaysNothingOfThem) {
  EXPECT_TRUE(table_of(ExampleDocument()).zones.empty());
}

TEST(ZoneQuantities, BadInputIsNamed) {
  auto example = ordered();
  example.items["zones"]["bank"]["extent"] = json::object();
  EXPECT_EQ(first_problem(example), "/zones/bank/extent/length missing-field");
  example.items["zones"]["bank"]["extent"] = {{"length", "-3 ft"}};
  EXPECT_EQ(first_problem(example), "/zones/bank/extent/length not-positive");
  example.items["zones"]["bank"]["extent"] = {{"length", "300 lb"}};
  EXPECT_EQ(first_problem(example), "/zones/bank/extent/length wrong-kind");
  example = ordered();
  example.items["ordering"]["spare"] = "150 %";
  EXPECT_EQ(first_problem(example), "/ordering/spare outside-allowed");
  example.items["ordering"]["spare"] = "NaN";
  EXPECT_EQ(first_problem(example).substr(0, 15), "/ordering/spare");
  example = ordered();
  example.items["ordering"]["trucks"].push_back({{"name", "big"}, {"load", "0 ton"}});
  EXPECT_EQ(first_problem(example), "/ordering/trucks/1/load not-positive");
  example = ordered();
  example.items["prices"]["items"]["gravy"] = {{"amount", "5"}, {"per", "1 ton"}};
  EXPECT_EQ(first_problem(example), "/prices/items/gravy unknown-item");
  example = ordered();
  example.items["prices"]["items"]["rock"]["per"] = "1 ft";
  EXPECT_EQ(first_problem(example), "/prices/items/rock/per wrong-kind");
  example.items["prices"]["items"]["rock"] = {{"amount", "-5"}, {"per", "1 ton"}};
  EXPECT_EQ(first_problem(example), "/prices/items/rock/amount outside-allowed");
  example = ordered();
  example.items["prices"]["classes"] = {{"no-such", {{"amount", "5"}, {"per", "1 ton"}}}};
  EXPECT_EQ(first_problem(example), "/prices/classes/no-such no-such-class");
}

}  // namespace
}  // namespace proofstone
