#include <gtest/gtest.h>

#include <cmath>

#include "engine/sizing/hudson.h"
#include "engine/sizing/reservoir_wave_rock.h"
#include "engine/sizing/van_der_meer.h"
#include "engine/waves/cem_wave_growth.h"
#include "engine/waves/reservoir_run_up.h"
#include "engine/waves/spm_wave_growth.h"
#include "engine/waves/wave_run_up.h"
#include "engine/waves/wind_over_water.h"

namespace proofstone {
namespace {

const Angle one_on_three = angle_of(Slope::ratio(1.0 / 3));

// From wind to rock in one chain, worked apart from this engine: 60 mph over water for an hour, 3
// mi of effective fetch, 1V:3H, rock of 165 lb/ft³.
TEST(WaveChain, from_wind_to_rock) {
  Steps steps;
  WindOverWaterInputs wind;
  wind.speed = Velocity::miles_per_hour(60);
  wind.averaged_over = Duration::hours(1);
  const auto over_water = wind_over_water(wind, steps);
  ASSERT_TRUE(over_water);
  EXPECT_NEAR(over_water->adjusted.miles_per_hour(), 90.62, 0.2);

  SpmWaveGrowthInputs growth;
  growth.adjusted_wind = over_water->adjusted;
  growth.fetch = Length::miles(3);
  const auto wave = spm_wave_growth(growth, steps);
  ASSERT_TRUE(wave);
  EXPECT_NEAR(wave->height.feet(), 4.721, 0.012);  // 0.71 and 0.589 are rounded apart by 0.2 %
  EXPECT_NEAR(wave->period.seconds(), 3.621, 0.005);
  EXPECT_NEAR(wave->needed.minutes(), 44.6, 0.1);

  ReservoirRunUpInputs shore{
      wave->height,           wave->period, one_on_three,     FaceOfSlope::riprap,
      over_water->over_water, growth.fetch, Length::feet(30), {}};
  const auto run_up = reservoir_run_up(shore, steps);
  ASSERT_TRUE(run_up);
  EXPECT_NEAR(run_up->crest.feet(), 4.206, 0.012);

  HudsonInputs rock;
  rock.wave_height = wave->height;
  rock.slope = one_on_three;
  rock.specific_gravity = Dimensionless::number(165 / 62.4);
  rock.wave = HudsonWave::significant;
  const auto by_significant = hudson(rock, steps);
  rock.wave = HudsonWave::ten_percent;
  const auto by_ten_percent = hudson(rock, steps);
  ASSERT_TRUE(by_significant && by_ten_percent);
  EXPECT_NEAR(by_significant->median_mass.pounds(), 592.0, 5);
  EXPECT_NEAR(by_ten_percent->median_mass / by_significant->median_mass, 1.27 * 1.27 * 1.27, 1e-9);
}

// TR-69 is Hudson with KD 3.2 (62.4/19.5) and the significant wave.
TEST(WaveChain, tr69_is_hudson_with_its_own_coefficient) {
  Steps steps;
  HudsonInputs rock;
  rock.wave_height = Length::feet(4);
  rock.slope = one_on_three;
  rock.wave = HudsonWave::significant;
  rock.stability_coefficient = Dimensionless::number(62.4 / 19.5);
  const auto by_hudson = hudson(rock, steps);
  const auto by_tr69 = reservoir_wave_rock({Length::feet(4), one_on_three}, steps);
  ASSERT_TRUE(by_hudson && by_tr69);
  EXPECT_NEAR(by_hudson->median_mass / by_tr69->median_mass, 1, 1e-12);
}

TEST(SpmWaveGrowth, a_short_wind_shortens_the_fetch) {
  Steps steps;
  for (const bool shallow : {false, true}) {
    SpmWaveGrowthInputs in;
    in.adjusted_wind = Velocity::meters_per_second(22);
    in.fetch = Length::meters(24400);
    if (shallow) in.depth = Length::meters(11);
    const auto whole = spm_wave_growth(in, steps);
    in.duration = 0.5 * whole->needed;
    const auto half = spm_wave_growth(in, steps);
    ASSERT_TRUE(whole && half);
    EXPECT_LT(half->height, whole->height);
    EXPECT_LT(half->fetch_that_works, in.fetch);
    in.duration = 1.001 * whole->needed;
    EXPECT_EQ(spm_wave_growth(in, steps)->height, whole->height);
    // At the shortened fetch, the wind lasts just as long as it must.
    in.duration = std::nullopt;
    in.fetch = half->fetch_that_works;
    EXPECT_NEAR(spm_wave_growth(in, steps)->needed / (0.5 * whole->needed), 1, 1e-9);
  }
}

TEST(SpmWaveGrowth, stops_at_the_full_sea) {
  Steps steps;
  SpmWaveGrowthInputs in;
  in.adjusted_wind = Velocity::meters_per_second(10);
  in.fetch = Length::miles(900);
  const auto sea = spm_wave_growth(in, steps);
  ASSERT_TRUE(sea);
  EXPECT_NEAR(sea->height.meters(), 0.2433 * 100 / 9.80665, 1e-9);
}

TEST(VanDerMeer, counts_no_more_than_7500_waves_and_is_plunging_on_flat_slopes) {
  Steps steps;
  VanDerMeerInputs in;
  in.wave_height = Length::meters(1.5);
  in.mean_period = Duration::seconds(5);
  in.slope = one_on_three;
  in.waves = Dimensionless::number(7500);
  const auto capped = van_der_meer(in, steps);
  in.waves = Dimensionless::number(20000);
  EXPECT_EQ(van_der_meer(in, steps)->nominal_diameter, capped->nominal_diameter);
  in.slope = angle_of(Slope::ratio(1.0 / 5));
  in.mean_period = Duration::seconds(25);
  const auto flat = van_der_meer(in, steps);
  EXPECT_GT(flat->surf_similarity, flat->critical_surf_similarity);
  EXPECT_NEAR(flat->stability_number.number(),
              6.2 * std::pow(0.1, 0.18) * std::pow(2 / std::sqrt(7500), 0.2) /
                  std::sqrt(flat->surf_similarity.number()),
              1e-12);
}

// The peak-period coefficient of the two printings moves the period by 15 % and nothing else.
TEST(CemWaveGrowth, printings_differ_in_the_period_alone) {
  Steps steps;
  CemWaveGrowthInputs in;
  in.wind = Velocity::meters_per_second(20);
  in.fetch = Length::meters(24400);
  const auto later = cem_wave_growth(in, steps);
  in.period_coefficient = PeakPeriodCoefficient::k_0_651;
  const auto other = cem_wave_growth(in, steps);
  EXPECT_NEAR(later->period / other->period, 0.751 / 0.651, 1e-12);
  EXPECT_EQ(later->height, other->height);
}

TEST(RunUp, permeable_rock_is_capped) {
  Steps steps;
  RockSlopeRunUpInputs in{Length::meters(1), Duration::seconds(12), angle_of(Slope::ratio(0.5)),
                          RockSlopeRunUpInputs::Core::permeable};
  EXPECT_NEAR(rock_slope_run_up(in, steps)->run_up.meters(), 1.97, 1e-12);
}

}  // namespace
}  // namespace proofstone
