// The parts that pictures are made of: ticks, widths of text, places of labels, stones.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "report/axis_ticks.h"
#include "report/label_placement.h"
#include "report/rock_packing.h"
#include "report/stone_shape.h"
#include "report/text_width.h"

namespace proofstone {
namespace {

std::vector<std::string> labels_of(const std::vector<AxisTick>& ticks) {
  std::vector<std::string> labels;
  for (const auto& tick : ticks) labels.push_back(tick.label);
  return labels;
}

using Labels = std::vector<std::string>;

TEST(EvenTicks, AreRound) {
  EXPECT_EQ(labels_of(even_ticks(0, 240, 5)), (Labels{"0", "50", "100", "150", "200"}));
  EXPECT_EQ(labels_of(even_ticks(104.3, 119.6, 4)), (Labels{"105", "110", "115"}));
  EXPECT_EQ(labels_of(even_ticks(-0.31, 0.22, 5)), (Labels{"-0.2", "0.0", "0.2"}));
  EXPECT_EQ(labels_of(even_ticks(0, 90000, 2)), (Labels{"0", "50000"}));
}

TEST(EvenTicks, SayNothingAboutRangesThatAreNone) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_TRUE(even_ticks(1, 1, 5).empty());
  EXPECT_TRUE(even_ticks(2, 1, 5).empty());
  EXPECT_TRUE(even_ticks(nan, 1, 5).empty());
  EXPECT_TRUE(even_ticks(0, std::numeric_limits<double>::infinity(), 5).empty());
  EXPECT_TRUE(even_ticks(1e15, 1e15 + 1, 5).empty());
  EXPECT_TRUE(even_ticks(0, 1e-12, 5).empty());
}

TEST(StoneSizeTicks, AreThoseOfTheTrade) {
  EXPECT_EQ(labels_of(stone_size_ticks(5, 25, UnitSystem::us_customary)),
            (Labels{"6", "9", "12", "15", "18", "24"}));
  EXPECT_EQ(labels_of(stone_size_ticks(100, 500, UnitSystem::si)),
            (Labels{"100", "150", "200", "300", "400", "500"}));
}

TEST(TextWidth, WrapsAtSpacesAndCutsLongWords) {
  EXPECT_EQ(wrapped("one two three", text_width("one two", 13) + 1, 13),
            (Labels{"one two", "three"}));
  EXPECT_TRUE(wrapped("", 100, 13).empty());
  for (const auto& line : wrapped(std::string(200, 'm') + " end", 120, 13)) {
    EXPECT_LE(text_width(line, 13), 120);
  }
  // A multi-byte character is never cut in two.
  EXPECT_EQ(wrapped("石石", 5, 13), (Labels{"石", "石"}));
  EXPECT_EQ(shortened("石石石", 30, 13).substr(0, 3), "石");
}

TEST(LabelPlacement, TakesTheFirstFreePlaceInsideTheRoom) {
  LabelPlacement placement({0, 0, 100, 100});
  const std::vector<LabelPlace> places{{{90, 50}, TextAnchor::start},
                                       {{10, 50}, TextAnchor::start}};
  const auto first = placement.place(40, 12, places);
  ASSERT_TRUE(first);
  EXPECT_EQ(first->baseline.x, 10);  // the other would leave the room
  EXPECT_FALSE(placement.place(40, 12, places));
  placement.take_line({{0, 80}, {100, 80}}, 2);
  EXPECT_FALSE(placement.place(20, 12, {{{60, 82}, TextAnchor::middle}}));
  EXPECT_TRUE(placement.place(20, 12, {{{60, 96}, TextAnchor::middle}}));
}

TEST(StoneOutline, IsAsTallAsAskedAndStandsOnItsFoot) {
  for (int seed = 0; seed < 50; ++seed) {
    SteadyNumbers numbers(static_cast<std::uint64_t>(seed));
    const auto outline = stone_outline({10, 200}, 60, numbers);
    const auto [top, bottom] = std::minmax_element(
        outline.begin(), outline.end(), [](const auto& a, const auto& b) { return a.y < b.y; });
    EXPECT_NEAR(bottom->y, 200, 1e-9);
    EXPECT_NEAR(top->y, 140, 1e-9);
  }
}

TEST(SteadyNumbers, AreTheSameEverywhere) {
  SteadyNumbers numbers(std::uint64_t{0});
  // First outputs of SplitMix64 with seed 0: e220a8397b1dcdaf, 6e789e6aa1b965f4 [memory], as
  // shares.
  EXPECT_EQ(numbers.between(0, 1), static_cast<double>(0xE220A8397B1DCDAFULL >> 11U) * 0x1.0p-53);
  EXPECT_EQ(numbers.between(0, 1), static_cast<double>(0x6E789E6AA1B965F4ULL >> 11U) * 0x1.0p-53);
}

SectionPicture::RockLayer bank_layer(double thickness_m) {
  SectionPicture::RockLayer layer;
  layer.surface = {{Length::meters(0), Length::meters(4)},
                   {Length::meters(8), Length::meters(0)},
                   {Length::meters(14), Length::meters(0)}};
  layer.thickness = Length::meters(thickness_m);
  return layer;
}

TEST(LayerStrip, LiesBelowItsSurfaceAtItsThickness) {
  const auto strip = LayerStrip::make(bank_layer(0.6));
  ASSERT_TRUE(strip);
  EXPECT_NEAR(strip->length(), std::sqrt(80.0) + 6, 1e-12);
  const auto top = strip->at(2, 0);
  const auto bottom = strip->at(2, 0.6);
  EXPECT_LT(bottom.z, top.z);
  // Square to a slope of 2H:1V, away from the bend.
  const auto end = strip->at(14.0, 0.6);
  EXPECT_NEAR(strip->at(14.0, 0).z - end.z, 0.6, 0.02);
  EXPECT_EQ(strip->outline().size(), 6U);
}

TEST(LayerStrip, TurnsASurfaceDrawnFromRightToLeft) {
  auto layer = bank_layer(0.6);
  std::reverse(layer.surface.begin(), layer.surface.end());
  const auto strip = LayerStrip::make(layer);
  ASSERT_TRUE(strip);
  EXPECT_LT(strip->at(2, 0.6).z, strip->at(2, 0).z);
}

TEST(LayerStrip, IsNothingWithoutLengthOrThickness) {
  EXPECT_FALSE(LayerStrip::make(bank_layer(0)));
  EXPECT_FALSE(LayerStrip::make(bank_layer(-1)));
  EXPECT_FALSE(LayerStrip::make(bank_layer(std::numeric_limits<double>::quiet_NaN())));
  SectionPicture::RockLayer point;
  point.surface = {{Length::meters(1), Length::meters(1)}, {Length::meters(1), Length::meters(1)}};
  point.thickness = Length::meters(1);
  EXPECT_FALSE(LayerStrip::make(point));
}

double area_of(const std::vector<SectionPlace>& outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const auto& a = outline[i];
    const auto& b = outline[(i + 1) % outline.size()];
    twice += a.x * b.z - b.x * a.z;
  }
  return std::abs(twice) / 2;
}

TEST(PackedStones, FillTheLayerWithStonesOfItsMedian) {
  const auto strip = LayerStrip::make(bank_layer(0.6));
  ASSERT_TRUE(strip);
  constexpr double median = 0.3;
  SteadyNumbers numbers("bank");
  const auto stones = packed_stones(*strip, 0, strip->length(), median, 600, numbers);
  const double expected = expected_stones(*strip, 0, strip->length(), median);
  EXPECT_NEAR(static_cast<double>(stones.size()), expected, 0.15 * expected);

  std::vector<double> sizes;  // diameter of the circle of the same area
  double covered = 0;
  for (const auto& stone : stones) {
    covered += area_of(stone);
    sizes.push_back(std::sqrt(4 * area_of(stone) / 3.14159265358979323846));
  }
  std::sort(sizes.begin(), sizes.end());
  EXPECT_NEAR(sizes[sizes.size() / 2], median, 0.1 * median);
  const double share = covered / (0.6 * strip->length());
  EXPECT_GT(share, 0.6);
  EXPECT_LT(share, 1.0);
}

TEST(PackedStones, AreNeverMoreThanAllowed) {
  const auto strip = LayerStrip::make(bank_layer(0.6));
  ASSERT_TRUE(strip);
  SteadyNumbers numbers("bank");
  EXPECT_LE(packed_stones(*strip, 0, strip->length(), 0.001, 600, numbers).size(), 600U);
}

TEST(PackedStones, AreTheSameForTheSameNumbers) {
  const auto strip = LayerStrip::make(bank_layer(0.6));
  ASSERT_TRUE(strip);
  SteadyNumbers one("bank");
  SteadyNumbers other("bank");
  const auto a = packed_stones(*strip, 0, 5, 0.3, 600, one);
  const auto b = packed_stones(*strip, 0, 5, 0.3, 600, other);
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    ASSERT_EQ(a[i].size(), b[i].size());
    EXPECT_EQ(a[i][0].x, b[i][0].x);
  }
}

}  // namespace
}  // namespace proofstone
