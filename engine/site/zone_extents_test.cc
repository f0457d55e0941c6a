#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/site/zone_transitions.h"

namespace proofstone {
namespace {

using nlohmann::json;

Site site_of(const ExampleDocument& example) {
  auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? std::move(*site) : Site{};
}

Findings assessed(const ExampleDocument& example) {
  return assess(site_of(example), UnitSystem::us_customary);
}

Length value_of(const Finding& finding, const std::string& key) {
  for (const auto& value : finding.values) {
    if (value.key == key) return value.value.unchecked_as<Length>();
  }
  ADD_FAILURE() << key;
  return {};
}

TEST(ExtentsOfAZone, HoldKeys) {
  const auto findings = assessed(ExampleDocument());
  const auto* extent = findings.find("extent.bank");
  ASSERT_NE(extent, nullptr);
  EXPECT_NEAR(value_of(*extent, "key_depth").inches(), 48, 1e-9) << "twice the layer of 24 in";
  EXPECT_NEAR(value_of(*extent, "key_width").inches(), 48, 1e-9);
  EXPECT_NEAR(value_of(*extent, "key_spacing") / value_of(*extent, "upstream"), 2, 1e-9);
  EXPECT_NE(extent->sentence.find("Key both ends"), std::string::npos);
}

TEST(ExtentsOfAZone, TheDesignersKeysStandBeforeTheRule) {
  ExampleDocument example;
  auto& choices = example.items["zones"]["bank"]["method_choices"];
  choices["key-trench"] = {{"key_depth", "6 ft"}};
  EXPECT_NEAR(value_of(*assessed(example).find("extent.bank"), "key_depth").feet(), 6, 1e-9);
  choices["key-trench"] = {{"key_depth", "1 ft"}};
  const auto findings = assessed(example);
  const auto* refused = findings.find("extent.bank");
  ASSERT_NE(refused, nullptr);
  ASSERT_FALSE(refused->reasons.empty());
  EXPECT_NE(refused->reasons.front().find("/key-trench/key_depth"), std::string::npos)
      << refused->reasons.front();
}

/// The example with its zone along a straight course, and a second of another class below it.
ExampleDocument two_zones(const char* first_to, const char* second_from) {
  ExampleDocument example;
  example.items["centrelines"]["main"] = {{"name", "Main"},
                                          {"course",
                                           {{"points",
                                             {{{"easting", "0 ft"}, {"northing", "0 ft"}},
                                              {{"easting", "500 ft"}, {"northing", "0 ft"}},
                                              {{"easting", "1000 ft"}, {"northing", "0 ft"}}}}}}};
  auto& zones = example.items["zones"];
  auto second = zones["bank"];
  zones["bank"]["along"] = {{"centreline", "main"}, {"from", "100 ft"}, {"to", first_to}};
  second["name"] = "Lower bank";
  second["class"] = "fhwa-2";
  second["layer_thickness"] = "18 in";
  second["along"] = {{"centreline", "main"}, {"from", second_from}, {"to", "600 ft"}};
  zones["lower"] = second;
  return example;
}

TEST(Transitions, TheLargerRockRunsOnIntoTheReachOfTheSmaller) {
  const auto apart = two_zones("300 ft", "300 ft");
  const auto found = transitions_along(site_of(apart));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].upstream_zone, "bank");
  EXPECT_EQ(found[0].downstream_zone, "lower");
  EXPECT_TRUE(found[0].larger_upstream);
  EXPECT_NEAR(found[0].meets_at.feet(), 300, 1e-9);
  EXPECT_NEAR(found[0].overlap.feet(), 10, 1e-9);
  EXPECT_NEAR(found[0].drawn_overlap.feet(), 0, 1e-9);
  EXPECT_NEAR(found[0].taper.feet(), 1.5, 1e-9);
  const auto findings = assessed(apart);
  const auto* finding = findings.find("transition.bank.lower");
  ASSERT_NE(finding, nullptr);
  EXPECT_EQ(finding->outcome, Outcome::ask_the_designer);
  const auto overlapping = assessed(two_zones("310 ft", "300 ft"));
  EXPECT_EQ(overlapping.find("transition.bank.lower")->outcome, Outcome::meets);
}

TEST(Transitions, AreOnlyWhereZonesOfOneBankMeetAndDiffer) {
  EXPECT_TRUE(transitions_along(site_of(ExampleDocument())).empty());
  EXPECT_TRUE(transitions_along(site_of(two_zones("300 ft", "400 ft"))).empty()) << "a gap";
  auto same = two_zones("300 ft", "300 ft");
  same.items["zones"]["lower"]["class"] = "fhwa-3";
  same.items["zones"]["lower"]["layer_thickness"] = "24 in";
  EXPECT_TRUE(transitions_along(site_of(same)).empty());
  auto across = two_zones("300 ft", "300 ft");
  across.items["zones"]["lower"]["bank"] = "right";
  across.items["zones"]["lower"].erase("bend");
  EXPECT_TRUE(transitions_along(site_of(across)).empty());
}

TEST(Transitions, KeysAreCountedOverTheStretchDrawn) {
  const auto findings = assessed(two_zones("300 ft", "300 ft"));
  const auto* extent = findings.find("extent.lower");
  ASSERT_NE(extent, nullptr);
  const auto counted = std::find_if(extent->values.begin(), extent->values.end(),
                                    [](const StatedValue& value) { return value.key == "keys"; });
  ASSERT_NE(counted, extent->values.end());
  EXPECT_GE(counted->value.si, 2) << "one at each end";
}

}  // namespace
}  // namespace proofstone
