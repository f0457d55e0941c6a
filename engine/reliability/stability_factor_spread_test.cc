// First-order second-moment on the stability factor of a side slope: any output of any method can
// be a margin.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "engine/method/registry.h"
#include "engine/reliability/first_order.h"

namespace proofstone {
namespace {

struct Uncertain {
  const char* key;
  double standard_deviation;  // in the published unit
  double derivative;          // of the factor, for each published unit
  double share;
};

// Worked from the formula, apart from this engine: Vr 8 ft/s, 1V:3H, repose 40°, level flow, 1.5
// ft.
constexpr Uncertain quantities[] = {
    {"reference_velocity", 0.8, -0.13991, 0.413}, {"bank_angle", 1, -0.07764, 0.199},
    {"angle_of_repose", 2, 0.04532, 0.271},       {"flow_angle", 5, -0.00713, 0.042},
    {"trial_size", 0.12, 0.37309, 0.066},         {"specific_gravity", 0.05, 0.33918, 0.009}};

TEST(StabilityFactorByFirstOrder, GivesTheHandWorkedDerivativesAndShares) {
  const nlohmann::json inputs = {{"reference_velocity", "8 ft/s"}, {"bank_angle", "18.435°"},
                                 {"angle_of_repose", "40°"},       {"flow_angle", "0°"},
                                 {"trial_size", "1.5 ft"},         {"specific_gravity", 2.65}};
  std::vector<std::string> keys;
  for (const auto& quantity : quantities) keys.emplace_back(quantity.key);
  const auto factor =
      find_method("side-slope-stability-factor")->vary(inputs, keys, "stability_factor");
  ASSERT_TRUE(factor) << factor.problems().front().sentence();
  std::vector<RandomVariable> variables;
  for (std::size_t i = 0; i < keys.size(); ++i) {
    const auto& input = (*factor)->inputs()[i];
    variables.push_back({keys[i], keys[i],
                         *Distribution::normal(*input.value_si, quantities[i].standard_deviation *
                                                                    input.about.unit.si_factor)});
  }
  const FormulaLimitState limit(variables,
                                [&](std::span<const double> values) -> std::optional<double> {
                                  const auto at = (*factor)->at(values);
                                  if (!at) return std::nullopt;
                                  return *at - 1;
                                });
  const auto first = first_order(limit);
  ASSERT_TRUE(first);
  EXPECT_NEAR(first->margin_at_means + 1, 1.8381, 0.0006);
  EXPECT_NEAR(first->standard_deviation, 0.17417, 0.0003);
  EXPECT_NEAR(first->beta, 4.812, 0.005);
  for (std::size_t i = 0; i < keys.size(); ++i) {
    const double per_unit = first->derivatives[i] * (*factor)->inputs()[i].about.unit.si_factor;
    EXPECT_NEAR(per_unit / quantities[i].derivative, 1, 0.003) << keys[i];
    EXPECT_NEAR(first->shares[i], quantities[i].share, 0.001) << keys[i];
  }
}

}  // namespace
}  // namespace proofstone
