// How often the stated limits hold the truth, where everything that may be wrong is.
#include <gtest/gtest.h>

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/vision/drawn_photos.h"
#include "engine/vision/photo_gradation.h"

namespace proofstone {
namespace {

double normal(std::uint64_t seed) { return normal_quantile(part_of_one(seed)); }

/// Truth: lognormal rock seen as 225 mm, tapped at 108 nodes; the scale is wrong by 4 % and each
/// factor by its stated error, anew each time.
TEST(PhotoLimits, HoldTheTruthNineTimesOfTen) {
  constexpr int trials = 200;
  constexpr double deviation = 0.32;
  const double z85 = normal_quantile(0.85);
  int held_median = 0;
  int held_85 = 0;
  int held_by_shares = 0;
  for (std::uint64_t trial = 0; trial < trials; ++trial) {
    const double wrong = std::exp(0.04 * normal(9'000'000 + trial));
    const auto result = gradation_from_photos(set_of({tapped_photo(trial, 90 * wrong, deviation)}));
    ASSERT_TRUE(result);
    const auto& median = result->sizes[1];
    const auto& d85 = result->sizes[2];
    const double truth_50 =
        0.225 / 1.132 * std::exp(median.factor_error * normal(8'000'000 + trial));
    const double truth_85 = 0.225 * std::exp(deviation * z85) / 1.202 *
                            std::exp(d85.factor_error * normal(7'000'000 + trial));
    if (median.low().meters() < truth_50 && truth_50 < median.high().meters()) ++held_median;
    if (d85.low().meters() < truth_85 && truth_85 < d85.high().meters()) ++held_85;
    auto by_shares = result->measured;
    by_shares.size_errors.clear();
    const auto interval = size_interval(by_shares, 50, 0.90);
    ASSERT_TRUE(interval.low && interval.high);
    if (interval.low->meters() < truth_50 && truth_50 < interval.high->meters()) ++held_by_shares;
  }
  // 180 of 200 are expected; 2.5 standard deviations are 10.6.
  EXPECT_GE(held_median, 169);
  EXPECT_GE(held_85, 169);
  EXPECT_GE(held_by_shares, 169);
  EXPECT_LE(held_median, 197);
}

/// Truth: outlined rock whose shares of the surface are lognormal. What the blocks say of sampling
/// is what it is, and the limits hold the truth.
TEST(PhotoLimits, OfOutlinesAreWhatTheyHadToBe) {
  constexpr int trials = 150;
  constexpr double deviation = 0.3;
  const double at[] = {normal_quantile(0.15), 0, normal_quantile(0.85)};
  const double ratios[] = {0.857, 1.023, 1.172};
  double sums[3] = {};
  double squares[3] = {};
  double stated[3] = {};
  int held[3] = {};
  for (std::uint64_t trial = 0; trial < trials; ++trial) {
    const double wrong = std::exp(0.04 * normal(9'000'000 + trial));
    const auto result =
        gradation_from_photos(set_of({outlined_photo(trial, 60 * wrong, deviation)}));
    ASSERT_TRUE(result);
    ASSERT_EQ(result->sizes.size(), 3u);
    for (std::size_t i = 0; i < 3; ++i) {
      const auto& size = result->sizes[i];
      // Weighting by area moves a lognormal median by exp(2σ²).
      const double median =
          0.15 * std::exp(2 * deviation * deviation + deviation * at[i]) / ratios[i];
      const double truth =
          median * std::exp(size.factor_error * normal(8'000'000 + 1000 * i + trial));
      if (size.low().meters() < truth && truth < size.high().meters()) ++held[i];
      const double off = std::log(size.size.meters() / wrong / median);
      sums[i] += off;
      squares[i] += off * off;
      stated[i] += size.sampling_error / trials;
    }
  }
  for (std::size_t i = 0; i < 3; ++i) {
    const double mean = sums[i] / trials;
    const double spread = std::sqrt(squares[i] / trials - mean * mean);
    EXPECT_NEAR(mean, 0, 0.01) << i;
    EXPECT_NEAR(stated[i] / spread, 1, 0.2) << i;
    // 135 of 150 are expected; 2.5 standard deviations are 9.2.
    EXPECT_GE(held[i], 126) << i;
  }
}

}  // namespace
}  // namespace proofstone
