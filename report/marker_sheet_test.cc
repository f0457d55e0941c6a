#include "report/marker_sheet.h"

#include <gtest/gtest.h>

#include "report/markup_check.h"

namespace proofstone {
namespace {

TEST(MarkerSheet, IsWholeMarkupInTrueScale) {
  const auto sheet = marker_sheet(1, Length::millimeters(65));
  ASSERT_TRUE(sheet);
  EXPECT_EQ(testing_markup::nesting_problem(*sheet), "");
  // Three markers with a quarter of an edge between and round them.
  EXPECT_NE(sheet->find("width=\"260.00mm\""), std::string::npos) << sheet->substr(0, 200);
}

TEST(MarkerSheet, OfOtherBoardsHasOtherMarkers) {
  EXPECT_NE(*marker_sheet(1, Length::millimeters(65)), *marker_sheet(2, Length::millimeters(65)));
}

TEST(MarkerSheet, RefusesWhatNobodyPrints) {
  EXPECT_FALSE(marker_sheet(0, Length::millimeters(65)));
  EXPECT_FALSE(marker_sheet(5, Length::millimeters(65)));
  EXPECT_FALSE(marker_sheet(1, Length::millimeters(2)));
  EXPECT_FALSE(marker_sheet(1, Length::meters(3)));
}

}  // namespace
}  // namespace proofstone
