#include "piles/outline_form.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace proofstone::piles {
namespace {

OutlineForm form_of(const std::vector<PhotoPoint>& outline) {
  const auto piece = piece_of_outline(outline, "outline");
  EXPECT_TRUE(piece);
  return form_of_outline(outline, piece->area);
}

std::vector<PhotoPoint> turned(const std::vector<PhotoPoint>& outline, double angle, double size) {
  std::vector<PhotoPoint> points;
  for (const auto point : outline) {
    points.push_back({size * (point.x * std::cos(angle) - point.y * std::sin(angle)) + 300,
                      size * (point.x * std::sin(angle) + point.y * std::cos(angle)) + 200});
  }
  return points;
}

std::vector<PhotoPoint> ellipse(double along, double across) {
  std::vector<PhotoPoint> points;
  for (int i = 0; i < 360; ++i) {
    const double at = i * std::numbers::pi / 180;
    points.push_back({along * std::cos(at), across * std::sin(at)});
  }
  return points;
}

TEST(OutlineForm, OfARectangleFillsItsBoxHoweverItLies) {
  const std::vector<PhotoPoint> rectangle{{0, 0}, {60, 0}, {60, 30}, {0, 30}};
  for (const double angle : {0.0, 0.3, 1.0, 2.5}) {
    const auto form = form_of(turned(rectangle, angle, 1.7));
    EXPECT_NEAR(form.box_fill, 1, 1e-9);
    EXPECT_NEAR(form.elongation, std::log(2), 1e-9);
    EXPECT_NEAR(form.solidity, 1, 1e-9);
  }
}

TEST(OutlineForm, OfAnEllipseIsAQuarterOfPiOfItsBox) {
  const auto form = form_of(turned(ellipse(50, 30), 0.7, 1));
  EXPECT_NEAR(form.box_fill, std::numbers::pi / 4, 1e-3);
  EXPECT_NEAR(form.elongation, std::log(50.0 / 30.0), 1e-3);
  EXPECT_NEAR(form.solidity, 1, 1e-9);
}

TEST(OutlineForm, OfATriangleIsHalfOfItsBox) {
  const auto form = form_of({{0, 0}, {40, 0}, {10, 30}});
  EXPECT_NEAR(form.box_fill, 0.5, 1e-9);
  EXPECT_NEAR(form.solidity, 1, 1e-9);
}

TEST(OutlineForm, IsBittenIntoByWhatHides) {
  // A square of which a quarter is hidden: three quarters of its box, six sevenths of its hull.
  const auto form = form_of({{0, 0}, {40, 0}, {40, 20}, {20, 20}, {20, 40}, {0, 40}});
  EXPECT_NEAR(form.box_fill, 0.75, 1e-9);
  EXPECT_NEAR(form.solidity, 6.0 / 7.0, 1e-9);
  EXPECT_NEAR(form.elongation, 0, 1e-9);
}

TEST(OutlineForm, IsTheSameWherePointsAreRepeatedOrOnOneLine) {
  const std::vector<PhotoPoint> plain{{0, 0}, {60, 0}, {60, 30}, {0, 30}};
  const std::vector<PhotoPoint> more{{0, 0},   {0, 0},   {30, 0}, {60, 0},
                                     {60, 15}, {60, 30}, {0, 30}, {0, 10}};
  EXPECT_NEAR(form_of(plain).box_fill, form_of(more).box_fill, 1e-12);
  EXPECT_NEAR(form_of(plain).elongation, form_of(more).elongation, 1e-12);
}

}  // namespace
}  // namespace proofstone::piles
