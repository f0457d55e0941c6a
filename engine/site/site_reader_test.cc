#include <gtest/gtest.h>

#include "engine/site/example_document.h"
#include "engine/site/site.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with one item changed, and the problems that come of it.
Problems problems_with(const std::string& pointer, const json& value) {
  ExampleDocument example;
  example.items[json::json_pointer(pointer)] = value;
  const auto site = site_from(example.document());
  return site ? Problems{} : site.problems();
}

Problems problems_without(const std::string& pointer) {
  ExampleDocument example;
  const json::json_pointer at(pointer);
  example.items[at.parent_pointer()].erase(at.back());
  const auto site = site_from(example.document());
  return site ? Problems{} : site.problems();
}

struct Wrong {
  const char* pointer;
  json value;
  const char* code;
};

TEST(SiteReader, ReadsTheExample) {
  const auto site = read_site(ExampleDocument().text());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  EXPECT_EQ(site->name, "Test reach");
  EXPECT_EQ(site->revision, "r1");
  EXPECT_NEAR(site->flow_cases.at("flood").discharge.cubic_feet_per_second(), 4200, 1e-9);
  EXPECT_NEAR(site->sources.at("knob").rock.specific_gravity.number(), 2.625, 1e-12);
  EXPECT_EQ(std::get<StoneCount>(site->looks.at("count").taken).bins.size(), 5u);
  EXPECT_NEAR(site->materials.at("coarse").gradation.percent_smaller(Length::inches(18)), 60, 1e-9);
}

TEST(SiteReader, NamesEveryWrongFieldWithItsPlace) {
  const Wrong wrongs[] = {
      {"/flow_cases/flood/discharge", "4200", "missing-unit"},
      {"/flow_cases/flood/discharge", 4200, "missing-unit"},
      {"/flow_cases/flood/discharge", "-5 ft³/s", "not-positive"},
      {"/flow_cases/flood/discharge", "12 ft", "wrong-kind"},
      {"/flow_cases/flood/purpose", "sometimes", "unknown-word"},
      {"/flow_cases/flood/colour", "blue", "unknown-field"},
      {"/sections/one/energy_slope", "0", "not-positive"},
      {"/sections/one/left_bank", "200 ft", "bad-banks"},
      {"/sections/one/survey", {{"file", "section.csv"}}, "file-not-read"},
      {"/sections/one/survey/points", json::array(), ""},
      {"/sources/knob/specific_gravity_tests", {"1.2"}, "implausible"},
      {"/sources/knob/angularity", "smooth", "unknown-word"},
      {"/sources/knob/angle_of_repose", "80°", "implausible"},
      {"/zones/bank/class", "fhwa-33", "no-such-class"},
      {"/zones/bank/section", "two", "no-such-item"},
      {"/zones/bank/place", "lawn", "unknown-word"},
      {"/zones/bank/water", "deep", "not-an-object"},
      {"/zones/bank/water", {{"drought", {{"from", "gauge"}}}}, "no-such-item"},
      {"/zones/bank/water", {{"flood", {{"velocity", "9 ft/s"}}}}, "missing-field"},
      {"/zones/bank/water", {{"flood", {{"from", "gauge"}, {"depth", "-1 ft"}}}}, "negative"},
      {"/zones/bank/layer_thickness", "0 in", "not-positive"},
      {"/zones/bank/bend", {{"side", "outside"}, {"radius", "-3 ft"}}, "not-positive"},
      {"/zones/bank/along",
       {{"centreline", "none"}, {"from", "0 ft"}, {"to", "9 ft"}},
       "no-such-item"},
      {"/zones/bank/along",
       {{"centreline", "none"}, {"from", "9 ft"}, {"to", "0 ft"}},
       "bad-stretch"},
      {"/zones/bank/freeboard", "2 ft", "not-a-rule"},
      {"/zones/bank/freeboard", {{"waves", "2 ft"}}, "not-a-rule"},
      {"/flow_cases/flood/days_per_year", "400", "out-of-range"},
      {"/centrelines",
       {{"main", {{"name", "Main"}, {"course", {{"points", json::array()}}}}}},
       "too-few-points"},
      {"/centrelines",
       {{"main", {{"name", "Main"}, {"course", {{"file", "course.csv"}}}}}},
       "file-not-read"},
      {"/zones/bank/governing", "hope", "unknown-word"},
      {"/zones/bank/method_choices", {{"no-such", json::object()}}, "unknown-method"},
      {"/zones/bank/place", "air", "unknown-word"},
      {"/zones/bank/kinds", "bare", ""},
      {"/zones/bank/kinds", {{{"kind", "wet"}, {"up_to", "top"}}}, "unknown-word"},
      {"/zones/bank/kinds", {{{"kind", "bare"}}}, "missing-field"},
      {"/zones/bank/kinds", {{{"kind", "bare"}, {"up_to", "drought"}}}, "no-such-item"},
      {"/zones/bank/kinds", {{{"kind", "bare"}, {"up_to", "112.5"}}}, "missing-unit"},
      {"/zones/bank/kinds",
       {{{"kind", "bare"}, {"up_to", "top"}}, {{"kind", "bare"}, {"up_to", "low"}}},
       "above-the-top"},
      {"/zones/bank/conditions", {{"light", "moon"}}, "unknown-word"},
      {"/zones/bank/top_key", {{"width", "0 ft"}, {"depth", "3 ft"}}, "not-positive"},
      {"/zones/bank/cover", {{"topsoil", "-6 in"}}, "not-positive"},
      {"/zones/bank/cover", {{"from", "spring"}}, "no-such-item"},
      {"/zones/bank/cover", {{"plants", "ferns"}}, "unknown-word"},
      {"/zones/bank/cover", {{"blanket", {{"type", "9.Z"}}}}, "unknown-word"},
      {"/zones/bank/cover",
       {{"blanket", {{"type", "3.B"}, {"roll_width", "6 ft"}, {"side_overlap", "6 ft"}}}},
       "outside-allowed"},
      {"/zones/bank/cover", {{"stakes", {{"length", "NaN in"}}}}, "not-finite"},
      {"/zones/bank/cover", {{"soil", {{"plasticity_index", 16}}}}, "not-an-object"},
      {"/zones/bank/cover", {{"top_trench", {{"width", "6 in"}}}}, "missing-field"},
      {"/zones/bank/cover", {{"stream", "wet"}}, "unknown-word"},
      {"/lots/first/zones", {"elsewhere"}, "no-such-item"},
      {"/lots/first/zones", {3}, "not-a-text"},
      {"/looks/count/lot", "none", "no-such-item"},
      {"/looks/count/picking", "lucky", "unknown-word"},
      {"/looks/count/stones/bins/0/stones", -1, "not-a-whole-number"},
      {"/looks/count/stones/bins/0/stones", 2.5, "not-a-whole-number"},
      {"/looks/count/stones", {{"bins", json::array()}, {"axes", json::array()}}, "one-of"},
      {"/looks/count/stones/bins/0/not_larger_than", "4 lb", "wrong-kind"},
      {"/materials/coarse/gradation/1/smaller", "260 %", ""},
      {"/materials/coarse/gradation/1/size", "3 in", ""},
      {"/evidence/confidence", "30 %", "implausible"},
      {"/zones/UPPER", json::object(), "bad-id"},
  };
  for (const auto& wrong : wrongs) {
    const auto problems = problems_with(wrong.pointer, wrong.value);
    ASSERT_FALSE(problems.empty()) << wrong.pointer << " = " << wrong.value;
    const auto& first = problems.front();
    if (*wrong.code != '\0') {
      EXPECT_EQ(first.code, wrong.code) << wrong.pointer << first.sentence();
    }
    EXPECT_FALSE(first.what.empty()) << wrong.pointer;
    EXPECT_EQ(first.where.rfind("/", 0), 0u) << first.where;
  }
}

TEST(SiteReader, ReadsWhatAZoneStatesOfItsWater) {
  ExampleDocument example;
  example.items["zones"]["bank"]["water"]["flood"] = {{"from", "two-dimensional model of 2026"},
                                                      {"velocity", "9.2 ft/s"}};
  const auto site = site_from(example.document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  const auto& stated = site->zones.at("bank").water.at("flood");
  EXPECT_EQ(stated.from, "two-dimensional model of 2026");
  EXPECT_NEAR(stated.velocity->feet_per_second(), 9.2, 1e-12);
  EXPECT_FALSE(stated.depth.has_value());
}

TEST(SiteReader, AZoneOutsideStreamsNeedsNoSection) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["place"] = "pier";
  zone.erase("section");
  zone.erase("bank");
  zone.erase("toe_station");
  zone.erase("top_station");
  const auto site = site_from(example.document());
  ASSERT_TRUE(site) << site.problems().front().sentence();
  EXPECT_EQ(site->zones.at("bank").place, ZonePlace::pier);
  EXPECT_TRUE(site->zones.at("bank").section.empty());
}

TEST(SiteReader, NamesEveryMissingField) {
  for (const char* pointer :
       {"/flow_cases/flood/discharge", "/flow_cases/flood/purpose", "/sections/one/survey",
        "/sections/one/energy_slope", "/sources/knob/angularity", "/zones/bank/bank",
        "/zones/bank/section", "/zones/bank/class", "/zones/bank/layer_thickness",
        "/lots/first/zones", "/looks/count/stones", "/looks/count/picking",
        "/materials/coarse/gradation"}) {
    const auto problems = problems_without(pointer);
    ASSERT_FALSE(problems.empty()) << pointer;
    EXPECT_EQ(problems.front().code, "missing-field") << pointer;
  }
}

TEST(SiteReader, TellsAllProblemsAtOnce) {
  ExampleDocument example;
  example.items["zones"]["bank"].erase("class");
  example.items["flow_cases"]["flood"]["discharge"] = "much";
  example.items["sources"]["knob"]["hardness"] = "7";
  const auto site = site_from(example.document());
  ASSERT_FALSE(site);
  EXPECT_GE(site.problems().size(), 3u);
}

TEST(SiteReader, SurvivesEveryTruncationOfADocument) {
  const auto text = ExampleDocument().text();
  for (std::size_t length = 0; length < text.size(); length += 7) {
    EXPECT_FALSE(read_site(std::string_view(text).substr(0, length))) << length;
  }
}

}  // namespace
}  // namespace proofstone
