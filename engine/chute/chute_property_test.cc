#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include "engine/chute/overtopping_abt_johnson.h"
#include "engine/chute/overtopping_mishra.h"
#include "engine/chute/rock_chute.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

constexpr double rounding = 1e-12;

template <class Inputs>
Inputs chute_of(double q, double S) {
  Inputs in;
  in.unit_discharge = UnitDischarge::square_feet_per_second(q);
  in.slope = Slope::ratio(S);
  return in;
}

template <class Inputs, class Result>
double size_of(Expected<Result> (*method)(const Inputs&, Steps&), const Inputs& in) {
  Steps steps;
  const auto result = method(in, steps);
  RC_ASSERT(static_cast<bool>(result));
  return result->d50.inches();
}

/// Neither more water nor a steeper face ever asks for smaller rock.
template <class Inputs, class Result>
void never_smaller(Expected<Result> (*method)(const Inputs&, Steps&), double low, double high) {
  const double q = between(0.2, 30);
  const double S = between(low, high);
  const double size = size_of(method, chute_of<Inputs>(q, S));
  const double more = size_of(method, chute_of<Inputs>(between(1, 3) * q, S));
  RC_ASSERT(more >= size * (1 - rounding));
  const double steeper = size_of(method, chute_of<Inputs>(q, between(S, high)));
  RC_ASSERT(steeper >= size * (1 - rounding));
}

RC_GTEST_PROP(Chutes, RockChuteNeverNeedsSmallerRock, ()) { never_smaller(&rock_chute, 0.02, 0.4); }

RC_GTEST_PROP(Chutes, AbtJohnsonNeverNeedsSmallerRock, ()) {
  never_smaller(&overtopping_abt_johnson, 0.01, 0.4);
}

RC_GTEST_PROP(Chutes, MishraNeverNeedsSmallerRock, ()) {
  never_smaller(&overtopping_mishra, 0.1, 0.8);
}

RC_GTEST_PROP(Chutes, GatheredFlowIsTheSameAsMoreFlow, ()) {
  const double q = between(0.2, 30);
  const double S = between(0.01, 0.2);
  const double factor = between(1, 3);
  auto gathered = chute_of<OvertoppingAbtJohnsonInputs>(q, S);
  gathered.concentration = Dimensionless::number(factor);
  const auto more = chute_of<OvertoppingAbtJohnsonInputs>(factor * q, S);
  const double ratio =
      size_of(&overtopping_abt_johnson, gathered) / size_of(&overtopping_abt_johnson, more);
  RC_ASSERT(ratio > 1 - 1e-12 && ratio < 1 + 1e-12);
}

RC_GTEST_PROP(Chutes, WhatRunsOverAndWithinAddsUp, ()) {
  const auto in = chute_of<OvertoppingMishraInputs>(between(0.2, 30), between(0.1, 0.8));
  Steps steps;
  const auto result = overtopping_mishra(in, steps);
  RC_ASSERT(static_cast<bool>(result));
  const double sum =
      (result->surface_discharge + result->interstitial_discharge) / *in.unit_discharge;
  RC_ASSERT(sum > 1 - 1e-12 && sum < 1 + 1e-12);
  RC_ASSERT(result->interstitial_discharge.si() >= 0);
}

}  // namespace
}  // namespace proofstone
