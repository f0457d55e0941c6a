#pragma once

#include <cstdint>

#include "piles/vec3.h"

namespace proofstone::piles {

/// One seed out of two: streams of chance that do not touch each other.
std::uint32_t mixed_seed(std::uint32_t first, std::uint32_t second);

/// Smooth chance in space.
struct NoiseValue {
  float value = 0;  ///< about -1 to 1
  Vec3 gradient{0, 0, 0};
};

/// Features of about unit size.
NoiseValue noise(const Vec3& at, std::uint32_t seed);

/// `octaves` of noise, each half as large and half as strong as the last.
NoiseValue layered_noise(const Vec3& at, std::uint32_t seed, int octaves);

/// A few even draws.
class QuickDraws {
 public:
  explicit QuickDraws(std::uint32_t seed) : state_(seed) {}
  /// From 0 up to, not including, 1.
  float uniform();

 private:
  std::uint32_t state_;
};

/// Draws for one sample of a pixel. Pairs of draws of the samples of one pixel lie evenly in the
/// square, each pair moved as a whole by chance.
class SampleDraws {
 public:
  SampleDraws(std::uint32_t pixel_seed, int sample) : pixel_(pixel_seed), sample_(sample) {}
  /// From 0 up to, not including, 1.
  float uniform();

 private:
  QuickDraws pixel_;
  int sample_;
  bool second_of_pair_ = false;
};

}  // namespace proofstone::piles
