#include "engine/vision/photo_scale.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/vision/marker_board.h"
#include "engine/vision/photo_scale_problems.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

/// Standard deviations of the study, over the scale.
constexpr double error_of_two_balls = 0.06;
constexpr double error_of_one_ball = 0.10;  ///< 5 to 15 % by pile; its middle
constexpr double error_of_oblique_line = 0.07;
constexpr double error_of_reading = 1;  // pixel, of the radius of a ball
/// Two single marks differ by more in one case of twenty: exp(1.96·√2·10 %).
constexpr double most_difference = 1.32;
/// Diagonal of a 36 × 24 mm picture.
constexpr double full_frame_diagonal_mm = 43.26661530556787;

struct ScaleMark {
  std::string where;
  double y = 0;
  double pixel = 0;  ///< m, on the plane of the rock
};

Expected<std::vector<ScaleMark>> marks_of(const Photo& photo, const std::string& where,
                                          Steps& steps) {
  const Length focal = photo.focal_length.value_or(usual_focal_length);
  std::vector<ScaleMark> marks;
  for (std::size_t i = 0; i < photo.balls.size(); ++i) {
    const auto& ball = photo.balls[i];
    BallScaleInputs in;
    in.diameter = ball.diameter;
    in.radius = Dimensionless::number(ball.radius);
    in.focal_length = Dimensionless::number(focal_length_in_pixels(photo.size, focal));
    in.off_square = angle_of_view(photo);
    auto scale = ball_scale(in, steps);
    if (!scale) return scale.problems();
    marks.push_back(
        {fmt::format("{}, ball {}", where, i + 1), ball.middle.y, scale->pixel.meters()});
  }
  for (std::size_t i = 0; i < photo.staffs.size(); ++i) {
    const auto& staff = photo.staffs[i];
    const double pixel = staff.length.meters() / pixels_between(staff.from, staff.to);
    steps.given_rock("L", "length of the staff", staff.length);
    steps.computed("s", "metres to a pixel at the staff", "L / pixels between its marks",
                   measure(pixel));
    marks.push_back(
        {fmt::format("{}, staff {}", where, i + 1), (staff.from.y + staff.to.y) / 2, pixel});
  }
  for (std::size_t i = 0; i < photo.boards.size(); ++i) {
    const auto here = fmt::format("{}, board {}", where, i + 1);
    const auto reading = read_board(photo.boards[i], here, steps);
    if (!reading) return reading.problems();
    marks.push_back({here, reading->middle.y, reading->pixel.meters()});
  }
  return marks;
}

double mean_inverse(const std::vector<ScaleMark>& marks) {
  double sum = 0;
  for (const auto& mark : marks) sum += mark.pixel;
  return static_cast<double>(marks.size()) / sum;
}

/// Least squares of one over the length of a pixel against the height on the picture.
Expected<std::pair<double, double>> line_of(const std::vector<ScaleMark>& marks, const Photo& photo,
                                            const std::string& where) {
  double low = marks.front().y;
  double high = low;
  double y_mean = 0;
  double inverse_mean = 0;
  for (const auto& mark : marks) {
    low = std::min(low, mark.y);
    high = std::max(high, mark.y);
    y_mean += mark.y / static_cast<double>(marks.size());
    inverse_mean += 1 / mark.pixel / static_cast<double>(marks.size());
  }
  if (high - low < least_apart * photo.size.height) {
    return Problem{"one-height",
                   "An oblique view with its scale at one height only is wrong by up to 20 %.", "",
                   where,
                   fmt::format("two balls, staffs or boards at least {:.0f} pixels apart in height",
                               least_apart * photo.size.height)};
  }
  double products = 0;
  double squares = 0;
  for (const auto& mark : marks) {
    products += (mark.y - y_mean) * (1 / mark.pixel - inverse_mean);
    squares += (mark.y - y_mean) * (mark.y - y_mean);
  }
  const double slope = products / squares;
  if (slope < 0) {
    return Problem{"scales-disagree",
                   "By its marks the rock low on the picture is farther away than that above it.",
                   "", where, "an upright picture, each mark with its own length"};
  }
  return std::pair{inverse_mean - slope * y_mean, slope};
}

/// Two marks that differ by more than chance contradict one another.
std::optional<Problem> problem_of_agreement(const std::vector<ScaleMark>& marks,
                                            const PhotoScale& scale) {
  for (const auto& mark : marks) {
    const double ratio = mark.pixel / scale.pixel_at(mark.y).meters();
    // From the mean each of two marks is off by half of their difference.
    const double limit = std::sqrt(most_difference);
    if (ratio > 0 && ratio < limit && ratio > 1 / limit) continue;
    return Problem{"scales-disagree",
                   fmt::format("It shows {:.2g} mm to a pixel where all marks together show "
                               "{:.2g} mm.",
                               1000 * mark.pixel, scale.pixel_at(mark.y).millimeters()),
                   "", mark.where,
                   "marks that agree: measure them again, and look that none stands off the rock"};
  }
  return std::nullopt;
}

double error_of(const Photo& photo) {
  if (photo.scale_error) return photo.scale_error->number();
  double error = photo.balls.size() > 1 ? error_of_two_balls : error_of_one_ball;
  if (photo.view == PhotoView::oblique) error = error_of_oblique_line;
  double reading = 0;
  for (const auto& ball : photo.balls) reading += error_of_reading / ball.radius;
  // Each ball is read by itself: the mean of n is off by 1/√n of the mean reading.
  const double n = static_cast<double>(photo.balls.size());
  reading = reading / n / std::sqrt(n);
  return std::sqrt(error * error + reading * reading);
}

}  // namespace

double focal_length_in_pixels(const PictureSize& picture, Length focal_length) {
  return focal_length.millimeters() / full_frame_diagonal_mm * picture.diagonal();
}

Angle angle_of_view(const Photo& photo) {
  return photo.off_square.value_or(Angle::degrees(photo.view == PhotoView::straight_on ? 6 : 44));
}

Expected<PhotoScale> photo_scale(const Photo& photo, const std::string& where, Steps& steps) {
  if (auto problems = problems_of_camera_and_marks(photo, where); !problems.empty()) {
    return problems;
  }

  const auto marks = marks_of(photo, where, steps);
  if (!marks) return marks.problems();
  double inverse = mean_inverse(*marks);
  double slope = 0;
  if (photo.view == PhotoView::oblique) {
    const auto line = line_of(*marks, photo, where);
    if (!line) return line.problems();
    inverse = line->first;
    slope = line->second;
  }
  const PhotoScale scale(inverse, slope, error_of(photo), photo.scale_error.has_value());
  if (auto problem = problem_of_agreement(*marks, scale)) return *problem;

  const double middle = photo.size.height / 2;
  steps.computed("s", fmt::format("metres to a pixel at mid-height of {}", where),
                 photo.view == PhotoView::oblique
                     ? "1/s straight down the picture, through the marks"
                     : "mean of the marks",
                 measure(scale.pixel_at(middle).meters()), rendered_piles("scale").sentence());
  steps.given("e_s", fmt::format("error of the scale of {}, standard deviation", where),
              measure(scale.error()),
              photo.scale_error ? "document" : rendered_piles("scale").sentence());
  return scale;
}

}  // namespace proofstone
