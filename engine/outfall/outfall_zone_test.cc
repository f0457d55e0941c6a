#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/outfall/dane_county_apron.h"
#include "engine/outfall/front_range_outlet.h"
#include "engine/outfall/outfall_apron.h"
#include "engine/outfall/outfall_basin.h"
#include "engine/outfall/outlet_bohan.h"
#include "engine/outfall/outlet_fletcher_grace.h"
#include "engine/outfall/outlet_velocity.h"
#include "engine/outfall/scs_outlet_apron.h"

namespace proofstone {
namespace {

using nlohmann::json;

ZoneSetting outfall(const json& choices) {
  ZoneSetting zone;
  zone.place = ZonePlace::outfall;
  zone.stated.from = "storm-drain model";
  zone.stated.discharge = Discharge::cubic_feet_per_second(100);
  zone.stated.velocity = Velocity::feet_per_second(8);
  zone.stated.tailwater_depth = Length::feet(1.6);
  zone.method_choices = &choices;
  return zone;
}

TEST(OutfallOfAZone, ReadsTheStatedWaterAndTheChosenConduit) {
  const json choices = {{"outfall-apron", {{"diameter", "4 ft"}}},
                        {"front-range-outlet", {{"height", "4 ft"}}}};
  const auto zone = outfall(choices);
  const auto apron = outfall_apron_method().size(zone);
  ASSERT_TRUE(apron.required);
  EXPECT_NEAR(apron.required->size.feet(), 0.9028, 0.001);
  EXPECT_FALSE(apron.for_comparison);
  const auto outlet = front_range_outlet_method().size(zone);
  ASSERT_TRUE(outlet.required);
  EXPECT_NEAR(outlet.required->size.feet(), 0.8633, 0.001);
}

TEST(OutfallOfAZone, NamesTheConduitThatNobodyGave) {
  const json choices = json::object();
  const auto answer = outfall_apron_method().size(outfall(choices));
  EXPECT_FALSE(answer.required);
  ASSERT_EQ(answer.problems.size(), 1U);
  EXPECT_EQ(answer.problems[0].code, "missing-input");
  EXPECT_EQ(answer.problems[0].where, "/outfall-apron/diameter");
}

TEST(OutfallOfAZone, NamesTheDischargeThatNobodyStated) {
  const json choices = {{"outfall-apron", {{"diameter", "4 ft"}}}};
  auto zone = outfall(choices);
  zone.stated.discharge.reset();
  const auto answer = outfall_apron_method().size(zone);
  ASSERT_EQ(answer.problems.size(), 1U);
  EXPECT_EQ(answer.problems[0].where, "/outfall-apron/discharge");
}

TEST(OutfallOfAZone, AnUnknownTailwaterIsTakenAsPublished) {
  const json choices = {{"outfall-apron", {{"diameter", "4 ft"}}}};
  auto zone = outfall(choices);
  zone.stated.tailwater_depth.reset();
  EXPECT_NEAR(outfall_apron_method().size(zone).required->size.feet(), 0.9028, 0.001);
}

// Forms that are second hand, local or know less stand beside the others.
TEST(OutfallOfAZone, LesserFormsAreForComparison) {
  const json choices = {{"scs-outlet-apron", {{"diameter", "4 ft"}}},
                        {"dane-county-apron", {{"diameter", "4 ft"}}},
                        {"outlet-fletcher-grace", {{"diameter", "4 ft"}}},
                        {"outlet-bohan", {{"diameter", "4 ft"}}}};
  const auto zone = outfall(choices);
  for (const auto* method :
       {&scs_outlet_apron_method(), &dane_county_apron_method(), &outlet_fletcher_grace_method(),
        &outlet_bohan_method(), &outlet_velocity_method()}) {
    const auto answer = method->size(zone);
    EXPECT_TRUE(answer.required) << method->description().id;
    EXPECT_TRUE(answer.for_comparison) << method->description().id;
  }
}

TEST(OutfallOfAZone, IsSilentElsewhere) {
  const json choices = json::object();
  auto zone = outfall(choices);
  zone.place = ZonePlace::basin;
  EXPECT_TRUE(outfall_apron_method().size(zone).not_applicable);
  zone.place = ZonePlace::bank;
  EXPECT_TRUE(outfall_basin_method().size(zone).not_applicable);
}

TEST(BasinOfAZone, HoldsWithTheRockThatIsTried) {
  const json choices = {
      {"outfall-basin",
       {{"shape", "box"}, {"width", "8 ft"}, {"brink_depth", "4 ft"}, {"d50", "1.8 ft"}}}};
  auto zone = outfall(choices);
  zone.place = ZonePlace::basin;
  zone.stated.discharge = Discharge::cubic_feet_per_second(800);
  zone.stated.tailwater_depth = Length::feet(2.8);
  const auto answer = outfall_basin_method().size(zone);
  ASSERT_TRUE(answer.required);
  EXPECT_NEAR(answer.required->size.feet(), 1.8, 1e-9);
  EXPECT_NEAR(answer.evaluation.output("scour_depth").si / 0.3048, 6.156, 0.012);
}

TEST(BasinOfAZone, RefusesByNameWhereNoHoleForms) {
  const json choices = {
      {"outfall-basin",
       {{"shape", "box"}, {"width", "8 ft"}, {"brink_depth", "4 ft"}, {"d50", "2.5 ft"}}}};
  auto zone = outfall(choices);
  zone.place = ZonePlace::basin;
  zone.stated.discharge = Discharge::cubic_feet_per_second(800);
  zone.stated.tailwater_depth = Length::feet(2.8);
  const auto answer = outfall_basin_method().size(zone);
  EXPECT_FALSE(answer.required);
  ASSERT_FALSE(answer.problems.empty());
  EXPECT_EQ(answer.problems[0].code, "hole-too-shallow");
}

}  // namespace
}  // namespace proofstone
