#include "piles/noise.h"

#include <cmath>

namespace proofstone::piles {
namespace {

std::uint32_t scrambled(std::uint32_t x) {
  x ^= x >> 16;
  x *= 0x7feb352dU;
  x ^= x >> 15;
  x *= 0x846ca68bU;
  x ^= x >> 16;
  return x;
}

float corner(int x, int y, int z, std::uint32_t seed) {
  const std::uint32_t key = static_cast<std::uint32_t>(x) * 0x8da6b343U +
                            static_cast<std::uint32_t>(y) * 0xd8163841U +
                            static_cast<std::uint32_t>(z) * 0xcb1ab31fU + seed * 0x9e3779b9U;
  return static_cast<float>(scrambled(key) >> 8) * (2.0F / 16777216.0F) - 1.0F;
}

/// The blend between two corners of a cell, and how fast it changes.
struct Blend {
  float share;
  float slope;
};

Blend blend(float t) {
  return {t * t * t * (t * (t * 6 - 15) + 10), 30 * t * t * (t * (t - 2) + 1)};
}

}  // namespace

std::uint32_t mixed_seed(std::uint32_t first, std::uint32_t second) {
  return scrambled(scrambled(first + 0x9e3779b9U) ^ (second * 0x85ebca6bU + 0x1b873593U));
}

NoiseValue noise(const Vec3& at, std::uint32_t seed) {
  const float fx = std::floor(at.x());
  const float fy = std::floor(at.y());
  const float fz = std::floor(at.z());
  const int x = static_cast<int>(fx);
  const int y = static_cast<int>(fy);
  const int z = static_cast<int>(fz);
  const Blend u = blend(at.x() - fx);
  const Blend v = blend(at.y() - fy);
  const Blend w = blend(at.z() - fz);
  const float c000 = corner(x, y, z, seed);
  const float c100 = corner(x + 1, y, z, seed);
  const float c010 = corner(x, y + 1, z, seed);
  const float c110 = corner(x + 1, y + 1, z, seed);
  const float c001 = corner(x, y, z + 1, seed);
  const float c101 = corner(x + 1, y, z + 1, seed);
  const float c011 = corner(x, y + 1, z + 1, seed);
  const float c111 = corner(x + 1, y + 1, z + 1, seed);
  // Along x on the four edges, then along y on two lines, then along z.
  const float e00 = c000 + u.share * (c100 - c000);
  const float e10 = c010 + u.share * (c110 - c010);
  const float e01 = c001 + u.share * (c101 - c001);
  const float e11 = c011 + u.share * (c111 - c011);
  const float low = e00 + v.share * (e10 - e00);
  const float high = e01 + v.share * (e11 - e01);
  const float dx_low = (c100 - c000) + v.share * ((c110 - c010) - (c100 - c000));
  const float dx_high = (c101 - c001) + v.share * ((c111 - c011) - (c101 - c001));
  const float dy_low = e10 - e00;
  const float dy_high = e11 - e01;
  return {low + w.share * (high - low),
          Vec3(u.slope * (dx_low + w.share * (dx_high - dx_low)),
               v.slope * (dy_low + w.share * (dy_high - dy_low)), w.slope * (high - low))};
}

NoiseValue layered_noise(const Vec3& at, std::uint32_t seed, int octaves) {
  NoiseValue sum;
  float frequency = 1;
  float strength = 1;
  for (int octave = 0; octave < octaves; ++octave) {
    const NoiseValue part = noise(at * frequency, seed + static_cast<std::uint32_t>(octave) * 101U);
    sum.value += strength * part.value;
    sum.gradient += part.gradient * (strength * frequency);
    frequency *= 2.03F;
    strength *= 0.5F;
  }
  return sum;
}

float QuickDraws::uniform() {
  state_ = state_ * 747796405U + 2891336453U;
  const std::uint32_t word = ((state_ >> ((state_ >> 28) + 4U)) ^ state_) * 277803737U;
  return static_cast<float>(((word >> 22) ^ word) >> 8) * (1.0F / 16777216.0F);
}

float SampleDraws::uniform() {
  // The powers of the one real root of x³ = x + 1 fill the square as evenly as can be.
  const float stride = second_of_pair_ ? 0.56984029F : 0.75487767F;
  second_of_pair_ = !second_of_pair_;
  const float at = pixel_.uniform() + static_cast<float>(sample_) * stride;
  return at - std::floor(at);
}

}  // namespace proofstone::piles
