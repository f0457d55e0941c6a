#include "formats/gradation_csv.h"

#include <gtest/gtest.h>

#include <string>

#include "formats/sieve_name.h"

namespace proofstone {
namespace {

Problem problem_of(const std::string& text) {
  const auto table = read_gradation_csv(text, "soil.csv");
  if (table) {
    ADD_FAILURE() << "was read: " << text;
    return {};
  }
  EXPECT_EQ(table.problems().front().file, "soil.csv");
  return table.problems().front();
}

TEST(GradationCsv, ReadsSievesByTheirNames) {
  const auto table = read_gradation_csv(
      "sieve,passing (%)\n3 in,100\n1 1/2 in,96\n3/4 in,88\nNo. 4,71\n#40,44\nNo. 200,18\n0.02 "
      "mm,9\n",
      "soil.csv");
  ASSERT_TRUE(table) << table.problems().front().sentence();
  ASSERT_EQ(table->points.size(), 7u);
  EXPECT_NEAR(table->points[1].size.inches(), 1.5, 1e-12);
  EXPECT_NEAR(table->points[2].size.inches(), 0.75, 1e-12);
  EXPECT_NEAR(table->points[3].size.millimeters(), 4.75, 1e-12);
  EXPECT_NEAR(table->points[5].size.millimeters(), 0.075, 1e-12);
  EXPECT_NEAR(table->points[5].percent_smaller, 18, 1e-12);
  EXPECT_EQ(table->units[0].symbol, "in");
  EXPECT_EQ(table->units[6].symbol, "mm");
}

TEST(GradationCsv, ReadsSizesInTheUnitOfTheHeadingAndEitherWayRound) {
  for (const std::string rows : {"19,100\n4.75,78\n0.075,30\n", "0.075,30\n4.75,78\n19,100\n"}) {
    const auto table = read_gradation_csv("size (mm),passing (%)\n" + rows, "soil.csv");
    ASSERT_TRUE(table) << rows;
    EXPECT_EQ(table->points.size(), 3u);
  }
}

TEST(GradationCsv, ReadsWhatIsRetainedOnEachSieve) {
  const auto table = read_gradation_csv(
      "sieve,retained (%)\nNo. 4,22\nNo. 40,40\nNo. 200,20\npan,18\n", "soil.csv");
  ASSERT_TRUE(table) << table.problems().front().sentence();
  ASSERT_EQ(table->points.size(), 3u);
  EXPECT_NEAR(table->points[0].percent_smaller, 78, 1e-9);
  EXPECT_NEAR(table->points[2].percent_smaller, 18, 1e-9);
}

TEST(GradationCsv, SumsThatAreNot100AreNamedWithTheirMend) {
  auto problem = problem_of("sieve,retained (%)\nNo. 4,22\nNo. 40,40\nNo. 200,20\npan,8\n");
  EXPECT_EQ(problem.code, "sum-not-100");
  EXPECT_EQ(problem.where, "retained");
  EXPECT_NE(problem.what.find("90"), std::string::npos);
  problem = problem_of("sieve,retained (%)\nNo. 4,22\nNo. 40,40\nNo. 200,20\n");
  EXPECT_NE(problem.allowed.find("pan"), std::string::npos);
  problem = problem_of("sieve,retained (%)\nNo. 4,22\nNo. 40,62\nNo. 200,82\n");
  EXPECT_NE(problem.allowed.find("cumulative"), std::string::npos);
}

TEST(GradationCsv, SievesInMixedOrderAreNamed) {
  const auto problem = problem_of("sieve,passing (%)\n3 in,100\nNo. 4,60\n3/4 in,80\nNo. 200,10\n");
  EXPECT_EQ(problem.code, "sieve-order");
  EXPECT_EQ(problem.where, "row 4, sieve");
  EXPECT_EQ(problem_of("sieve,passing (%)\nNo. 4,60\n4.75 mm,50\n").code, "size-twice");
}

TEST(GradationCsv, PercentsThatRiseAreLocatedAndRetainedOnesTold) {
  auto problem = problem_of("size (mm),passing (%)\n19,0\n4.75,22\n0.075,82\n");
  EXPECT_EQ(problem.code, "retained-for-passing");
  EXPECT_EQ(problem.where, "row 3, passing");
  EXPECT_NE(problem.allowed.find("100 less each"), std::string::npos);
  problem = problem_of("size (mm),passing (%)\n19,100\n4.75,60\n2,71\n0.075,30\n");
  EXPECT_EQ(problem.code, "percent-falls");
  EXPECT_EQ(problem.where, "row 4, passing");
}

TEST(GradationCsv, MixedUnitsAndImpossibleValuesAreNamed) {
  EXPECT_EQ(problem_of("size (mm),passing (%)\n75,100\n3 in,90\n").code, "unit-mixed-in");
  EXPECT_EQ(problem_of("sieve,passing (%)\n75,100\nNo. 4,90\n").code, "unknown-sieve");
  EXPECT_EQ(problem_of("sieve,passing (%)\nNo. 7,100\nNo. 40,90\n").code, "unknown-sieve");
  EXPECT_EQ(problem_of("size (mm),passing (%)\n75,1000\n4,90\n").code, "percent-outside");
  EXPECT_EQ(problem_of("size (mm),passing (%)\n75,-1\n4,90\n").code, "negative");
  EXPECT_EQ(problem_of("size (mm),passing (%)\n0,100\n4,90\n").code, "not-positive");
  EXPECT_EQ(problem_of("size (mm),passing (%)\n75,nan\n4,90\n").code, "not-a-number");
  EXPECT_EQ(problem_of("size (mm),passing (%)\n75,\n4,90\n").code, "missing-value");
  EXPECT_EQ(problem_of("size,passing (%)\n75,100\n4,90\n").code, "missing-unit");
  EXPECT_EQ(problem_of("size (mm),passing (lb)\n75,100\n4,90\n").code, "unknown-unit");
  EXPECT_EQ(problem_of("size (mm),passing (%)\n75,100\n").code, "too-few-points");
  EXPECT_EQ(problem_of("sieve,passing (%)\nNo. 4,90\npan,10\n").code, "unknown-sieve");
  EXPECT_EQ(problem_of("sieve,retained (%)\nNo. 4,90\npan,5\npan,5\n").code, "size-twice");
  EXPECT_EQ(problem_of("").code.empty(), false);
}

TEST(SieveName, KnowsNumbersFractionsAndUnits) {
  EXPECT_NEAR(sieve_called("No. 10")->opening.millimeters(), 2, 1e-12);
  EXPECT_NEAR(sieve_called("no.200")->opening.millimeters(), 0.075, 1e-12);
  EXPECT_NEAR(sieve_called("1-1/2 in")->opening.inches(), 1.5, 1e-12);
  EXPECT_NEAR(sieve_called("3/8 in.")->opening.inches(), 0.375, 1e-12);
  EXPECT_NEAR(sieve_called("2.5 cm")->opening.millimeters(), 25, 1e-12);
  for (const char* bad : {"", "No.", "No. 9999", "4", "1/0 in", "3/", "1 1/2", "-3 in", "in"}) {
    EXPECT_FALSE(sieve_called(bad)) << bad;
  }
}

}  // namespace
}  // namespace proofstone
