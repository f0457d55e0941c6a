#include "engine/hydraulics/extended_section.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

SectionPoint at(double station, double elevation) {
  return {Length::meters(station), Length::meters(elevation), Dimensionless::number(0.03)};
}

TEST(ExtendedSection, IsTheWaterThatASectionItselfWalls) {
  const auto section = Section::make({at(0, 2), at(5, 0), at(10, 3)});
  ASSERT_TRUE(section);
  const auto extended = extended_to(*section, Length::meters(6));
  ASSERT_TRUE(extended);
  EXPECT_EQ(extended->points().size(), 5u);
  const auto level = Length::meters(5);
  const auto walled = section->wet(level);
  const auto wet = extended->wet(level);
  EXPECT_TRUE(walled.end_wall_added);
  EXPECT_FALSE(wet.end_wall_added);
  EXPECT_NEAR(wet.area.si(), walled.area.si(), 1e-12);
  EXPECT_NEAR(wet.wetted_perimeter.si(), walled.wetted_perimeter.si(), 1e-12);
}

TEST(ExtendedSection, AWallThatStandsThereGrows) {
  const auto section = Section::make({at(0, 2), at(0, 1), at(5, 0), at(10, 3)});
  ASSERT_TRUE(section);
  const auto extended = extended_to(*section, Length::meters(4));
  ASSERT_TRUE(extended) << extended.problems().front().sentence();
  EXPECT_EQ(extended->points().size(), 5u);
  EXPECT_EQ(extended->points().front().elevation.meters(), 4);
}

TEST(ExtendedSection, EndsThatStandHigherStay) {
  const auto section = Section::make({at(0, 9), at(5, 0), at(10, 9)});
  ASSERT_TRUE(section);
  const auto extended = extended_to(*section, Length::meters(4));
  ASSERT_TRUE(extended);
  EXPECT_EQ(extended->points().size(), 3u);
}

}  // namespace
}  // namespace proofstone
