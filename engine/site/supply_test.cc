// Loads of a lot and surveys of a placed layer, from the document to the findings.
#include <gtest/gtest.h>

#include <fmt/format.h>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// The example with loads of these median sizes in inches, one an hour, 20 tons each.
ExampleDocument with_loads(const std::vector<double>& inches) {
  ExampleDocument example;
  example.items["lots"]["first"]["supply"] = {{"planned_mass", "400 ton"},
                                              {"target_size", "12 in"},
                                              {"load_spread", "0.5 in"},
                                              {"run_length", "200"}};
  int hour = 0;
  for (const double size : inches) {
    example.items["loads"][fmt::format("load-{:02d}", hour)] = {
        {"lot", "first"},
        {"when", fmt::format("2026-05-20T{:02d}:00:00Z", hour)},
        {"ticket", fmt::format("{}", 4700 + hour)},
        {"mass", "20 ton"},
        {"median_size", fmt::format("{} in", size)}};
    ++hour;
  }
  return example;
}

Findings findings_of(const ExampleDocument& example) {
  const auto site = read_site(example.text());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

std::string first_problem(const ExampleDocument& example) {
  const auto site = read_site(example.text());
  return site ? "" : site.problems().front().code;
}

const std::vector<double> steady{12.1, 11.8, 12.3, 11.9, 12.2, 11.7, 12.0, 12.2};
const std::vector<double> finer{12.1, 11.8, 12.3, 11.9, 11.2, 11.0, 11.1, 10.9, 11.0};

TEST(Supply, SteadyLoadsRaiseNoAlarm) {
  const auto findings = findings_of(with_loads(steady));
  const auto* drift = findings.find("supply.first.drift");
  ASSERT_NE(drift, nullptr);
  EXPECT_EQ(drift->outcome, Outcome::meets) << drift->sentence;
  const auto* mass = findings.find("supply.first.mass");
  ASSERT_NE(mass, nullptr);
  EXPECT_EQ(mass->outcome, Outcome::not_yet_known);
  EXPECT_NE(mass->sentence.find("8 loads"), std::string::npos) << mass->sentence;
  EXPECT_NEAR(mass->margin->value, 0.4, 1e-9);
  EXPECT_EQ(findings.find("supply.first.tickets")->outcome, Outcome::meets);
}

TEST(Supply, FinerLoadsAreNoticedAndDated) {
  const auto findings = findings_of(with_loads(finer));
  const auto* drift = findings.find("supply.first.drift");
  ASSERT_NE(drift, nullptr);
  EXPECT_EQ(drift->outcome, Outcome::falls_short);
  EXPECT_NE(drift->sentence.find("smaller"), std::string::npos) << drift->sentence;
  EXPECT_NE(drift->sentence.find("since about ticket 4704"), std::string::npos) << drift->sentence;
  ASSERT_EQ(findings.run_charts.size(), 1U);
  EXPECT_FALSE(findings.run_charts[0].points[3].alarm);
  EXPECT_TRUE(findings.run_charts[0].points.back().alarm);
}

TEST(Supply, OrderOfEntryDoesNotMatter) {
  auto turned = with_loads(finer);
  json renamed = json::object();
  int index = 90;
  for (const auto& [id, load] : turned.items["loads"].items()) {
    renamed[fmt::format("other-{}", index--)] = load;
  }
  turned.items["loads"] = renamed;
  EXPECT_EQ(findings_of(turned).find("supply.first.drift")->sentence,
            findings_of(with_loads(finer)).find("supply.first.drift")->sentence);
}

TEST(Supply, MissingAndDoubledTicketsAreNamed) {
  auto example = with_loads(steady);
  example.items["loads"]["load-02"].erase("ticket");
  example.items["loads"]["load-03"]["ticket"] = "4704";
  example.items["loads"]["load-05"].erase("mass");
  const auto findings = findings_of(example);
  const auto* tickets = findings.find("supply.first.tickets");
  ASSERT_NE(tickets, nullptr);
  EXPECT_EQ(tickets->outcome, Outcome::falls_short);
  ASSERT_EQ(tickets->reasons.size(), 3U);
  EXPECT_EQ(tickets->reasons[0], "Without a ticket: load load-02.");
  EXPECT_EQ(tickets->reasons[2], "Ticket 4704 stands at 2 loads.");
}

TEST(Supply, BadLoadsAreRefused) {
  auto example = with_loads(steady);
  example.items["loads"]["load-00"]["when"] = "yesterday";
  EXPECT_EQ(first_problem(example), "bad-time");
  example = with_loads(steady);
  example.items["loads"]["load-00"]["mass"] = "-20 ton";
  EXPECT_EQ(first_problem(example), "not-positive");
  example = with_loads(steady);
  example.items["loads"]["load-00"]["lot"] = "nobody-knows";
  EXPECT_EQ(first_problem(example), "no-such-item");
  example = with_loads(steady);
  example.items["lots"]["first"]["supply"].erase("load_spread");
  EXPECT_EQ(first_problem(example), "half-a-chart");
}

ExampleDocument with_survey(const std::vector<std::string>& thicknesses) {
  ExampleDocument example;
  const auto zone = example.items["zones"].begin().key();
  example.items["layer_surveys"]["first"] = {
      {"name", "Survey of the layer"}, {"zone", zone}, {"thicknesses", thicknesses}};
  return example;
}

const Finding* placing(const Findings& findings) {
  for (const auto& finding : findings.findings) {
    if (finding.topic == Topic::placing) return &finding;
  }
  return nullptr;
}

TEST(PlacedLayer, ThickEnoughMeetsAndThinFallsShort) {
  const auto thick = findings_of(with_survey({"36 in", "37 in", "38 in", "36 in", "37 in"}));
  ASSERT_NE(placing(thick), nullptr);
  EXPECT_EQ(placing(thick)->outcome, Outcome::meets) << placing(thick)->sentence;
  const auto thin = findings_of(with_survey({"12 in", "13 in", "12 in", "14 in"}));
  EXPECT_EQ(placing(thin)->outcome, Outcome::falls_short);
}

TEST(PlacedLayer, OneThinPointFallsShortWhateverTheMean) {
  auto example = with_survey({"40 in", "41 in", "42 in", "10 in", "41 in", "40 in"});
  example.items["layer_surveys"]["first"]["least"] = "18 in";
  EXPECT_EQ(placing(findings_of(example))->outcome, Outcome::falls_short);
}

TEST(PlacedLayer, TwoPointsAreNotEnough) {
  EXPECT_EQ(placing(findings_of(with_survey({"36 in", "37 in"})))->outcome, Outcome::not_yet_known);
  EXPECT_EQ(first_problem(with_survey({"36 in", "-2 in"})), "implausible");
}

}  // namespace
}  // namespace proofstone
