#include "engine/vision/picture_geometry.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace proofstone {
namespace {

constexpr PictureSize picture{1000, 800};

std::string code_of(const Expected<VisiblePiece>& piece) {
  return piece ? "" : piece.problems().front().code;
}

TEST(PieceOfOutline, AreaAndBoxOfARectangleEitherWayRound) {
  for (const auto& outline :
       {std::vector<PhotoPoint>{{10, 20}, {40, 20}, {40, 30}, {10, 30}},
        std::vector<PhotoPoint>{{10, 20}, {10, 30}, {10, 30}, {40, 30}, {40, 20}, {10, 20}}}) {
    const auto piece = piece_of_outline(outline, "outline");
    ASSERT_TRUE(piece);
    EXPECT_DOUBLE_EQ(piece->area, 300);
    EXPECT_DOUBLE_EQ(piece->box.width(), 30);
    EXPECT_DOUBLE_EQ(piece->box.height(), 10);
    EXPECT_DOUBLE_EQ(piece->box.middle().x, 25);
  }
}

TEST(PieceOfOutline, RefusesWhatEnclosesNoOneArea) {
  EXPECT_EQ(code_of(piece_of_outline({{0, 0}, {10, 10}, {10, 0}, {0, 10}}, "")), "crosses-itself");
  EXPECT_EQ(code_of(piece_of_outline({{0, 0}, {10, 10}, {0, 0}}, "")), "no-outline");
  EXPECT_EQ(code_of(piece_of_outline({{0, 0}, {10, 0}, {20, 0}}, "")), "no-area");
  EXPECT_EQ(code_of(piece_of_outline({}, "")), "no-outline");
  EXPECT_EQ(code_of(piece_of_outline(std::vector<PhotoPoint>(3000, {1, 1}), "")), "no-outline");
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(code_of(piece_of_outline({{0, 0}, {nan, 0}, {20, 10}}, "")), "not-a-number");
}

TEST(PieceOnPicture, ThatReachesBeyondItOrCannotFillItsBoxIsRefused) {
  const auto code = [](const VisiblePiece& piece) {
    const auto problems = problems_of_piece(piece, picture, "piece 1");
    return problems.empty() ? "" : problems.front().code;
  };
  EXPECT_EQ(code({100, {10, 10, 30, 30}}), "");
  EXPECT_EQ(code({100, {-0.4, 10, 30, 30}}), "");
  EXPECT_EQ(code({100, {-2, 10, 30, 30}}), "outside-picture");
  EXPECT_EQ(code({100, {10, 10, 30, 801}}), "outside-picture");
  EXPECT_EQ(code({500, {10, 10, 30, 30}}), "no-area");
  EXPECT_EQ(code({100, {30, 10, 10, 30}}), "no-area");
  EXPECT_EQ(code({std::numeric_limits<double>::infinity(), {10, 10, 30, 30}}), "not-a-number");
}

TEST(PieceOnPicture, CountsForThoseThatTheEdgeCuts) {
  EXPECT_TRUE(is_cut_by_edge({100, {0.5, 10, 30, 30}}, picture));
  EXPECT_TRUE(is_cut_by_edge({100, {10, 10, 30, 799.5}}, picture));
  EXPECT_FALSE(is_cut_by_edge({100, {10, 10, 30, 30}}, picture));
  // 1/[(1 − w/W)(1 − h/H)]
  EXPECT_DOUBLE_EQ(edge_weight({100, {10, 10, 210, 170}}, picture), 1 / (0.8 * 0.8));
}

/// Boxes thrown on a plane at random: those that a picture shows whole, each by its weight, are as
/// many as start in the picture, whatever their size.
TEST(PieceOnPicture, EdgeWeightsMakeUpForThePiecesThatAreCut) {
  for (const double side : {20.0, 200.0, 500.0}) {
    double whole = 0;
    double starting = 0;
    for (double x = -600; x < 1000; x += 4) {
      for (double y = -600; y < 800; y += 4) {
        if (x >= 0 && y >= 0) starting += 1;
        const VisiblePiece piece{side * side, {x, y, x + side, y + side}};
        if (x < 0 || y < 0 || x + side > 1000 || y + side > 800) continue;
        whole += edge_weight(piece, picture);
      }
    }
    EXPECT_NEAR(whole / starting, 1, 0.03) << side;
  }
}

TEST(Encloses, TellsInsideFromOutside) {
  const std::vector<PhotoPoint> hook{{0, 0}, {30, 0}, {30, 30}, {20, 30}, {20, 10}, {0, 10}};
  EXPECT_TRUE(encloses(hook, {25, 25}));
  EXPECT_TRUE(encloses(hook, {5, 5}));
  EXPECT_FALSE(encloses(hook, {5, 25}));
  EXPECT_FALSE(encloses(hook, {40, 5}));
  EXPECT_FALSE(encloses({}, {0, 0}));
}

TEST(TightestRectangle, LiesAsTheOutlineDoes) {
  const double turn = 0.6;
  std::vector<PhotoPoint> outline;
  for (const auto& [x, y] :
       {std::pair{-40.0, -10.0}, {0.0, -9.0}, {40.0, -10.0}, {40.0, 10.0}, {-40.0, 10.0}}) {
    outline.push_back({100 + x * std::cos(turn) - y * std::sin(turn),
                       100 + x * std::sin(turn) + y * std::cos(turn)});
  }
  const auto sides = tightest_rectangle(outline);
  EXPECT_NEAR(sides.longest, 80, 1e-9);
  EXPECT_NEAR(sides.shortest, 20, 1e-9);
}

TEST(TightestRectangle, OfWhatHasNoAreaIsNone) {
  EXPECT_EQ(tightest_rectangle({}).longest, 0);
  EXPECT_EQ(tightest_rectangle({{1, 1}, {5, 5}, {9, 9}}).shortest, 0);
  EXPECT_EQ(tightest_rectangle({{1, 1}, {1, 1}, {1, 1}}).longest, 0);
}

}  // namespace
}  // namespace proofstone
