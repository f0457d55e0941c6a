// The limit state of rock built from the registered methods themselves.
#include "engine/reliability/size_limit_state.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/method/registry.h"
#include "engine/reliability/design_point.h"
#include "engine/reliability/first_order.h"
#include "engine/reliability/sampling.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {
namespace {

/// WES Streambank Handbook, App. A, Example 1, without its safety factor: D30 of 0.56 ft at the
/// brink of moving, and 0.73 ft there.
const nlohmann::json example_1 = {
    {"attack", "outside-of-bend"},    {"average_velocity", "7.1 ft/s"},
    {"bend_radius", "620 ft"},        {"top_width", "200 ft"},
    {"local_velocity", "10.5 ft/s"},  {"local_depth", "12 ft"},
    {"bank_angle", "1V:2H"},          {"side_slope_factor_value", "0.88"},
    {"specific_gravity", 165 / 62.4}, {"safety_factor", 1}};

struct Spreads {
  double velocity;
  double depth;
  double unit_weight;
  double size;
  double model;
};

SizeLimitState bank(const Spreads& spreads) {
  const std::vector<std::string> varied{"local_velocity", "local_depth", "specific_gravity"};
  auto required = find_method("usace-bank-and-bed")->vary(example_1, varied, "d30");
  EXPECT_TRUE(required);
  std::vector<Distribution> distributions;
  const double variation[] = {spreads.velocity, spreads.depth, spreads.unit_weight};
  for (std::size_t i = 0; i < varied.size(); ++i) {
    const double mean = *(*required)->inputs()[i].value_si;
    distributions.push_back(*Distribution::lognormal(mean, variation[i] * mean));
  }
  const double available = Length::feet(0.73).meters();
  SizeLimitState::Surroundings around;
  around.available_si = available;
  around.available = *Distribution::lognormal(available, spreads.size * available);
  if (spreads.model > 0) around.model_factor = *Distribution::lognormal(1, spreads.model);
  return {std::move(*required), distributions, around};
}

TEST(BankByFirstOrder, GivesTheHandWorkedSpreadAndShares) {
  const auto q1 = first_order(bank({0.10, 0.05, 0.02, 0.08, 0}));
  ASSERT_TRUE(q1);
  EXPECT_NEAR(q1->standard_deviation, 0.26584, 0.0002);
  EXPECT_NEAR(q1->shares[0], 0.884, 0.001);
  EXPECT_NEAR(q1->shares[1], 0.002, 0.001);
  EXPECT_NEAR(q1->shares[2], 0.023, 0.001);
  EXPECT_NEAR(q1->shares[3], 0.091, 0.001);
  EXPECT_NEAR(q1->elasticities[0], -2.5, 1e-6);
  EXPECT_NEAR(q1->elasticities[1], 0.25, 1e-6);
  EXPECT_NEAR(q1->elasticities[2], 1.25 * 165 / (165 - 62.4), 1e-6);
  EXPECT_NEAR(first_order(bank({0.15, 0.05, 0.02, 0.08, 0.10}))->standard_deviation, 0.39849,
              0.0002);
  EXPECT_NEAR(first_order(bank({0.05, 0.05, 0.02, 0.08, 0}))->standard_deviation, 0.15426, 0.0002);
}

TEST(BankByThreeWays, FirstOrderDesignPointAndSamplingAgree) {
  const auto limit = bank({0.10, 0.05, 0.02, 0.08, 0});
  const auto first = first_order(limit);
  const auto point = find_design_point(limit);
  ASSERT_TRUE(first);
  ASSERT_TRUE(point);
  const auto space = ScoreSpace::of(limit, {});
  const auto sampled = Sampler(*space).chance(1 << 11);
  EXPECT_NEAR(point->probability, sampled.probability, 4 * sampled.standard_error + 0.0003);
  EXPECT_NEAR(first->probability, sampled.probability, 0.015)
      << "a straight line through the means";
  EXPECT_NEAR(point->importance[0], first->shares[0], 0.01);
  EXPECT_FALSE(point->bracketed);
}

// WES Streambank Handbook (1997), App. A: velocity 10 % higher asks for nearly twice the weight and
// about 30 % more thickness; a unit weight 10 % lower for about 70 % more weight and 20 % more
// thickness; depth matters least.
TEST(BankSensitivity, IsWhatTheHandbookSays) {
  const auto required =
      find_method("usace-bank-and-bed")
          ->vary(example_1, {"local_velocity", "local_depth", "specific_gravity"}, "d30");
  ASSERT_TRUE(required);
  const double velocity = *(*required)->inputs()[0].value_si;
  const double depth = *(*required)->inputs()[1].value_si;
  const double gravity = *(*required)->inputs()[2].value_si;
  const auto size = [&](double v, double d, double g) {
    return *(*required)->at(std::vector<double>{v * velocity, d * depth, g * gravity});
  };
  const double base = size(1, 1, 1);
  EXPECT_NEAR(size(1.1, 1, 1) / base, 1.27, 0.005);
  EXPECT_NEAR(std::pow(size(1.1, 1, 1) / base, 3), 2.04, 0.01);
  EXPECT_NEAR(size(1, 1, 0.9) / base, 1.245, 0.005);
  EXPECT_NEAR(0.9 * std::pow(size(1, 1, 0.9) / base, 3), 1.74, 0.01);
  EXPECT_NEAR(1.1 * std::pow(size(1, 1, 1.1) / base, 3), 0.63, 0.01);
  EXPECT_LT(std::abs(size(1, 1.1, 1) / base - 1), 0.03);
}

TEST(BankByAnyMethod, EverySizingMethodCanVary) {
  const std::vector<std::pair<std::string, nlohmann::json>> cases{
      {"isbash", {{"velocity", "9 ft/s"}}},
      {"usace-bank-and-bed", example_1},
      {"fhwa-shear-lining", {{"depth", "4 ft"}, {"slope", "0.004"}, {"bank_angle", "1V:3H"}}}};
  for (const auto& [id, inputs] : cases) {
    const auto* method = find_method(id);
    const auto evaluation = method->evaluate(inputs);
    ASSERT_TRUE(evaluation) << id << evaluation.problems().front().sentence();
    const auto& output = method->description().outputs;
    for (const auto& one : output) {
      const auto key = inputs.contains("velocity") ? "velocity" : "specific_gravity";
      auto varied = method->vary(inputs, {key}, one.key);
      ASSERT_TRUE(varied) << id << varied.problems().front().sentence();
      const double held = *(*varied)->inputs().front().value_si;
      const auto at = (*varied)->at(std::vector<double>{held});
      ASSERT_TRUE(at) << id;
      EXPECT_EQ(*at, evaluation->output(one.key).si) << "with and without steps: " << id;
    }
  }
}

// What a designer asks for on top must be known as such, or a chance would be computed of it.
TEST(SafetyMargins, OfSizingMethodsAreMarked) {
  for (const auto* method : sizing_methods()) {
    for (const auto& input : method->description().inputs) {
      const bool margin = input.key == "safety_factor" || input.key == "stability_factor";
      EXPECT_EQ(method->without_margins().contains(input.key), margin)
          << method->description().id << " " << input.key;
    }
  }
}

TEST(VariedOutputs, WhatCannotVaryIsAProblem) {
  const auto* method = find_method("isbash");
  EXPECT_EQ(method->vary({{"velocity", "9 ft/s"}}, {"turbulence"}, "d50").problems().front().code,
            "cannot-vary");
  EXPECT_EQ(method->vary({{"velocity", "9 ft/s"}}, {"velocity"}, "d99").problems().front().code,
            "unknown-output");
  const auto varied = method->vary({{"velocity", "9 ft/s"}}, {"velocity"}, "d50");
  ASSERT_TRUE(varied);
  EXPECT_FALSE((*varied)->at(std::vector<double>{-1})) << "no negative velocity";
}

}  // namespace
}  // namespace proofstone
