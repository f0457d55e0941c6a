#include "formats/section_csv.h"

#include <gtest/gtest.h>

#include <string>

namespace proofstone {
namespace {

Problem problem_of(const std::string& rows,
                   const std::string& header = "station (ft),elevation (ft),roughness n\n") {
  const auto section = read_section_csv(header + rows, "section.csv");
  if (section) {
    ADD_FAILURE() << "was read: " << rows;
    return {};
  }
  EXPECT_EQ(section.problems().front().file, "section.csv");
  return section.problems().front();
}

TEST(SectionCsv, ReadsPointsInTheUnitsOfTheirHeadings) {
  const auto section = read_section_csv(
      "station (US survey ft);elevation (m);roughness n\n0;31.2;.045\n10;30;0.03\n20;31;3e-2\n",
      "section.csv");
  ASSERT_TRUE(section);
  ASSERT_EQ(section->points.size(), 3U);
  EXPECT_EQ(section->points[1].station.si(), 10 * (1200.0 / 3937.0));
  EXPECT_EQ(section->points[0].elevation.si(), 31.2);
  EXPECT_EQ(section->points[0].roughness.number(), 0.045);
  EXPECT_EQ(section->points[2].roughness.number(), 0.03);
  EXPECT_EQ(section->station_unit.symbol, "US survey ft");
  EXPECT_EQ(section->elevation_unit.symbol, "m");
}

TEST(SectionCsv, KeepsInternationalAndSurveyFootApart) {
  const std::string rows = "0,10,0.03\n100000,9,0.03\n200000,10,0.03\n";
  const auto international =
      read_section_csv("station (ft),elevation (ft),roughness n\n" + rows, "a.csv");
  const auto survey =
      read_section_csv("station (US survey ft),elevation (ft),roughness n\n" + rows, "b.csv");
  ASSERT_TRUE(international);
  ASSERT_TRUE(survey);
  EXPECT_NEAR((survey->points[1].station - international->points[1].station).meters(), 0.06096,
              1e-5);
}

TEST(SectionCsv, AcceptsAVerticalWall) {
  const auto wall = read_section_csv(
      "station (ft),elevation (ft),roughness n\n0,10,0.03\n5,10,0.03\n5,4,0.03\n20,9,0.03\n",
      "section.csv");
  ASSERT_TRUE(wall);
  EXPECT_EQ(wall->points.size(), 4U);
}

TEST(SectionCsv, RefusesAStationListedTwiceThatIsNoWall) {
  const auto problem = problem_of("0,10,0.03\n\n5,4,0.03\n5,4,0.03\n20,9,0.03\n");
  EXPECT_EQ(problem.where.substr(0, 5), "row 5");
  EXPECT_NE(problem.where.find("station"), std::string::npos);
}

TEST(SectionCsv, RefusesReversedOrder) {
  const auto problem = problem_of("20,10,0.03\n10,4,0.03\n0,9,0.03\n");
  EXPECT_EQ(problem.where, "row 3, station");
}

TEST(SectionCsv, RefusesRoughnessOutOfRange) {
  for (const std::string n : {"0", "-0.03", "0.0049", "0.51", "35"}) {
    const auto problem = problem_of("0,10,0.03\n10,4," + n + "\n20,9,0.03\n");
    EXPECT_EQ(problem.where, "row 3, roughness") << n;
  }
}

TEST(SectionCsv, RefusesTooFewPoints) {
  EXPECT_FALSE(problem_of("0,10,0.03\n10,4,0.03\n").what.empty());
}

TEST(SectionCsv, RefusesAWholeSectionOutOfScale) {
  EXPECT_FALSE(problem_of("0,10,0.03\n10,4,0.03\n1e30,9,0.03\n").what.empty());
}

TEST(SectionCsv, TellsEveryBadCellOfARow) {
  const auto section = read_section_csv(
      "station (ft),elevation (ft),roughness n\n0,10,0.03\nx,,12 in\n20,9,0.03\n", "section.csv");
  ASSERT_FALSE(section);
  ASSERT_EQ(section.problems().size(), 3U);
  EXPECT_EQ(section.problems()[0].where, "row 3, station");
  EXPECT_EQ(section.problems()[1].code, "missing-value");
  EXPECT_EQ(section.problems()[2].code, "unit-mixed-in");
}

TEST(SectionCsv, RefusesAUnitForRoughness) {
  EXPECT_EQ(problem_of("0,1,1\n", "station (ft),elevation (ft),roughness n (ft)\n").code,
            "unknown-unit");
}

}  // namespace
}  // namespace proofstone
