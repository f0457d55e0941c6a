// The outlines of the real gravel against stones that somebody drew by eye.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "engine/vision/outline_photo.h"
#include "photography/outline_weights.h"
#include "photography/photograph_file.h"

namespace proofstone {
namespace {

using Outline = std::vector<PhotoPoint>;

std::string text_of(const std::string& name) {
  std::ifstream file(PROOFSTONE_SOURCE_FOLDER "/photography/pictures/" + name, std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return bytes.str();
}

struct SeenStoneByEye {
  PhotoPoint node;
  Outline outline;
};

std::vector<SeenStoneByEye> stones_by_eye() {
  const auto document = nlohmann::json::parse(text_of("gravel-by-eye.json"));
  std::vector<SeenStoneByEye> stones;
  for (const auto& node : document["nodes"]) {
    if (!node.contains("outline")) continue;
    SeenStoneByEye stone{{node["at"][0], node["at"][1]}, {}};
    for (const auto& corner : node["outline"]) stone.outline.push_back({corner[0], corner[1]});
    stones.push_back(std::move(stone));
  }
  return stones;
}

/// Share of what either goes round that both go round, by places half a pixel apart.
double overlap(const Outline& one, const PhotoBox& one_box, const Outline& other,
               const PhotoBox& other_box) {
  if (one_box.left > other_box.right || one_box.right < other_box.left ||
      one_box.top > other_box.bottom || one_box.bottom < other_box.top) {
    return 0;
  }
  int both = 0;
  int either = 0;
  const double right = std::max(one_box.right, other_box.right);
  const double bottom = std::max(one_box.bottom, other_box.bottom);
  for (double y = std::min(one_box.top, other_box.top) + 0.25; y < bottom; y += 0.5) {
    for (double x = std::min(one_box.left, other_box.left) + 0.25; x < right; x += 0.5) {
      const bool in_one = encloses(one, {x, y});
      const bool in_other = encloses(other, {x, y});
      both += in_one && in_other ? 1 : 0;
      either += in_one || in_other ? 1 : 0;
    }
  }
  return either == 0 ? 0 : static_cast<double>(both) / either;
}

double median_of(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

TEST(RealGravel, IsOutlinedAsSomebodySeesIt) {
  const auto photo = read_photograph(text_of("gravel.png"), "gravel.png");
  const auto network = OutlineNetwork::read(embedded_outline_weights());
  ASSERT_TRUE(photo && network);
  const auto found = outline_photo(photo->pixels, *network, "gravel.png");
  ASSERT_TRUE(found);
  std::vector<VisiblePiece> pieces;
  for (const auto& outline : found->outlines) {
    pieces.push_back(*piece_of_outline(outline, "found"));
  }
  const auto stones = stones_by_eye();
  ASSERT_GE(stones.size(), 60U);
  double area = 0;
  double matched = 0;
  std::vector<double> by_eye;
  std::vector<double> by_program;
  double logarithms = 0;
  for (const auto& stone : stones) {
    const auto piece = piece_of_outline(stone.outline, "by eye");
    ASSERT_TRUE(piece);
    ASSERT_TRUE(encloses(stone.outline, stone.node));
    double best = 0;
    const VisiblePiece* under = nullptr;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      const auto& outline = found->outlines[i];
      best = std::max(best, overlap(stone.outline, piece->box, outline, pieces[i].box));
      if (encloses(outline, stone.node)) under = &pieces[i];
    }
    area += piece->area;
    if (best > 0.5) matched += piece->area;
    if (under == nullptr) continue;
    by_eye.push_back(equal_area_diameter(piece->area));
    by_program.push_back(equal_area_diameter(under->area));
    logarithms += std::log(by_program.back() / by_eye.back());
  }
  const double ratio = std::exp(logarithms / static_cast<double>(by_eye.size()));
  const double median_ratio = median_of(by_program) / median_of(by_eye);
  RecordProperty("stones", static_cast<int>(stones.size()));
  RecordProperty("area_matched", std::to_string(matched / area));
  RecordProperty("mean_size_ratio", std::to_string(ratio));
  RecordProperty("median_size_ratio", std::to_string(median_ratio));
  std::cout << stones.size() << " stones by eye, " << by_eye.size()
            << " of them with an outline; area matched " << matched / area
            << ", mean size over that by eye " << ratio << ", median " << median_ratio << '\n';
  EXPECT_GT(matched / area, 0.85);
  EXPECT_NEAR(ratio, 1, 0.15);
}

}  // namespace
}  // namespace proofstone
