#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/grade_control/constructed_riffle.h"
#include "engine/grade_control/loose_rock_drop_table.h"
#include "engine/grade_control/sloping_rock_drop.h"

namespace proofstone {
namespace {

using nlohmann::json;

ZoneSetting drop(const json& choices) {
  ZoneSetting zone;
  zone.place = ZonePlace::drop;
  zone.stated.from = "channel model";
  zone.stated.discharge = Discharge::cubic_feet_per_second(480);
  zone.stated.depth = Length::meters(1);
  zone.rock.specific_gravity = Dimensionless::number(2.65);
  zone.method_choices = &choices;
  return zone;
}

TEST(DropOfAZone, ReadsTheStatedWaterAndTheChosenFace) {
  const json choices = {
      {"sloping-rock-drop", {{"width", "20 ft"}, {"slope", "7H:1V"}}},
      {"constructed-riffle", {{"slope", "0.05"}}},
      {"loose-rock-drop-table",
       {{"normal_velocity", "6 ft/s"}, {"normal_depth", "4 ft"}, {"slope", "7H:1V"}}}};
  auto zone = drop(choices);
  EXPECT_NEAR(sloping_rock_drop_method().size(zone).required->size.feet(), 1.108, 0.002);
  EXPECT_NEAR(constructed_riffle_method().size(zone).required->size.meters(), 0.75, 1e-9);
  EXPECT_NEAR(loose_rock_drop_table_method().size(zone).required->size.inches(), 18, 1e-9);
  zone.stated.velocity = Velocity::feet_per_second(12);
  EXPECT_GT(sloping_rock_drop_method().size(zone).required->size.feet(), 1.5);
}

TEST(DropOfAZone, NamesWhatNobodyGave) {
  const json choices = {{"sloping-rock-drop", {{"width", "20 ft"}}}};
  const auto zone = drop(choices);
  const auto answer = sloping_rock_drop_method().size(zone);
  ASSERT_EQ(answer.problems.size(), 1U);
  EXPECT_EQ(answer.problems[0].where, "/sloping-rock-drop/slope");
  EXPECT_EQ(loose_rock_drop_table_method().size(zone).problems.size(), 3U);
}

}  // namespace
}  // namespace proofstone
