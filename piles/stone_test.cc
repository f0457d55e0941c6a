#include "piles/stone.h"

#include <gtest/gtest.h>

#include <cmath>

#include "piles/things.h"

namespace proofstone::piles {
namespace {

AskedGradation asked(const std::string& spread) {
  return *AskedGradation::of_spread(spread, Length::inches(12));
}

std::vector<const Stone*> pointers(const std::vector<Stone>& stones) {
  std::vector<const Stone*> all;
  for (const Stone& stone : stones) all.push_back(&stone);
  return all;
}

TEST(StoneMeasure, ABoxHasItsSides) {
  const StoneMeasure box = measure_stone(box_mesh({1.5F, 1.0F, 0.5F}));
  EXPECT_NEAR(box.a, 3, 0.02);
  EXPECT_NEAR(box.b, 2, 0.02);
  EXPECT_NEAR(box.c, 1, 0.005);
  EXPECT_NEAR(box.volume, 6, 1e-5);
  EXPECT_NEAR(box.centroid.length(), 0, 1e-5);
}

TEST(StoneMeasure, ABallIsAsWideEveryWay) {
  const StoneMeasure ball = measure_stone(sphere_mesh(5));
  EXPECT_NEAR(ball.a, 2, 0.01);
  EXPECT_NEAR(ball.c, 2, 0.01);
  EXPECT_NEAR(ball.volume, 4.0 / 3 * SIMD_PI, 0.01);
}

TEST(RockBody, ANotchedStoneIsNotConvex) {
  // Somewhere the middle of two points of its surface lies outside it.
  Draws draws(3);
  int with_hollow = 0;
  for (int trial = 0; trial < 10; ++trial) {
    const RockBody body = RockBody::make(RockShape::notched, {1.4F, 1, 0.7F}, draws);
    EXPECT_EQ(body.hulls().size(), 2U);
    const auto& directions = sphere_mesh(2).points;
    bool hollow = false;
    for (const Vec3& p : directions) {
      for (const Vec3& q : directions) {
        const Vec3 middle = (p * body.radius(p) + q * body.radius(q)) / 2;
        if (middle.length() < 0.2F) continue;
        hollow = hollow || middle.length() > 1.1F * body.radius(middle.normalized());
      }
    }
    with_hollow += hollow ? 1 : 0;
  }
  EXPECT_GE(with_hollow, 8);
}

TEST(RockBody, ItsNormalIsSquareToItsSurface) {
  // Against the surface itself: the normal of a body is that of its mesh, but for its roughness.
  Draws draws(4);
  for (const RockShape shape : {RockShape::blocky, RockShape::slabby, RockShape::rounded}) {
    const RockBody body = RockBody::make(shape, {1.4F, 1, 0.67F}, draws);
    const TriangleMesh mesh = body.mesh(5);
    double agreement = 0;
    for (const auto& [i, j, k] : mesh.triangles) {
      const Vec3& p = mesh.points[i];
      const Vec3 flat = (mesh.points[j] - p).cross(mesh.points[k] - p).normalized();
      agreement += flat.dot(body.normal((p + mesh.points[j] + mesh.points[k]) / 3));
    }
    EXPECT_GT(agreement / static_cast<double>(mesh.triangles.size()), 0.97)
        << rock_shape_name(shape);
  }
}

TEST(MakeStones, TheirAxesAreAsSaid) {
  const auto stones = make_stones(asked("class-type"), RockMix::quarried, 400, 5);
  double b_to_a = 0;
  double c_to_b = 0;
  for (const Stone& stone : stones) {
    b_to_a += stone.measure.b / stone.measure.a / 400;
    c_to_b += stone.measure.c / stone.measure.b / 400;
    EXPECT_NEAR(stone.size, stone.measure.b, 1e-6);
  }
  EXPECT_NEAR(b_to_a, 0.71, 0.04);
  EXPECT_NEAR(c_to_b, 0.67, 0.04);
}

// Of 800 stones the largest 15 % by mass are some 20 to 60: their number scatters by 13 to 22 %,
// and the sizes at a percent by a third of that.
TEST(MakeStones, TheirMassCurveIsTheOneAsked) {
  for (const char* spread : {"very-uniform", "very-broad"}) {
    const AskedGradation gradation = asked(spread);
    const auto stones = make_stones(gradation, RockMix::quarried, 800, 6);
    for (const double percent : {15.0, 50.0, 85.0}) {
      const double wanted = gradation.curve().size_at(percent)->meters();
      EXPECT_NEAR(size_at(pointers(stones), percent) / wanted, 1, 0.06)
          << spread << " D" << percent;
    }
    EXPECT_GE(stones.front().size, 0.999F * gradation.curve().points().front().size.meters());
    EXPECT_LE(stones.back().size, 1.001F * gradation.curve().points().back().size.meters());
  }
}

TEST(MakeStones, AClassStatedInMassIsMetAsSpheres) {
  // Classes stated in masses are spheres in size.
  const RockClass* found = nullptr;
  for (const RockClass& one : class_catalog()) {
    if (one.band.basis().size == SizeMeaning::sphere && one.band.smallest_size_at(50) &&
        one.band.largest_size_at(50)) {
      found = &one;
    }
  }
  ASSERT_NE(found, nullptr);
  const auto gradation = AskedGradation::of_class(*found, RockAgainstClass::inside);
  ASSERT_TRUE(gradation);
  for (const Stone& stone : make_stones(*gradation, RockMix::quarried, 50, 7)) {
    EXPECT_NEAR(std::pow(6 * stone.measure.volume / SIMD_PI, 1.0 / 3), stone.size,
                0.002 * stone.size);
  }
}

TEST(AskedGradation, TooFineAndTooCoarseLieOutsideTheBand) {
  const RockClass& rock_class = *find_rock_class("fhwa-3");
  const auto inside = AskedGradation::of_class(rock_class, RockAgainstClass::inside);
  const auto fine = AskedGradation::of_class(rock_class, RockAgainstClass::too_fine);
  const auto coarse = AskedGradation::of_class(rock_class, RockAgainstClass::too_coarse);
  ASSERT_TRUE(inside && fine && coarse);
  EXPECT_LT(fine->d50(), *rock_class.band.smallest_size_at(50));
  EXPECT_GT(coarse->d50(), *rock_class.band.largest_size_at(50));
  EXPECT_GT(inside->d50(), *rock_class.band.smallest_size_at(50));
  EXPECT_LT(inside->d50(), *rock_class.band.largest_size_at(50));
}

TEST(AskedGradation, ASpreadThatIsNotKnownIsAProblem) {
  const auto gradation = AskedGradation::of_spread("lumpy", Length::inches(12));
  ASSERT_FALSE(gradation);
  EXPECT_EQ(gradation.problems()[0].code, "unknown-spread");
}

}  // namespace
}  // namespace proofstone::piles
