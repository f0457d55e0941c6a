#include "engine/evidence/same_rock.h"

#include <gtest/gtest.h>

#include <limits>

namespace proofstone {
namespace {

MeasuredGradation pile(const std::vector<int>& counts, StonePicking picking = StonePicking::grid) {
  const double edges[] = {90, 128, 180, 256, 362, 512};
  std::vector<CountBin> bins;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    bins.push_back({Length::millimeters(edges[i]), Length::millimeters(edges[i + 1]), counts[i]});
  }
  return *gradation_from_bins(bins, picking);
}

TEST(ChiSquareOfRows, PublishedTables) {
  // NIST e-Handbook §7.4.5 (check G37).
  const auto nist = chi_square_of_rows({{15, 21, 45, 13}, {26, 31, 34, 5}, {33, 17, 49, 20}});
  ASSERT_TRUE(nist);
  EXPECT_NEAR(nist->statistic, 19.178, 0.001);
  EXPECT_EQ(nist->degrees_of_freedom, 6);
  EXPECT_NEAR(nist->chance, 0.003873, 1e-6);
  // Agresti, in the documentation of R's chisq.test (check G38).
  const auto agresti = chi_square_of_rows({{762, 327, 468}, {484, 239, 477}});
  ASSERT_TRUE(agresti);
  EXPECT_NEAR(agresti->statistic, 30.070, 0.001);
  EXPECT_NEAR(agresti->chance, 2.954e-7, 1e-10);
}

TEST(ChiSquareOfRows, EmptyColumnsCountForNothing) {
  const auto with = chi_square_of_rows({{10, 0, 20}, {15, 0, 12}});
  const auto without = chi_square_of_rows({{10, 20}, {15, 12}});
  ASSERT_TRUE(with && without);
  EXPECT_DOUBLE_EQ(with->statistic, without->statistic);
  EXPECT_EQ(with->degrees_of_freedom, 1);
}

TEST(ChiSquareOfRows, BadTables) {
  const auto code = [](const std::vector<std::vector<double>>& rows) {
    const auto test = chi_square_of_rows(rows);
    return test ? std::string("no problem") : test.problems().front().code;
  };
  EXPECT_EQ(code({}), "too-few-rows");
  EXPECT_EQ(code({{1, 2}}), "too-few-rows");
  EXPECT_EQ(code({{1, 2}, {1}}), "rows-differ");
  EXPECT_EQ(code({{1, 2}, {0, 0}}), "empty-row");
  EXPECT_EQ(code({{1, -2}, {1, 1}}), "negative-count");
  EXPECT_EQ(code({{1, std::numeric_limits<double>::quiet_NaN()}, {1, 1}}), "negative-count");
  EXPECT_EQ(code({{5, 0}, {7, 0}}), "too-few-classes");
  EXPECT_EQ(code({{}, {}}), "empty-row");
}

TEST(SameRock, EqualCountsDoNotDiffer) {
  const auto look = pile({8, 17, 30, 29, 16});
  const auto same = same_rock({look, look}, 0.95);
  ASSERT_TRUE(same);
  EXPECT_FALSE(same->differ);
  EXPECT_NEAR(same->test.statistic, 0, 1e-9);
  EXPECT_GT(same->test.chance, 0.999);
  EXPECT_EQ(same->class_edges.size(), 5u);
}

TEST(SameRock, FindsAFinerPile) {
  const auto coarse = pile({8, 17, 30, 29, 16});
  const auto finer = pile({30, 34, 22, 10, 4});
  const auto same = same_rock({coarse, finer}, 0.95);
  ASSERT_TRUE(same);
  EXPECT_TRUE(same->differ);
  EXPECT_LT(same->test.chance, 1e-4);
}

TEST(SameRock, FewEffectiveStonesShowLess) {
  const std::vector<int> coarse{8, 17, 30, 29, 16};
  const std::vector<int> finer{16, 25, 30, 20, 9};
  const auto grid = same_rock({pile(coarse), pile(finer)}, 0.95);
  const auto whole =
      same_rock({pile(coarse, StonePicking::whole), pile(finer, StonePicking::whole)}, 0.95);
  ASSERT_TRUE(grid && whole);
  EXPECT_LT(grid->test.chance, whole->test.chance);
}

TEST(SameRock, TooFewStonesIsAProblem) {
  const auto few = pile({1, 1, 2, 1, 0});
  const auto same = same_rock({few, few}, 0.95);
  ASSERT_FALSE(same);
  EXPECT_EQ(same.problems().front().code, "too-few-stones");
  EXPECT_FALSE(same_rock({few}, 0.95));
  EXPECT_FALSE(same_rock({}, 0.95));
  EXPECT_FALSE(same_rock({few, few}, 95));
}

TEST(SameRock, SmallLookJoinsClasses) {
  const auto same = same_rock({pile({8, 17, 30, 29, 16}), pile({1, 3, 5, 4, 2})}, 0.95);
  ASSERT_TRUE(same);
  EXPECT_LT(same->class_edges.size(), 5u);
  EXPECT_GE(same->class_edges.size(), 1u);
}

}  // namespace
}  // namespace proofstone
