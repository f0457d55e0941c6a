#include "piles/things.h"

#include <cmath>

namespace proofstone::piles {
namespace {

btTransform moved(const btTransform& pose, const Vec3& by) {
  return pose * btTransform(btQuaternion::getIdentity(), by);
}

/// An ellipsoid, the more a box the smaller `roundness` is below 1.
TriangleMesh pillow_mesh(const Vec3& half, float roundness) {
  TriangleMesh mesh = sphere_mesh(4);
  for (Vec3& point : mesh.points) {
    for (int axis = 0; axis < 3; ++axis) {
      point[axis] = std::copysign(std::pow(std::abs(point[axis]), roundness), point[axis]);
    }
    point = filtered(point, half);
  }
  return mesh;
}

/// A tube along z from 0 to `height`, without ends.
TriangleMesh tube_mesh(float radius_below, float radius_above, float height) {
  TriangleMesh mesh;
  constexpr unsigned sides = 24;
  for (unsigned i = 0; i < sides; ++i) {
    const float turn = SIMD_2_PI * static_cast<float>(i) / sides;
    const Vec3 out(std::cos(turn), std::sin(turn), 0);
    mesh.points.push_back(out * radius_below);
    mesh.points.push_back(out * radius_above + Vec3(0, 0, height));
    const unsigned next = 2 * ((i + 1) % sides);
    mesh.triangles.push_back({2 * i, next, 2 * i + 1});
    mesh.triangles.push_back({next, next + 1, 2 * i + 1});
  }
  return mesh;
}

}  // namespace

TriangleMesh box_mesh(const Vec3& half) {
  TriangleMesh mesh;
  for (int i = 0; i < 8; ++i) {
    const Vec3 sign((i & 1) != 0 ? 1.0F : -1.0F, (i & 2) != 0 ? 1.0F : -1.0F,
                    (i & 4) != 0 ? 1.0F : -1.0F);
    mesh.points.push_back(filtered(sign, half));
  }
  mesh.triangles = {{0, 2, 1}, {1, 2, 3}, {4, 5, 6}, {5, 7, 6}, {0, 1, 4}, {1, 5, 4},
                    {2, 6, 3}, {3, 6, 7}, {0, 4, 2}, {2, 4, 6}, {1, 3, 5}, {3, 7, 5}};
  return mesh;
}

TriangleMesh patch_mesh(const Vec3& a, const Vec3& b, const Vec3& c, const Vec3& d) {
  return {{a, b, c, d}, {{0, 1, 2}, {0, 2, 3}}};
}

Thing make_ball(const Vec3& centre, const Vec3& colour) {
  Thing ball{ThingMaterial::ball, sphere_mesh(5), colour};
  for (Vec3& point : ball.mesh.points) point *= ball_radius;
  ball.pose.setOrigin(centre);
  return ball;
}

Thing make_board(const btTransform& pose) {
  Thing board{ThingMaterial::checkered,
              box_mesh({4.75F * board_square, 3.75F * board_square, 0.003F})};
  board.colour = {0.4F, 0.4F, 0.4F};
  board.pose = moved(pose, {0, 0, 0.003F});
  board.square = board_square;
  return board;
}

Thing make_rule(const btTransform& pose) {
  Thing rule{ThingMaterial::rule, box_mesh({rule_length / 2, 0.7F * inch_in_meters, 0.003F})};
  rule.colour = {0.4F, 0.38F, 0.15F};
  rule.pose = moved(pose, {0, 0, 0.003F});
  return rule;
}

std::vector<Thing> make_boot(const btTransform& pose, const Vec3& leather) {
  std::vector<Thing> boot(3);
  boot[0] = {
      ThingMaterial::rubber, pillow_mesh({0.055F, 0.155F, 0.018F}, 0.5F), {0.04F, 0.035F, 0.03F}};
  boot[0].pose = moved(pose, {0, 0, 0.018F});
  boot[1] = {ThingMaterial::leather, pillow_mesh({0.05F, 0.145F, 0.075F}, 0.8F), leather};
  boot[1].pose = moved(pose, {0, 0, 0.045F});
  boot[2] = {ThingMaterial::leather, tube_mesh(0.055F, 0.065F, 0.26F), leather};
  boot[2].pose = moved(pose, {0, -0.075F, 0.05F});
  return boot;
}

Thing make_grass(const std::vector<Vec3>& roots, const Vec3& up, float length, Draws& draws) {
  Thing grass{ThingMaterial::grass, {}, {0.15F, 0.17F, 0.05F}};
  const auto spread = [&](float most) {
    return static_cast<float>(2 * draws.uniform() - 1) * most;
  };
  for (const Vec3& root : roots) {
    const float turn = SIMD_PI * spread(1);
    const Vec3 side = Vec3(std::cos(turn), std::sin(turn), 0) * 0.003F;
    const Vec3 lean(spread(0.6F), spread(0.6F), 0);
    const float height = length * (0.6F + 0.4F * spread(1));
    const auto first = static_cast<unsigned>(grass.mesh.points.size());
    constexpr int joints = 4;
    for (int joint = 0; joint < joints; ++joint) {
      const float share = static_cast<float>(joint) / (joints - 1);
      const Vec3 middle = root + up * (height * share) + lean * (height * share * share);
      grass.mesh.points.push_back(middle - side * (1.05F - share));
      grass.mesh.points.push_back(middle + side * (1.05F - share));
    }
    for (unsigned joint = 0; joint + 1 < joints; ++joint) {
      const unsigned at = first + 2 * joint;
      grass.mesh.triangles.push_back({at, at + 1, at + 2});
      grass.mesh.triangles.push_back({at + 1, at + 3, at + 2});
    }
  }
  return grass;
}

}  // namespace proofstone::piles
