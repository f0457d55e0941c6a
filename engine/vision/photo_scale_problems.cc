#include "engine/vision/photo_scale_problems.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/vision/marker_board.h"
#include "engine/vision/photo_scale.h"

namespace proofstone {
namespace {

constexpr double largest_off_square_degrees = 75;
constexpr double largest_straight_on_degrees = 30;
/// A staff on an oblique view lies across it: else it is foreshortened.
constexpr double steepest_staff = 0.36;

bool inside(PhotoPoint point, const PictureSize& picture) {
  return point.x >= 0 && point.x <= picture.width && point.y >= 0 && point.y <= picture.height;
}

Problems problems_of_camera(const Photo& photo, const std::string& where) {
  const auto& size = photo.size;
  Problems problems;
  if (!(size.width >= 100 && size.width <= 100'000 && size.height >= 100 &&
        size.height <= 100'000)) {
    problems.push_back({"no-picture", "The picture's width or height is not believable.", "", where,
                        "100 to 100,000 pixels"});
  }
  const double degrees = angle_of_view(photo).degrees();
  if (!(degrees >= 0 && degrees <= largest_off_square_degrees)) {
    problems.push_back({"off-square", "The line of sight grazes the face.", "", where,
                        fmt::format("0 to {:g} degrees", largest_off_square_degrees)});
  } else if (photo.view == PhotoView::straight_on && degrees > largest_straight_on_degrees) {
    problems.push_back({"not-straight-on",
                        fmt::format("A view {:g} degrees off square is an oblique one.", degrees),
                        "", where, fmt::format("up to {:g} degrees", largest_straight_on_degrees)});
  }
  if (photo.focal_length &&
      !(photo.focal_length->millimeters() >= 8 && photo.focal_length->millimeters() <= 400)) {
    problems.push_back({"no-camera", "No camera has that focal length.", "", where,
                        "8 to 400 mm, as of a camera with a 36 × 24 mm picture"});
  }
  if (photo.scale_error &&
      !(photo.scale_error->number() > 0 && photo.scale_error->number() <= 0.5)) {
    problems.push_back({"scale-error", "The error of the scale is not believable.", "", where,
                        "above 0 and up to 50 %"});
  }
  return problems;
}

Problems problems_of_marks(const Photo& photo, const std::string& where) {
  Problems problems;
  for (std::size_t i = 0; i < photo.balls.size(); ++i) {
    const auto& ball = photo.balls[i];
    const auto here = fmt::format("{}, ball {}", where, i + 1);
    if (!(ball.radius >= 4 && ball.radius <= photo.size.diagonal() / 2 &&
          inside(ball.middle, photo.size))) {
      problems.push_back({"no-ball", "Its middle is outside the picture, or no such radius fits.",
                          "", here, "a middle on the picture and a radius of 4 pixels or more"});
    }
    if (!(ball.diameter.meters() >= 0.02 && ball.diameter.meters() <= 2)) {
      problems.push_back({"no-ball", "No ball has that diameter; the unit may be wrong.", "", here,
                          "20 mm (0.8 in) to 2 m (6.6 ft)"});
    }
  }
  for (std::size_t i = 0; i < photo.staffs.size(); ++i) {
    const auto& staff = photo.staffs[i];
    const auto here = fmt::format("{}, staff {}", where, i + 1);
    const double long_in_pixels = pixels_between(staff.from, staff.to);
    if (!(long_in_pixels >= 20 && inside(staff.from, photo.size) && inside(staff.to, photo.size))) {
      problems.push_back({"no-staff", "Its marks are outside the picture or not 20 pixels apart.",
                          "", here, "two marks on the picture, far apart"});
    } else if (photo.view == PhotoView::oblique &&
               std::abs(staff.to.y - staff.from.y) >
                   steepest_staff * std::abs(staff.to.x - staff.from.x)) {
      problems.push_back({"foreshortened",
                          "On an oblique view a staff that runs up the face looks too short.", "",
                          here, "a staff that lies across the picture"});
    }
    if (!(staff.length.meters() >= 0.1 && staff.length.meters() <= 50)) {
      problems.push_back({"no-staff", "No staff has that length; the unit may be wrong.", "", here,
                          "0.1 m (4 in) to 50 m (160 ft)"});
    }
  }
  for (std::size_t i = 0; i < photo.boards.size(); ++i) {
    for (auto& problem : problems_of_board(photo.boards[i], photo.size,
                                           fmt::format("{}, board {}", where, i + 1))) {
      problems.push_back(std::move(problem));
    }
  }
  if (photo.balls.empty() && photo.staffs.empty() && photo.boards.empty()) {
    problems.push_back({"no-scale", "Nothing on the photo tells its scale.", "", where,
                        "balls of known diameter, a staff with two marks, or a marker board"});
  } else if (photo.balls.empty() && !photo.scale_error) {
    problems.push_back(
        {"no-scale-error",
         "How far a staff or a board on rock is wrong was not measured by the study.", "", where,
         "the error of the scale, as a standard deviation: \"5 %\""});
  }
  return problems;
}

}  // namespace

Problems problems_of_camera_and_marks(const Photo& photo, const std::string& where) {
  Problems problems = problems_of_camera(photo, where);
  for (auto& problem : problems_of_marks(photo, where)) problems.push_back(std::move(problem));
  return problems;
}

}  // namespace proofstone
