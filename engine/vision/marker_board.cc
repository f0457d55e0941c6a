#include "engine/vision/marker_board.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/vision/marker_code.h"

namespace proofstone {
namespace {

constexpr double least_side_of_marker = 12;  // pixels
/// Of the side of a marker: a printed sheet on a stiff plate, corners found within a pixel.
constexpr double most_misfit = 0.04;

std::vector<SeenPoint> seen_points(const ScaleBoard& board) {
  std::vector<SeenPoint> seen;
  for (const auto& marker : board.markers) {
    const auto place = place_on_board(marker.number);
    const PlanePoint corners[] = {{place.x, place.y},
                                  {place.x + 1, place.y},
                                  {place.x + 1, place.y + 1},
                                  {place.x, place.y + 1}};
    for (std::size_t i = 0; i < marker.corners.size(); ++i) {
      seen.push_back({corners[i], marker.corners[i]});
    }
  }
  return seen;
}

bool on_picture(const SeenMarker& marker, const PictureSize& picture) {
  return std::all_of(marker.corners.begin(), marker.corners.end(), [&](PhotoPoint corner) {
    return corner.x >= 0 && corner.x <= picture.width && corner.y >= 0 &&
           corner.y <= picture.height;
  });
}

/// Whether its corners follow one another clockwise, none in or on the line between its neighbours.
bool is_square_in_view(const SeenMarker& marker) {
  const auto& corners = marker.corners;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const auto& a = corners[i];
    const auto& b = corners[(i + 1) % 4];
    const auto& c = corners[(i + 2) % 4];
    const double turn = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    if (!(turn > 0) || !(pixels_between(a, b) >= least_side_of_marker)) return false;
  }
  return true;
}

}  // namespace

int board_of(int marker) { return marker / markers_of_board + 1; }

PlanePoint place_on_board(int marker) {
  const int at = marker % markers_of_board;
  const int column = at % board_columns;
  const int row = at / board_columns;
  constexpr double apart = 1 + board_gap;
  return {column * apart, row * apart};
}

std::vector<PhotoPoint> sheet_in_view(const ScaleBoard& board) {
  const auto view = PlaneView::through(seen_points(board));
  if (!view) return {};
  constexpr double apart = 1 + board_gap;
  constexpr double right = board_columns * apart;
  constexpr double bottom = board_rows * apart;
  return {view->on_picture({-board_gap, -board_gap}), view->on_picture({right, -board_gap}),
          view->on_picture({right, bottom}), view->on_picture({-board_gap, bottom})};
}

Expected<BoardReading> read_board(const ScaleBoard& board, const std::string& where, Steps& steps) {
  const auto seen = seen_points(board);
  const auto view = PlaneView::through(seen);
  PlanePoint middle;
  double side = 0;
  for (const auto& point : seen) {
    middle.x += point.on_plane.x / static_cast<double>(seen.size());
    middle.y += point.on_plane.y / static_cast<double>(seen.size());
  }
  for (const auto& marker : board.markers) {
    side = std::max(side, pixels_between(marker.corners[0], marker.corners[2]) / std::sqrt(2.0));
  }
  if (!view || !(view->misfit(seen) <= most_misfit * side)) {
    return Problem{"board-not-flat",
                   "Its markers do not lie on the picture as on a flat board: it is bent, or a "
                   "corner is not where it was put.",
                   "", where, "a board glued on a stiff plate, all its corners in sight"};
  }
  const auto stretch = view->stretch_at(middle);
  BoardReading reading;
  reading.pixel = Length::meters(board.edge.meters() / stretch.longest);
  reading.middle = view->on_picture(middle);
  reading.oblique = Angle::radians(std::acos(std::min(1.0, stretch.shortest / stretch.longest)));
  steps.given_rock("a", "edge of a marker", board.edge);
  steps.computed("m", fmt::format("pixels to an edge at the middle of {}", where),
                 "the longer stretch of the projective map through all corners",
                 measure(stretch.longest));
  steps.computed("θ_b", fmt::format("{} off square", where), "arccos(shorter stretch / m)",
                 measure(reading.oblique));
  steps.computed("s", "metres to a pixel at the board", "a / m", measure(reading.pixel.meters()));
  return reading;
}

Problems problems_of_board(const ScaleBoard& board, const PictureSize& picture,
                           const std::string& where) {
  Problems problems;
  const auto wrong = [&](const char* code, const std::string& what, const char* allowed) {
    problems.push_back({code, what, "", where, allowed});
  };
  if (!(board.edge.meters() >= 0.01 && board.edge.meters() <= 2)) {
    wrong("no-board", "No marker has that edge; the unit may be wrong.",
          "10 mm (0.4 in) to 2 m (6.6 ft), measured on the print");
  }
  if (board.markers.empty()) {
    wrong("no-board", "None of its markers was seen.", "one marker or more, with its corners");
  }
  std::set<int> numbers;
  std::set<int> boards;
  for (const auto& marker : board.markers) {
    if (marker.number < 0 || marker.number >= known_markers) {
      wrong("no-board", fmt::format("No board has a marker {}.", marker.number), "0 to 23");
    }
    if (!numbers.insert(marker.number).second) {
      wrong("no-board", fmt::format("Marker {} stands here twice.", marker.number),
            "each marker once");
    }
    boards.insert(board_of(marker.number));
    if (!on_picture(marker, picture) || !is_square_in_view(marker)) {
      wrong("no-board",
            fmt::format("The corners of marker {} are no square in view: off the picture, too "
                        "close, or not clockwise.",
                        marker.number),
            "four corners on the picture, 12 pixels apart or more, from its own upper left "
            "clockwise");
    }
  }
  if (boards.size() > 1) {
    wrong("no-board", "Markers of two boards stand under one.", "each board by itself");
  }
  return problems;
}

}  // namespace proofstone
