#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "engine/evidence/measured_gradation.h"

namespace proofstone {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

std::vector<CountBin> bins_mm(const std::vector<double>& edges, const std::vector<int>& counts) {
  std::vector<CountBin> bins;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    bins.push_back({Length::millimeters(edges[i]), Length::millimeters(edges[i + 1]), counts[i]});
  }
  return bins;
}

std::vector<Length> stones_mm(const std::vector<double>& sizes) {
  std::vector<Length> stones;
  for (const double size : sizes) stones.push_back(Length::millimeters(size));
  return stones;
}

double percent_at(const MeasuredGradation& measured, double mm) {
  return measured.curve.percent_smaller(Length::millimeters(mm));
}

/// The only problem's code and place, "code at place".
template <class T>
std::string only_problem(const Expected<T>& expected) {
  if (expected) return "no problem";
  if (expected.problems().size() != 1) return "several problems";
  const auto& problem = expected.problems().front();
  EXPECT_FALSE(problem.what.empty());
  return problem.code + " at " + problem.where;
}

bool mentions(const MeasuredGradation& measured, const std::string& words) {
  for (const auto& caution : measured.cautions) {
    if (caution.find(words) != std::string::npos) return true;
  }
  return false;
}

/// Reference §3.5: twenty stones of one load, mm.
const std::vector<double> load{110, 135, 150, 160, 175, 180, 195, 205, 210, 220,
                               235, 245, 255, 270, 285, 300, 320, 345, 380, 430};

TEST(GradationFromBins, GridCountNeedsNoConversion) {
  const auto measured = gradation_from_bins(
      bins_mm({90, 128, 180, 256, 362, 512}, {8, 17, 30, 29, 16}), StonePicking::grid);
  ASSERT_TRUE(measured);
  EXPECT_DOUBLE_EQ(percent_at(*measured, 90), 0);
  EXPECT_DOUBLE_EQ(percent_at(*measured, 180), 25);
  EXPECT_DOUBLE_EQ(percent_at(*measured, 512), 100);
  EXPECT_DOUBLE_EQ(measured->effective_stones, 100);
  for (const double effective : measured->effective_at_points) EXPECT_DOUBLE_EQ(effective, 100);
  EXPECT_EQ(measured->stones, 100);
  EXPECT_TRUE(measured->picked_on_grid);
  EXPECT_TRUE(measured->cautions.empty());
  EXPECT_EQ(measured->curve.basis(),
            (GradationBasis{SizeMeaning::intermediate_axis, PercentOf::mass}));
  // Log interpolation, reference §2.3 (check G10).
  EXPECT_NEAR(measured->curve.size_at(50)->millimeters(), 241.40, 0.01);
}

TEST(GradationFromBins, EqualVolumesGiveHalfEachWay) {
  // Voidless cubes of edge 1 and 2, equal volumes: shares by number 8/9, 4/5, 2/3, 1/2 (check G08).
  const double root = std::sqrt(2.0);
  const std::vector<double> edges{100 / root, 100 * root, 200 * root};
  const std::vector<std::pair<StonePicking, std::vector<int>>> cases{{StonePicking::whole, {8, 1}},
                                                                     {StonePicking::area, {4, 1}},
                                                                     {StonePicking::line, {2, 1}},
                                                                     {StonePicking::grid, {1, 1}}};
  for (const auto& [picking, counts] : cases) {
    const auto measured = gradation_from_bins(bins_mm(edges, counts), picking);
    ASSERT_TRUE(measured);
    EXPECT_NEAR(percent_at(*measured, edges[1]), 50, 1e-10);
  }
}

TEST(GradationFromBins, LargestFirstIsTurnedRound) {
  auto bins = bins_mm({90, 128, 180, 256}, {8, 17, 30});
  const auto rising = gradation_from_bins(bins, StonePicking::area);
  std::reverse(bins.begin(), bins.end());
  const auto falling = gradation_from_bins(bins, StonePicking::area);
  ASSERT_TRUE(rising && falling);
  for (const double size : {90.0, 128.0, 150.0, 180.0, 256.0}) {
    EXPECT_DOUBLE_EQ(percent_at(*rising, size), percent_at(*falling, size));
  }
}

TEST(GradationFromBins, OpenSmallestBinStartsTheCurveAboveZero) {
  auto bins = bins_mm({90, 128, 180, 256}, {8, 17, 30});
  bins.front().lower.reset();
  const auto measured = gradation_from_bins(bins, StonePicking::grid);
  ASSERT_TRUE(measured);
  EXPECT_EQ(measured->curve.points().size(), 3u);
  EXPECT_NEAR(measured->curve.points().front().percent_smaller, 100.0 * 8 / 55, 1e-12);
  EXPECT_FALSE(measured->curve.size_at(10));
  EXPECT_TRUE(mentions(*measured, "how small is not known"));
  EXPECT_TRUE(mentions(*measured, "55 stones"));

  bins.front().lower = Length::millimeters(0);  // as many tables write it
  const auto from_zero = gradation_from_bins(bins, StonePicking::grid);
  ASSERT_TRUE(from_zero);
  EXPECT_EQ(from_zero->curve.points().size(), 3u);
}

TEST(GradationFromBins, TellsWhatWasSeenForAFact) {
  const auto measured =
      gradation_from_bins(bins_mm({60, 90, 128, 180, 256}, {0, 8, 17, 0}), StonePicking::grid);
  ASSERT_TRUE(measured);
  ASSERT_TRUE(measured->seen_larger_than && measured->seen_smaller_than);
  EXPECT_DOUBLE_EQ(measured->seen_larger_than->millimeters(), 128);
  EXPECT_NEAR(measured->seen_smaller_than->millimeters(), 128, 0.001);
  EXPECT_GT(*measured->seen_smaller_than, Length::millimeters(128));
}

TEST(GradationFromBins, CautionsAboutWideBinsAndConversion) {
  const auto wide = gradation_from_bins(bins_mm({50, 200, 300}, {60, 60}), StonePicking::area);
  ASSERT_TRUE(wide);
  EXPECT_TRUE(mentions(*wide, "which is wide"));
  const auto whole =
      gradation_from_bins(bins_mm({50, 100, 200, 400}, {200, 40, 8}), StonePicking::whole);
  ASSERT_TRUE(whole);
  EXPECT_TRUE(mentions(*whole, "speak for only"));
  EXPECT_LT(whole->effective_stones, 60);
}

TEST(GradationFromBins, RoundedEdgesOfAConversionJoin) {
  const std::vector<CountBin> bins{{Length::inches(6), Length::inches(12), 40},
                                   {Length::millimeters(305), Length::millimeters(457), 60}};
  const auto measured = gradation_from_bins(bins, StonePicking::grid);
  ASSERT_TRUE(measured);
  EXPECT_NEAR(measured->curve.percent_smaller(Length::inches(12)), 40, 1e-9);
}

TEST(GradationFromBins, BadInputNamesTheBin) {
  const auto problem_of = [](std::vector<CountBin> bins) {
    return only_problem(gradation_from_bins(bins, StonePicking::grid));
  };
  const auto good = bins_mm({90, 128, 180, 256}, {8, 17, 30});
  EXPECT_EQ(problem_of({}), "empty at ");
  EXPECT_EQ(problem_of(bins_mm({90, 128, 180}, {0, 0})), "no-stones at ");
  EXPECT_EQ(problem_of(bins_mm({90, 128, 180}, {8, -1})), "negative-count at bin 2");
  EXPECT_EQ(problem_of(bins_mm({90, 128, 180}, {8, 2'000'000'000})), "count-too-large at bin 2");
  EXPECT_EQ(problem_of(bins_mm({90, 128, 6000}, {8, 1})), "size-too-large at bin 2");
  EXPECT_EQ(problem_of(bins_mm({-90, 128}, {8})), "not-positive at bin 1");
  EXPECT_EQ(problem_of(bins_mm({90, nan}, {8})), "not-a-number at bin 1");
  EXPECT_EQ(problem_of(bins_mm({nan, 90}, {8})), "not-a-number at bin 1");
  auto bins = good;
  std::swap(*bins[1].lower, bins[1].upper);
  EXPECT_EQ(problem_of(bins), "reversed at bin 2");
  bins = good;
  bins[2].lower = Length::millimeters(190);
  EXPECT_EQ(problem_of(bins), "gap at bin 3");
  bins[2].lower = Length::millimeters(170);
  EXPECT_EQ(problem_of(bins), "overlap at bin 3");
  bins[2].lower.reset();
  EXPECT_EQ(problem_of(bins), "missing-lower-size at bin 3");
  bins = good;
  bins.push_back(bins[0]);
  std::swap(bins[0], bins[1]);
  EXPECT_FALSE(gradation_from_bins(bins, StonePicking::grid));
  EXPECT_EQ(problem_of({{std::nullopt, Length::millimeters(90), 5}}), "too-few at bin 1");
  EXPECT_FALSE(gradation_from_bins(std::vector<CountBin>(2000, good[0]), StonePicking::grid));
}

TEST(GradationFromStones, IsWithinHalfAStoneOfTheCountEverywhere) {
  const auto measured = gradation_from_stones(stones_mm(load), StonePicking::grid);
  ASSERT_TRUE(measured);
  const double n = static_cast<double>(load.size());
  for (double size = 100; size < 450; size += 0.37) {
    double smaller = 0;
    for (const double stone : load) smaller += stone < size ? 1 : 0;
    EXPECT_NEAR(percent_at(*measured, size) * n / 100, smaller, 0.5 + 1e-6) << size;
  }
  // At a measured size just half of its stone counts as smaller.
  EXPECT_NEAR(percent_at(*measured, 195), 100 * 6.5 / 20, 1e-9);
  EXPECT_DOUBLE_EQ(measured->effective_stones, 20);
}

TEST(GradationFromStones, EqualReadingsCountHalf) {
  std::vector<double> sizes(10, 300.0);
  for (int i = 0; i < 5; ++i) sizes.push_back(200);
  for (int i = 0; i < 5; ++i) sizes.push_back(400);
  const auto measured = gradation_from_stones(stones_mm(sizes), StonePicking::grid);
  ASSERT_TRUE(measured);
  EXPECT_NEAR(percent_at(*measured, 300), 50, 1e-9);
  EXPECT_NEAR(percent_at(*measured, 199), 0, 1e-9);
  EXPECT_NEAR(percent_at(*measured, 401), 100, 1e-9);
}

TEST(GradationFromStones, OneStoneMakesAnUprightCurve) {
  const auto measured = gradation_from_stones(stones_mm({250}), StonePicking::whole);
  ASSERT_TRUE(measured);
  EXPECT_NEAR(measured->curve.size_at(50)->millimeters(), 250, 1e-3);
  EXPECT_DOUBLE_EQ(measured->effective_stones, 1);
}

TEST(GradationFromStones, WholeLoadIsWeightedByTheCubeOfTheSize) {
  // Reference §3.5: below 200 mm 7.85 % by mass, effective stones 9.77; check G21.
  const auto measured = gradation_from_stones(stones_mm(load), StonePicking::whole);
  ASSERT_TRUE(measured);
  EXPECT_NEAR(measured->effective_stones, 9.77, 0.01);
  // Between 195 and 205 mm half a stone of either is read off; the count itself gives 7.85 %.
  EXPECT_NEAR(percent_at(*measured, 200), 7.85, 0.1);
  // At the coarse end fewer still stand behind the share.
  EXPECT_LT(measured->effective_stones_at(Length::millimeters(400)), 8);
  // The many small stones weigh little: they tell the fine end better than the whole is told.
  EXPECT_GT(measured->effective_stones_at(Length::millimeters(120)), measured->effective_stones);
  // A stone of 860 mm would weigh eight times the largest.
  EXPECT_NEAR(measured->effective_stones_at(Length::millimeters(860)),
              measured->effective_stones_at(Length::millimeters(431)) / 8, 0.05);
  EXPECT_TRUE(mentions(*measured, "fewer than 20 equal stones"));
}

TEST(GradationFromStones, CautionsAboutSuspiciousReadings) {
  auto twice = load;
  twice.insert(twice.end(), load.begin(), load.end());
  const auto copied = gradation_from_stones(stones_mm(twice), StonePicking::grid);
  ASSERT_TRUE(copied);
  EXPECT_TRUE(mentions(*copied, "entered twice"));

  auto run = load;
  run.insert(run.begin() + 3, 12, 222.0);
  const auto in_a_row = gradation_from_stones(stones_mm(run), StonePicking::grid);
  ASSERT_TRUE(in_a_row);
  EXPECT_TRUE(mentions(*in_a_row, "Stones 4 to 15 have the same reading"));
  EXPECT_TRUE(mentions(*in_a_row, "12 of 32 readings are equal"));

  const auto honest = gradation_from_stones(stones_mm(load), StonePicking::grid);
  ASSERT_TRUE(honest);
  EXPECT_EQ(honest->cautions.size(), 1u);  // few stones only
  EXPECT_TRUE(mentions(*honest, "20 stones were handled"));
}

TEST(GradationFromStones, BadInputNamesTheStone) {
  const auto problem_of = [](const std::vector<double>& sizes) {
    return only_problem(gradation_from_stones(stones_mm(sizes), StonePicking::grid));
  };
  EXPECT_EQ(problem_of({}), "no-stones at ");
  EXPECT_EQ(problem_of({100, 0, 200}), "not-positive at stone 2");
  EXPECT_EQ(problem_of({100, 200, -5}), "not-positive at stone 3");
  EXPECT_EQ(problem_of({nan, 200}), "not-a-number at stone 1");
  EXPECT_EQ(problem_of({100, std::numeric_limits<double>::infinity()}), "not-a-number at stone 2");
  EXPECT_EQ(problem_of({100, 12'000}), "size-too-large at stone 2");
  const auto many =
      gradation_from_stones(stones_mm(std::vector<double>(500, nan)), StonePicking::grid);
  ASSERT_FALSE(many);
  EXPECT_EQ(many.problems().size(), 20u);
}

}  // namespace
}  // namespace proofstone
