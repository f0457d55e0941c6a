#include "engine/evidence/blend.h"

#include <gtest/gtest.h>

#include <limits>

namespace proofstone {
namespace {

Length in(double size) { return Length::inches(size); }
constexpr GradationBasis by_mass{SizeMeaning::intermediate_axis, PercentOf::mass};

Gradation curve(std::vector<GradationPoint> points, GradationBasis basis = by_mass) {
  return *Gradation::make(std::move(points), basis);
}

Gradation fine() { return curve({{in(4), 0}, {in(8), 50}, {in(12), 100}}); }
Gradation coarse() { return curve({{in(12), 0}, {in(16), 50}, {in(24), 100}}); }

TEST(Blend, WeighsTheSharesAtEverySize) {
  const auto mixed = blend({{fine(), 3}, {coarse(), 1}});
  ASSERT_TRUE(mixed);
  EXPECT_DOUBLE_EQ(mixed->percent_smaller(in(8)), 37.5);
  EXPECT_DOUBLE_EQ(mixed->percent_smaller(in(12)), 75);
  EXPECT_DOUBLE_EQ(mixed->percent_smaller(in(16)), 87.5);
  EXPECT_DOUBLE_EQ(mixed->percent_smaller(in(24)), 100);
  EXPECT_EQ(mixed->points().size(), 5u);
}

TEST(Blend, OfOnePartIsItself) {
  const auto same = blend({{fine(), 7}});
  ASSERT_TRUE(same);
  ASSERT_EQ(same->points().size(), 3u);
  EXPECT_DOUBLE_EQ(same->points()[1].percent_smaller, 50);
}

TEST(Blend, BadPartsAreNamed) {
  EXPECT_EQ(blend({}).problems().front().code, "empty");
  const auto nothing = blend({{fine(), 1}, {coarse(), 0}});
  ASSERT_FALSE(nothing);
  EXPECT_EQ(nothing.problems().front().where, "material 2");
  EXPECT_FALSE(blend({{fine(), std::numeric_limits<double>::quiet_NaN()}}));
  const auto sphere = curve({{in(4), 0}, {in(12), 100}}, {SizeMeaning::sphere, PercentOf::mass});
  EXPECT_EQ(blend({{fine(), 1}, {sphere, 1}}).problems().front().code, "different-basis");
  const auto counted =
      curve({{in(4), 0}, {in(12), 100}}, {SizeMeaning::intermediate_axis, PercentOf::count});
  EXPECT_EQ(blend({{counted, 1}, {counted, 1}}).problems().front().code, "percent-by-count");
  const auto apart =
      blend({{curve({{in(4), 10}, {in(6), 100}}), 1}, {curve({{in(8), 10}, {in(9), 90}}), 1}});
  ASSERT_TRUE(apart);  // from 8 in up both are known
  EXPECT_DOUBLE_EQ(apart->percent_smaller(in(8)), 55);
}

TEST(TwoPileBlends, FewestLoadsOfTheOtherFirst) {
  const auto options = two_pile_blends(fine(), coarse(), nullptr, 50, in(10), 4);
  ASSERT_TRUE(options);
  // 3:1, 2:1, 1:1, 1:2, 1:3 in lowest terms.
  ASSERT_EQ(options->size(), 5u);
  const auto& best = options->front();
  EXPECT_TRUE(best.holds());
  // D50 by hand: 2:1 has F(8) = 33.3 and F(12) = 66.7, so D50 = √(8·12) = 9.80 < 10; 1:1 has
  // F(12) = 50.
  EXPECT_EQ(best.loads_of_this_rock, 1);
  EXPECT_EQ(best.loads_of_other, 1);
  EXPECT_NEAR(*best.margin, 1.2, 1e-9);
  EXPECT_TRUE((*options)[2].holds());
  EXPECT_FALSE((*options)[3].holds());
  EXPECT_EQ((*options)[3].loads_of_this_rock, 3);  // of those that do not hold, the least again
}

TEST(TwoPileBlends, BandConditionsRuleRatiosOut) {
  const auto band = *GradationBand::from_size_windows(
      {{50, in(9), in(12.5)}, {85, std::nullopt, in(16)}}, by_mass);
  const auto options = two_pile_blends(fine(), coarse(), &band, 50, in(9), 5);
  ASSERT_TRUE(options);
  for (const auto& option : *options) {
    EXPECT_EQ(option.keeps_band, option.broken.empty());
  }
  EXPECT_TRUE(options->front().holds());
  // 85 % smaller than 16 in needs at most 30 % of the coarse rock.
  EXPECT_LE(options->front().loads_of_other * 10,
            3 * (options->front().loads_of_other + options->front().loads_of_this_rock));
  EXPECT_FALSE(options->back().keeps_band);
}

TEST(TwoPileBlends, SaysWhatBlocksWhenNoRatioServes) {
  const auto too_large = two_pile_blends(fine(), coarse(), nullptr, 50, in(30), 6);
  ASSERT_FALSE(too_large);
  EXPECT_EQ(too_large.problems().front().code, "no-blend-serves");
  EXPECT_NE(too_large.problems().front().what.find("D50 of at least 30.0 in"), std::string::npos);

  const auto band = *GradationBand::from_size_windows({{100, std::nullopt, in(20)}}, by_mass);
  const auto oversize = two_pile_blends(fine(), coarse(), &band, 50, in(9), 6);
  ASSERT_FALSE(oversize);
  EXPECT_NE(oversize.problems().front().what.find("largest stone at most 20.0 in"),
            std::string::npos);

  // Each ratio misses one of two: the sentence names the nearest.
  const auto narrow = *GradationBand::from_size_windows(
      {{50, in(11.9), std::nullopt}, {85, std::nullopt, in(15)}}, by_mass);
  const auto torn = two_pile_blends(fine(), coarse(), &narrow, 50, in(9), 6);
  ASSERT_FALSE(torn);
  EXPECT_NE(torn.problems().front().what.find("Each ratio misses something"), std::string::npos);
}

TEST(TwoPileBlends, BadQuestions) {
  EXPECT_FALSE(two_pile_blends(fine(), coarse(), nullptr, 0, in(9), 6));
  EXPECT_FALSE(two_pile_blends(fine(), coarse(), nullptr, 50, in(-9), 6));
  EXPECT_FALSE(two_pile_blends(fine(), coarse(), nullptr, 50, in(9), 1));
  EXPECT_FALSE(two_pile_blends(fine(), coarse(), nullptr, 50, in(9), 1'000'000));
  const auto counted = *GradationBand::from_size_windows(
      {{50, in(9), in(12)}}, {SizeMeaning::intermediate_axis, PercentOf::count});
  const auto by_count = two_pile_blends(fine(), coarse(), &counted, 50, in(9), 4);
  ASSERT_FALSE(by_count);
  EXPECT_EQ(by_count.problems().front().code, "different-basis");
}

}  // namespace
}  // namespace proofstone
