#include "report/sequential_count_picture.h"

#include <gtest/gtest.h>

#include "report/markup_check.h"

namespace proofstone {
namespace {

TEST(SequentialCountPicture, ShowsTheCountAndHowThePlanOperates) {
  SequentialCountPicture picture;
  picture.id = "count.first.pile";
  picture.title = "Pile, stone by stone";
  picture.description = "3 of 40 stones are smaller.";
  picture.wrong = "stones smaller than 12 in";
  picture.good_share = 0.10;
  picture.unacceptable_share = 0.30;
  picture.producers_risk = 0.05;
  picture.owners_risk = 0.10;
  picture.stones = 40;
  for (int i = 0; i < 40; ++i) picture.path.push_back(i / 12);
  for (const double width : {240.0, 720.0}) {
    const auto drawn = draw(picture, UnitSystem::us_customary, width);
    EXPECT_EQ(testing_markup::nesting_problem(drawn), "");
    EXPECT_EQ(testing_markup::content_problem(drawn), "");
    EXPECT_NE(drawn.find("Stones on average"), std::string::npos);
    EXPECT_NE(drawn.find("turn-away"), std::string::npos);
  }
  picture.path.clear();
  EXPECT_EQ(testing_markup::nesting_problem(draw(picture, UnitSystem::si, 480)), "");
}

}  // namespace
}  // namespace proofstone
