#include "engine/vision/covering_marks.h"

#include <algorithm>

#include "engine/vision/marker_board.h"

namespace proofstone {
namespace {

/// Places along each side of a box that are asked.
constexpr int asked = 24;

/// Of the places in a box that count, the share for which `holds`.
template <class Counts, class Holds>
double share_in(const PhotoBox& box, int places, Counts counts, Holds holds) {
  int counted = 0;
  int held = 0;
  for (int row = 0; row < places; ++row) {
    for (int column = 0; column < places; ++column) {
      const PhotoPoint place{box.left + (column + 0.5) / places * box.width(),
                             box.top + (row + 0.5) / places * box.height()};
      if (!counts(place)) continue;
      ++counted;
      if (holds(place)) ++held;
    }
  }
  return counted == 0 ? 0 : static_cast<double>(held) / counted;
}

bool any_place(PhotoPoint) { return true; }

}  // namespace

CoveringMarks::CoveringMarks(const Photo& photo) : picture_(photo.size), balls_(photo.balls) {
  for (const auto& [middle, radius, diameter] : balls_) {
    boxes_.push_back({middle.x - radius, middle.y - radius, middle.x + radius, middle.y + radius});
  }
  for (const auto& board : photo.boards) {
    auto sheet = sheet_in_view(board);
    if (sheet.empty()) continue;
    boxes_.push_back(box_round(sheet));
    sheets_.push_back(std::move(sheet));
  }
}

bool CoveringMarks::near(const PhotoBox& box) const {
  return std::any_of(boxes_.begin(), boxes_.end(), [&box](const PhotoBox& mark) {
    return mark.left <= box.right && mark.right >= box.left && mark.top <= box.bottom &&
           mark.bottom >= box.top;
  });
}

bool CoveringMarks::cover(PhotoPoint place) const {
  return std::any_of(balls_.begin(), balls_.end(),
                     [place](const ScaleBall& ball) {
                       return pixels_between(ball.middle, place) <= ball.radius;
                     }) ||
         std::any_of(sheets_.begin(), sheets_.end(),
                     [place](const auto& sheet) { return encloses(sheet, place); });
}

double CoveringMarks::share_of(const std::vector<PhotoPoint>& outline) const {
  if (boxes_.empty() || outline.empty()) return 0;
  const auto box = box_round(outline);
  if (!near(box)) return 0;
  return share_in(
      box, asked, [&outline](PhotoPoint place) { return encloses(outline, place); },
      [this](PhotoPoint place) { return cover(place); });
}

double CoveringMarks::share_of(const PhotoBox& box) const {
  if (!near(box)) return 0;
  return share_in(box, asked, any_place, [this](PhotoPoint place) { return cover(place); });
}

double CoveringMarks::share_of_picture() const {
  if (boxes_.empty()) return 0;
  constexpr int finely = 8 * asked;
  return share_in({0, 0, picture_.width, picture_.height}, finely, any_place,
                  [this](PhotoPoint place) { return cover(place); });
}

}  // namespace proofstone
