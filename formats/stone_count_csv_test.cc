#include "formats/stone_count_csv.h"

#include <gtest/gtest.h>

#include <string>

namespace proofstone {
namespace {

Problem problem_of(const std::string& text) {
  const auto count = read_stone_count_csv(text, "count.csv");
  if (count) {
    ADD_FAILURE() << "was read: " << text;
    return {};
  }
  EXPECT_EQ(count.problems().front().file, "count.csv");
  return count.problems().front();
}

TEST(StoneCountCsv, ReadsOneStoneARow) {
  const auto count = read_stone_count_csv(
      "# tape grid\nstone,longest axis (ft),intermediate axis (in),shortest axis (mm)\n"
      "1,1.5,11.5,200\n2,,7,\n3,1,9.25,\n",
      "count.csv");
  ASSERT_TRUE(count);
  ASSERT_EQ(count->intermediate_axes.size(), 3U);
  EXPECT_EQ(count->intermediate_axes[0].si(), Length::inches(11.5).si());
  EXPECT_TRUE(count->bins.empty());
  EXPECT_EQ(count->axis_unit.symbol, "in");
}

TEST(StoneCountCsv, NeedsOnlyTheIntermediateAxis) {
  const auto count = read_stone_count_csv("intermediate axis (cm)\n31\n24\n40\n", "count.csv");
  ASSERT_TRUE(count);
  EXPECT_EQ(count->intermediate_axes[2].si(), 40 * 0.01);
}

TEST(StoneCountCsv, ReadsBins) {
  const auto count = read_stone_count_csv(
      "larger than (in),not larger than (in),stones\n,3,4\n3,6,17\n6,12,20\n", "count.csv");
  ASSERT_TRUE(count);
  ASSERT_EQ(count->bins.size(), 3U);
  EXPECT_FALSE(count->bins[0].lower);
  EXPECT_EQ(count->bins[1].lower->si(), Length::inches(3).si());
  EXPECT_EQ(count->bins[2].stones, 20);
  EXPECT_TRUE(count->intermediate_axes.empty());
}

TEST(StoneCountCsv, TakesTheLargestBinFirst) {
  const auto count = read_stone_count_csv(
      "larger than (in),not larger than (in),stones\n6,12,20\n3,6,17\n0,3,4\n", "count.csv");
  ASSERT_TRUE(count);
  EXPECT_FALSE(count->bins[2].lower);
}

TEST(StoneCountCsv, RefusesAxesThatAreNotInOrder) {
  const std::string header = "intermediate axis (in),longest axis (in),shortest axis (in)\n";
  EXPECT_EQ(problem_of(header + "10,9,5\n8,9,5\n").code, "axes-out-of-order");
  EXPECT_EQ(problem_of(header + "10,12,11\n8,9,5\n").where, "row 2, shortest axis");
}

TEST(StoneCountCsv, RefusesAStoneListedTwice) {
  const auto problem = problem_of("stone,intermediate axis (in)\n1,10\n2,9\n1,10\n");
  EXPECT_EQ(problem.code, "duplicate-stone");
  EXPECT_EQ(problem.where, "row 4, stone");
}

TEST(StoneCountCsv, RefusesBinsThatDoNotJoin) {
  const std::string header = "larger than (in),not larger than (in),stones\n";
  EXPECT_EQ(problem_of(header + ",3,4\n4,6,17\n").where.substr(0, 5), "row 3");  // a gap
  EXPECT_EQ(problem_of(header + ",3,4\n2,6,17\n").where.substr(0, 5), "row 3");  // an overlap
  EXPECT_EQ(problem_of(header + ",3,4\n6,5,17\n").where.substr(0, 5), "row 3");  // turned round
  EXPECT_EQ(problem_of(header + "6,9,4\n3,6,17\n9,12,1\n").where.substr(0, 4), "row ");
  EXPECT_EQ(problem_of(header + ",3,4\n,6,17\n").where.substr(0, 5), "row 3");  // open twice
  EXPECT_EQ(problem_of(header + ",3,4\n,6,1\n6,9,1\n").code, "missing-value");
}

TEST(StoneCountCsv, RefusesCountsThatAreNotWhole) {
  const std::string header = "larger than (in),not larger than (in),stones\n,3,4\n3,6,";
  for (const std::string stones : {"2.5", "-1", "1e3", "1000001", "99999999999999999999"}) {
    EXPECT_EQ(problem_of(header + stones + "\n").code, "not-a-count") << stones;
  }
  EXPECT_EQ(problem_of(header + "\n").code, "missing-value");
  EXPECT_EQ(problem_of(header + "7 stones\n").code, "unit-mixed-in");
}

TEST(StoneCountCsv, RefusesACountOfNothing) {
  EXPECT_FALSE(
      problem_of("larger than (in),not larger than (in),stones\n,3,0\n3,6,0\n").what.empty());
}

TEST(StoneCountCsv, RefusesAMixtureOfTheTwoForms) {
  EXPECT_EQ(problem_of("stone,intermediate axis (in),stones\n1,10,1\n").code, "unknown-column");
}

TEST(StoneCountCsv, RefusesAbsurdSizes) {
  EXPECT_EQ(problem_of("intermediate axis (ft)\n10\n2000000\n7\n").where.substr(0, 5), "row 3");
}

}  // namespace
}  // namespace proofstone
