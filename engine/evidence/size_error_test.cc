#include "engine/evidence/size_error.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/size_margin.h"

namespace proofstone {
namespace {

/// 600 stones whose D50 of 300 mm is known to 6 %, of which 3 % last.
MeasuredGradation with_errors() {
  MeasuredGradation measured{*Gradation::make({{Length::millimeters(200), 0},
                                               {Length::millimeters(300), 50},
                                               {Length::millimeters(450), 100}},
                                              {})};
  measured.stones = 600;
  measured.photos = 2;
  measured.effective_stones = 40;
  measured.effective_at_points = {40, 40, 40};
  measured.lasting_at_points = {0.25 / 40, 0.25 / 40, 0.25 / 40};
  measured.size_errors = {{25, 0.10}, {50, 0.06}, {75, 0.08}};
  return measured;
}

TEST(SizeErrorAt, IsStraightBetweenPercentsAndUnknownBeyondThem) {
  const auto measured = with_errors();
  EXPECT_NEAR(*size_error_at(measured, 50), 0.06, 1e-12);
  EXPECT_NEAR(*size_error_at(measured, 30), 0.092, 1e-12);
  EXPECT_FALSE(size_error_at(measured, 20));
  EXPECT_FALSE(size_error_at(measured, 80));
}

TEST(SizeErrorAt, FallsWithMoreStonesDownToWhatLasts) {
  const auto measured = with_errors();
  EXPECT_NEAR(*size_error_at(measured, 50, 4), 0.06 * std::sqrt(0.25 + 0.75 / 4), 1e-12);
  EXPECT_NEAR(*size_error_at(measured, 50, 1e12), 0.03, 1e-6);
}

TEST(ConfidenceBySize, IsThatOfItsInterval) {
  const auto measured = with_errors();
  const auto interval = size_interval(measured, 50, 0.90);
  ASSERT_TRUE(interval.low && interval.high);
  EXPECT_NEAR(*interval.low / Length::millimeters(300), std::exp(-1.644854 * 0.06), 1e-6);
  EXPECT_NEAR(*confidence_size_at_least(measured, 50, *interval.low), 0.95, 1e-9);
  EXPECT_NEAR(*confidence_size_at_most(measured, 50, *interval.high), 0.95, 1e-9);
  EXPECT_FALSE(confidence_size_at_least(measured, 95, *interval.low));
}

TEST(SizeMargin, OfPhotosIsDecidedWhereTheIntervalClearsTheSize) {
  const auto measured = with_errors();
  const auto at = [&](double millimeters) {
    return *size_margin(measured, 50, Length::millimeters(millimeters), 0.95);
  };
  EXPECT_EQ(at(270).outcome, Outcome::meets);
  EXPECT_EQ(at(335).outcome, Outcome::falls_short);
  // exp(-1.645·0.06) leaves 271.8 mm: 280 mm takes more photos, and what lasts allows 285.5 mm.
  EXPECT_EQ(at(280).outcome, Outcome::not_yet_known);
  ASSERT_TRUE(at(280).stones_to_decide);
  EXPECT_GT(*at(280).stones_to_decide, 600);
  EXPECT_FALSE(at(290).stones_to_decide);
}

}  // namespace
}  // namespace proofstone
