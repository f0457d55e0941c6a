#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"
#include "engine/site/filter_chain.h"

namespace proofstone {
namespace {

using nlohmann::json;

json points(const std::vector<std::pair<const char*, const char*>>& curve) {
  auto list = json::array();
  for (const auto& [size, smaller] : curve) list.push_back({{"size", size}, {"smaller", smaller}});
  return list;
}

const json silty_sand = points({{"9.5 mm", "100 %"},
                                {"4.75 mm", "98 %"},
                                {"2 mm", "94 %"},
                                {"0.425 mm", "72 %"},
                                {"0.15 mm", "38 %"},
                                {"0.075 mm", "24 %"},
                                {"0.02 mm", "11 %"},
                                {"0.005 mm", "6 %"}});
const json silt = points({{"4.75 mm", "100 %"},
                          {"2 mm", "99 %"},
                          {"0.425 mm", "95 %"},
                          {"0.15 mm", "84 %"},
                          {"0.075 mm", "62 %"},
                          {"0.02 mm", "34 %"},
                          {"0.005 mm", "16 %"},
                          {"0.002 mm", "9 %"}});
const json clay = points({{"0.425 mm", "100 %"},
                          {"0.15 mm", "98 %"},
                          {"0.075 mm", "92 %"},
                          {"0.05 mm", "85 %"},
                          {"0.02 mm", "66 %"},
                          {"0.005 mm", "45 %"},
                          {"0.002 mm", "33 %"}});
const json crushed = points({{"3 in", "100 %"},
                             {"2.5 in", "92 %"},
                             {"2 in", "76 %"},
                             {"1 in", "50 %"},
                             {"0.5 in", "28 %"},
                             {"0.375 in", "20 %"},
                             {"4.75 mm", "9 %"},
                             {"0.075 mm", "0.8 %"}});

json granular(const char* bedding, const char* thickness) {
  return {{"kind", "granular"}, {"bedding", bedding}, {"thickness", thickness}};
}

/// The example's bank on a silty sand.
ExampleDocument on_soil(const json& gradation = silty_sand) {
  ExampleDocument example;
  example.items["soils"]["bank-soil"] = {
      {"name", "Bank soil"}, {"gradation", gradation}, {"dispersive", "no"}};
  example.items["zones"]["bank"]["soil"] = "bank-soil";
  example.items["materials"]["crushed"] = {{"name", "Crushed bedding"}, {"gradation", crushed}};
  return example;
}

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

Finding found(const Findings& findings, const std::string& id) {
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  return finding != nullptr ? *finding : Finding{};
}

bool says(const Finding& finding, const std::string& words) {
  return std::any_of(finding.reasons.begin(), finding.reasons.end(),
                     [&](const std::string& one) { return one.find(words) != std::string::npos; });
}

std::string first_problem(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  return site ? "" : site.problems().front().where + " " + site.problems().front().code;
}

TEST(ZoneFilter, BareRockWithNeitherSoilNorFilterGoesToTheDesigner) {
  const auto filter = found(assessed(ExampleDocument()), "filter.bank");
  EXPECT_EQ(filter.outcome, Outcome::ask_the_designer);
  EXPECT_TRUE(filter.governs);
  EXPECT_NE(filter.sentence.find("neither a filter nor the soil"), std::string::npos);
  // The coarsest D15 of the class is 10.5 in: d85 of the soil must be a fifth of that.
  EXPECT_TRUE(says(filter, "2.1 in"));
  EXPECT_TRUE(assessed(ExampleDocument()).filter_pictures.empty());
}

TEST(ZoneFilter, FilledRockIsItsOwnFilter) {
  ExampleDocument example;
  example.items["zones"]["bank"]["kinds"] =
      json::array({{{"kind", "void-filled"}, {"up_to", "top"}}});
  const auto filter = found(assessed(example), "filter.bank");
  EXPECT_EQ(filter.outcome, Outcome::meets);
  EXPECT_NE(filter.sentence.find("the fill is the filter"), std::string::npos);
}

TEST(ZoneFilter, RockStraightOnSiltySandFallsShortAndIsToldWhatServes) {
  const auto findings = assessed(on_soil());
  const auto filter = found(findings, "filter.bank");
  EXPECT_EQ(filter.outcome, Outcome::falls_short);
  const auto options = found(findings, "filter.bank.options");
  EXPECT_EQ(options.outcome, Outcome::meets);
  EXPECT_NE(options.sentence.find("Bedding Type I under Crushed bedding"), std::string::npos);
  EXPECT_TRUE(says(options, "nonwoven geotextile"));
  EXPECT_TRUE(says(options, "6.0 in thick where it is one layer, 4.0 in each"));
}

TEST(ZoneFilter, ASuitableChainMeetsLayerOnLayer) {
  auto example = on_soil();
  example.items["zones"]["bank"]["filter"] = {granular("bedding-type-1", "4 in"),
                                              granular("crushed", "6 in")};
  const auto findings = assessed(example);
  EXPECT_EQ(found(findings, "filter.bank").outcome, Outcome::meets);
  for (const char* pair : {"1", "2", "3"}) {
    EXPECT_EQ(found(findings, std::string("filter.bank.pair.") + pair).outcome, Outcome::meets)
        << pair;
  }
  EXPECT_EQ(findings.find("filter.bank.options"), nullptr);
  ASSERT_EQ(findings.filter_pictures.size(), 1u);
  EXPECT_EQ(findings.filter_pictures[0].layers.size(), 4u);
  EXPECT_EQ(findings.filter_pictures[0].control_points.size(), 7u);
}

// Table MD-11: retention 1.92 in the middle, 8.06 with the coarsest Type II on the finest Type I.
TEST(ZoneFilter, StandardBeddingsHoldInTheMiddleOfTheirBandsOnly) {
  auto example = on_soil(silt);
  auto& zone = example.items["zones"]["bank"];
  zone["class"] = "front-range-m";
  zone["filter"] = {granular("bedding-type-1", "4 in"), granular("bedding-type-2", "5 in")};
  const auto findings = assessed(example);
  EXPECT_EQ(found(findings, "filter.bank.pair.1").outcome, Outcome::meets);
  for (const char* pair : {"filter.bank.pair.2", "filter.bank.pair.3"}) {
    const auto finding = found(findings, pair);
    EXPECT_EQ(finding.outcome, Outcome::ask_the_designer) << pair;
    ASSERT_TRUE(finding.margin);
    EXPECT_GT(finding.margin->value, 1);
    EXPECT_LT(*finding.margin->low, 1);
    EXPECT_NE(finding.sentence.find("It holds in the middle of the bands, not at their edges"),
              std::string::npos);
  }
  EXPECT_NEAR(5 / *found(findings, "filter.bank.pair.2").margin->low, 8.06, 0.02);
  EXPECT_NEAR(5 / *found(findings, "filter.bank.pair.3").margin->low, 9.08, 0.02);
  EXPECT_EQ(found(findings, "filter.bank").outcome, Outcome::ask_the_designer);
}

TEST(ZoneFilter, RockStraightOnSandBeddingFails) {
  auto example = on_soil(silt);
  auto& zone = example.items["zones"]["bank"];
  zone["class"] = "front-range-m";
  zone["filter"] = json::array({granular("bedding-type-1", "6 in")});
  EXPECT_EQ(found(assessed(example), "filter.bank.pair.2").outcome, Outcome::falls_short);
}

TEST(ZoneFilter, AClayIsTestedForDispersionBeforeItsFilterIsTrusted) {
  auto example = on_soil(clay);
  auto& soil = example.items["soils"]["bank-soil"];
  soil["liquid_limit"] = "45";
  soil["plastic_limit"] = "20";
  auto& zone = example.items["zones"]["bank"];
  zone["filter"] = {granular("astm-c33-fine", "6 in"), granular("crushed", "6 in")};
  EXPECT_EQ(found(assessed(example), "filter.bank.pair.1").outcome, Outcome::meets);
  soil["dispersive"] = "not tested";
  const auto untested = found(assessed(example), "filter.bank.pair.1");
  EXPECT_EQ(untested.outcome, Outcome::not_yet_known);
  EXPECT_NE(untested.next.find("dispersion"), std::string::npos);
  soil["dispersive"] = "yes";
  EXPECT_NE(found(assessed(example), "filter.bank.pair.1").outcome, Outcome::meets);
}

TEST(ZoneFilter, AGeotextileIsJudgedByOpeningPermittivityAndStrength) {
  auto example = on_soil();
  auto& filter = example.items["zones"]["bank"]["filter"];
  filter = json::array({{{"kind", "geotextile"},
                         {"opening_size", "0.21 mm"},
                         {"permittivity", "0.7 s⁻¹"},
                         {"fabric", "nonwoven"},
                         {"strength_class", 1}}});
  EXPECT_EQ(found(assessed(example), "filter.bank").outcome, Outcome::meets);
  filter[0]["opening_size"] = "0.6 mm";
  EXPECT_EQ(found(assessed(example), "filter.bank").outcome, Outcome::falls_short);
  filter[0]["opening_size"] = "0.21 mm";
  filter[0]["strength_class"] = 2;
  const auto weak = found(assessed(example), "filter.bank.pair.1");
  EXPECT_EQ(weak.outcome, Outcome::falls_short);
  EXPECT_TRUE(says(weak, "Class 2 is too weak"));
  // A cushion of bedding relaxes the class.
  filter.push_back(granular("crushed", "6 in"));
  EXPECT_EQ(found(assessed(example), "filter.bank.pair.1").outcome, Outcome::meets);
  filter[0].erase("permittivity");
  EXPECT_EQ(found(assessed(example), "filter.bank.pair.1").outcome, Outcome::not_yet_known);
}

TEST(ZoneFilter, AGeotextileOnASiltThatDoesNotCohereGoesToTheDesigner) {
  auto example = on_soil(silt);
  example.items["soils"]["bank-soil"]["plasticity_index"] = "not plastic";
  example.items["zones"]["bank"]["filter"] = json::array({{{"kind", "geotextile"},
                                                           {"opening_size", "0.07 mm"},
                                                           {"permittivity", "0.7 s⁻¹"},
                                                           {"fabric", "woven monofilament"},
                                                           {"strength_class", 1}}});
  const auto fabric = found(assessed(example), "filter.bank.pair.1");
  EXPECT_EQ(fabric.outcome, Outcome::ask_the_designer);
  EXPECT_TRUE(says(fabric, "silt that does not cohere"));
}

// 0.5·d85 of 0.082 mm straight under rock, where UFC 3-270-04 sec. 12.5 asks for none finer than
// the No. 100 sieve.
TEST(ZoneFilter, AGeotextileThatWouldHaveToBeTooFineGoesToTheDesigner) {
  auto example = on_soil(silt);
  auto& soil = example.items["soils"]["bank-soil"];
  soil["liquid_limit"] = "38";
  soil["plasticity_index"] = "6";
  soil["dispersive"] = "no";
  auto& filter = example.items["zones"]["bank"]["filter"];
  filter = json::array({{{"kind", "geotextile"},
                         {"opening_size", "0.08 mm"},
                         {"permittivity", "0.7 s⁻¹"},
                         {"fabric", "woven monofilament"},
                         {"strength_class", 1}}});
  const auto fabric = found(assessed(example), "filter.bank.pair.1");
  EXPECT_EQ(fabric.outcome, Outcome::ask_the_designer);
  EXPECT_TRUE(says(fabric, "finer than the No. 100 sieve"));
  // Under bedding the flow at the soil is steady, and an opening of d85 serves.
  filter[0]["opening_size"] = "0.16 mm";
  filter.push_back(granular("crushed", "6 in"));
  EXPECT_EQ(found(assessed(example), "filter.bank.pair.1").outcome, Outcome::meets);
}

TEST(ZoneFilter, AThinLayerFallsShortAndUnderWaterItMustBeThicker) {
  auto example = on_soil();
  auto& zone = example.items["zones"]["bank"];
  zone["filter"] = {granular("bedding-type-1", "4 in"), granular("crushed", "5 in")};
  EXPECT_EQ(found(assessed(example), "filter.bank").outcome, Outcome::meets);
  zone["placement"] = "under water";
  const auto findings = assessed(example);
  EXPECT_EQ(found(findings, "filter.bank").outcome, Outcome::falls_short);
  // 1.5 times the 4.5 in of a 3-in grain.
  EXPECT_NE(found(findings, "filter.bank.thickness.2").sentence.find("6.8 in"), std::string::npos);
}

TEST(ZoneFilter, TheMeasuredRockOfALotIsHeldAgainstTheFilter) {
  auto example = on_soil();
  example.items["zones"]["bank"]["filter"] = {granular("bedding-type-1", "4 in"),
                                              granular("crushed", "6 in")};
  const auto lot = found(assessed(example), "filter.bank.first");
  EXPECT_EQ(lot.about.lot, "first");
  EXPECT_EQ(lot.outcome, Outcome::meets);
  // Rock without its small stones lets the bedding through.
  example.items["looks"]["count"]["stones"]["bins"] =
      json::parse(R"([{"larger_than": "16 in", "not_larger_than": "20 in", "stones": 60},
                      {"larger_than": "20 in", "not_larger_than": "24 in", "stones": 40}])");
  EXPECT_EQ(found(assessed(example), "filter.bank.first").outcome, Outcome::falls_short);
}

TEST(ZoneFilter, AFilterOnUnknownSoilIsNotYetKnown) {
  ExampleDocument example;
  example.items["zones"]["bank"]["filter"] = json::array({granular("bedding-type-2", "6 in")});
  const auto pair = found(assessed(example), "filter.bank.pair.1");
  EXPECT_EQ(pair.outcome, Outcome::not_yet_known);
  EXPECT_NE(pair.next.find("sieved"), std::string::npos);
}

TEST(ZoneFilter, TheIssueOfTheProcedureIsTheDesigners) {
  auto example = on_soil();
  auto& zone = example.items["zones"]["bank"];
  zone["filter"] = {granular("bedding-type-1", "4 in"), granular("crushed", "6 in")};
  const auto of = [&](const char* edition) {
    zone["method_choices"] = {{"filter-band", {{"edition", edition}}}};
    const auto finding = found(assessed(example), "filter.bank.pair.1");
    const auto& lines = finding.steps.lines();
    const auto step = std::find_if(lines.begin(), lines.end(), [](const Step& one) {
      return one.meaning == "least, to let the water out";
    });
    return step == lines.end() ? 0 : step->value.si;
  };
  EXPECT_NEAR(of("2017") / of("1994"), 1.25, 1e-9);
}

TEST(Soil, IsNamedWithWhatFollows) {
  const auto soil = found(assessed(on_soil()), "soil.bank-soil");
  EXPECT_EQ(soil.outcome, Outcome::not_yet_known);
  EXPECT_NE(soil.next.find("liquid limit"), std::string::npos);
  auto tested = on_soil();
  tested.items["soils"]["bank-soil"]["plasticity_index"] = "not plastic";
  EXPECT_EQ(found(assessed(tested), "soil.bank-soil").sentence, "Bank soil is SM, silty sand.");
}

TEST(Soil, OfSeveralSamplesTheOneHardestToHoldIsNamedFirst) {
  auto example = on_soil();
  auto& soil = example.items["soils"]["bank-soil"];
  soil["plasticity_index"] = "not plastic";
  soil["liquid_limit"] = "20";
  soil["further_samples"] = {{{"name", "Boring B-2, 4 ft"}, {"gradation", silt}}};
  const auto finding = found(assessed(example), "soil.bank-soil");
  EXPECT_EQ(finding.outcome, Outcome::meets);
  EXPECT_EQ(finding.sentence.find("Boring B-2, 4 ft is ML, sandy silt."), 0U) << finding.sentence;
  EXPECT_NE(finding.sentence.find("Bank soil is SM, silty sand."), std::string::npos)
      << finding.sentence;
  const auto value = [&](const char* key) {
    const auto one = std::find_if(finding.values.begin(), finding.values.end(),
                                  [key](const StatedValue& stated) { return stated.key == key; });
    return one == finding.values.end() ? 0 : one->value.si;
  };
  EXPECT_NEAR(value("fines"), 0.62, 1e-9);
  // The sand lets the most water through, and is what a filter must drain.
  auto alone = on_soil();
  const auto of_sand = found(assessed(alone), "soil.bank-soil");
  const auto conductivity =
      std::find_if(of_sand.values.begin(), of_sand.values.end(),
                   [](const StatedValue& stated) { return stated.key == "conductivity"; });
  ASSERT_NE(conductivity, of_sand.values.end());
  EXPECT_DOUBLE_EQ(value("conductivity"), conductivity->value.si);
  // A sample of which the fines are not known leaves the whole not known.
  soil["further_samples"][0]["gradation"] =
      points({{"19 mm", "100 %"}, {"4.75 mm", "80 %"}, {"0.15 mm", "20 %"}});
  const auto open = found(assessed(example), "soil.bank-soil");
  EXPECT_EQ(open.outcome, Outcome::not_yet_known);
  EXPECT_NE(open.sentence.find("Boring B-2, 4 ft"), std::string::npos) << open.sentence;
}

TEST(Soil, WithoutTheNo200SieveIsNotYetKnown) {
  const auto coarse_only =
      points({{"19 mm", "100 %"}, {"4.75 mm", "80 %"}, {"0.425 mm", "45 %"}, {"0.15 mm", "20 %"}});
  const auto soil = found(assessed(on_soil(coarse_only)), "soil.bank-soil");
  EXPECT_EQ(soil.outcome, Outcome::not_yet_known);
  EXPECT_NE(soil.sentence.find("No. 200"), std::string::npos);
  EXPECT_NE(soil.next.find("0.075 mm"), std::string::npos);
  EXPECT_EQ(found(assessed(on_soil(coarse_only)), "filter.bank").outcome, Outcome::not_yet_known);
}

TEST(Soil, WhatIsWrongInTheDocumentIsNamed) {
  auto example = on_soil();
  auto& soil = example.items["soils"]["bank-soil"];
  soil["gradation"] = points({{"4.75 mm", "2 %"}, {"0.425 mm", "40 %"}, {"0.075 mm", "76 %"}});
  EXPECT_EQ(first_problem(example), "/soils/bank-soil/gradation percent-falls");
  const auto site = site_from(example.document());
  EXPECT_NE(site.problems().front().allowed.find("retained"), std::string::npos);
  soil["gradation"] = silty_sand;
  soil["liquid_limit"] = "20";
  soil["plastic_limit"] = "30";
  EXPECT_EQ(first_problem(example), "/soils/bank-soil/plastic_limit implausible");
  soil.erase("plastic_limit");
  soil.erase("liquid_limit");
  soil["porosity"] = "40";
  EXPECT_EQ(first_problem(example), "/soils/bank-soil/porosity implausible");
  soil.erase("porosity");
  auto& zone = example.items["zones"]["bank"];
  zone["soil"] = "no-such";
  EXPECT_EQ(first_problem(example), "/zones/bank/soil no-such-item");
  zone["soil"] = "bank-soil";
  zone["filter"] = json::array({granular("no-such", "6 in")});
  EXPECT_EQ(first_problem(example), "/zones/bank/filter/0/bedding no-such-item");
  zone["filter"] = json::array();
  EXPECT_EQ(first_problem(example), "/zones/bank/filter not-a-filter");
  zone["filter"] = json::array({granular("crushed", "0 in")});
  EXPECT_EQ(first_problem(example), "/zones/bank/filter/0/thickness not-positive");
  zone["filter"] = "none";
  EXPECT_EQ(first_problem(example), "");
}

TEST(ZoneFilter, EveryFindingOfAFullChainIsWhole) {
  auto example = on_soil();
  example.items["zones"]["bank"]["filter"] = json::array({granular("bedding-type-2", "3 in")});
  for (const auto& finding : assessed(example).findings) {
    if (finding.topic != Topic::filter && finding.topic != Topic::soil) continue;
    EXPECT_FALSE(finding.title.empty()) << finding.id;
    EXPECT_FALSE(finding.sentence.empty()) << finding.id;
    EXPECT_FALSE(finding.next.empty()) << finding.id;
    EXPECT_FALSE(finding.sources.empty()) << finding.id;
    EXPECT_FALSE(finding.steps.lines().empty()) << finding.id;
  }
}

/// The example's count with every bin `times` as full, on a bedding on which it just holds.
Finding lot_on_bedding(int times) {
  auto example = on_soil();
  example.items["materials"]["fine"] = {{"name", "Fine crushed bedding"},
                                        {"gradation", points({{"2 in", "100 %"},
                                                              {"1.5 in", "90 %"},
                                                              {"1.25 in", "80 %"},
                                                              {"1 in", "60 %"},
                                                              {"0.5 in", "30 %"},
                                                              {"4.75 mm", "9 %"},
                                                              {"0.075 mm", "0.8 %"}})}};
  example.items["zones"]["bank"]["filter"] = json::array({granular("fine", "6 in")});
  for (auto& bin : example.items["looks"]["count"]["stones"]["bins"]) {
    bin["stones"] = bin["stones"].get<int>() * times;
  }
  return found(assessed(example), "filter.bank.first");
}

TEST(LotOnFilter, AHundredStonesLeaveOpenWhatFourThousandDecide) {
  const auto few = lot_on_bedding(1);
  EXPECT_EQ(few.outcome, Outcome::not_yet_known);
  EXPECT_NE(few.next.find("Count more stones"), std::string::npos);
  EXPECT_TRUE(
      says(few, "As coarse as the looks leave it possible at 95 % confidence: falls short"));
  EXPECT_TRUE(says(few, "As fine: meets"));
  const auto many = lot_on_bedding(40);
  EXPECT_EQ(many.outcome, Outcome::meets);
  ASSERT_TRUE(many.confidence);
  EXPECT_NEAR(*many.confidence, 0.95, 1e-12);
}

// A silt allows a D15 of 0.7 mm; a fine even sand, coarser than it, only 4·d85 = 0.48 mm.
TEST(SeveralSamples, TheStrictestOfAllGovernsAndIsNamed) {
  auto example = on_soil(silt);
  example.items["soils"]["bank-soil"]["further_samples"] =
      json::array({{{"name", "Boring B-2"},
                    {"gradation", points({{"4.75 mm", "100 %"},
                                          {"0.15 mm", "97 %"},
                                          {"0.12 mm", "85 %"},
                                          {"0.09 mm", "40 %"},
                                          {"0.075 mm", "10 %"},
                                          {"0.06 mm", "2 %"}})}}});
  example.items["zones"]["bank"]["filter"] = json::array({granular("astm-c33-fine", "6 in")});
  const auto pair = found(assessed(example), "filter.bank.pair.1");
  EXPECT_TRUE(says(pair, "Of 2 samples Boring B-2 decides what holds the soil")) << pair.sentence;
  const auto options = found(assessed(example), "filter.bank.options");
  const auto most = std::find_if(options.values.begin(), options.values.end(),
                                 [](const StatedValue& value) { return value.key == "max_d15"; });
  ASSERT_NE(most, options.values.end());
  EXPECT_NEAR(1000 * most->value.si, 0.48, 1e-9);
}

TEST(SeveralSamples, AreReadLikeTheFirst) {
  auto example = on_soil(silt);
  auto& more = example.items["soils"]["bank-soil"]["further_samples"];
  more =
      json::array({{{"name", "B-2"}, {"gradation", points({{"2 mm", "40 %"}, {"9 mm", "30 %"}})}}});
  const auto site = site_from(example.document());
  ASSERT_FALSE(site);
  EXPECT_EQ(site.problems().front().code, "percent-falls");
  EXPECT_NE(site.problems().front().where.find("/further_samples/0/gradation"), std::string::npos);
  more = "B-2";
  EXPECT_FALSE(site_from(example.document()));
}

TEST(ZoneFilter, ABeddingThatDoesNotTellItsFinesIsNamedWithItsPlaceAndTheMend) {
  auto example = on_soil();
  auto open = crushed;
  open.erase(open.size() - 1);  // without the No. 200 sieve
  example.items["materials"]["crushed"]["gradation"] = open;
  auto& zone = example.items["zones"]["bank"];
  zone["filter"] = json::array({granular("bedding-type-1", "6 in"), granular("crushed", "9 in")});
  auto whole = found(assessed(example), "filter.bank");
  EXPECT_TRUE(says(whole, "does not tell what passes the No. 200 sieve"));
  const auto dirty =
      points({{"3 in", "100 %"}, {"1 in", "50 %"}, {"4.75 mm", "14 %"}, {"0.075 mm", "8 %"}});
  example.items["materials"]["crushed"]["gradation"] = dirty;
  whole = found(assessed(example), "filter.bank");
  EXPECT_TRUE(says(whole, "8 % of it passes the No. 200 sieve"));
  example.items["materials"]["crushed"]["gradation"] = crushed;
  whole = found(assessed(example), "filter.bank");
  EXPECT_FALSE(says(whole, "No. 200 sieve; a filter"));
}

// Band on band from a silt up to rock: every layer serves on the one below it.
TEST(ZoneFilter, BandsAreMadeLayerOnLayerUntilTheRockServes) {
  const auto options = found(assessed(on_soil(silt)), "filter.bank.options");
  EXPECT_TRUE(says(options, "The lowest layer: D15 between"));
  EXPECT_TRUE(says(options, "Layer 2 from the soil, on a lower one that keeps its band"));
}

}  // namespace
}  // namespace proofstone
