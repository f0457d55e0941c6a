#include "piles/ground_look.h"

#include <cmath>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

constexpr float inch = 0.0254F;

bool odd(float length, float unit) {
  return (static_cast<int>(std::floor(length / unit)) & 1) != 0;
}

Vec3 checkered_colour(const Thing& thing, const ThingPoint& point) {
  const float square = thing.square;
  // Eight by six squares about the middle of the board.
  const float x = point.own.x() + 4 * square;
  const float y = point.own.y() + 3 * square;
  const Vec3 white(0.75F, 0.75F, 0.73F);
  if (x < 0 || y < 0 || x > 8 * square || y > 6 * square || point.own.z() < 0) return white;
  return odd(x, square) == odd(y, square) ? Vec3(0.03F, 0.03F, 0.03F) : white;
}

Vec3 rule_colour(const ThingPoint& point) {
  const float x = point.own.x() + 6 * inch;
  const Vec3 dark(0.02F, 0.02F, 0.02F);
  const Vec3 light(0.78F, 0.74F, 0.2F);
  const bool upper = point.own.y() > 0;
  if (upper) return odd(x, inch) ? dark : light;
  return odd(x, 3 * inch) ? dark : light;
}

Vec3 turf_colour(const ThingPoint& point, std::uint32_t seed) {
  const float patch = layered_noise(point.at / 0.4F, seed, 3).value;
  const float blade = layered_noise(filtered(point.at, {60, 25, 40}), seed + 1, 2).value;
  const Vec3 green =
      mixed_colour({0.08F, 0.11F, 0.03F}, {0.22F, 0.2F, 0.09F}, smooth_step(-0.7F, 0.8F, patch));
  return green * (1 + 0.45F * blade);
}

}  // namespace

Vec3 thing_colour(const Thing& thing, const ThingPoint& point, std::uint32_t seed) {
  switch (thing.material) {
    case ThingMaterial::soil: {
      const float patch = layered_noise(point.at / 0.5F, seed, 3).value;
      const float pebbles = layered_noise(point.at / 0.025F, seed + 1, 3).value;
      return thing.colour * (1 + 0.18F * patch + 0.22F * pebbles);
    }
    case ThingMaterial::turf:
      return turf_colour(point, seed);
    case ThingMaterial::fines: {
      const float pebbles = layered_noise(point.at / 0.03F, seed + 1, 3).value;
      const float grit = noise(point.at / 0.006F, seed + 2).value;
      return thing.colour * (1 + 0.3F * pebbles + 0.2F * grit);
    }
    case ThingMaterial::checkered:
      return checkered_colour(thing, point);
    case ThingMaterial::rule:
      return rule_colour(point);
    case ThingMaterial::steel: {
      const float rust = layered_noise(point.at / 0.2F, seed + 5, 4).value;
      return mixed_colour(thing.colour, {0.19F, 0.1F, 0.06F}, smooth_step(0.1F, 0.9F, rust));
    }
    case ThingMaterial::leather: {
      const float scuff = layered_noise(point.own / 0.04F, seed + 6, 3).value;
      return thing.colour * (1 + 0.3F * scuff);
    }
    case ThingMaterial::fabric: {
      const float weave =
          0.5F * (std::sin(point.own.x() / 0.0035F) + std::sin(point.own.y() / 0.0035F));
      const float left = smooth_step(1, 4, 0.02F / point.footprint);
      const float dirt = layered_noise(point.at / 0.15F, seed + 7, 3).value;
      return mixed_colour(thing.colour, {0.3F, 0.26F, 0.2F}, smooth_step(0.1F, 1.2F, dirt)) *
             (1 + 0.3F * left * weave);
    }
    case ThingMaterial::ball:
    case ThingMaterial::rubber:
    case ThingMaterial::grass:
      return thing.colour;
  }
  return thing.colour;
}

Vec3 thing_relief(const Thing& thing, const ThingPoint& point, std::uint32_t seed) {
  switch (thing.material) {
    case ThingMaterial::soil:
      return layered_noise(point.at / 0.06F, seed + 1, 4).gradient * 0.22F;
    case ThingMaterial::fines:
      return layered_noise(point.at / 0.03F, seed + 1, 3).gradient * 0.45F;
    case ThingMaterial::turf:
      return layered_noise(point.at / 0.04F, seed + 1, 3).gradient * 0.5F;
    case ThingMaterial::leather:
      return layered_noise(point.own / 0.03F, seed + 6, 2).gradient * 0.12F;
    case ThingMaterial::fabric:
      return noise(point.own / 0.12F, seed + 8).gradient * 0.2F;
    default:
      return {0, 0, 0};
  }
}

float thing_gloss(ThingMaterial material) {
  switch (material) {
    case ThingMaterial::ball:
      return 0.04F;
    case ThingMaterial::leather:
    case ThingMaterial::rubber:
      return 0.02F;
    case ThingMaterial::steel:
      return 0.06F;
    default:
      return 0;
  }
}

}  // namespace proofstone::piles
