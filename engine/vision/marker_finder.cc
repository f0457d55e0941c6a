#include "engine/vision/marker_finder.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>

#include "engine/vision/dark_quads.h"
#include "engine/vision/grey_picture.h"
#include "engine/vision/marker_code.h"
#include "engine/vision/plane_view.h"

namespace proofstone {
namespace {

/// Sides below this are looked for on the picture as it is, longer ones on the halved picture,
/// and so on: the comparison with the neighbourhood reaches no farther.
constexpr double longest_side_of_small_quad = 120;
constexpr double least_contrast = 25;  // of 255, between the rim and the paper round it
constexpr int most_wrong_on_rim = 2;   // of 28 modules

double longest_side_of(const Quad& quad) {
  double longest = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    longest = std::max(longest, pixels_between(quad[i], quad[(i + 1) % 4]));
  }
  return longest;
}

/// Modules of what may be a marker, seen through its corners.
class Modules {
 public:
  Modules(const PlaneView& view, const GreyPicture& picture) : view_(view), picture_(picture) {}

  /// Mean brightness of the middle of a module; -1 and `marker_modules` lie on the paper round it.
  double brightness(int column, int row) const {
    double sum = 0;
    for (const double dy : {0.3, 0.5, 0.7}) {
      for (const double dx : {0.3, 0.5, 0.7}) {
        const auto at = view_.on_picture({column + dx, row + dy});
        sum += picture_.between(at.x, at.y);
      }
    }
    return sum / 9;
  }

 private:
  const PlaneView& view_;
  const GreyPicture& picture_;
};

std::optional<ReadMarker> read_through(const Quad& quad, const GreyPicture& picture) {
  constexpr double side = marker_modules;
  const SeenPoint corners[] = {
      {{0, 0}, quad[0]}, {{side, 0}, quad[1]}, {{side, side}, quad[2]}, {{0, side}, quad[3]}};
  const auto view = PlaneView::through(corners);
  if (!view) return std::nullopt;
  const Modules modules(*view, picture);
  constexpr int last = marker_modules - 1;
  double rim = 0;
  double paper = 0;
  for (int i = 0; i < last; ++i) {
    rim += modules.brightness(i, 0) + modules.brightness(last, i) +
           modules.brightness(i + 1, last) + modules.brightness(0, i + 1);
    paper += modules.brightness(i, -1) + modules.brightness(last + 1, i) +
             modules.brightness(i + 1, last + 1) + modules.brightness(-1, i + 1);
  }
  rim /= 4 * last;
  paper /= 4 * last;
  if (paper - rim < least_contrast) return std::nullopt;
  const double middle = (rim + paper) / 2;
  int wrong = 0;
  for (int i = 0; i < last; ++i) {
    for (const double seen : {modules.brightness(i, 0), modules.brightness(last, i),
                              modules.brightness(i + 1, last), modules.brightness(0, i + 1)}) {
      if (seen > middle) ++wrong;
    }
  }
  if (wrong > most_wrong_on_rim) return std::nullopt;
  MarkerBits seen = 0;
  for (int row = 1; row < last; ++row) {
    for (int column = 1; column < last; ++column) {
      seen = seen << 1 | (modules.brightness(column, row) > middle ? 1U : 0U);
    }
  }
  return read_marker(seen);
}

}  // namespace

std::vector<SeenMarker> find_markers(const PhotoPixels& photo) {
  if (photo.width <= 0 || photo.height <= 0 ||
      photo.rgb.size() !=
          3 * static_cast<std::size_t>(photo.width) * static_cast<std::size_t>(photo.height)) {
    return {};
  }
  std::map<int, std::vector<SeenMarker>> found;
  const auto whole = grey_of(photo);
  GreyPicture level = whole;
  const auto take = [&](const Quad& rough, double enlarged) {
    Quad quad = rough;
    for (auto& corner : quad) corner = {corner.x * enlarged, corner.y * enlarged};
    quad = refined(quad, whole, 2.5 * enlarged);
    quad = refined(quad, whole, 1.5);
    const auto read = read_through(quad, whole);
    if (!read) return;
    SeenMarker marker{read->number, {}};
    // A marker turned clockwise has its own upper left corner so many corners farther on.
    for (std::size_t i = 0; i < 4; ++i) {
      marker.corners[i] = quad[(i + static_cast<std::size_t>(read->quarter_turns)) % 4];
    }
    auto& same = found[marker.number];
    const auto again = std::find_if(same.begin(), same.end(), [&](const SeenMarker& other) {
      return pixels_between(other.corners[0], marker.corners[0]) < longest_side_of(quad) / 4;
    });
    if (again == same.end()) same.push_back(marker);
  };
  for (double enlarged = 1; level.width >= 100 && level.height >= 100; enlarged *= 2) {
    for (const auto& quad : dark_quads(level)) {
      if (longest_side_of(quad) <= longest_side_of_small_quad) take(quad, enlarged);
    }
    level = halved(level);
  }
  std::vector<SeenMarker> markers;
  for (const auto& [number, same] : found) {
    if (same.size() == 1) markers.push_back(same.front());
  }
  return markers;
}

std::map<int, std::vector<SeenMarker>> find_boards(const PhotoPixels& photo) {
  std::map<int, std::vector<SeenMarker>> boards;
  for (const auto& marker : find_markers(photo)) boards[board_of(marker.number)].push_back(marker);
  return boards;
}

}  // namespace proofstone
