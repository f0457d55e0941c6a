#include "engine/rock/stone_mass_method.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

// The published figures are in checks/stone-mass.json.

TEST(StoneMassMethod, goes_both_ways) {
  const auto from_size = stone_mass_method().evaluate({{"size", "12 in"}});
  ASSERT_TRUE(from_size);
  const auto mass = exact_text(from_size->output("mass"), unit::kilogram);
  const auto from_mass = stone_mass_method().evaluate({{"mass", mass}});
  ASSERT_TRUE(from_mass);
  EXPECT_NEAR(from_mass->output("intermediate_axis").si, 0.3048, 1e-12);
  EXPECT_NEAR(from_mass->output("sphere_diameter").si, from_size->output("sphere_diameter").si,
              1e-12);
}

TEST(StoneMassMethod, shows_the_formula_that_the_size_calls_for) {
  const auto axis = stone_mass_method().evaluate({{"size", "12 in"}});
  const auto sphere = stone_mass_method().evaluate({{"size", "12 in"}, {"size_meaning", "sphere"}});
  ASSERT_TRUE(axis && sphere);
  EXPECT_EQ(axis->steps.lines()[2].formula, "0.85·ρ·D³");
  EXPECT_EQ(sphere->steps.lines()[2].formula, "(π/6)·ρ·D³");
  EXPECT_LT(sphere->output("mass").si, axis->output("mass").si);
}

TEST(StoneMassMethod, says_when_the_rock_is_unusual) {
  const auto evaluation =
      stone_mass_method().evaluate({{"size", "1 m"}, {"rock_density", "1900 kg/m³"}});
  ASSERT_TRUE(evaluation);
  EXPECT_EQ(evaluation->limits_not_kept.size(), 1U);
}

TEST(StoneMassMethod, refuses_what_cannot_be) {
  const auto code = [](const nlohmann::json& inputs) {
    const auto evaluation = stone_mass_method().evaluate(inputs);
    return evaluation ? "none" : evaluation.problems().front().code;
  };
  EXPECT_EQ(code(nlohmann::json::object()), "missing-input");
  EXPECT_EQ(code({{"size", "12 in"}, {"mass", "1 lb"}}), "two-given");
  EXPECT_EQ(code({{"mass", "-1 lb"}}), "outside-allowed");
  EXPECT_EQ(code({{"size", "1e9 m"}}), "outside-allowed");
  EXPECT_EQ(code({{"size", "12 in"}, {"rock_density", "0 kg/m³"}}), "outside-allowed");
  EXPECT_EQ(code({{"size", "12 in"}, {"size_meaning", "longest axis"}}), "unknown-choice");
}

}  // namespace
}  // namespace proofstone
