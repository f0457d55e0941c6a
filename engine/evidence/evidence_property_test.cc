// What must hold for every sample, whatever its stones.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/band_comparison.h"
#include "engine/evidence/blend.h"
#include "engine/evidence/confidence.h"
#include "engine/evidence/same_rock.h"
#include "engine/evidence/size_margin.h"

namespace proofstone {
namespace {

constexpr StonePicking all_pickings[] = {StonePicking::grid, StonePicking::line, StonePicking::area,
                                         StonePicking::whole};

/// 5 to 80 stones of 50 to 1000 mm, read to the millimetre so that equal readings occur.
std::vector<Length> some_stones() {
  const auto sizes = *rc::gen::resize(
      80, rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(50, 1001))));
  RC_PRE(sizes.size() >= 5u);
  std::vector<Length> stones;
  for (const int size : sizes) stones.push_back(Length::millimeters(size));
  return stones;
}

StonePicking some_picking() {
  return *rc::gen::elementOf(
      std::vector<StonePicking>(std::begin(all_pickings), std::end(all_pickings)));
}

Length some_size() { return Length::millimeters(*rc::gen::inRange(400, 12000) / 10.0); }

/// Two to ten bins with 0 to 40 stones each, at least one stone in all.
std::vector<CountBin> some_bins() {
  const auto counts = *rc::gen::resize(
      10, rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 41))));
  RC_PRE(std::any_of(counts.begin(), counts.end(), [](int n) { return n > 0; }));
  std::vector<CountBin> bins;
  double lower = *rc::gen::inRange(20, 100);
  for (const int count : counts) {
    const double upper = lower * (1 + *rc::gen::inRange(5, 100) / 100.0);
    if (upper > 5000) break;
    bins.push_back({Length::millimeters(lower), Length::millimeters(upper), count});
    lower = upper;
  }
  RC_PRE(std::any_of(bins.begin(), bins.end(), [](const CountBin& b) { return b.stones > 0; }));
  return bins;
}

void holds(const std::string& what, const std::function<void()>& property) {
  EXPECT_TRUE(rc::check(what, property));
}

TEST(EvidenceProperty, MoreStonesWithTheSameShareNarrowTheLimits) {
  holds("limits narrow", [] {
    const double percent = *rc::gen::inRange(0, 1001) / 10.0;
    const double stones = *rc::gen::inRange(1, 2000);
    const double more = stones + *rc::gen::inRange(1, 2000);
    const double confidence = *rc::gen::inRange(50, 100) / 100.0;
    const auto wide = percent_smaller_interval(percent, stones, confidence);
    const auto narrow = percent_smaller_interval(percent, more, confidence);
    RC_ASSERT(wide.low <= percent && percent <= wide.high);
    RC_ASSERT(narrow.high - narrow.low < wide.high - wide.low);
    RC_ASSERT(narrow.low >= wide.low - 1e-9 && narrow.high <= wide.high + 1e-9);
  });
}

TEST(EvidenceProperty, MoreStonesWithTheSameShareNeverUndoADecision) {
  holds("decisions stay", [] {
    const double percent = *rc::gen::inRange(0, 1001) / 10.0;
    const double limit = *rc::gen::inRange(1, 1000) / 10.0;
    const double stones = *rc::gen::inRange(1, 3000);
    const double more = stones + *rc::gen::inRange(1, 2000);
    if (percent < limit) {
      RC_ASSERT(confidence_at_most(percent, more, limit) >=
                confidence_at_most(percent, stones, limit) - 1e-12);
    }
    if (percent > limit) {
      RC_ASSERT(confidence_at_least(percent, more, limit) >=
                confidence_at_least(percent, stones, limit) - 1e-12);
    }
  });
}

TEST(EvidenceProperty, ConfidenceAndLimitsAreTheSameStatement) {
  holds("one-sided confidence and limit agree", [] {
    const double percent = *rc::gen::inRange(0, 1001) / 10.0;
    const double stones = *rc::gen::inRange(2, 1000);
    const double limit = *rc::gen::inRange(1, 1000) / 10.0;
    const double confidence = *rc::gen::inRange(50, 100) / 100.0;
    const auto interval = percent_smaller_interval(percent, stones, 2 * confidence - 1);
    RC_PRE(confidence > 0.5);
    RC_PRE(std::abs(interval.high - limit) > 1e-6 && std::abs(interval.low - limit) > 1e-6);
    RC_ASSERT((confidence_at_most(percent, stones, limit) >= confidence) ==
              (interval.high <= limit));
    RC_ASSERT((confidence_at_least(percent, stones, limit) >= confidence) ==
              (interval.low >= limit));
  });
}

TEST(EvidenceProperty, ALargerStoneNeverRaisesThePercentSmaller) {
  holds("percent smaller does not rise", [] {
    auto stones = some_stones();
    const auto picking = some_picking();
    const Length size = some_size();
    const auto before = gradation_from_stones(stones, picking);
    const Length largest = *std::max_element(stones.begin(), stones.end());
    stones.push_back(largest * (1 + *rc::gen::inRange(1, 100) / 100.0));
    const auto after = gradation_from_stones(stones, picking);
    RC_ASSERT(before && after);
    RC_ASSERT(after->curve.percent_smaller(size) <= before->curve.percent_smaller(size) + 1e-9);
  });
}

TEST(EvidenceProperty, MovingAStoneUpNeverRaisesThePercentSmallerThanABin) {
  holds("bins", [] {
    auto bins = some_bins();
    RC_PRE(bins.size() >= 2u);
    const auto from = *rc::gen::inRange<std::size_t>(0, bins.size() - 1);
    RC_PRE(bins[from].stones > 0);
    const auto before = gradation_from_bins(bins, StonePicking::grid);
    --bins[from].stones;
    ++bins[*rc::gen::inRange<std::size_t>(from + 1, bins.size())].stones;
    const auto after = gradation_from_bins(bins, StonePicking::grid);
    RC_ASSERT(before && after);
    for (const auto& point : before->curve.points()) {
      RC_ASSERT(after->curve.percent_smaller(point.size) <= point.percent_smaller + 1e-9);
    }
  });
}

TEST(EvidenceProperty, ScalingTheSizesScalesTheCurve) {
  holds("scaling", [] {
    const auto stones = some_stones();
    const auto picking = some_picking();
    const double factor = *rc::gen::inRange(10, 400) / 100.0;
    std::vector<Length> scaled;
    for (const auto stone : stones) scaled.push_back(stone * factor);
    const auto one = gradation_from_stones(stones, picking);
    const auto other = gradation_from_stones(scaled, picking);
    RC_ASSERT(one && other);
    RC_ASSERT(std::abs(one->effective_stones / other->effective_stones - 1) < 1e-9);
    for (const double percent : {10.0, 15.0, 50.0, 85.0, 99.0}) {
      const double ratio = *other->curve.size_at(percent) / *one->curve.size_at(percent);
      RC_ASSERT(std::abs(ratio / factor - 1) < 1e-5);
    }
  });
}

TEST(EvidenceProperty, EqualVolumesGiveHalf) {
  holds("Kellerhals and Bray cube model", [] {
    const int ratio = *rc::gen::inRange(2, 9);
    const int many = *rc::gen::inRange(1, 20);
    const auto picking = some_picking();
    // Stones seen of size 1 for each of size `ratio`, at equal volumes.
    int small = 1;
    for (const auto weaker : {StonePicking::line, StonePicking::area, StonePicking::whole}) {
      if (picking >= weaker) small *= ratio;
    }
    std::vector<Length> stones(static_cast<std::size_t>(small * many), Length::millimeters(100));
    stones.insert(stones.end(), static_cast<std::size_t>(many), Length::millimeters(100 * ratio));
    const auto measured = gradation_from_stones(stones, picking);
    RC_ASSERT(measured);
    // Between the two sizes the curve goes from a quarter to three quarters.
    RC_ASSERT(std::abs(measured->curve.percent_smaller(Length::millimeters(100)) - 25) < 1e-9);
    RC_ASSERT(std::abs(measured->curve.percent_smaller(Length::millimeters(100 * ratio)) - 75) <
              1e-9);
  });
}

TEST(EvidenceProperty, EvidenceFallsTowardsTheCoarseEnd) {
  holds("effective stones", [] {
    const auto stones = some_stones();
    const auto picking = some_picking();
    const auto measured = gradation_from_stones(stones, picking);
    RC_ASSERT(measured);
    const double n = static_cast<double>(stones.size());
    RC_ASSERT(measured->effective_stones <= n * (1 + 1e-12));
    RC_ASSERT(measured->effective_stones >= 1 - 1e-12);
    for (const double there : measured->effective_at_points) {
      RC_ASSERT(there > 0 && std::isfinite(there));
    }
    RC_ASSERT(measured->effective_at_points.back() <= measured->effective_stones * (1 + 1e-12));
    if (picking == StonePicking::grid) {
      // Readings that repeat lie on both sides of themselves and scatter less.
      auto sorted = stones;
      std::sort(sorted.begin(), sorted.end());
      const bool repeat = std::adjacent_find(sorted.begin(), sorted.end()) != sorted.end();
      const double there = measured->effective_stones_at(some_size());
      RC_ASSERT(there > n * (1 - 1e-9));
      RC_ASSERT(repeat || there < n * (1 + 1e-9));
    }
  });
}

TEST(EvidenceProperty, OrderOfStonesAndBinsDoesNotMatter) {
  holds("order", [] {
    auto stones = some_stones();
    const auto picking = some_picking();
    const auto one = gradation_from_stones(stones, picking);
    std::reverse(stones.begin(), stones.end());
    const auto other = gradation_from_stones(stones, picking);
    RC_ASSERT(one && other);
    const Length size = some_size();
    RC_ASSERT(std::abs(one->curve.percent_smaller(size) - other->curve.percent_smaller(size)) <
              1e-9);
  });
}

TEST(EvidenceProperty, PoolingALookWithItselfKeepsTheCurveAndDoublesTheEvidence) {
  holds("pooling", [] {
    const auto look = gradation_from_stones(some_stones(), some_picking());
    RC_ASSERT(look);
    const auto twice = pooled({*look, *look});
    RC_ASSERT(twice);
    const Length size = some_size();
    RC_ASSERT(std::abs(twice->curve.percent_smaller(size) - look->curve.percent_smaller(size)) <
              1e-9);
    RC_ASSERT(std::abs(twice->effective_stones_at(size) / look->effective_stones_at(size) - 2) <
              1e-9);
  });
}

TEST(EvidenceProperty, ABlendLiesBetweenItsParts) {
  holds("blend", [] {
    const auto a = gradation_from_bins(some_bins(), StonePicking::grid);
    const auto b = gradation_from_bins(some_bins(), StonePicking::grid);
    RC_ASSERT(a && b);
    const double amount_a = *rc::gen::inRange(1, 20);
    const double amount_b = *rc::gen::inRange(1, 20);
    const auto mixed = blend({{a->curve, amount_a}, {b->curve, amount_b}});
    RC_ASSERT(mixed);
    for (const auto& point : mixed->points()) {
      const double from_a = a->curve.percent_smaller(point.size);
      const double from_b = b->curve.percent_smaller(point.size);
      const double expected = (amount_a * from_a + amount_b * from_b) / (amount_a + amount_b);
      RC_ASSERT(std::abs(point.percent_smaller - expected) < 1e-9);
    }
  });
}

TEST(EvidenceProperty, TheSizeIntervalHoldsTheSize) {
  holds("size interval", [] {
    const auto measured = gradation_from_stones(some_stones(), some_picking());
    RC_ASSERT(measured);
    const double percent = *rc::gen::inRange(1, 100);
    const Length size = *measured->curve.size_at(percent);
    const auto interval = size_interval(*measured, percent, 0.9);
    if (interval.low) RC_ASSERT(*interval.low <= size);
    if (interval.high) RC_ASSERT(*interval.high >= size);
  });
}

TEST(EvidenceProperty, MarginAndBandSayTheSame) {
  holds("a band with one condition is a margin", [] {
    const auto measured = gradation_from_stones(some_stones(), some_picking());
    RC_ASSERT(measured);
    const double percent = *rc::gen::inRange(5, 96);
    const Length required = some_size();
    const auto band = GradationBand::from_size_windows({{percent, required, std::nullopt}},
                                                       measured->curve.basis());
    RC_ASSERT(band);
    const auto margin = size_margin(*measured, percent, required, 0.9);
    const auto comparison = compare_with_band(*measured, *band, 0.9);
    RC_ASSERT(margin && comparison);
    RC_ASSERT(margin->outcome == comparison->outcome);
    RC_ASSERT(margin->stones_to_decide == comparison->stones_to_decide);
    if (margin->outcome == Outcome::meets) RC_ASSERT(*margin->margin >= 1 - 1e-9);
    if (margin->outcome == Outcome::falls_short) RC_ASSERT(*margin->margin <= 1 + 1e-9);
  });
}

TEST(EvidenceProperty, AnyBinsGiveACurveOrANamedProblem) {
  holds("hostile bins", [] {
    const auto numbers = *rc::gen::container<std::vector<double>>(rc::gen::arbitrary<double>());
    std::vector<CountBin> bins;
    for (std::size_t i = 0; i + 2 < numbers.size(); i += 3) {
      CountBin bin;
      if (numbers[i] > 0) bin.lower = Length::meters(numbers[i]);
      bin.upper = Length::meters(numbers[i + 1]);
      bin.stones = *rc::gen::arbitrary<int>();
      bins.push_back(bin);
    }
    const auto measured = gradation_from_bins(bins, some_picking());
    if (measured) {
      RC_ASSERT(std::isfinite(measured->effective_stones));
    } else {
      for (const auto& problem : measured.problems()) {
        RC_ASSERT(!problem.code.empty() && !problem.what.empty());
      }
    }
  });
}

}  // namespace
}  // namespace proofstone
