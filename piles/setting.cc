#include "piles/setting.h"

#include <algorithm>
#include <cmath>

#include "piles/ground.h"
#include "piles/lying.h"
#include "piles/noise.h"
#include "piles/things.h"

namespace proofstone::piles {
namespace {

/// Puts the things of one picture where they are seen.
class Furnisher {
 public:
  Furnisher(Scene& scene, const Pile& pile, const PileSurface& surface, const View& view,
            const PictureLook& look)
      : scene_(scene),
        pile_(pile),
        surface_(surface),
        view_(view),
        draws_(mixed_seed(look.seed, 400)) {
    right_ = view.camera.right;
    ahead_ = -view.camera.down;
    // Both along the place, so that a share of the frame is a step on the rock.
    right_.setZ(0);
    ahead_.setZ(0);
    right_.normalize();
    ahead_ = Vec3(0, 0, 1).cross(right_);
  }

  ScaleObject ball(float across, float up_frame, const Vec3& colour) {
    const Vec3 at = spot(across, up_frame);
    const Vec3 centre = ball_at_rest(surface_.map, at.x(), at.y(), ball_radius);
    scene_.add_thing(make_ball(centre, colour));
    return {"ball", 2 * ball_radius, {centre}};
  }

  ScaleObject board() {
    const float side = either();
    const btTransform pose = flat(0.28F * side, 0, 4.75F * board_square, 3.75F * board_square);
    scene_.add_thing(make_board(pose));
    ScaleObject object{"board", board_square, {}};
    for (const auto& [x, y] : {std::pair{-4, -3}, {-4, 3}, {4, 3}, {4, -3}}) {
      const Vec3 corner(static_cast<float>(x) * board_square, static_cast<float>(y) * board_square,
                        0.006F);
      object.points.push_back(pose * corner);
    }
    return object;
  }

  ScaleObject rule() {
    const btTransform pose = flat(0, 0, rule_length / 2, 0.7F * inch_in_meters);
    scene_.add_thing(make_rule(pose));
    const Vec3 end(rule_length / 2, 0, 0.006F);
    return {"rule", rule_length, {pose * -end, pose * end}};
  }

  void boots() {
    const float side = between(-0.3F, 0.3F);
    const float turn = std::atan2(-ahead_.x(), ahead_.y());
    const Vec3 leather = mixed_colour({0.16F, 0.09F, 0.05F}, {0.03F, 0.03F, 0.03F}, between(0, 1));
    for (const float foot : {-0.14F, 0.14F}) {
      const Vec3 at = spot(side, -0.42F) + right_ * foot;
      const float height = highest_within(surface_.map, at.x(), at.y(), 0.1F);
      btTransform pose(btQuaternion(Vec3(0, 0, 1), turn + between(-0.2F, 0.2F)),
                       Vec3(at.x(), at.y(), height - 0.01F));
      for (Thing& part : make_boot(pose, leather)) scene_.add_thing(std::move(part));
    }
  }

  void grass(const Fines& fines) {
    const int tufts = 3 + static_cast<int>(between(0, 12));
    const float frame = view_frame();
    for (int tuft = 0; tuft < tufts; ++tuft) {
      const Vec3 middle = spot(between(-0.5F, 0.5F), between(-0.4F, 0.4F));
      std::vector<Vec3> roots;
      for (int blade = 0; blade < 40; ++blade) {
        const float x = middle.x() + between(-0.012F, 0.012F) * frame;
        const float y = middle.y() + between(-0.012F, 0.012F) * frame;
        roots.emplace_back(x, y, fines.height(x, y));
      }
      const float length = between(0.12F, 0.3F) + 0.4F * pile_.d50();
      scene_.add_thing(make_grass(roots, pile_.up(), length, draws_));
    }
  }

  void fabric() {
    const Vec3 middle = spot(0.42F * either(), between(-0.45F, 0.45F));
    const Vec3 colour = mixed_colour({0.02F, 0.02F, 0.02F}, {0.5F, 0.5F, 0.48F},
                                     draws_.uniform() < 0.5 ? 0.0F : 1.0F);
    const float half = between(0.08F, 0.16F) * view_frame();
    scene_.add_thing(draped(surface_.map, middle, half, between(0, SIMD_PI), colour));
  }

 private:
  float between(float low, float high) {
    return low + (high - low) * static_cast<float>(draws_.uniform());
  }
  float either() { return draws_.uniform() < 0.5 ? -1.0F : 1.0F; }
  float view_frame() const {
    return view_.distance * static_cast<float>(view_.camera.width) / view_.camera.focal_pixels;
  }
  /// A point of the place by shares of the frame's width, moved onto the rock where it is not.
  Vec3 spot(float across, float up_frame) const {
    Vec3 at = view_.target + right_ * (across * view_frame()) + ahead_ * (up_frame * view_frame());
    const float room = ball_radius;
    const float most_x = std::max(0.0F, surface_.reach_x - room);
    const float most_y = std::max(0.0F, surface_.reach_y - room);
    at.setX(std::clamp(at.x(), -most_x, most_x));
    at.setY(std::clamp(at.y(), -most_y, most_y));
    return at;
  }
  /// The flattest of some places about there.
  btTransform flat(float across, float up_frame, float half_x, float half_y) {
    LyingFlat best;
    for (int trial = 0; trial < 60; ++trial) {
      const Vec3 at = spot(across + between(-0.12F, 0.12F), up_frame + between(-0.25F, 0.25F));
      const float turn = between(-0.5F, 0.5F) + std::atan2(right_.y(), right_.x());
      const LyingFlat found = lie_flat(surface_.map, at, turn, half_x, half_y);
      if (trial == 0 || found.gap < best.gap) best = found;
    }
    return best.pose;
  }

  Scene& scene_;
  const Pile& pile_;
  const PileSurface& surface_;
  const View& view_;
  Draws draws_;
  Vec3 right_;
  Vec3 ahead_;
};

}  // namespace

std::vector<ScaleObject> add_setting(Scene& scene, const Pile& pile, const PileSurface& surface,
                                     const View& view, const PictureLook& look) {
  add_ground(scene, pile, look);
  const Fines fines(pile, surface, look);
  scene.add_thing(fines.thing());

  std::vector<ScaleObject> objects;
  Furnisher furnisher(scene, pile, surface, view, look);
  if (look.balls) {
    const Vec3 colours[] = {{0.75F, 0.3F, 0.02F}, {0.7F, 0.6F, 0.03F}, {0.6F, 0.05F, 0.06F}};
    const Vec3& colour = colours[look.seed % 3];
    objects.push_back(furnisher.ball(-0.27F, -0.16F, colour));
    objects.push_back(furnisher.ball(0.25F, 0.18F, colour));
  }
  if (look.board) objects.push_back(furnisher.board());
  if (look.rule) objects.push_back(furnisher.rule());
  if (look.boots) furnisher.boots();
  if (look.grass) furnisher.grass(fines);
  if (look.fabric && pile.request.place.kind != PileKind::truck) furnisher.fabric();
  return objects;
}

}  // namespace proofstone::piles
