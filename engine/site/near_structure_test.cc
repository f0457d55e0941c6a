#include "engine/site/near_structure.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/site/assess.h"
#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using nlohmann::json;

ExampleDocument straight_with(const json& near) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone.erase("bend");
  if (!near.is_null()) zone["near_structure"] = near;
  return example;
}

Findings assessed(const ExampleDocument& example) {
  const auto site = site_from(example.document());
  EXPECT_TRUE(site) << (site ? "" : site.problems().front().sentence());
  return site ? assess(*site, UnitSystem::us_customary) : Findings{};
}

double value_of(const Findings& findings, const std::string& id, const std::string& key) {
  const auto* finding = findings.find(id);
  EXPECT_NE(finding, nullptr) << id;
  if (finding == nullptr) return std::nan("");
  for (const auto& value : finding->values) {
    if (value.key == key) return value.value.si;
  }
  return std::nan("");
}

const std::string water = "water.bank.flood";
const std::string usace = "rock-size.bank.flood.usace-bank-and-bed";

TEST(NearStructure, FlowThatRunsAtTheRockIsThePublishedMultipleOfTheMean) {
  const auto plain = assessed(straight_with(nullptr));
  const auto near = assessed(straight_with({{"choice", "impinging flow"}}));
  EXPECT_NEAR(value_of(near, water, "near_structure_velocity"),
              1.6 * value_of(plain, water, "average_velocity"), 1e-12);
  EXPECT_EQ(value_of(near, water, "average_velocity"), value_of(plain, water, "average_velocity"));
  // D30 goes with V^2.5 and with Cv, 1.25 where the flow impinges.
  EXPECT_NEAR(value_of(near, usace, "required_size") / value_of(plain, usace, "required_size"),
              1.25 * std::pow(1.6, 2.5), 1e-9);
  const std::string isbash = "rock-size.bank.flood.isbash";
  EXPECT_NEAR(value_of(near, isbash, "required_size") / value_of(plain, isbash, "required_size"),
              1.6 * 1.6, 1e-9);
}

TEST(NearStructure, APierRaisesTheVelocityAtTheZonesOwnPlace) {
  const auto near = assessed(straight_with({{"choice", "square pier"}}));
  EXPECT_NEAR(value_of(near, water, "near_structure_velocity"),
              1.7 * value_of(near, water, "slice_velocity"), 1e-12);
}

TEST(NearStructure, AStatedFactorNamesItsSource) {
  const auto near = assessed(straight_with(
      {{"choice", "stated"}, {"factor", "1.3"}, {"on", "mean velocity"}, {"from", "flume 2025"}}));
  EXPECT_NEAR(value_of(near, water, "near_structure_velocity"),
              1.3 * value_of(near, water, "average_velocity"), 1e-12);
  const auto& sources = near.find(water)->sources;
  EXPECT_EQ(sources.back().document, "flume 2025");
}

TEST(NearStructure, AGreaterBendVelocityStands) {
  ExampleDocument example;
  auto& zone = example.items["zones"]["bank"];
  zone["bend"] = {{"side", "outside"}, {"radius", "200 ft"}};
  const auto bend = assessed(example);
  zone["near_structure"] = {
      {"choice", "stated"}, {"factor", "1.01"}, {"on", "mean velocity"}, {"from", "flume"}};
  const auto near = assessed(example);
  EXPECT_EQ(value_of(near, usace, "required_size"), value_of(bend, usace, "required_size"));
  EXPECT_TRUE(std::isnan(value_of(near, water, "near_structure_velocity")));
}

TEST(NearStructure, TheDesignersOwnVelocityForAMethodStays) {
  auto example = straight_with({{"choice", "impinging flow"}});
  example.items["zones"]["bank"]["method_choices"]["usace-bank-and-bed"] = {
      {"local_velocity", "5 ft/s"}, {"attack", "straight-or-inside"}};
  const auto chosen = assessed(example);
  example.items["zones"]["bank"].erase("near_structure");
  EXPECT_EQ(value_of(chosen, usace, "required_size"),
            value_of(assessed(example), usace, "required_size"));
}

TEST(NearStructure, WhatDoesNotServeIsNamed) {
  const auto code_of = [](const json& near, const char* place = "bank") {
    auto example = straight_with(near);
    example.items["zones"]["bank"]["place"] = place;
    if (std::string(place) != "bank") example.items["zones"]["bank"].erase("bank");
    const auto site = site_from(example.document());
    return site ? std::string() : site.problems().front().code;
  };
  EXPECT_EQ(code_of({{"choice", "round pier"}}), "");
  EXPECT_EQ(code_of({{"choice", "round pier"}}, "bed"), "");
  EXPECT_EQ(code_of({{"choice", "round pier"}}, "pier"), "not-here");
  EXPECT_EQ(code_of({{"choice", "weir"}}), "unknown-word");
  EXPECT_EQ(code_of({{"choice", "round pier"}, {"factor", "2"}}), "unknown-field");
  EXPECT_EQ(code_of({{"choice", "stated"}, {"factor", "2"}, {"on", "mean velocity"}}),
            "missing-field");
  for (const char* factor : {"0.5", "9", "-1", "0"}) {
    EXPECT_EQ(
        code_of(
            {{"choice", "stated"}, {"factor", factor}, {"on", "mean velocity"}, {"from", "flume"}}),
        "out-of-range")
        << factor;
  }
}

}  // namespace
}  // namespace proofstone
