#include "formats/weighed_sample_csv.h"

#include <gtest/gtest.h>

#include <string>

namespace proofstone {
namespace {

const std::string header = "larger than (in),not larger than (in),mass (lb),stones\n";

Problem problem_of(const std::string& rows) {
  const auto sample = read_weighed_sample_csv(header + rows, "weighed.csv");
  if (sample) {
    ADD_FAILURE() << "was read: " << rows;
    return {};
  }
  EXPECT_EQ(sample.problems().front().file, "weighed.csv");
  return sample.problems().front();
}

TEST(WeighedSampleCsv, ReadsGroups) {
  const auto sample = read_weighed_sample_csv(
      "larger than (mm),not larger than (mm),mass (t),stones\n,150,0.31,41\n150,300,.82,30\n",
      "weighed.csv");
  ASSERT_TRUE(sample);
  ASSERT_EQ(sample->groups.size(), 2U);
  EXPECT_FALSE(sample->groups[0].lower);
  EXPECT_EQ(sample->groups[1].mass.si(), 820.0);
  EXPECT_EQ(sample->groups[1].stones, 30);
  EXPECT_EQ(sample->mass_unit.symbol, "t");
}

TEST(WeighedSampleCsv, ReadsEveryMassUnit) {
  for (const std::string unit : {"lb", "kg", "ton", "t"}) {
    EXPECT_TRUE(read_weighed_sample_csv(
        "larger than (in),not larger than (in),mass (" + unit + "),stones\n,6,310,41\n6,9,820,30\n",
        "weighed.csv"))
        << unit;
  }
}

TEST(WeighedSampleCsv, StonesNeedNotBeCounted) {
  const auto none = read_weighed_sample_csv(
      "larger than (in),not larger than (in),mass (lb)\n0,6,310\n6,9,820\n", "weighed.csv");
  ASSERT_TRUE(none);
  EXPECT_FALSE(none->groups[0].lower);
  EXPECT_EQ(none->groups[1].stones, 0);
  const auto some = read_weighed_sample_csv(header + ",6,310,41\n6,9,820,\n", "weighed.csv");
  ASSERT_TRUE(some);
  EXPECT_EQ(some->groups[1].stones, 0);
}

TEST(WeighedSampleCsv, TakesTheLargestGroupFirst) {
  const auto sample = read_weighed_sample_csv(header + "6,9,820,30\n,6,310,41\n", "weighed.csv");
  ASSERT_TRUE(sample);
  EXPECT_FALSE(sample->groups[1].lower);
}

TEST(WeighedSampleCsv, RefusesGroupsThatDoNotJoin) {
  EXPECT_EQ(problem_of(",6,310,41\n7,9,820,30\n").where.substr(0, 5), "row 3");
  EXPECT_EQ(problem_of(",6,310,41\n5,9,820,30\n").where.substr(0, 5), "row 3");
  EXPECT_EQ(problem_of("9,6,310,41\n").where.substr(0, 5), "row 2");
}

TEST(WeighedSampleCsv, RefusesImpossibleMassesAndCounts) {
  EXPECT_EQ(problem_of(",6,-310,41\n6,9,820,30\n").code, "negative");
  EXPECT_EQ(problem_of(",6,310,0\n6,9,820,30\n").code, "mass-without-stones");
  EXPECT_EQ(problem_of(",6,0,3\n6,9,820,30\n").code, "mass-without-stones");
  EXPECT_EQ(problem_of("-1,6,310,4\n6,9,820,30\n").where, "row 2, larger than");
  EXPECT_EQ(problem_of(",6,310,4\n,9,820,30\n,12,1,1\n").where, "row 3, larger than");
  EXPECT_EQ(problem_of(",6,310,4.5\n6,9,820,30\n").code, "not-a-count");
  EXPECT_FALSE(problem_of(",6,0,0\n6,9,0,0\n").what.empty());
}

}  // namespace
}  // namespace proofstone
