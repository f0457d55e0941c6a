#include "engine/vision/photo_marks.h"

#include <algorithm>
#include <cmath>

#include "engine/vision/outline_cautions.h"
#include "engine/vision/outline_photo.h"

namespace proofstone {
namespace {

constexpr int working_side = 768;

}  // namespace

PhotoPixels with_longer_side(const PhotoPixels& photo, double side) {
  const double scale = side / std::max(photo.width, photo.height);
  const auto scaled = [scale](int pixels) {
    return std::max(16, static_cast<int>(std::lround(pixels * scale)));
  };
  const int width = scaled(photo.width);
  const int height = scaled(photo.height);
  if (width == photo.width && height == photo.height) return photo;
  return resized(photo, width, height);
}

std::vector<BallInPicture> balls_on_smaller(const PhotoPixels& smaller, int photo_width) {
  const double pixel = static_cast<double>(photo_width) / smaller.width;
  auto balls = find_balls(smaller);
  for (auto& ball : balls) {
    ball = {{ball.middle.x * pixel, ball.middle.y * pixel}, ball.radius * pixel};
  }
  return balls;
}

PhotoMarks marks_on_photo(const PhotoPixels& photo) {
  const auto smaller =
      with_longer_side(photo, std::min(working_side, std::max(photo.width, photo.height)));
  return {balls_on_smaller(smaller, photo.width), find_boards(photo),
          cautions_of_light(light_of(smaller))};
}

}  // namespace proofstone
