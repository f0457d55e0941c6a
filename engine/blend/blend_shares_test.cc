#include "engine/blend/blend_shares.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "engine/blend/blend_examples.h"
#include "engine/blend/simplex_fit.h"

namespace proofstone {
namespace {

BlendTarget two_aggregates() {
  const TwoAggregates example;
  return *blend_target(example.materials, example.band);
}

bool names(const std::string& sentence, const std::string& words) {
  return sentence.find(words) != std::string::npos;
}

// Problem 5.23: the range, the best fit and the widest margin were computed apart from this engine.
TEST(BlendShares, TwoAggregatesHaveOneIntervalOfShares) {
  const auto ranges = feasible_ranges(two_aggregates());
  ASSERT_TRUE(ranges);
  EXPECT_NEAR((*ranges)[0].least, 0.3556, 1e-4);
  EXPECT_NEAR((*ranges)[0].most, 0.4923, 1e-4);
  EXPECT_NEAR((*ranges)[1].least, 1 - 0.4923, 1e-4);
  EXPECT_NEAR((*ranges)[1].most, 1 - 0.3556, 1e-4);
}

TEST(BlendShares, TheWidestMarginStandsBetweenTheTwoLimitsThatBind) {
  const auto target = two_aggregates();
  const auto widest = widest_margin(target);
  ASSERT_TRUE(widest);
  EXPECT_NEAR(widest->shares[0], 23.0 / 56, 1e-9);
  EXPECT_NEAR(widest->margin, 2.482, 5e-4);
  ASSERT_EQ(widest->binding.size(), 2u);
  double fine = 0;
  double coarse = 1e9;
  for (const auto k : widest->binding) {
    const auto& condition = target.lines[k].condition;
    coarse = std::min(coarse, condition.size.millimeters());
    fine = std::max(fine, condition.size.millimeters());
  }
  EXPECT_NEAR(fine, 0.6, 1e-9);
  EXPECT_NEAR(coarse, 0.075, 1e-9);
}

TEST(BlendShares, BestFitOfTwoAggregates) {
  const auto fit = best_fit(two_aggregates());
  ASSERT_TRUE(fit);
  EXPECT_NEAR(fit->shares[0], 0.4118, 5e-5);
}

// A classroom exercise with coarse, fine and filler aggregate: 0.66/0.28/0.06 published; the least
// squares fit to the middle of the bands was computed apart from this engine.
TEST(BlendShares, BestFitOfThreeAggregatesBeatsThePublishedBlend) {
  const std::vector<std::vector<double>> columns{
      {100, 63, 19, 8, 5, 3, 0}, {100, 100, 100, 93, 55, 36, 3}, {100, 100, 100, 100, 100, 97, 88}};
  const std::vector<double> middle{100, 80, 47.5, 37, 25, 17, 8};
  const auto shares = best_fit_shares(columns, middle);
  ASSERT_TRUE(shares);
  EXPECT_NEAR((*shares)[0], 0.6505, 5e-5);
  EXPECT_NEAR((*shares)[1], 0.2843, 5e-5);
  EXPECT_NEAR((*shares)[2], 0.0653, 5e-5);
  EXPECT_NEAR(squared_misfit(columns, middle, *shares), 22.38, 0.005);
  EXPECT_NEAR(squared_misfit(columns, middle, {0.66, 0.28, 0.06}), 24.96, 0.005);
}

TEST(BlendShares, BadNumbersMakeNoFit) {
  EXPECT_FALSE(best_fit_shares({}, {1}));
  EXPECT_FALSE(best_fit_shares({{1, 2}}, {1}));
  EXPECT_FALSE(best_fit_shares({{std::numeric_limits<double>::quiet_NaN()}}, {1}));
  // Two materials that are the same: one of them serves.
  const auto same = best_fit_shares({{10, 50}, {10, 50}}, {20, 40});
  ASSERT_TRUE(same);
  EXPECT_NEAR((*same)[0] + (*same)[1], 1, 1e-12);
}

TEST(BlendShares, SharesThatAreNotWholeAreRefused) {
  const auto problems = problems_of_shares({0.34, 0.27, 0.38});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems.front().code, "shares-not-whole");
  EXPECT_TRUE(names(problems.front().what, "99 %"));
  EXPECT_TRUE(problems_of_shares({0.3333, 0.3333, 0.3333}).empty());
  EXPECT_EQ(problems_of_shares({-0.1, 1.1}).front().code, "bad-share");
  EXPECT_EQ(problems_of_shares({std::nan("")}).front().code, "bad-share");
  EXPECT_FALSE(problems_of_shares({}).empty());
}

TEST(BlendShares, SaysWhichLimitIsMissedAndThatNoMaterialKeepsIt) {
  TwoAggregates example;
  example.band = band_of_sieves({9.5, 0.075}, {70, 12}, {90, 16});
  const auto target = *blend_target(example.materials, example.band);
  EXPECT_FALSE(feasible_ranges(target));
  const auto nearest = nearest_blend(target);
  ASSERT_TRUE(nearest);
  ASSERT_FALSE(nearest->misses.empty());
  const auto sentence = why_infeasible(target, *nearest);
  EXPECT_TRUE(names(sentence, "no material on offer keeps it by itself")) << sentence;
  EXPECT_TRUE(names(sentence, "without breaking")) << sentence;
  const auto widest = widest_margin(target);
  ASSERT_TRUE(widest);
  EXPECT_LT(widest->margin, 0);
}

TEST(BlendShares, TheCheapestKeepsTheMarginAskedFor) {
  TwoAggregates example;
  const auto target = *blend_target(example.materials, example.band);
  EXPECT_FALSE(cheapest_shares(target, example.materials, 0));  // no prices
  example.materials[0].price_per_tonne = 30;
  example.materials[1].price_per_tonne = 12;
  const auto cheapest = cheapest_shares(target, example.materials, 0);
  ASSERT_TRUE(cheapest);
  EXPECT_NEAR(cheapest->shares[0], 0.3556, 1e-4);
  const auto careful = cheapest_shares(target, example.materials, 2);
  ASSERT_TRUE(careful);
  EXPECT_GE(careful->margin, 2 - 1e-6);
  EXPECT_GT(careful->shares[0], cheapest->shares[0]);
  EXPECT_FALSE(cheapest_shares(target, example.materials, 2.5));
}

TEST(BlendShares, ACurveThatEndsInsideTheBandCountsOnTheCarefulSide) {
  const std::vector<OfferedMaterial> materials{
      offered("open", curve_of_sieves({10, 100}, {20, 100}))};
  const auto target = *blend_target(materials, band_of_sieves({1, 50}, {5, 60}, {10, 90}));
  ASSERT_EQ(target.cut_short.size(), 1u);
  for (const auto& line : target.lines) {
    if (line.condition.size > Length::millimeters(2)) continue;
    const bool at_most = line.condition.sense == BandCondition::Sense::at_most;
    EXPECT_NEAR(line.percents[0], at_most ? 20 : 0, 1e-9);
  }
}

TEST(BlendTarget, BadQuestionsAreNamed) {
  const TwoAggregates example;
  EXPECT_EQ(blend_target({}, example.band).problems().front().code, "no-material");
  auto mixed = example.materials;
  mixed[1].gradation = *Gradation::make({{Length::inches(1), 0}, {Length::inches(2), 100}},
                                        {SizeMeaning::sphere, PercentOf::mass});
  EXPECT_EQ(blend_target(mixed, example.band).problems().front().code, "different-basis");
  mixed[1].gradation = *Gradation::make({{Length::inches(1), 0}, {Length::inches(2), 100}},
                                        {SizeMeaning::intermediate_axis, PercentOf::count});
  EXPECT_EQ(blend_target(mixed, example.band).problems().front().code, "percent-by-count");
}

TEST(Scalping, WeighsWhatIsLeftAnew) {
  const auto curve = curve_of_sieves({150, 100, 75, 50, 37.5, 19, 9.5, 4.75, 1.18, 0.3, 0.075},
                                     {100, 92, 82, 70, 62, 48, 37, 28, 15, 7, 3});
  const auto less = scalped(curve, Length::millimeters(75));
  ASSERT_TRUE(less);
  EXPECT_NEAR(less->kept, 0.82, 1e-12);
  const double expected[] = {3.66, 8.54, 18.29, 34.15, 45.12, 58.54, 75.61, 85.37, 100};
  const double sizes[] = {0.075, 0.3, 1.18, 4.75, 9.5, 19, 37.5, 50, 75};
  for (std::size_t i = 0; i < std::size(sizes); ++i) {
    EXPECT_NEAR(less->gradation.percent_smaller(Length::millimeters(sizes[i])), expected[i], 0.005);
  }
  EXPECT_FALSE(scalped(curve, Length::millimeters(0)));
  EXPECT_FALSE(scalped(curve, Length::millimeters(0.01)));
  EXPECT_NEAR(scalped(curve, Length::millimeters(400))->kept, 1, 1e-12);
  EXPECT_EQ(scalped(curve_of_sieves({10, 20, 40}, {0, 0, 100}), Length::millimeters(15))
                .problems()
                .front()
                .code,
            "nothing-left");
}

TEST(Scalping, StandsBesideTheMaterialAndCostsMore) {
  auto material = offered("pit run", curve_of_sieves({10, 100, 200}, {0, 80, 100}));
  material.price_per_tonne = 8;
  material.available = Mass::tonnes(100);
  material.scalp_at = Length::millimeters(100);
  const auto all = with_scalped({material});
  ASSERT_TRUE(all);
  ASSERT_EQ(all->size(), 2u);
  EXPECT_NEAR((*all)[1].price_per_tonne.value_or(0), 10, 1e-12);
  EXPECT_NEAR((*all)[1].available.value_or(Mass()).tonnes(), 80, 1e-9);
  material.scalp_at = Length::millimeters(1);
  EXPECT_FALSE(with_scalped({material}));
}

}  // namespace
}  // namespace proofstone
