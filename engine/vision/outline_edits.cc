#include "engine/vision/outline_edits.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/vision/outline_photo.h"
#include "engine/vision/stone_regions.h"

namespace proofstone {
namespace {

constexpr std::size_t most_corners = 20'000;
constexpr double most_pixels = 1e6;
constexpr int reach = 2;  ///< pixels by which pieces are widened until they touch
constexpr int margin = reach + 1;

bool is_place(PhotoPoint point) {
  return std::abs(point.x) <= most_pixels && std::abs(point.y) <= most_pixels;
}

std::optional<Problem> problem_of(const std::vector<StoneOutline>& outlines, double pixel) {
  if (!(pixel > 0 && pixel <= 1000)) {
    return Problem{"no-pixel", "This is no size of a pixel.", "", "pixel", "above 0, up to 1000"};
  }
  for (std::size_t i = 0; i < outlines.size(); ++i) {
    const auto& outline = outlines[i];
    if (outline.size() >= 3 && outline.size() <= most_corners &&
        std::all_of(outline.begin(), outline.end(), is_place)) {
      continue;
    }
    return Problem{"no-outline", "This is no outline.", "", fmt::format("outlines/{}", i),
                   fmt::format("3 to {} corners in pixels of the photo", most_corners)};
  }
  return std::nullopt;
}

PhotoBox box_round_all(const std::vector<StoneOutline>& outlines) {
  PhotoBox box = box_round(outlines.front());
  for (const auto& outline : outlines) {
    for (const auto& point : outline) box.take_in(point);
  }
  return box;
}

/// Pixels round some outlines, each with a number; 0 for none.
class EditedPixels {
 public:
  EditedPixels(const PhotoBox& box, double pixel)
      : pixel_(std::max(pixel, std::max(box.width(), box.height()) / longest_side_worked_on)),
        left_(std::floor(box.left / pixel_) - margin),
        top_(std::floor(box.top / pixel_) - margin),
        regions_{static_cast<int>(std::ceil(box.right / pixel_) - left_) + margin,
                 static_cast<int>(std::ceil(box.bottom / pixel_) - top_) + margin,
                 0,
                 {}} {
    regions_.stone.assign(
        static_cast<std::size_t>(regions_.width) * static_cast<std::size_t>(regions_.height), 0);
  }

  int width() const { return regions_.width; }
  int height() const { return regions_.height; }
  int& at(int x, int y) {
    return regions_.stone[static_cast<std::size_t>(y) * static_cast<std::size_t>(regions_.width) +
                          static_cast<std::size_t>(x)];
  }
  /// The middle of a pixel on the photo.
  PhotoPoint middle(int x, int y) const {
    return {(left_ + x + 0.5) * pixel_, (top_ + y + 0.5) * pixel_};
  }

  /// Numbers the pixels whose middles an outline goes round.
  void fill(const StoneOutline& outline, int number) {
    std::vector<Crossing> crossings;
    for (int y = 0; y < height(); ++y) {
      crossings_of_row(outline, top_ + y + 0.5, crossings);
      int round = 0;
      for (std::size_t i = 0; i + 1 < crossings.size(); ++i) {
        round += crossings[i].way;
        if (round == 0) continue;
        const int from = std::max(0, column_from(crossings[i].x));
        const int to = std::min(width(), column_from(crossings[i + 1].x));
        for (int x = from; x < to; ++x) at(x, y) = number;
      }
    }
  }

  /// Each pixel that has a number within `reach` across or down gets one; with `shrink`, loses one
  /// where a pixel without is so near.
  void widen(bool shrink) {
    for (const bool across : {true, false}) {
      const auto before = regions_.stone;
      for (int y = 0; y < height(); ++y) {
        for (int x = 0; x < width(); ++x) {
          bool some = false;
          for (int i = -reach; i <= reach; ++i) {
            const int to_x = std::clamp(across ? x + i : x, 0, width() - 1);
            const int to_y = std::clamp(across ? y : y + i, 0, height() - 1);
            const auto there =
                before[static_cast<std::size_t>(to_y) * static_cast<std::size_t>(width()) +
                       static_cast<std::size_t>(to_x)];
            some = some || (there == 0) == shrink;
          }
          if (some) at(x, y) = shrink ? 0 : 1;
        }
      }
    }
  }

  /// The outlines of the parts that hang together by their sides and have one number, the largest
  /// first.
  std::vector<StoneOutline> outlines() {
    const std::vector<int> numbers = regions_.stone;
    std::fill(regions_.stone.begin(), regions_.stone.end(), 0);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
      if (numbers[i] != 0 && regions_.stone[i] == 0) take_part(numbers, static_cast<int>(i));
    }
    auto found = outlines_of(regions_);
    for (auto& outline : found) {
      for (auto& point : outline) {
        point = {(left_ + point.x) * pixel_, (top_ + point.y) * pixel_};
      }
    }
    const auto area = [](const StoneOutline& outline) {
      return piece_of_outline(outline, "")->area;
    };
    std::sort(found.begin(), found.end(), [&](const StoneOutline& one, const StoneOutline& other) {
      return area(one) > area(other);
    });
    return found;
  }

 private:
  struct Crossing {
    double x;
    int way;  ///< 1 where the outline goes down, −1 where it goes up
  };

  void crossings_of_row(const StoneOutline& outline, double y,
                        std::vector<Crossing>& crossings) const {
    crossings.clear();
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const PhotoPoint& from = outline[i];
      const PhotoPoint& to = outline[(i + 1) % outline.size()];
      const double from_y = from.y / pixel_;
      const double to_y = to.y / pixel_;
      if ((from_y <= y) == (to_y <= y)) continue;
      const double part = (y - from_y) / (to_y - from_y);
      crossings.push_back(
          {from.x / pixel_ + part * (to.x - from.x) / pixel_, from_y <= y ? 1 : -1});
    }
    std::sort(crossings.begin(), crossings.end(),
              [](const Crossing& one, const Crossing& other) { return one.x < other.x; });
  }

  /// The first column whose middle is at `x` or beyond.
  int column_from(double x) const { return static_cast<int>(std::ceil(x - left_ - 0.5)); }

  /// Gives the pixels of one part the next number, or none where they are too few.
  void take_part(const std::vector<int>& numbers, int first) {
    std::vector<int> part{first};
    const auto number = numbers[static_cast<std::size_t>(first)];
    const int stone = ++regions_.stones;
    regions_.stone[static_cast<std::size_t>(first)] = stone;
    for (std::size_t next = 0; next < part.size(); ++next) {
      const int x = part[next] % width();
      const int y = part[next] / width();
      constexpr int ways[4][2] = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};
      for (const auto& way : ways) {
        const int to_x = x + way[0];
        const int to_y = y + way[1];
        if (to_x < 0 || to_y < 0 || to_x >= width() || to_y >= height()) continue;
        const int to = to_y * width() + to_x;
        if (numbers[static_cast<std::size_t>(to)] != number ||
            regions_.stone[static_cast<std::size_t>(to)] != 0) {
          continue;
        }
        regions_.stone[static_cast<std::size_t>(to)] = stone;
        part.push_back(to);
      }
    }
    if (static_cast<int>(part.size()) >= least_pixels) return;
    // A number that stands for nothing: it is looked at no more, and has no outline.
    for (const int pixel : part) regions_.stone[static_cast<std::size_t>(pixel)] = 0;
    --regions_.stones;
  }

  double pixel_;
  double left_;  ///< pixels
  double top_;   ///< pixels
  StoneRegions regions_;
};

void keep_on_picture(StoneOutline& outline, const PictureSize& picture) {
  for (auto& point : outline) {
    point.x = std::clamp(point.x, 0.0, picture.width);
    point.y = std::clamp(point.y, 0.0, picture.height);
  }
}

}  // namespace

Expected<StoneOutline> joined_outlines(const std::vector<StoneOutline>& pieces, double pixel) {
  if (auto problem = problem_of(pieces, pixel)) return *problem;
  if (pieces.size() < 2) {
    return Problem{"one-piece", "One piece is a stone already.", "", "outlines", "two or more"};
  }
  EditedPixels pixels(box_round_all(pieces), pixel);
  for (const auto& piece : pieces) pixels.fill(piece, 1);
  pixels.widen(false);
  pixels.widen(true);
  auto stones = pixels.outlines();
  if (stones.size() != 1) {
    return Problem{"apart", "These pieces do not touch, so no one outline goes round them.", "",
                   "outlines", "pieces side by side"};
  }
  return std::move(stones.front());
}

Expected<std::vector<StoneOutline>> cut_outline(const StoneOutline& stone, PhotoPoint from,
                                                PhotoPoint to, double pixel) {
  if (auto problem = problem_of({stone}, pixel)) return *problem;
  if (!is_place(from) || !is_place(to) || !(pixels_between(from, to) > 0)) {
    return Problem{"no-line", "This is no line.", "", "line", "two places apart"};
  }
  EditedPixels pixels(box_round(stone), pixel);
  pixels.fill(stone, 1);
  for (int y = 0; y < pixels.height(); ++y) {
    for (int x = 0; x < pixels.width(); ++x) {
      const PhotoPoint at = pixels.middle(x, y);
      const double aside = (to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x);
      if (pixels.at(x, y) != 0 && aside > 0) pixels.at(x, y) = 2;
    }
  }
  auto stones = pixels.outlines();
  if (stones.size() < 2) {
    return Problem{"not-cut", "The line does not go through the stone.", "", "line",
                   "a line from one side of the stone to the other"};
  }
  return stones;
}

Expected<StoneOutline> drawn_outline(const StoneOutline& path,
                                     const std::vector<StoneOutline>& others,
                                     const PictureSize& picture, double pixel) {
  if (auto problem = problem_of({path}, pixel)) return *problem;
  if (auto problem = problem_of(others, pixel)) return *problem;
  if (!(picture.width >= 1 && picture.width <= most_pixels && picture.height >= 1 &&
        picture.height <= most_pixels)) {
    return Problem{"no-picture", "This is no size of a picture.", "", "width, height",
                   "pixels of the photo"};
  }
  StoneOutline inside = path;
  keep_on_picture(inside, picture);
  EditedPixels pixels(box_round(inside), pixel);
  pixels.fill(inside, 1);
  for (const auto& other : others) pixels.fill(other, 0);
  auto stones = pixels.outlines();
  if (stones.empty()) {
    return Problem{"nothing-drawn", "Nothing that is not a stone already was drawn round.", "",
                   "path", "a line once round a stone that has no outline yet"};
  }
  keep_on_picture(stones.front(), picture);
  return std::move(stones.front());
}

}  // namespace proofstone
