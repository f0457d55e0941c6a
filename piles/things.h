#pragma once

#include "piles/scene.h"

namespace proofstone::piles {

inline constexpr float inch_in_meters = 0.0254F;
/// Balls as they are laid on rock for scale.
inline constexpr float ball_radius = 6 * inch_in_meters;
inline constexpr float rule_length = 12 * inch_in_meters;
/// Of the marker board: 8 by 6 squares with a margin of half a square or more.
inline constexpr float board_square = 0.04F;

TriangleMesh box_mesh(const Vec3& half);
/// A four-sided patch; corners anticlockwise seen from its bright side.
TriangleMesh patch_mesh(const Vec3& a, const Vec3& b, const Vec3& c, const Vec3& d);

Thing make_ball(const Vec3& centre, const Vec3& colour);
/// Lies with its middle at the origin of the pose, its face along z.
Thing make_board(const btTransform& pose);
/// Twelve inches along x.
Thing make_rule(const btTransform& pose);
/// An empty boot with its sole at z = 0 of the pose, its toe along y.
std::vector<Thing> make_boot(const btTransform& pose, const Vec3& leather);
/// Blades that grow from the points along `up`.
Thing make_grass(const std::vector<Vec3>& roots, const Vec3& up, float length, Draws& draws);

}  // namespace proofstone::piles
