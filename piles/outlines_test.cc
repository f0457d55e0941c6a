#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "piles/picture.h"

namespace proofstone::piles {
namespace {

/// What is seen of one stone.
struct Outline {
  double pixels = 0;
  double sum_x = 0;
  double sum_y = 0;
  int left = 1 << 20, right = -1, top = 1 << 20, bottom = -1;
};

std::map<int, Outline> outlines(const StoneMask& mask) {
  std::map<int, Outline> found;
  for (int row = 0; row < mask.height; ++row) {
    for (int column = 0; column < mask.width; ++column) {
      const int stone = mask.stones[static_cast<std::size_t>(row * mask.width + column)];
      if (stone == 0) continue;
      Outline& outline = found[stone];
      outline.pixels += 1;
      outline.sum_x += column + 0.5;
      outline.sum_y += row + 0.5;
      outline.left = std::min(outline.left, column);
      outline.right = std::max(outline.right, column);
      outline.top = std::min(outline.top, row);
      outline.bottom = std::max(outline.bottom, row);
    }
  }
  return found;
}

double turn_of(const Vec3& p, const Vec3& q, double x, double y) {
  return (q.x() - p.x()) * (y - p.y()) - (q.y() - p.y()) * (x - p.x());
}

void draw_triangle(StoneMask& mask, const Vec3& p, const Vec3& q, const Vec3& r) {
  const auto [left, right] = std::minmax({p.x(), q.x(), r.x()});
  const auto [top, bottom] = std::minmax({p.y(), q.y(), r.y()});
  for (int row = static_cast<int>(top); row <= static_cast<int>(bottom); ++row) {
    for (int column = static_cast<int>(left); column <= static_cast<int>(right); ++column) {
      const double x = column + 0.5;
      const double y = row + 0.5;
      const bool one = turn_of(p, q, x, y) >= 0;
      if (one == (turn_of(q, r, x, y) >= 0) && one == (turn_of(r, p, x, y) >= 0)) {
        mask.stones[static_cast<std::size_t>(row * mask.width + column)] = 1;
      }
    }
  }
}

struct Piece {
  double size = 0;
  double weight = 0;
};

/// True sizes of the stones in sight, weighted by visible area; pieces at the edge are dropped and
/// the rest stands for them; scale from the mean plane at the middle of the piece.
void add_pieces(std::vector<Piece>& pieces, const Pile& pile, const View& view,
                const StoneMask& mask) {
  for (const auto& [stone, outline] : outlines(mask)) {
    const bool cut = outline.left == 0 || outline.top == 0 || outline.right == mask.width - 1 ||
                     outline.bottom == mask.height - 1;
    if (cut) continue;
    const Vec3 ray = view.camera.ray(static_cast<float>(outline.sum_x / outline.pixels),
                                     static_cast<float>(outline.sum_y / outline.pixels));
    const float away = (view.plane.point - view.camera.position).dot(view.plane.normal) /
                       ray.dot(view.plane.normal);
    const double pixel = away * ray.dot(view.camera.forward) / view.camera.focal_pixels;
    const double kept = (1 - (outline.right - outline.left + 1.0) / mask.width) *
                        (1 - (outline.bottom - outline.top + 1.0) / mask.height);
    const auto index = static_cast<std::size_t>(stone - 1);
    pieces.push_back({pile.stones[index].size, outline.pixels * pixel * pixel / kept});
  }
}

double weighted_median(std::vector<Piece> pieces) {
  std::sort(pieces.begin(), pieces.end(),
            [](const Piece& a, const Piece& b) { return a.size < b.size; });
  double all = 0;
  for (const Piece& piece : pieces) all += piece.weight;
  double below = 0;
  for (const Piece& piece : pieces) {
    below += piece.weight;
    if (below >= all / 2) return piece.size;
  }
  return 0;
}

/// A layer on a bank with its straight-on views, made once for all tests. Balls and fines hide some
/// of the rock, as they do in pictures.
struct Layer {
  Pile pile = make_pile({*AskedGradation::of_spread("class-type", Length::inches(12)),
                         {PileKind::layer, 0, 0, 0.46F},
                         RockMix::splinters,
                         500,
                         1});
  PileSurface surface = survey_surface(pile);
  std::vector<View> views;
  std::vector<StoneMask> masks;

  Layer() {
    for (unsigned seed = 1; seed <= 6; ++seed) {
      PictureRequest request;
      request.view = {ViewKind::straight, 7.5F, 480, 360};
      request.look.board = false;
      request.effort.samples = 0;
      request.seed = request.look.seed = seed;
      Picture picture = take_picture(pile, surface, request);
      views.push_back(picture.view);
      masks.push_back(std::move(picture.mask));
    }
  }
};

const Layer& layer() {
  static const Layer made;
  return made;
}

TEST(Pile, TheSameSeedGivesTheSamePile) {
  const auto make = [](unsigned seed) {
    return make_pile({*AskedGradation::of_spread("broad", Length::inches(9)),
                      {PileKind::layer, 0, 0, 0.3F},
                      RockMix::mixed,
                      60,
                      seed});
  };
  const Pile first = make(1);
  const Pile again = make(1);
  const Pile other = make(2);
  for (std::size_t i = 0; i < first.stones.size(); ++i) {
    EXPECT_TRUE(first.poses[i] == again.poses[i]);
    EXPECT_EQ(first.stones[i].measure.volume, again.stones[i].measure.volume);
    EXPECT_FALSE(first.poses[i] == other.poses[i]);
  }
}

// Of layers 1.9 D50 thick of class-type rock, in a first study of rendered piles, 37 to 39 %
// were voids, the rough surface among them; 30 to 40 % is common practice.
TEST(Pile, ALayerHasTheVoidsOfRock) {
  const Pile& pile = layer().pile;
  float rock = 0;
  for (std::size_t i = 0; i < pile.stones.size(); ++i) {
    rock += pile.stones[i].measure.volume;
    EXPECT_GT(pile.centre(i).z(), 0);
    EXPECT_LE(std::abs(pile.centre(i).x()), pile.request.place.length / 2);
    EXPECT_LE(std::abs(pile.centre(i).y()), pile.request.place.width / 2);
  }
  const SurfaceMap& map = layer().surface.map;
  double bulk = 0;
  for (int row = 0; row < map.rows(); ++row) {
    for (int column = 0; column < map.columns(); ++column) {
      const bool inside = std::abs(map.column_x(column)) < pile.request.place.length / 2 &&
                          std::abs(map.row_y(row)) < pile.request.place.width / 2;
      if (inside) bulk += map.at(column, row) * map.cell() * map.cell();
    }
  }
  EXPECT_NEAR(1 - rock / bulk, 0.37, 0.03);
}

TEST(StoneMask, EveryStoneIsSeenWhereItsCornersAre) {
  const Pile& pile = layer().pile;
  const View& view = layer().views[0];
  const auto found = outlines(layer().masks[0]);
  EXPECT_GT(found.size(), 60U);
  for (const auto& [number, outline] : found) {
    const auto index = static_cast<std::size_t>(number - 1);
    float left = 1e9F, right = -1e9F, top = 1e9F, bottom = -1e9F;
    for (const Vec3& point : pile.stones[index].body.mesh(5).points) {
      const auto seen = view.camera.seen_at(pile.poses[index] * point);
      ASSERT_TRUE(seen);
      left = std::min(left, seen->x());
      right = std::max(right, seen->x());
      top = std::min(top, seen->y());
      bottom = std::max(bottom, seen->y());
    }
    EXPECT_GE(outline.left + 1, left);
    EXPECT_LE(outline.right, right);
    EXPECT_GE(outline.top + 1, top);
    EXPECT_LE(outline.bottom, bottom);
  }
}

TEST(StoneMask, AStoneByItselfIsSeenWhole) {
  Pile pile = layer().pile;
  const std::size_t top = [&] {
    std::size_t highest = 0;
    for (std::size_t i = 0; i < pile.stones.size(); ++i) {
      if (pile.centre(i).z() > pile.centre(highest).z()) highest = i;
    }
    return highest;
  }();
  const Vec3 at = pile.centre(top);
  pile.stones = {pile.stones[top]};
  pile.poses = {pile.poses[top]};
  View view;
  view.distance = 5;
  view.camera = Camera::looking(at + Vec3(0, 0, 5), at, {0, 1, 0}, 400, 300);
  const StoneMask mask = take_mask(pile, view);
  const auto found = outlines(mask);
  ASSERT_EQ(found.size(), 1U);
  // Its silhouette by another way: pixels whose middle lies in a triangle of its mesh.
  StoneMask drawn{400, 300, std::vector<std::uint16_t>(400 * 300, 0)};
  const TriangleMesh mesh = pile.stones[0].body.mesh(5);
  for (const auto& [i, j, k] : mesh.triangles) {
    draw_triangle(drawn, *view.camera.seen_at(pile.poses[0] * mesh.points[i]),
                  *view.camera.seen_at(pile.poses[0] * mesh.points[j]),
                  *view.camera.seen_at(pile.poses[0] * mesh.points[k]));
  }
  double different = 0;
  for (std::size_t i = 0; i < mask.stones.size(); ++i) {
    different += mask.stones[i] != drawn.stones[i] ? 1 : 0;
  }
  // A quarter of a pixel along its outline, which is about that of a circle.
  EXPECT_LT(different, 0.25 * std::sqrt(4 * SIMD_PI * found.at(1).pixels));
}

// A first study of rendered piles: the D50 of the true sizes of all stones in sight,
// weighted by visible area, was 1.00 of the pile's, with a standard deviation of 11 % from picture
// to picture. (What outlines alone give does not agree with that study, and is told in README.md.)
TEST(Outlines, TrueSizesByVisibleAreaGiveThePile) {
  std::vector<Piece> pieces;
  for (std::size_t i = 0; i < layer().views.size(); ++i) {
    add_pieces(pieces, layer().pile, layer().views[i], layer().masks[i]);
  }
  const double ratio = weighted_median(pieces) / size_at(layer().pile.all(), 50);
  EXPECT_LT(std::abs(std::log(ratio)), 2 * 0.11) << ratio;
}

TEST(View, IsHeldAsAsked) {
  for (const View& view : layer().views) EXPECT_LT(view.angle, 0.18F);
  const View oblique = draw_view(layer().pile, layer().surface, {ViewKind::oblique}, 1);
  EXPECT_GT(oblique.angle, 0.6F);
  EXPECT_LT(oblique.angle, 0.92F);
  const auto middle = oblique.camera.seen_at(oblique.target);
  ASSERT_TRUE(middle);
  EXPECT_NEAR(middle->x(), 512, 0.5);
  EXPECT_NEAR(middle->y(), 384, 0.5);
}

TEST(View, QuartersLieSideBySide) {
  std::vector<Vec3> targets;
  for (int quarter = 0; quarter < 4; ++quarter) {
    const ViewRequest request{ViewKind::straight, 5, 400, 300, quarter};
    targets.push_back(draw_view(layer().pile, layer().surface, request, 1).target);
  }
  const float frame = 5 * layer().pile.d50();
  EXPECT_NEAR(targets[1].x() - targets[0].x(), frame, 1e-4F);
  EXPECT_NEAR(targets[3].x() - targets[2].x(), frame, 1e-4F);
  EXPECT_NEAR(targets[2].y() - targets[0].y(), 0.75F * frame, 1e-4F);
  EXPECT_NEAR(targets[3].y() - targets[1].y(), 0.75F * frame, 1e-4F);
}

TEST(Pile, HasAsManyStonesAsMakeALayerSoLong) {
  const Pile& pile = layer().pile;
  const PileRequest& request = pile.request;
  const int stones = stones_in_layer_of(request.place.length / pile.d50(), request.gradation,
                                        request.mix, request.seed);
  // It is worked out on other stones, whose volume strays by some percent.
  EXPECT_NEAR(stones, 500, 30);
}

}  // namespace
}  // namespace proofstone::piles
