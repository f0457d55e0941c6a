#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "engine/sizing/hudson.h"
#include "engine/sizing/van_der_meer.h"
#include "engine/waves/cem_wave_growth.h"
#include "engine/waves/spm_wave_growth.h"

namespace proofstone {
namespace {

double between(double low, double high) {
  constexpr int steps = 100000;
  return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

// More wind or more water to blow over never makes a smaller wave.
RC_GTEST_PROP(WaveProperty, waves_grow_with_wind_and_fetch, ()) {
  Steps steps;
  SpmWaveGrowthInputs in;
  in.adjusted_wind = Velocity::meters_per_second(between(5, 60));
  in.fetch = Length::meters(between(200, 50000));
  if (*rc::gen::inRange(0, 2) == 1) in.depth = Length::meters(between(1, 40));
  auto windier = in;
  windier.adjusted_wind = between(1, 2) * in.adjusted_wind;
  auto wider = in;
  wider.fetch = between(1, 3) * in.fetch;
  const auto here = spm_wave_growth(in, steps);
  RC_ASSERT(spm_wave_growth(windier, steps)->height >= here->height * (1 - 1e-12));
  RC_ASSERT(spm_wave_growth(wider, steps)->height >= here->height * (1 - 1e-12));
}

RC_GTEST_PROP(WaveProperty, cem_waves_grow_with_wind_and_fetch, ()) {
  Steps steps;
  CemWaveGrowthInputs in;
  in.wind = Velocity::meters_per_second(between(5, 50));
  in.fetch = Length::meters(between(200, 50000));
  auto windier = in;
  windier.wind = between(1, 2) * in.wind;
  auto wider = in;
  wider.fetch = between(1, 3) * in.fetch;
  const auto here = cem_wave_growth(in, steps);
  RC_ASSERT(cem_wave_growth(windier, steps)->height >= here->height * (1 - 1e-12));
  RC_ASSERT(cem_wave_growth(wider, steps)->height >= here->height * (1 - 1e-12));
}

// Froude scaling: a wave λ times as high, with a period √λ times as long, moves stones λ times as
// large.
RC_GTEST_PROP(WaveProperty, rock_scales_with_the_wave, ()) {
  Steps steps;
  const double scale = between(0.2, 5);
  VanDerMeerInputs in;
  in.wave_height = Length::meters(between(0.3, 3));
  in.mean_period = Duration::seconds(between(3, 10));
  in.slope = angle_of(Slope::ratio(1 / between(1.5, 6)));
  auto scaled = in;
  scaled.wave_height = scale * in.wave_height;
  scaled.mean_period = std::sqrt(scale) * in.mean_period;
  const double ratio =
      van_der_meer(scaled, steps)->nominal_diameter / van_der_meer(in, steps)->nominal_diameter;
  RC_ASSERT(std::abs(ratio / scale - 1) < 1e-9);

  HudsonInputs hudson_in;
  hudson_in.wave_height = in.wave_height;
  hudson_in.slope = in.slope;
  auto hudson_scaled = hudson_in;
  hudson_scaled.wave_height = scaled.wave_height;
  const double mass_ratio =
      hudson(hudson_scaled, steps)->median_mass / hudson(hudson_in, steps)->median_mass;
  RC_ASSERT(std::abs(mass_ratio / (scale * scale * scale) - 1) < 1e-9);
}

// Heavier rock and flatter slopes never need larger stones.
RC_GTEST_PROP(WaveProperty, heavier_rock_and_flatter_slopes_need_less, ()) {
  Steps steps;
  HudsonInputs in;
  in.wave_height = Length::meters(between(0.3, 2));
  in.slope = angle_of(Slope::ratio(1 / between(1.5, 3)));
  in.specific_gravity = Dimensionless::number(between(2.2, 2.8));
  auto heavier = in;
  heavier.specific_gravity = between(1, 1.2) * in.specific_gravity;
  auto flatter = in;
  flatter.slope = between(0.5, 1) * in.slope;
  const auto here = hudson(in, steps);
  RC_ASSERT(hudson(heavier, steps)->d50 <= here->d50 * (1 + 1e-12));
  RC_ASSERT(hudson(flatter, steps)->d50 <= here->d50 * (1 + 1e-12));
}

}  // namespace
}  // namespace proofstone
