#include "report/as_safe_changes.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "report/example_request.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with another quarry, whose stones are lighter and rounded, and what follows.
json with_revision(const json& changes) {
  auto document = json::parse(example_file("site.json"));
  const json light = {
      {"set", "/sources/light-pit"},
      {"to", {{"name", "Light pit"}, {"specific_gravity", "2.3"}, {"angularity", "rounded"}}}};
  document["revisions"].push_back({{"id", "light"},
                                   {"time", "2026-07-01T12:00:00Z"},
                                   {"author", "M. Okafor"},
                                   {"note", "another quarry"},
                                   {"changes", {light}}});
  if (!changes.empty()) {
    document["revisions"].push_back({{"id", "taken-over"},
                                     {"time", "2026-07-02T12:00:00Z"},
                                     {"author", "M. Okafor"},
                                     {"note", "taken over"},
                                     {"changes", changes}});
  }
  return document;
}

json study(const json& document, const json& rock, const char* units = "us") {
  json request = {{"ask", "substitution"},
                  {"zone", "outer-bank"},
                  {"document", document.dump()},
                  {"units", units}};
  request.update(rock);
  return ask_example(request)["substitution"];
}

std::string value_of(const json& changes, const std::string& pointer) {
  for (const auto& change : changes) {
    if (change.value("set", "") == pointer) return change["to"].get<std::string>();
  }
  return "";
}

TEST(AsSafeChanges, MakeTheDocumentWhatTheStudySaid) {
  for (const auto* units : {"us", "si"}) {
    const auto changes = study(with_revision({}), {{"source", "light-pit"}}, units)["changes"];
    EXPECT_EQ(value_of(changes, "/zones/outer-bank/source"), "light-pit");
    EXPECT_NE(value_of(changes, "/zones/outer-bank/class"), "");
    EXPECT_NE(value_of(changes, "/zones/outer-bank/layer_thickness"), "");
    const auto taken_over = with_revision(changes);
    const auto judged = ask_example({{"ask", "validate"}, {"document", taken_over.dump()}});
    EXPECT_TRUE(judged["problems"].empty()) << judged.dump();
    // With that the zone is no worse than it was: the rock specified before is now the other rock.
    const auto back = study(taken_over, {{"source", "granite-knob"}}, units);
    for (const auto& row : back["rows"]) {
      if (row["what"] == "Layer against its least thickness" ||
          row["what"] == "Stones against the size asked for") {
        EXPECT_EQ(row["cells"][0]["outcome"], "meets") << row.dump();
      }
    }
  }
}

TEST(AsSafeChanges, AreNoneWhereNothingChangesAndAbsentForRockOfNoSource) {
  const auto document = with_revision({});
  EXPECT_TRUE(study(document, {{"source", "granite-knob"}})["changes"].empty());
  EXPECT_FALSE(study(document, {{"specific_gravity", "2.4"}}).contains("changes"));
  EXPECT_FALSE(study(document, {{"angularity", "rounded"}}).contains("changes"));
}

TEST(AsSafeChanges, RoundWhatMustNotBeLessUpAndWhatMustNotBeMoreDown) {
  Substitution::AsSafe as_safe;
  as_safe.before.id = as_safe.zone.id = "bank";
  as_safe.before.layer_thickness = Length::inches(24);
  as_safe.zone.layer_thickness = Length::inches(26.01);
  as_safe.mended_filter = true;
  GeotextileFilter fabric;
  fabric.opening_size = Length::millimeters(0.24999);
  as_safe.zone.filter = ZoneFilter{{GranularFilter{"made-filter-1", Length::inches(6)}, fabric}};
  const auto us = as_safe_changes(as_safe, UnitSystem::us_customary);
  EXPECT_EQ(value_of(us, "/zones/bank/layer_thickness"), "26.25 in");
  EXPECT_EQ(us.back()["to"][0]["thickness"], "6 in");
  EXPECT_EQ(us.back()["to"][1]["opening_size"], "0.249 mm");
  const auto si = as_safe_changes(as_safe, UnitSystem::si);
  EXPECT_EQ(value_of(si, "/zones/bank/layer_thickness"), "665 mm");
}

TEST(AsSafeChanges, TakeARecipeOutWhereProportionsAreFound) {
  Substitution::AsSafe as_safe;
  SiteMix before;
  before.id = "fill";
  before.recipe = "published";
  before.soil = "loam";
  auto after = before;
  after.recipe.clear();
  after.soil.clear();
  after.rock_parts = 9;
  after.parts = {{"loam", 4}};
  as_safe.mix_before = before;
  as_safe.mix = after;
  EXPECT_EQ(
      as_safe_changes(as_safe, UnitSystem::si),
      (json{{{"remove", "/mixes/fill/recipe"}},
            {{"remove", "/mixes/fill/soil"}},
            {{"set", "/mixes/fill/rock_parts"}, {"to", "9"}},
            {{"set", "/mixes/fill/parts"}, {"to", {{{"material", "loam"}, {"parts", "4"}}}}}}));
}

}  // namespace
}  // namespace proofstone
