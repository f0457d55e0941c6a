#include "report/operating_curves.h"

#include <gtest/gtest.h>

#include "report/markup_check.h"

namespace proofstone {
namespace {

TEST(OperatingCurves, AreDrawnWhereThereIsAPlan) {
  for (const auto& svg :
       {operating_characteristic_picture({}, 720), average_stones_picture({}, 720)}) {
    EXPECT_EQ(svg.find("<svg "), 0U);
    EXPECT_EQ(testing_markup::nesting_problem(svg), "");
    EXPECT_EQ(testing_markup::content_problem(svg), "");
  }
  // The single plan of 10 % against 30 % has 33 stones (single-sampling-plan in the check tables).
  EXPECT_NE(average_stones_picture({}, 720).find("33 by the single plan"), std::string::npos);
}

TEST(OperatingCurves, AreEmptyWhereThereIsNone) {
  ShareRisks risks;
  risks.unacceptable = risks.acceptable;
  EXPECT_EQ(operating_characteristic_picture(risks, 720), "");
  EXPECT_EQ(average_stones_picture(risks, 720), "");
}

}  // namespace
}  // namespace proofstone
