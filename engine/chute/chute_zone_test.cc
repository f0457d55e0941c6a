#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/chute/overtopping_abt_johnson.h"
#include "engine/chute/overtopping_khan_ahmad.h"
#include "engine/chute/overtopping_mishra.h"
#include "engine/chute/overtopping_stephenson.h"
#include "engine/chute/rock_chute.h"
#include "engine/chute/spillway_face_rock.h"

namespace proofstone {
namespace {

using nlohmann::json;

ZoneSetting chute(const json& choices) {
  ZoneSetting zone;
  zone.place = ZonePlace::chute;
  zone.stated.from = "hydrology report";
  zone.stated.discharge = Discharge::cubic_feet_per_second(100);
  zone.method_choices = &choices;
  return zone;
}

const json one_chute = {{"width", "20 ft"}, {"slope", "0.10"}};

TEST(ChuteOfAZone, ReadsTheStatedDischargeAndTheChosenShape) {
  const json choices = {{"rock-chute", one_chute}, {"overtopping-abt-johnson", one_chute}};
  const auto zone = chute(choices);
  const auto robinson = rock_chute_method().size(zone);
  ASSERT_TRUE(robinson.required);
  EXPECT_NEAR(robinson.required->size.inches(), 1.2 * 6.407, 0.01);
  const auto abt = overtopping_abt_johnson_method().size(zone);
  ASSERT_TRUE(abt.required);
  EXPECT_NEAR(abt.required->size.inches(), 5.661, 0.006);
}

TEST(ChuteOfAZone, NamesWhatNobodyGave) {
  const json choices = {{"rock-chute", {{"slope", "0.10"}}}};
  const auto without_width = rock_chute_method().size(chute(choices));
  EXPECT_FALSE(without_width.required);
  ASSERT_EQ(without_width.problems.size(), 1U);
  EXPECT_EQ(without_width.problems[0].code, "missing-input");
  EXPECT_EQ(without_width.problems[0].where, "/rock-chute/width");
  const json none = json::object();
  const auto without_slope = rock_chute_method().size(chute(none));
  ASSERT_FALSE(without_slope.problems.empty());
  EXPECT_EQ(without_slope.problems[0].where, "/rock-chute/slope");
}

TEST(ChuteOfAZone, RoundedRockIsLargerOrNotSpokenFor) {
  const json choices = {{"rock-chute", one_chute}, {"overtopping-abt-johnson", one_chute}};
  auto zone = chute(choices);
  zone.rock.angularity = Angularity::rounded;
  EXPECT_TRUE(rock_chute_method().size(zone).not_applicable);
  EXPECT_TRUE(overtopping_mishra_method().size(zone).not_applicable);
  const auto abt = overtopping_abt_johnson_method().size(zone);
  ASSERT_TRUE(abt.required);
  EXPECT_NEAR(abt.required->size.inches(), 7.926, 0.008);
}

// What hangs on a default nobody looked at does not govern until it is chosen.
TEST(ChuteOfAZone, DefaultsOfTheRockKeepAMethodFromGoverning) {
  const json steep = {{"width", "20 ft"}, {"slope", "0.30"}};
  json choices = {{"overtopping-mishra", steep},
                  {"overtopping-stephenson", steep},
                  {"overtopping-khan-ahmad", steep},
                  {"spillway-face-rock", steep}};
  const auto zone = chute(choices);
  for (const auto* method : {&overtopping_mishra_method(), &overtopping_stephenson_method(),
                             &overtopping_khan_ahmad_method(), &spillway_face_rock_method()}) {
    const auto answer = method->size(zone);
    EXPECT_TRUE(answer.required) << method->description().id;
    EXPECT_TRUE(answer.for_comparison) << method->description().id;
  }
  choices["overtopping-stephenson"]["porosity"] = "0.40";
  EXPECT_FALSE(overtopping_stephenson_method().size(zone).for_comparison);
}

}  // namespace
}  // namespace proofstone
