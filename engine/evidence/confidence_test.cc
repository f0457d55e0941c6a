#include "engine/evidence/confidence.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace proofstone {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

MeasuredGradation count_of_100() {
  // Reference §2.3 and example 3.2.
  std::vector<CountBin> bins;
  const double edges[] = {90, 128, 180, 256, 362, 512};
  const int counts[] = {8, 17, 30, 29, 16};
  for (int i = 0; i < 5; ++i) {
    bins.push_back({Length::millimeters(edges[i]), Length::millimeters(edges[i + 1]), counts[i]});
  }
  return *gradation_from_bins(bins, StonePicking::grid);
}

TEST(ChanceOf, SumsTheBinomial) {
  // P(at most 2 of 125 | 0.1), library documentation, reference §4.1 (check G22).
  EXPECT_NEAR(chance_of_at_most(2, 125, 10), 0.000210835, 1e-9);
  EXPECT_NEAR(chance_of_at_most(2, 65, 1.2), 0.9564398, 1e-7);
  // The two tails share the value itself.
  EXPECT_NEAR(chance_of_at_most(4, 20, 30) + chance_of_at_least(5, 20, 30), 1, 1e-14);
}

TEST(ChanceOf, EndsAndNonsense) {
  EXPECT_EQ(chance_of_at_most(20, 20, 30), 1);
  EXPECT_EQ(chance_of_at_least(0, 20, 30), 1);
  EXPECT_EQ(chance_of_at_most(3, 20, 0), 1);
  EXPECT_EQ(chance_of_at_most(3, 20, 100), 0);
  EXPECT_EQ(chance_of_at_least(3, 20, 0), 0);
  EXPECT_EQ(chance_of_at_least(3, 20, 100), 1);
  for (const double bad : {nan, -1.0, 21.0}) {
    EXPECT_EQ(chance_of_at_most(bad, 20, 30), 1);
    EXPECT_EQ(chance_of_at_least(bad, 20, 30), 1);
  }
  EXPECT_EQ(chance_of_at_most(0, 0, 30), 1);
  EXPECT_EQ(chance_of_at_most(1, 2, nan), 1);
  EXPECT_EQ(chance_of_at_most(1, 2, 101), 1);
}

TEST(NormalQuantile, KnownValuesAndNonsense) {
  EXPECT_NEAR(normal_quantile(0.975), 1.959963984540054, 1e-12);
  EXPECT_NEAR(normal_quantile(0.5), 0, 1e-15);
  EXPECT_TRUE(std::isnan(normal_quantile(0)));
  EXPECT_TRUE(std::isnan(normal_quantile(nan)));
}

TEST(ChiSquareTail, KnownValuesAndNonsense) {
  // Critical value 12.59 of 6 degrees of freedom at 5 % (NIST e-Handbook §7.4.5).
  EXPECT_NEAR(chi_square_tail(12.5916, 6), 0.05, 1e-5);
  EXPECT_EQ(chi_square_tail(0, 6), 1);
  EXPECT_EQ(chi_square_tail(nan, 6), 1);
  EXPECT_EQ(chi_square_tail(std::numeric_limits<double>::infinity(), 6), 0);
}

TEST(PercentSmallerInterval, PublishedLimits) {
  const auto nist = percent_smaller_interval(20, 20, 0.90);  // 4 of 20, NIST §7.2.4.2
  EXPECT_NEAR(nist.low, 7.1354, 0.0001);
  EXPECT_NEAR(nist.high, 40.1028, 0.0001);
  const auto conover = percent_smaller_interval(100.0 * 682 / 925, 925, 0.95);
  EXPECT_NEAR(conover.low, 70.76683, 0.00001);
  EXPECT_NEAR(conover.high, 76.54066, 0.00001);
}

TEST(PercentSmallerInterval, EndsAndNonsense) {
  const auto none = percent_smaller_interval(0, 100, 0.90);
  EXPECT_EQ(none.low, 0);
  EXPECT_NEAR(none.high, 100 * (1 - std::pow(0.05, 0.01)), 1e-9);
  const auto all = percent_smaller_interval(100, 100, 0.90);
  EXPECT_NEAR(all.low, 100 * std::pow(0.05, 0.01), 1e-9);
  EXPECT_EQ(all.high, 100);
  for (const auto& nothing :
       {percent_smaller_interval(50, 0, 0.95), percent_smaller_interval(nan, 100, 0.95),
        percent_smaller_interval(50, 100, 1), percent_smaller_interval(50, 100, nan),
        percent_smaller_interval(-1, 100, 0.95), percent_smaller_interval(50, -3, 0.95)}) {
    EXPECT_EQ(nothing.low, 0);
    EXPECT_EQ(nothing.high, 100);
  }
}

TEST(PercentSmallerInterval, PartStonesLieBetweenWholeOnes) {
  const auto fewer = percent_smaller_interval(100.0 * 4 / 20, 20, 0.90);
  const auto part = percent_smaller_interval(100.0 * 4.5 / 20, 20, 0.90);
  const auto more = percent_smaller_interval(100.0 * 5 / 20, 20, 0.90);
  EXPECT_LT(fewer.low, part.low);
  EXPECT_LT(part.low, more.low);
  EXPECT_LT(fewer.high, part.high);
  EXPECT_LT(part.high, more.high);
}

TEST(JeffreysInterval, LiesInsideTheExactLimits) {
  for (const double percent : {0.0, 3.0, 15.0, 50.0, 97.0, 100.0}) {
    const auto exact = percent_smaller_interval(percent, 100, 0.90);
    const auto jeffreys = jeffreys_interval(percent, 100, 0.90);
    EXPECT_LE(jeffreys.high, exact.high) << percent;
    EXPECT_GE(jeffreys.low, exact.low) << percent;
    EXPECT_LE(jeffreys.low, percent);
    EXPECT_GE(jeffreys.high, percent);
  }
  EXPECT_EQ(jeffreys_interval(0, 100, 0.90).low, 0);
  EXPECT_EQ(jeffreys_interval(100, 100, 0.90).high, 100);
  EXPECT_EQ(jeffreys_interval(50, 0, 0.90).high, 100);
  EXPECT_EQ(jeffreys_interval(nan, 10, 0.90).low, 0);
  EXPECT_EQ(jeffreys_interval(50, 10, 1).low, 0);
}

TEST(StudentQuantile, KnownValuesAndNonsense) {
  // One-sided 5 %: 6.314 with one degree of freedom, 1.729 with 19 (NIST e-Handbook §1.3.6.7.2).
  EXPECT_NEAR(student_quantile_above(0.05, 1), 6.314, 0.001);
  EXPECT_NEAR(student_quantile_above(0.05, 19), 1.729, 0.001);
  EXPECT_NEAR(student_quantile_above(0.5, 4), 0, 1e-7);
  EXPECT_TRUE(std::isnan(student_quantile_above(0.6, 4)));
  EXPECT_TRUE(std::isnan(student_quantile_above(0.05, 0)));
}

TEST(Confidence, Fp14ClassThreeExample) {
  // Reference example 3.4: one-sided p-values of six conditions from 100 stones.
  EXPECT_NEAR(confidence_at_most(9, 100, 15), 1 - 0.0551, 5e-5);
  EXPECT_NEAR(confidence_at_least(21, 100, 15), 1 - 0.0663, 5e-5);
  EXPECT_NEAR(confidence_at_most(34, 100, 50), 1 - 0.0009, 5e-5);
  EXPECT_NEAR(confidence_at_least(63, 100, 50), 1 - 0.0060, 5e-5);
  EXPECT_NEAR(confidence_at_most(70, 100, 85), 1 - 0.0001, 5e-5);
  EXPECT_NEAR(confidence_at_least(93, 100, 85), 1 - 0.0122, 5e-5);
}

TEST(Confidence, CountLimitsOfAHundredStones) {
  // Reference §3.4: shown at 95 % from these counts on, and not one stone earlier.
  EXPECT_GE(confidence_at_most(8, 100, 15), 0.95);
  EXPECT_LT(confidence_at_most(9, 100, 15), 0.95);
  EXPECT_GE(confidence_at_least(22, 100, 15), 0.95);
  EXPECT_LT(confidence_at_least(21, 100, 15), 0.95);
  EXPECT_GE(confidence_at_most(41, 100, 50), 0.95);
  EXPECT_LT(confidence_at_most(42, 100, 50), 0.95);
  EXPECT_GE(confidence_at_most(78, 100, 85), 0.95);
  EXPECT_LT(confidence_at_most(79, 100, 85), 0.95);
  EXPECT_GE(confidence_at_least(92, 100, 85), 0.95);
  EXPECT_LT(confidence_at_least(91, 100, 85), 0.95);
}

TEST(Confidence, ExtremeLimits) {
  EXPECT_EQ(confidence_at_most(40, 100, 100), 1);
  EXPECT_EQ(confidence_at_least(40, 100, 0), 1);
  EXPECT_EQ(confidence_at_most(0, 100, 0), 0);
  EXPECT_EQ(confidence_at_least(100, 100, 100), 0);
  EXPECT_EQ(confidence_at_most(nan, 100, 50), 0);
  EXPECT_EQ(confidence_at_least(40, 0, 50), 0);
}

TEST(SizeInterval, CrossesWhereTheLimitsOfThePercentDo) {
  const auto measured = count_of_100();
  const auto interval = exact_size_interval(measured, 50, 0.95);
  ASSERT_TRUE(interval.low && interval.high);
  // The exact binomial is a little wider than the 215.2 to 271.1 mm of the normal approximation.
  EXPECT_NEAR(interval.low->millimeters(), 215.17, 3);
  EXPECT_LT(interval.low->millimeters(), 215.17);
  EXPECT_NEAR(interval.high->millimeters(), 271.11, 3);
  EXPECT_GT(interval.high->millimeters(), 271.11);
  // At its ends the curve's own limits touch the percent.
  const double low_share = measured.curve.percent_smaller(*interval.low);
  EXPECT_NEAR(percent_smaller_interval(low_share, 100, 0.95).high, 50, 1e-6);
  const double high_share = measured.curve.percent_smaller(*interval.high);
  EXPECT_NEAR(percent_smaller_interval(high_share, 100, 0.95).low, 50, 1e-6);
}

TEST(SizeInterval, StatedLimitsTouchThePercentAtTheirEnds) {
  const auto measured = count_of_100();
  const auto interval = size_interval(measured, 50, 0.95);
  ASSERT_TRUE(interval.low && interval.high);
  EXPECT_NEAR(stated_interval(measured, *interval.low, 0.95).high, 50, 1e-6);
  EXPECT_NEAR(stated_interval(measured, *interval.high, 0.95).low, 50, 1e-6);
  // Between the edges more stones speak, and the curve may be misread; at an edge neither.
  const auto inside = Length::millimeters(215);
  EXPECT_GT(measured.effective_stones_at(inside), 100);
  EXPECT_GT(measured.reading_error_at(inside), 0);
  EXPECT_NEAR(measured.effective_stones_at(Length::millimeters(256)), 100, 1e-9);
  EXPECT_NEAR(measured.reading_error_at(Length::millimeters(256)), 0, 1e-9);
}

TEST(SizeInterval, EndIsAbsentWhereTheCurveDoesNotReach) {
  const auto few = *gradation_from_bins({{Length::millimeters(100), Length::millimeters(200), 1},
                                         {Length::millimeters(200), Length::millimeters(400), 1}},
                                        StonePicking::grid);
  const auto interval = size_interval(few, 50, 0.95);
  EXPECT_FALSE(interval.low);
  EXPECT_FALSE(interval.high);

  const auto open = *gradation_from_bins({{std::nullopt, Length::millimeters(200), 40},
                                          {Length::millimeters(200), Length::millimeters(400), 60}},
                                         StonePicking::grid);
  const auto below = size_interval(open, 15, 0.95);
  EXPECT_FALSE(below.low);
  ASSERT_TRUE(below.high);
  EXPECT_DOUBLE_EQ(below.high->millimeters(), 200);
  for (const double percent : {0.0, 100.0, -1.0, nan}) {
    EXPECT_FALSE(size_interval(open, percent, 0.95).high);
  }
}

TEST(ConfidenceBand, HasEveryPointWithItsLimits) {
  const auto measured = count_of_100();
  const auto band = confidence_band(measured, 0.95);
  ASSERT_EQ(band.size(), measured.curve.points().size());
  for (std::size_t i = 0; i < band.size(); ++i) {
    EXPECT_EQ(band[i].size, measured.curve.points()[i].size);
    EXPECT_LE(band[i].interval.low, band[i].percent);
    EXPECT_GE(band[i].interval.high, band[i].percent);
  }
  EXPECT_NEAR(band[2].interval.low, jeffreys_interval(25, 100, 0.95).low, 1e-9);
}

}  // namespace
}  // namespace proofstone
