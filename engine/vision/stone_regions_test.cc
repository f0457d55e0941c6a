#include "engine/vision/stone_regions.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "engine/vision/drawn_photos.h"
#include "engine/vision/smooth_functions.h"

namespace proofstone {
namespace {

struct Disc {
  double x;
  double y;
  double radius;
};

/// What a perfect network says of round stones on bare ground.
OutlineMaps maps_of(const std::vector<Disc>& discs, int width, int height) {
  const auto count = static_cast<std::size_t>(width * height);
  OutlineMaps maps{width, height, std::vector<float>(count), std::vector<float>(count),
                   std::vector<float>(count)};
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < width; ++x) {
      const auto at = static_cast<std::size_t>(y * width + x);
      for (const auto& disc : discs) {
        const double within = disc.radius - pixels_between({disc.x, disc.y}, {x + 0.5, y + 0.5});
        if (within <= 0) continue;
        maps.rock[at] = 1;
        maps.depth[at] = static_cast<float>(within / disc.radius);
        maps.edge[at] = within < 1.5 ? 1.0F : 0.0F;
      }
    }
  }
  return maps;
}

double area_of(const std::vector<PhotoPoint>& outline) {
  return piece_of_outline(outline, "")->area;
}

TEST(StoneRegions, OfDiscsAreTheDiscs) {
  const std::vector<Disc> discs{{30, 30, 20}, {72, 30, 20}, {50, 66, 18}, {100, 70, 25}};
  const auto regions = stone_regions(maps_of(discs, 140, 110));
  EXPECT_EQ(regions.stones, 4);
  const auto outlines = outlines_of(regions);
  ASSERT_EQ(outlines.size(), 4U);
  std::vector<double> areas;
  for (const auto& outline : outlines) areas.push_back(area_of(outline));
  std::sort(areas.begin(), areas.end());
  const double expected[] = {18, 20, 20, 25};
  for (std::size_t i = 0; i < 4; ++i) {
    const double true_area = std::numbers::pi * expected[i] * expected[i];
    EXPECT_NEAR(areas[i] / true_area, 1, 0.03) << i;
  }
}

TEST(StoneRegions, StonesThatTouchAreParted) {
  const auto regions = stone_regions(maps_of({{30, 30, 20}, {70, 30, 20}}, 100, 60));
  EXPECT_EQ(regions.stones, 2);
}

// Two summits of one depth: the way from one to the other must fall by a fifth to part them.
TEST(StoneRegions, SummitsThatHardlyStandOutAreOneStone) {
  const auto with_saddle = [](float saddle) {
    auto maps = maps_of({}, 60, 30);
    for (int y = 0; y < 30; ++y) {
      for (int x = 0; x < 60; ++x) {
        const auto at = static_cast<std::size_t>(y * 60 + x);
        maps.rock[at] = 1;
        maps.depth[at] = std::abs(x - 30) < 8 ? saddle : 0.8F;
      }
    }
    return stone_regions(maps).stones;
  };
  EXPECT_EQ(with_saddle(0.70F), 1);
  EXPECT_EQ(with_saddle(0.62F), 1);
  EXPECT_EQ(with_saddle(0.58F), 2);
  EXPECT_EQ(with_saddle(0.20F), 2);
}

TEST(StoneRegions, NothingIsFoundWhereThereIsNoRock) {
  const auto regions = stone_regions(maps_of({}, 40, 30));
  EXPECT_EQ(regions.stones, 0);
  EXPECT_TRUE(outlines_of(regions).empty());
}

TEST(StoneRegions, EveryRegionHangsTogetherAndHasAnOutlineThatDoesNotCrossItself) {
  // Whatever a network says, even noise.
  auto maps = maps_of({}, 90, 70);
  for (std::size_t i = 0; i < maps.rock.size(); ++i) {
    maps.rock[i] = static_cast<float>(part_of_one(i) < 0.7 ? 1 : 0);
    maps.depth[i] = static_cast<float>(part_of_one(i + 100'000));
    maps.edge[i] = static_cast<float>(part_of_one(i + 200'000));
  }
  const auto regions = stone_regions(maps);
  EXPECT_GT(regions.stones, 5);
  const auto outlines = outlines_of(regions);
  EXPECT_EQ(outlines.size(), static_cast<std::size_t>(regions.stones));
  for (const auto& outline : outlines) {
    for (const auto& point : outline) {
      EXPECT_TRUE(point.x >= 0 && point.x <= 90 && point.y >= 0 && point.y <= 70);
    }
  }
}

TEST(SmoothFunctions, AreThoseOfTheLibrary) {
  for (double x = -50; x <= 50; x += 0.37) {
    EXPECT_NEAR(exponential(x) / std::exp(x), 1, 1e-12) << x;
  }
  EXPECT_EQ(logistic(0), 0.5F);
  EXPECT_EQ(logistic(1000), 1.0F);
  EXPECT_LT(logistic(-1000), 1e-20F);
}

}  // namespace
}  // namespace proofstone
