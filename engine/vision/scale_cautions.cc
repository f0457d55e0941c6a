#include "engine/vision/scale_cautions.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "engine/evidence/confidence.h"
#include "engine/vision/covering_marks.h"
#include "engine/vision/marker_board.h"
#include "engine/vision/photo_scale.h"

namespace proofstone {
namespace {

// Reference study of rendered piles, section 10: up to 30 degrees off square, up to 10 % covered.
constexpr double most_degrees = 30;
constexpr double most_covered_of_picture = 0.10;
constexpr double reading_error = 1;  ///< pixel, of the radius of a ball
constexpr double one_sided = 0.95;
/// Rock is outlined on most of what lies round a mark that lies on rock (common practice).
constexpr double least_rock_round = 0.5;
constexpr int places_round = 48;

double in_degrees(double radians) { return radians * 180 / std::numbers::pi; }

struct FaceAngle {
  double degrees = 0;
  double at_least = 0;  ///< with what the balls may be misread
};

/// The angle between the picture's plane and the line through two balls.
FaceAngle angle_of(const ScaleBall& one, const ScaleBall& other, const Photo& photo) {
  const double focal =
      focal_length_in_pixels(photo.size, photo.focal_length.value_or(usual_focal_length));
  const auto distance = [focal](const ScaleBall& ball) {
    return focal * ball.diameter.meters() / (2 * ball.radius);
  };
  const auto aside = [&](const ScaleBall& ball) {
    const double part = distance(ball) / focal;
    return PhotoPoint{(ball.middle.x - photo.size.width / 2) * part,
                      (ball.middle.y - photo.size.height / 2) * part};
  };
  const double across = pixels_between(aside(one), aside(other));
  const double deeper = std::abs(distance(one) - distance(other));
  const double misread = normal_quantile(one_sided) * reading_error *
                         std::hypot(distance(one) / one.radius, distance(other) / other.radius);
  return {in_degrees(std::atan2(deeper, across)),
          in_degrees(std::atan2(std::max(0.0, deeper - misread), across))};
}

bool is_ball(const ScaleBall& ball) { return ball.radius > 0 && ball.diameter.meters() > 0; }

/// Of balls at different heights, the pair that leans most beyond doubt.
std::optional<FaceAngle> angle_of_balls(const Photo& photo) {
  std::optional<FaceAngle> most;
  for (std::size_t i = 0; i < photo.balls.size(); ++i) {
    for (std::size_t k = i + 1; k < photo.balls.size(); ++k) {
      const auto& one = photo.balls[i];
      const auto& other = photo.balls[k];
      if (!is_ball(one) || !is_ball(other) ||
          !(std::abs(one.middle.y - other.middle.y) >= least_apart * photo.size.height)) {
        continue;
      }
      const auto angle = angle_of(one, other, photo);
      if (!most || angle.at_least > most->at_least) most = angle;
    }
  }
  return most;
}

std::optional<double> angle_of_boards(const Photo& photo) {
  std::optional<double> most;
  for (const auto& board : photo.boards) {
    if (!problems_of_board(board, photo.size, "").empty()) continue;
    auto unread = Steps::unread();
    const auto reading = read_board(board, "", unread);
    if (reading) most = std::max(most.value_or(0), reading->oblique.degrees());
  }
  return most;
}

void caution_of_view(const Photo& photo, int number, std::vector<std::string>& cautions) {
  if (photo.view == PhotoView::oblique) {
    cautions.push_back(
        fmt::format("Photo {} is an oblique view: square to the face tells more.", number));
    if (photo.balls.size() + photo.staffs.size() + photo.boards.size() == 1) {
      cautions.push_back(fmt::format(
          "Photo {} is an oblique view with one mark: away from it the scale is wrong by up to "
          "20 %. Lay a second one higher or lower on the rock.",
          number));
    }
    return;
  }
  const auto oblique = [&](const char* by, double degrees) {
    cautions.push_back(
        fmt::format("By its {} photo {} looks {:.0f}° off square to the face: above {:g}° it is an "
                    "oblique view. Take it square to the face, or state an oblique view.",
                    by, number, degrees, most_degrees));
  };
  if (const auto degrees = angle_of_boards(photo); degrees && *degrees > most_degrees) {
    oblique("marker board", *degrees);
  }
  if (const auto angle = angle_of_balls(photo); angle && angle->at_least > most_degrees) {
    oblique("balls", angle->degrees);
  }
}

/// Share of places that lie on outlined rock, of those on the picture; 1 where none is.
template <class PlaceAt>
double rock_at(const Photo& photo, PlaceAt place_at) {
  int on_picture = 0;
  int on_rock = 0;
  for (int i = 0; i < places_round; ++i) {
    const PhotoPoint place = place_at(static_cast<double>(i) / places_round);
    if (!(place.x >= 0 && place.y >= 0 && place.x <= photo.size.width &&
          place.y <= photo.size.height)) {
      continue;
    }
    ++on_picture;
    if (std::any_of(photo.outlines.begin(), photo.outlines.end(),
                    [place](const auto& outline) { return encloses(outline, place); })) {
      ++on_rock;
    }
  }
  return on_picture == 0 ? 1 : static_cast<double>(on_rock) / on_picture;
}

double rock_round_ball(const Photo& photo, const ScaleBall& ball) {
  return rock_at(photo, [&ball](double part) {
    const double turn = 2 * std::numbers::pi * part;
    // Nearer and farther in turn.
    const double away = ball.radius * (1.2 + 0.4 * std::abs(std::sin(9 * turn)));
    return PhotoPoint{ball.middle.x + away * std::cos(turn), ball.middle.y + away * std::sin(turn)};
  });
}

double rock_round_sheet(const Photo& photo, const std::vector<PhotoPoint>& sheet) {
  PhotoPoint middle;
  for (const auto& corner : sheet) {
    middle.x += corner.x / static_cast<double>(sheet.size());
    middle.y += corner.y / static_cast<double>(sheet.size());
  }
  return rock_at(photo, [&](double part) {
    const double along = part * static_cast<double>(sheet.size());
    const auto side = std::min(sheet.size() - 1, static_cast<std::size_t>(along));
    const double there = along - static_cast<double>(side);
    const auto& from = sheet[side];
    const auto& to = sheet[(side + 1) % sheet.size()];
    const double away = 1.15 + 0.2 * std::abs(std::sin(40 * part));
    return PhotoPoint{middle.x + away * (from.x + there * (to.x - from.x) - middle.x),
                      middle.y + away * (from.y + there * (to.y - from.y) - middle.y)};
  });
}

double rock_along_staff(const Photo& photo, const ScaleStaff& staff) {
  return rock_at(photo, [&staff](double part) {
    // A staff hides what it lies on: both sides of it are asked.
    const double aside = std::sin(40 * part) > 0 ? 0.06 : -0.06;
    const double right = staff.to.x - staff.from.x;
    const double down = staff.to.y - staff.from.y;
    return PhotoPoint{staff.from.x + part * right - aside * down,
                      staff.from.y + part * down + aside * right};
  });
}

void caution_of_place(const Photo& photo, int number, std::vector<std::string>& cautions) {
  if (photo.outlines.empty()) return;
  const auto say = [&](double rock, const char* mark, std::size_t index) {
    if (rock >= least_rock_round) return;
    cautions.push_back(fmt::format(
        "Round {} {} of photo {} little rock is outlined: look whether it lies on the rock. A "
        "scale in front of the rock makes it too small.",
        mark, index + 1, number));
  };
  for (std::size_t i = 0; i < photo.balls.size(); ++i) {
    say(rock_round_ball(photo, photo.balls[i]), "ball", i);
  }
  for (std::size_t i = 0; i < photo.staffs.size(); ++i) {
    say(rock_along_staff(photo, photo.staffs[i]), "staff", i);
  }
  for (std::size_t i = 0; i < photo.boards.size(); ++i) {
    const auto sheet = sheet_in_view(photo.boards[i]);
    if (!sheet.empty()) say(rock_round_sheet(photo, sheet), "board", i);
  }
}

}  // namespace

std::vector<std::string> cautions_of_scale(const Photo& photo, int number) {
  std::vector<std::string> cautions;
  caution_of_view(photo, number, cautions);
  const double covered = CoveringMarks(photo).share_of_picture();
  if (covered > most_covered_of_picture) {
    cautions.push_back(fmt::format("Balls and boards cover {:.0f} % of photo {}: use smaller ones.",
                                   100 * covered, number));
  }
  caution_of_place(photo, number, cautions);
  return cautions;
}

}  // namespace proofstone
