#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/sizing/lining_roughness_balance.h"
#include "engine/sizing/lining_roughness_trial.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

LiningRoughnessInputs any_channel() {
  LiningRoughnessInputs in;
  in.bottom_width = Length::feet(between(5, 300));
  in.side_slope = Slope::ratio(1 / between(1.6, 4));
  in.bed_slope = Slope::ratio(between(0.0005, 0.01));
  in.discharge = Discharge::cubic_feet_per_second(between(50, 20'000));
  return in;
}

// The size found asks, through its own roughness, for itself; and a little more rock holds.
RC_GTEST_PROP(LiningRoughnessProperties, TheSizeAsksForItself, ()) {
  const auto in = any_channel();
  Steps steps;
  const auto found = lining_roughness_balance(in, steps);
  RC_ASSERT(static_cast<bool>(found));
  RC_PRE(found->d30 > Length::feet(0.021));
  LiningTrialInputs trial{in, found->d90, std::nullopt, in.velocity_coefficient};
  const auto same = lining_roughness_trial(trial, steps);
  RC_ASSERT(static_cast<bool>(same));
  RC_ASSERT(std::abs(same->required_d30 / found->d30 - 1) < 1e-9);
  trial.d90 = between(1.01, 3) * found->d90;
  const auto larger = lining_roughness_trial(trial, steps);
  RC_ASSERT(static_cast<bool>(larger));
  RC_ASSERT(larger->required_d30 <= *trial.d90 / in.d90_over_d30.number());
}

RC_GTEST_PROP(LiningRoughnessProperties, LevelIsNeverBelowTheWaterThatSizes, ()) {
  const auto in = any_channel();
  Steps steps;
  const auto found = lining_roughness_balance(in, steps);
  RC_ASSERT(static_cast<bool>(found));
  RC_ASSERT(found->level_depth >= found->depth);
}

}  // namespace
}  // namespace proofstone
