#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>

#include "engine/evidence/confidence.h"
#include "engine/evidence/mixed_bits.h"
#include "engine/vision/photo.h"

/// Photos of rock whose sizes are known, drawn for tests.
namespace proofstone {

/// The middle of one of 2^53 equal cells between 0 and 1, by a seed.
inline double part_of_one(std::uint64_t seed) {
  return (static_cast<double>(mixed_bits(seed) >> 11) + 0.5) * 0x1p-53;
}

/// A lognormal number, kept within three standard deviations.
inline double lognormal(std::uint64_t seed, double median, double deviation) {
  const double part = std::min(0.9987, std::max(0.0013, part_of_one(seed)));
  return median * std::exp(deviation * normal_quantile(part));
}

/// An empty photo of 4000 by 3000 pixels with a staff of 2 m over 800 pixels: 2.5 mm to a pixel,
/// 4 % in doubt.
inline Photo photo_with_staff() {
  Photo photo;
  photo.size = {4000, 3000};
  photo.staffs = {{{100, 1500}, {900, 1500}, Length::meters(2)}};
  photo.scale_error = Dimensionless::number(0.04);
  return photo;
}

/// A regular twelve-cornered stone whose equal-area diameter is `diameter`, turned by `turn`.
inline std::vector<PhotoPoint> stone_outline(PhotoPoint middle, double diameter, double turn = 0) {
  constexpr int corners = 12;
  const double step = 2 * std::numbers::pi / corners;
  const double radius =
      diameter / 2 * std::sqrt(std::numbers::pi / (corners / 2.0 * std::sin(step)));
  std::vector<PhotoPoint> outline;
  for (int i = 0; i < corners; ++i) {
    outline.push_back({middle.x + radius * std::cos(turn + i * step),
                       middle.y + radius * std::sin(turn + i * step)});
  }
  return outline;
}

/// `photo_with_staff` with 300 stones, none cut, lognormal by number about a median in pixels.
inline Photo outlined_photo(std::uint64_t seed, double median = 90, double deviation = 0.25) {
  auto photo = photo_with_staff();
  for (int row = 0; row < 15; ++row) {
    for (int column = 0; column < 20; ++column) {
      const auto stone = seed * 1000 + static_cast<std::uint64_t>(row * 20 + column);
      photo.outlines.push_back(stone_outline({200.0 * column + 100, 200.0 * row + 100},
                                             std::min(185.0, lognormal(stone, median, deviation)),
                                             part_of_one(stone + 500'000)));
    }
  }
  return photo;
}

/// `photo_with_staff` with 108 tapped stones, lognormal about a median in pixels.
inline Photo tapped_photo(std::uint64_t seed, double median = 90, double deviation = 0.32) {
  auto photo = photo_with_staff();
  for (int row = 0; row < 9; ++row) {
    for (int column = 0; column < 12; ++column) {
      const auto stone = seed * 1000 + static_cast<std::uint64_t>(row * 12 + column);
      const double size = lognormal(stone, median, deviation);
      const PhotoPoint at{300.0 * column + 350, 300.0 * row + 300};
      photo.tapped.push_back({at,
                              false,
                              {at.x - size / 1.6, at.y},
                              {at.x + size / 1.6, at.y},
                              {at.x, at.y - size / 2.5},
                              {at.x, at.y + size / 2.5}});
    }
  }
  return photo;
}

inline PhotoSet set_of(std::vector<Photo> photos) {
  PhotoSet set;
  set.photos = std::move(photos);
  return set;
}

}  // namespace proofstone
