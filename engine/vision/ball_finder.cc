#include "engine/vision/ball_finder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

namespace proofstone {
namespace {

// Found in trials on rendered piles.
constexpr double other_colour = 0.06;  ///< from the rock's, in shares of red and green
constexpr int least_light = 90;     ///< red, green and blue together: darker pixels have no colour
constexpr double least_radius = 8;  ///< pixels
constexpr double largest_part = 0.35;  ///< of the shorter side, for a radius
constexpr double rim_reach = 0.06;     ///< of the radius, off which a place is not of the rim
constexpr double least_rim = 0.6;      ///< of the border of a patch, that is of the rim
constexpr double least_filled = 0.85;  ///< of the circle, as far as it is on the picture
constexpr int sectors = 36;
constexpr int least_sectors = 15;
constexpr int rounds = 6;
constexpr std::size_t most_balls = 6;

/// The shares of red and of green of a pixel's light.
struct Colour {
  double red = 0;
  double green = 0;
};

std::optional<Colour> colour_at(const PhotoPixels& photo, std::size_t pixel) {
  const double red = photo.rgb[3 * pixel];
  const double green = photo.rgb[3 * pixel + 1];
  const double all = red + green + photo.rgb[3 * pixel + 2];
  if (all < least_light) return std::nullopt;
  return Colour{red / all, green / all};
}

double middle_of(std::vector<double>& values) {
  if (values.empty()) return 1.0 / 3;
  const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), half, values.end());
  return *half;
}

/// Whether each pixel has a colour that is not that of most of the picture.
std::vector<char> coloured_pixels(const PhotoPixels& photo) {
  const std::size_t pixels = photo.rgb.size() / 3;
  std::vector<double> reds;
  std::vector<double> greens;
  for (std::size_t i = 0; i < pixels; ++i) {
    if (const auto colour = colour_at(photo, i)) {
      reds.push_back(colour->red);
      greens.push_back(colour->green);
    }
  }
  const Colour rock{middle_of(reds), middle_of(greens)};
  std::vector<char> coloured(pixels, 0);
  for (std::size_t i = 0; i < pixels; ++i) {
    const auto colour = colour_at(photo, i);
    if (!colour) continue;
    const double red = colour->red - rock.red;
    const double green = colour->green - rock.green;
    coloured[i] = red * red + green * green > other_colour * other_colour ? 1 : 0;
  }
  return coloured;
}

/// The pixels of one patch, and of them those that lie at its border but not at that of the
/// picture.
struct Patch {
  std::vector<PhotoPoint> border;
  int pixels = 0;
};

Patch take_patch(std::vector<char>& coloured, int width, int height, int first) {
  Patch patch;
  std::vector<int> waiting{first};
  constexpr char own = 2;
  coloured[static_cast<std::size_t>(first)] = own;
  constexpr std::array<std::array<int, 2>, 4> ways{{{1, 0}, {-1, 0}, {0, 1}, {0, -1}}};
  for (std::size_t next = 0; next < waiting.size(); ++next) {
    const int x = waiting[next] % width;
    const int y = waiting[next] / width;
    bool border = false;
    for (const auto& way : ways) {
      const int to_x = x + way[0];
      const int to_y = y + way[1];
      if (to_x < 0 || to_y < 0 || to_x >= width || to_y >= height) continue;
      const auto to = static_cast<std::size_t>(to_y) * static_cast<std::size_t>(width) +
                      static_cast<std::size_t>(to_x);
      border = border || coloured[to] == 0;
      if (coloured[to] != 1) continue;
      coloured[to] = own;
      waiting.push_back(static_cast<int>(to));
    }
    if (border) patch.border.push_back({x + 0.5, y + 0.5});
  }
  for (const int pixel : waiting) coloured[static_cast<std::size_t>(pixel)] = 0;
  patch.pixels = static_cast<int>(waiting.size());
  return patch;
}

/// The circle nearest to places, by least squares of x² + y² against x and y.
std::optional<BallInPicture> circle_through(const std::vector<PhotoPoint>& places) {
  const double n = static_cast<double>(places.size());
  if (n < 3) return std::nullopt;
  PhotoPoint mean;
  for (const auto& place : places) {
    mean.x += place.x / n;
    mean.y += place.y / n;
  }
  double xx = 0;
  double xy = 0;
  double yy = 0;
  double xz = 0;
  double yz = 0;
  double z_mean = 0;
  for (const auto& place : places) {
    const double x = place.x - mean.x;
    const double y = place.y - mean.y;
    const double z = x * x + y * y;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
    z_mean += z / n;
  }
  const double whole = xx * yy - xy * xy;
  if (!(whole > 0)) return std::nullopt;
  const double a = (xz * yy - yz * xy) / (2 * whole);
  const double b = (yz * xx - xz * xy) / (2 * whole);
  return BallInPicture{{mean.x + a, mean.y + b}, std::sqrt(a * a + b * b + z_mean)};
}

double off_rim(const BallInPicture& ball, PhotoPoint place) {
  return std::abs(pixels_between(ball.middle, place) - ball.radius);
}

/// How much of a circle lies on the picture, in pixels.
int pixels_within(const BallInPicture& ball, int width, int height) {
  int pixels = 0;
  for (int y = 0; y < height; ++y) {
    const double down = y + 0.5 - ball.middle.y;
    const double half = ball.radius * ball.radius - down * down;
    if (half <= 0) continue;
    const double reach = std::sqrt(half);
    const double from = std::max(0.0, ball.middle.x - reach);
    const double to = std::min(static_cast<double>(width), ball.middle.x + reach);
    pixels += std::max(0, static_cast<int>(to - from));
  }
  return pixels;
}

/// The ball that a patch shows, if it is round. What lies before it is no part of its rim: places
/// off the circle are left out, and the circle is found anew.
std::optional<BallInPicture> ball_of(const Patch& patch, int width, int height) {
  std::vector<PhotoPoint> rim = patch.border;
  std::optional<BallInPicture> ball;
  for (int round = 0; round < rounds; ++round) {
    ball = circle_through(rim);
    if (!ball || ball->radius < least_radius) return std::nullopt;
    // From rough to fine.
    const double reach = std::max(1.5, ball->radius * rim_reach * (rounds - round) / 2);
    rim.clear();
    for (const auto& place : patch.border) {
      if (off_rim(*ball, place) <= reach) rim.push_back(place);
    }
  }
  const double shorter = std::min(width, height);
  const bool on_picture = ball->middle.x >= 0 && ball->middle.y >= 0 && ball->middle.x <= width &&
                          ball->middle.y <= height;
  if (!on_picture || ball->radius > largest_part * shorter) return std::nullopt;
  std::array<bool, sectors> seen{};
  for (const auto& place : rim) {
    const double turn = std::atan2(place.y - ball->middle.y, place.x - ball->middle.x);
    const auto sector = static_cast<int>((turn / std::numbers::pi + 1) / 2 * sectors);
    seen[static_cast<std::size_t>(std::clamp(sector, 0, sectors - 1))] = true;
  }
  const auto round_about = std::count(seen.begin(), seen.end(), true);
  const bool round =
      static_cast<double>(rim.size()) >= least_rim * static_cast<double>(patch.border.size()) &&
      round_about >= least_sectors;
  if (!round || patch.pixels < least_filled * pixels_within(*ball, width, height)) {
    return std::nullopt;
  }
  // The places of the rim are middles of pixels within it.
  ball->radius += 0.5;
  return ball;
}

}  // namespace

std::vector<BallInPicture> find_balls(const PhotoPixels& photo) {
  std::vector<BallInPicture> balls;
  if (photo.width <= 0 || photo.height <= 0) return balls;
  auto coloured = coloured_pixels(photo);
  for (std::size_t i = 0; i < coloured.size(); ++i) {
    if (coloured[i] == 0) continue;
    const auto patch = take_patch(coloured, photo.width, photo.height, static_cast<int>(i));
    if (patch.pixels < least_radius * least_radius) continue;
    if (const auto ball = ball_of(patch, photo.width, photo.height)) balls.push_back(*ball);
  }
  std::sort(balls.begin(), balls.end(), [](const BallInPicture& one, const BallInPicture& other) {
    return one.radius > other.radius;
  });
  if (balls.size() > most_balls) balls.resize(most_balls);
  return balls;
}

}  // namespace proofstone
