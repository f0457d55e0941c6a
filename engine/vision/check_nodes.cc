#include "engine/vision/check_nodes.h"

#include <algorithm>

#include "engine/vision/covering_marks.h"

namespace proofstone {
namespace {

constexpr int most_tried = 3000;  ///< places on one photo
constexpr int bands = 4;          ///< of a photo, gone through from left to right each

/// The digits of a number behind the point, in turned order: even between 0 and 1.
double radical_inverse(int number, int base) {
  double result = 0;
  double part = 1.0 / base;
  for (; number > 0; number /= base, part /= base) result += part * (number % base);
  return result;
}

struct CountingOutline {
  const std::vector<PhotoPoint>* corners;
  PhotoBox box;

  bool goes_round(PhotoPoint at) const {
    return at.x >= box.left && at.x <= box.right && at.y >= box.top && at.y <= box.bottom &&
           encloses(*corners, at);
  }
};

std::vector<CountingOutline> counting_outlines(const Photo& photo) {
  const CoveringMarks marks(photo);
  std::vector<CountingOutline> counting;
  for (const auto& outline : photo.outlines) {
    const auto piece = piece_of_outline(outline, "");
    if (!piece || is_cut_by_edge(*piece, photo.size)) continue;
    if (marks.share_of(outline) <= most_covered) counting.push_back({&outline, piece->box});
  }
  return counting;
}

int band_of(PhotoPoint at, const PictureSize& picture) {
  return static_cast<int>(bands * at.y / picture.height);
}

}  // namespace

std::vector<CheckNode> check_nodes(const std::vector<Photo>& photos) {
  std::vector<CheckNode> nodes;
  const int count = static_cast<int>(photos.size());
  int place = 0;  // goes on from photo to photo: each is looked at elsewhere
  for (int i = 0; i < count; ++i) {
    const auto& photo = photos[static_cast<std::size_t>(i)];
    if (!(photo.size.width >= 1 && photo.size.height >= 1)) continue;
    const auto outlines = counting_outlines(photo);
    std::vector<CheckNode> here;
    const int wanted = nodes_of_check / count + (i < nodes_of_check % count ? 1 : 0);
    for (int tried = 0; tried < most_tried && static_cast<int>(here.size()) < wanted; ++tried) {
      ++place;
      const PhotoPoint at{photo.size.width * radical_inverse(place, 2),
                          photo.size.height * radical_inverse(place, 3)};
      if (std::any_of(outlines.begin(), outlines.end(),
                      [at](const CountingOutline& outline) { return outline.goes_round(at); })) {
        here.push_back({i + 1, at});
      }
    }
    std::sort(here.begin(), here.end(), [&photo](const CheckNode& one, const CheckNode& other) {
      const int band = band_of(one.at, photo.size);
      const int other_band = band_of(other.at, photo.size);
      return band != other_band ? band < other_band : one.at.x < other.at.x;
    });
    nodes.insert(nodes.end(), here.begin(), here.end());
  }
  return nodes;
}

}  // namespace proofstone
