// What must hold of a chance of instability whatever the numbers.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <numeric>

#include "engine/method/registry.h"
#include "engine/reliability/design_point.h"
#include "engine/reliability/first_order.h"
#include "engine/reliability/sampling.h"
#include "engine/reliability/size_limit_state.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

/// A straight bank whose quantities are written with their units.
struct Bank {
  double velocity = between(1, 6);  // m/s
  double depth = between(0.5, 8);   // m
  double specific_gravity = between(2.3, 2.9);
  double velocity_variation = between(0.02, 0.3);
  double depth_variation = between(0.01, 0.2);
  double size_variation = between(0.01, 0.2);
  double model_variation = between(0.02, 0.3);
};

std::shared_ptr<const VariedOutput> required_by(const Bank& bank, bool in_feet) {
  const auto text = [&](double meters, const char* per) {
    return exact_text(measure(meters / (in_feet ? 0.3048 : 1)), unit::number) +
           (in_feet ? " ft" : " m") + per;
  };
  const nlohmann::json inputs = {{"average_velocity", text(bank.velocity, "/s")},
                                 {"local_depth", text(bank.depth, "")},
                                 {"bank_angle", "1V:2H"},
                                 {"specific_gravity", bank.specific_gravity},
                                 {"safety_factor", 1}};
  auto varied =
      find_method("usace-bank-and-bed")->vary(inputs, {"average_velocity", "local_depth"}, "d30");
  RC_ASSERT(static_cast<bool>(varied));
  return std::move(*varied);
}

SizeLimitState limit_of(const Bank& bank, double size_over_required, bool in_feet = false) {
  const auto required = required_by(bank, in_feet);
  const std::vector<double> means{*required->inputs()[0].value_si, *required->inputs()[1].value_si};
  SizeLimitState::Surroundings around;
  around.available_si = size_over_required * *required->at(means);
  around.available =
      *Distribution::lognormal(around.available_si, bank.size_variation * around.available_si);
  around.model_factor = *Distribution::lognormal(1, bank.model_variation);
  return {required,
          {*Distribution::lognormal(means[0], bank.velocity_variation * means[0]),
           *Distribution::lognormal(means[1], bank.depth_variation * means[1])},
          around};
}

RC_GTEST_PROP(ReliabilityProperties, LargerRockIsLessLikelyToMove, ()) {
  const Bank bank;
  const double ratio = between(0.7, 1.8);
  const double more = ratio * between(1.01, 1.3);
  const auto small = limit_of(bank, ratio);
  const auto large = limit_of(bank, more);
  RC_ASSERT(find_design_point(large)->probability < find_design_point(small)->probability);
  RC_ASSERT(first_order(large)->probability < first_order(small)->probability);
  const auto space_small = ScoreSpace::of(small, {});
  const auto space_large = ScoreSpace::of(large, {});
  RC_ASSERT(Sampler(*space_large).chance(64).probability <=
            Sampler(*space_small).chance(64).probability);
}

RC_GTEST_PROP(ReliabilityProperties, UnitsDoNotMatter, ()) {
  const Bank bank;
  const double ratio = between(0.7, 1.8);
  const auto in_meters = find_design_point(limit_of(bank, ratio, false));
  const auto in_feet = find_design_point(limit_of(bank, ratio, true));
  RC_ASSERT(std::abs(in_feet->beta - in_meters->beta) < 1e-9);
}

// Every quantity enters as a power, so that the margin is a straight line in the scores: the design
// point is exact, and sampling must find the same chance within its error.
RC_GTEST_PROP(ReliabilityProperties, DesignPointAndSamplingAgree, ()) {
  const auto limit = limit_of(Bank{}, between(0.8, 1.6));
  const auto point = find_design_point(limit);
  const auto space = ScoreSpace::of(limit, {});
  const auto sampled = Sampler(*space).chance(512);
  RC_ASSERT(!point->bracketed);
  RC_ASSERT(std::abs(sampled.probability - point->probability) < 6 * sampled.standard_error);
}

RC_GTEST_PROP(ReliabilityProperties, SharesAndImportanceAddToOne, ()) {
  const auto limit = limit_of(Bank{}, between(0.8, 1.6));
  const auto first = first_order(limit);
  const auto point = find_design_point(limit);
  const double shares = std::accumulate(first->shares.begin(), first->shares.end(), 0.0);
  const double importance =
      std::accumulate(point->importance.begin(), point->importance.end(), 0.0);
  RC_ASSERT(std::abs(shares - 1) < 1e-9);
  RC_ASSERT(std::abs(importance - 1) < 1e-9);
}

RC_GTEST_PROP(ReliabilityProperties, AFactorAndItsChanceTurnIntoEachOther, ()) {
  const auto* method = find_method("target-reliability");
  const double spread = between(0.02, 1);
  const double chance = between(1e-5, 0.9);
  const auto factor = method->evaluate({{"spread", spread}, {"chance", chance}});
  RC_ASSERT(static_cast<bool>(factor));
  const auto back =
      method->evaluate({{"spread", spread}, {"safety_factor", factor->output("safety_factor").si}});
  RC_ASSERT(static_cast<bool>(back));
  RC_ASSERT(std::abs(back->output("chance").si - chance) < 1e-9);
}

RC_GTEST_PROP(ReliabilityProperties, TheClosedFormIsTheGeneralMethod, ()) {
  const Bank bank;
  const double ratio = between(0.7, 1.8);
  const auto limit = limit_of(bank, ratio);
  const auto closed =
      find_method("chance-of-instability")
          ->evaluate({{"available_size", exact_text(measure(Length::meters(ratio)), unit::meter)},
                      {"required_size", "1 m"},
                      {"velocity_variation", bank.velocity_variation},
                      {"depth_variation", bank.depth_variation},
                      {"size_variation", bank.size_variation},
                      {"model_variation", bank.model_variation}});
  RC_ASSERT(static_cast<bool>(closed));
  RC_ASSERT(std::abs(closed->output("beta").si - first_order(limit)->beta) < 1e-6);
  RC_ASSERT(std::abs(closed->output("lognormal_beta").si - find_design_point(limit)->beta) < 1e-6);
}

}  // namespace
}  // namespace proofstone
