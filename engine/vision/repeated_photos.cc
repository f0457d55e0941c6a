#include "engine/vision/repeated_photos.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofstone {
namespace {

void note(std::vector<double>& numbers, PhotoPoint point) {
  numbers.push_back(point.x);
  numbers.push_back(point.y);
}

/// Every number that was drawn on a photo.
std::vector<double> drawing_of(const Photo& photo) {
  std::vector<double> numbers{photo.size.width, photo.size.height};
  for (const auto& outline : photo.outlines) {
    for (const auto& corner : outline) note(numbers, corner);
  }
  for (const auto& piece : photo.pieces) {
    numbers.push_back(piece.area);
    note(numbers, {piece.box.left, piece.box.top});
    note(numbers, {piece.box.right, piece.box.bottom});
  }
  for (const auto& stone : photo.tapped) {
    note(numbers, stone.node);
    note(numbers, stone.long_from);
    note(numbers, stone.long_to);
    note(numbers, stone.short_from);
    note(numbers, stone.short_to);
  }
  return numbers;
}

}  // namespace

std::string photo_name(std::size_t index) { return fmt::format("photo {}", index + 1); }

void report_repeated(std::vector<DrawnThing> drawn, Problems& problems) {
  std::sort(drawn.begin(), drawn.end(),
            [](const DrawnThing& a, const DrawnThing& b) { return a.numbers < b.numbers; });
  for (std::size_t i = 1; i < drawn.size(); ++i) {
    if (drawn[i].numbers != drawn[i - 1].numbers) continue;
    problems.push_back({"repeated", fmt::format("It repeats {}.", drawn[i - 1].where), "",
                        drawn[i].where, "each once"});
  }
}

Problems problems_of_repeated_photos(const PhotoSet& set) {
  std::vector<DrawnThing> drawings;
  Problems problems;
  for (std::size_t i = 0; i < set.photos.size(); ++i) {
    const auto& photo = set.photos[i];
    drawings.push_back({photo_name(i), drawing_of(photo)});
    for (std::size_t j = 0; j < i && !photo.file.empty(); ++j) {
      if (set.photos[j].file != photo.file) continue;
      problems.push_back({"repeated", fmt::format("It is the same file as {}.", photo_name(j)), "",
                          photo_name(i), "each photo once"});
      break;
    }
  }
  if (problems.empty()) report_repeated(std::move(drawings), problems);
  return problems;
}

}  // namespace proofstone
