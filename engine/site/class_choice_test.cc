#include "engine/site/class_choice.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

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

const Finding& finding_of(const Findings& findings, const std::string& id) {
  static const Finding none;
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  return finding != nullptr ? *finding : none;
}

bool any_holds(const std::vector<std::string>& texts, const std::string& part) {
  for (const auto& text : texts) {
    if (text.find(part) != std::string::npos) return true;
  }
  return false;
}

const json own_class = {
    {"family", "Quarry's own"},
    {"source", {{"document", "Knob price list"}, {"place", "2026"}, {"standing", "published"}}},
    {"basis", {{"size", "intermediate axis"}, {"percent", "mass"}}},
    {"name", "Eighteen minus"},
    {"nominal_d50", "12 in"},
    {"size_windows",
     {{{"percent", 15}, {"min_size", "7 in"}, {"max_size", "11 in"}},
      {{"percent", 50}, {"min_size", "11.5 in"}, {"max_size", "14 in"}},
      {{"percent", 100}, {"max_size", "24 in"}}}}};

TEST(ClassChoice, AClassOfTheDocumentServesZonesAndLots) {
  ExampleDocument example;
  example.items["classes"]["knob-18"] = own_class;
  example.items["zones"]["bank"]["class"] = "knob-18";
  example.items["lots"]["first"]["class"] = "knob-18";
  const auto findings = assessed(example);
  const auto& verdict = finding_of(findings, "class.bank");
  EXPECT_EQ(verdict.about.rock_class, "knob-18");
  EXPECT_EQ(verdict.sources.front().document, "Knob price list");
  EXPECT_TRUE(any_holds(finding_of(findings, "families.bank").reasons, "Quarry's own: "));
  EXPECT_EQ(findings.gradation_pictures.front().class_name, "Eighteen minus");
}

TEST(ClassChoice, AClassOfTheDocumentStandsBeforeOneOfTheCatalog) {
  ExampleDocument example;
  auto renamed = own_class;
  renamed["family"] = "FHWA classes (HEC-23)";
  example.items["classes"]["fhwa-3"] = renamed;
  const auto findings = assessed(example);
  EXPECT_EQ(finding_of(findings, "class.bank").title, "Eighteen minus for Outer bank");
}

TEST(ClassChoice, AWrongClassOfTheDocumentIsNamedWithItsPlace) {
  ExampleDocument example;
  auto wrong = own_class;
  wrong["size_windows"][1]["min_size"] = "15 in";
  example.items["classes"]["knob-18"] = wrong;
  const auto site = site_from(example.document());
  ASSERT_FALSE(site);
  EXPECT_EQ(site.problems().front().code, "window-reversed");
  EXPECT_EQ(site.problems().front().where, "/classes/knob-18/size_windows, window 2");
}

TEST(ClassChoice, EveryFamilyShowsItsSmallestHoldingClass) {
  const auto findings = assessed(ExampleDocument());
  const auto& families = finding_of(findings, "families.bank");
  EXPECT_EQ(families.outcome, Outcome::meets);
  std::set<std::string> names;
  for (const auto& known : class_catalog()) names.insert(known.family);
  EXPECT_EQ(families.reasons.size(), names.size());
  for (const auto& name : names) EXPECT_TRUE(any_holds(families.reasons, name + ": ")) << name;
  EXPECT_TRUE(any_holds(families.reasons, "Next smaller: "));
}

// The class that is named holds, and the one before it in its family does not.
TEST(ClassChoice, ChoosesTheFirstThatHolds) {
  const auto site = site_from(ExampleDocument().document());
  ASSERT_TRUE(site);
  const Wording wording(UnitSystem::us_customary);
  const auto& zone = site->zones.at("bank");
  const auto water = water_at_zone(*site, zone, {}, wording);
  const auto sizing = size_zone(*site, zone, water, wording);
  for (const auto& family : class_families(*site)) {
    const auto choice = choose_class(family, sizing, wording);
    const auto worst = [&](const RockClass& rock_class) {
      double least = 1e9;
      for (const auto& asked : sizing.asked) {
        if (!counts(zone, asked)) continue;
        least = std::min(least, class_margin(rock_class, asked).value_or(0));
      }
      return least;
    };
    for (const auto* candidate : family.classes) {
      if (candidate == choice.smallest) break;
      EXPECT_LT(worst(*candidate), 1) << candidate->id;
    }
    if (choice.smallest != nullptr) {
      EXPECT_GE(worst(*choice.smallest), 1) << choice.smallest->id;
      EXPECT_NEAR(worst(*choice.smallest), choice.margin, 1e-12) << choice.smallest->id;
    }
  }
}

// A class in masses keeps its masses in lighter rock, so its stones are larger there: by the cube
// root of the densities.
TEST(ClassChoice, ClassesInMassesFollowTheDensityOfTheRock) {
  const auto* entry = find_rock_class("en-lma-60-300");
  ASSERT_NE(entry, nullptr);
  const auto as_stated = least_size_of(*entry, 50);
  const auto lighter = least_size_of(*entry, 50, Density::kilograms_per_cubic_meter(2300));
  ASSERT_TRUE(as_stated && lighter);
  EXPECT_NEAR(*lighter / *as_stated, std::pow(2650.0 / 2300, 1.0 / 3), 1e-12);
  const auto* in_sizes = find_rock_class("fhwa-3");
  EXPECT_EQ(*least_size_of(*in_sizes, 50, Density::kilograms_per_cubic_meter(2300)),
            *least_size_of(*in_sizes, 50));
}

TEST(WeightedPolicy, ShowsEveryWeightAndSizeAndWarnsUnderTheEnvelope) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["governing"] = "weighted";
  zone["weights"] = {{"usace-bank-and-bed", 3}, {"isbash", 1}};
  const auto findings = assessed(example);
  const auto& verdict = finding_of(findings, "class.bank");
  EXPECT_TRUE(any_holds(verdict.reasons, "weight 3 (75 % of the sum)"));
  EXPECT_TRUE(any_holds(verdict.reasons, "weight 1 (25 % of the sum)"));
  EXPECT_TRUE(any_holds(verdict.cautions, "lies under the envelope"));
  double weighted = 0;
  double envelope = 0;
  for (const auto& value : verdict.values) {
    if (value.key == "weighted_size") weighted = value.value.si;
    if (value.key == "envelope_size") envelope = value.value.si;
  }
  EXPECT_GT(weighted, 0);
  EXPECT_LT(weighted, envelope);
  // The mean of what each method's margin alone makes of the class.
  const auto margin = [&](const char* id) { return finding_of(findings, id).margin->value; };
  const double mean = 0.75 / margin("rock-size.bank.flood.usace-bank-and-bed") +
                      0.25 / margin("rock-size.bank.flood.isbash");
  EXPECT_NEAR(verdict.margin->value, 1 / mean, 1e-9);
}

TEST(WeightedPolicy, OneWeightIsTheChosenMethod) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["governing"] = "weighted";
  zone["weights"] = {{"isbash", 2.5}};
  const auto weighted = assessed(example);
  zone["governing"] = "isbash";
  zone.erase("weights");
  const auto chosen = assessed(example);
  EXPECT_NEAR(finding_of(weighted, "class.bank").margin->value,
              finding_of(chosen, "class.bank").margin->value, 1e-12);
}

TEST(WeightedPolicy, WeightsMustBeStatedAndGood) {
  const auto code = [](const json& weights) {
    ExampleDocument example;
    auto& zone = example.items["zones"]["bank"];
    zone["governing"] = "weighted";
    if (!weights.is_null()) zone["weights"] = weights;
    const auto site = site_from(example.document());
    return site ? "none" : site.problems().front().code + " " + site.problems().front().where;
  };
  EXPECT_EQ(code(nullptr), "missing-field /zones/bank/weights");
  EXPECT_EQ(code(json::object()), "not-an-object /zones/bank/weights");
  EXPECT_EQ(code({{"isbash", 0}}), "not-a-number /zones/bank/weights/isbash");
  EXPECT_EQ(code({{"isbash", "1"}}), "not-a-number /zones/bank/weights/isbash");
  EXPECT_EQ(code({{"normal-depth", 1}}), "unknown-method /zones/bank/weights/normal-depth");
}

TEST(Applicability, NamesWhatSpeaksAndWhatDoesNot) {
  const auto findings = assessed(ExampleDocument());
  const auto& methods = finding_of(findings, "methods.bank");
  EXPECT_TRUE(any_holds(methods.reasons, "Isbash equation, Design flood: applies; it asks for"));
  EXPECT_NE(methods.sentence.find("made for other places than bank"), std::string::npos);
  ASSERT_EQ(findings.method_sizes_pictures.size(), 1U);
  EXPECT_GE(findings.method_sizes_pictures[0].rows.size(), 4U);
}

TEST(Extents, GoByTheWidthOfTheWater) {
  const auto findings = assessed(ExampleDocument());
  const auto value_of = [&](const char* id, const char* key) {
    for (const auto& value : finding_of(findings, id).values) {
      if (value.key == key) return value.value.si;
    }
    return 0.0;
  };
  const double width = value_of("water.bank.flood", "top_width");
  EXPECT_GT(width, 0);
  EXPECT_NEAR(value_of("extent.bank", "upstream"), width, 1e-9);
  EXPECT_NEAR(value_of("extent.bank", "downstream"), 1.5 * width, 1e-9);
  EXPECT_NEAR(value_of("extent.bank", "end_thickness"), Length::inches(36).si(), 1e-9);
}

TEST(Shore, WaveMethodsSizeAShoreFromTheWaveStated) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["place"] = "shore";
  for (const char* field : {"section", "bank", "bend"}) zone.erase(field);
  zone["class"] = "usace-24-in-165";
  zone["water"]["flood"] = {{"from", "wind study of 2026"}, {"wave_height", "3 ft"}};
  zone["method_choices"] = {{"hudson", {{"slope", "1V:3H"}, {"wave", "hs"}}},
                            {"reservoir-wave-rock", {{"slope", "1V:3H"}}}};
  const auto findings = assessed(example);
  const auto& hudson = finding_of(findings, "rock-size.bank.flood.hudson");
  const auto& tr69 = finding_of(findings, "rock-size.bank.flood.reservoir-wave-rock");
  ASSERT_TRUE(hudson.margin && tr69.margin);
  EXPECT_LT(hudson.margin->value, tr69.margin->value);  // KRR 2.2 asks for more than KD 3.2
  EXPECT_TRUE(any_holds(finding_of(findings, "methods.bank").reasons,
                        "van der Meer formulas, Design flood: applies, but could not be computed"));
}

}  // namespace
}  // namespace proofstone
