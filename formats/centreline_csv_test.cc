#include "formats/centreline_csv.h"

#include <gtest/gtest.h>

#include <string>

namespace proofstone {
namespace {

Problem problem_of(const std::string& rows,
                   const std::string& header = "easting (ft),northing (ft)\n") {
  const auto course = read_centreline_csv(header + rows, "course.csv");
  if (course) {
    ADD_FAILURE() << "was read: " << rows;
    return {};
  }
  EXPECT_EQ(course.problems().front().file, "course.csv");
  return course.problems().front();
}

TEST(CentrelineCsv, ReadsPointsInTheUnitsOfTheirHeadings) {
  const auto course = read_centreline_csv(
      "easting (US survey ft);northing (m)\n0;31.2\n10;30\n20;31\n", "course.csv");
  ASSERT_TRUE(course);
  ASSERT_EQ(course->points.size(), 3U);
  EXPECT_EQ(course->points[1].x.si(), 10 * (1200.0 / 3937.0));
  EXPECT_EQ(course->points[0].y.si(), 31.2);
}

TEST(CentrelineCsv, RefusesAPointListedTwiceAndSaysTheRow) {
  const auto problem = problem_of("0,0\n\n5,4\n5,4\n20,9\n");
  EXPECT_EQ(problem.code, "repeated-point");
  EXPECT_EQ(problem.where.substr(0, 5), "row 5");
}

TEST(CentrelineCsv, RefusesWhatCannotBeRead) {
  EXPECT_EQ(problem_of("0,0\n5,4\n").code, "too-few-points");
  EXPECT_NE(problem_of("0,0\n5,x\n7,7\n").what, "");
  EXPECT_NE(problem_of("0,0\n5,1\n7,7\n", "easting,northing\n").what, "");
}

}  // namespace
}  // namespace proofstone
