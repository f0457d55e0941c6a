#include "engine/vision/outline_edits.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace proofstone {
namespace {

StoneOutline box(double left, double top, double right, double bottom) {
  return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

double area_of(const StoneOutline& outline) {
  const auto piece = piece_of_outline(outline, "");
  EXPECT_TRUE(bool(piece));
  return piece ? piece->area : 0;
}

template <class Result>
std::string code_of(const Result& result) {
  return result ? "" : result.problems().front().code;
}

TEST(JoinedOutlines, EncloseBothAndTheGapBetween) {
  const auto one = joined_outlines({box(100, 100, 140, 160), box(142, 100, 200, 160)}, 1);
  ASSERT_TRUE(bool(one));
  // An outline is straightened by up to half a pixel all round.
  EXPECT_NEAR(area_of(*one), 100 * 60, 320 * 0.5);
  // In pixels of four by four of the photo the same within their size.
  const auto coarse = joined_outlines({box(100, 100, 140, 160), box(142, 100, 200, 160)}, 4);
  ASSERT_TRUE(bool(coarse));
  EXPECT_NEAR(area_of(*coarse), 100 * 60, 100 * 60 * 0.08);
}

TEST(JoinedOutlines, OfPiecesApartAreRefused) {
  EXPECT_EQ(code_of(joined_outlines({box(0, 0, 40, 40), box(60, 0, 90, 40)}, 1)), "apart");
  EXPECT_EQ(code_of(joined_outlines({box(0, 0, 40, 40)}, 1)), "one-piece");
}

TEST(CutOutline, ShareTheStoneAlongTheLine) {
  const auto parts = cut_outline(box(10, 10, 110, 60), {40, 0}, {40, 90}, 1);
  ASSERT_TRUE(bool(parts));
  ASSERT_EQ(parts->size(), 2U);
  EXPECT_NEAR(area_of((*parts)[0]), 70 * 50, 60);
  EXPECT_NEAR(area_of((*parts)[1]), 30 * 50, 60);
}

TEST(CutOutline, OfAHornedStoneGivesEveryPart) {
  // Cut across both horns: three parts.
  const StoneOutline horned{{0, 0},  {30, 0}, {30, 50}, {60, 50},
                            {60, 0}, {90, 0}, {90, 80}, {0, 80}};
  const auto parts = cut_outline(horned, {-5, 30}, {95, 30}, 1);
  ASSERT_TRUE(bool(parts));
  EXPECT_EQ(parts->size(), 3U);
}

TEST(CutOutline, BesideTheStoneIsRefused) {
  EXPECT_EQ(code_of(cut_outline(box(10, 10, 110, 60), {0, 0}, {0, 90}, 1)), "not-cut");
  EXPECT_EQ(code_of(cut_outline(box(10, 10, 110, 60), {5, 5}, {5, 5}, 1)), "no-line");
}

TEST(DrawnOutline, LeavesToOthersWhatIsTheirs) {
  const PictureSize picture{400, 300};
  const auto stone = drawn_outline(box(100, 100, 180, 150), {box(60, 90, 120, 160)}, picture, 1);
  ASSERT_TRUE(bool(stone));
  EXPECT_NEAR(area_of(*stone), 60 * 50, 60 * 50 * 0.02);
  EXPECT_EQ(code_of(drawn_outline(box(100, 100, 180, 150), {box(60, 90, 220, 160)}, picture, 1)),
            "nothing-drawn");
}

TEST(DrawnOutline, MayCrossItselfAndLeaveThePicture) {
  const PictureSize picture{400, 300};
  // A loop whose ends overlap by some way.
  const StoneOutline loop{{-30, 100}, {120, 100}, {120, 200}, {40, 200},
                          {40, 90},   {60, 90},   {60, 110}};
  const auto stone = drawn_outline(loop, {}, picture, 1);
  ASSERT_TRUE(bool(stone));
  for (const auto& point : *stone) EXPECT_GE(point.x, 0);
  EXPECT_GT(area_of(*stone), 80 * 100 * 0.9);
}

TEST(OutlineEdits, RefuseWhatIsNoOutline) {
  const double nothing = std::numeric_limits<double>::quiet_NaN();
  const PictureSize picture{400, 300};
  EXPECT_EQ(code_of(joined_outlines({box(0, 0, nothing, 4), box(0, 0, 4, 4)}, 1)), "no-outline");
  EXPECT_EQ(code_of(joined_outlines({box(0, 0, 1e9, 4), box(0, 0, 4, 4)}, 1)), "no-outline");
  EXPECT_EQ(code_of(joined_outlines({{}, {}}, 1)), "no-outline");
  for (const double pixel : {0.0, -1.0, 1e9, nothing}) {
    EXPECT_EQ(code_of(cut_outline(box(0, 0, 50, 50), {25, 0}, {25, 50}, pixel)), "no-pixel");
  }
  EXPECT_EQ(code_of(drawn_outline(box(0, 0, 1, 1), {}, picture, 1)), "nothing-drawn");
  EXPECT_EQ(code_of(drawn_outline(box(0, 0, 50, 50), {}, {nothing, 300}, 1)), "no-picture");
  // The largest that is allowed neither takes long nor much room.
  EXPECT_TRUE(bool(joined_outlines({box(-1e6, -1e6, 1e6, 0), box(-1e6, 0, 1e6, 1e6)}, 1e-3)));
}

}  // namespace
}  // namespace proofstone
