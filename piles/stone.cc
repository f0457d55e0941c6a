#include "piles/stone.h"

#include <algorithm>
#include <cmath>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

RockShape draw_shape(RockMix mix, Draws& draws) {
  const double draw = draws.uniform();
  switch (mix) {
    case RockMix::quarried:
      if (draw < 0.4) return RockShape::blocky;
      if (draw < 0.65) return RockShape::wedge;
      if (draw < 0.8) return RockShape::splinter;
      return draw < 0.9 ? RockShape::slabby : RockShape::notched;
    case RockMix::slabs:
      return draw < 0.75 ? RockShape::slabby : RockShape::blocky;
    case RockMix::river:
      return RockShape::rounded;
    case RockMix::splinters:
      return RockShape::splinter;
    case RockMix::mixed:
      return draw < 0.4 ? RockShape::rounded : RockShape::blocky;
  }
  return RockShape::blocky;
}

/// a, b and c of a body with b of 1, before it is broken.
Vec3 draw_axes(RockShape shape, Draws& draws) {
  const double b_to_a = 0.71 + 0.10 * draws.normal();
  const double c_to_b = (shape == RockShape::slabby ? 0.40 : 0.67) + 0.10 * draws.normal();
  return {static_cast<float>(1 / std::clamp(b_to_a, 0.45, 0.98)), 1.0F,
          static_cast<float>(std::clamp(c_to_b, 0.22, 0.95))};
}

StoneMeasure scaled(const StoneMeasure& measure, float factor) {
  return {measure.a * factor, measure.b * factor, measure.c * factor,
          measure.volume * factor * factor * factor, measure.centroid * factor};
}

float size_of(const StoneMeasure& measure, SizeMeaning meaning) {
  // A square opening lets through what its b axis lets through, as near as a bin needs.
  if (meaning != SizeMeaning::sphere) return measure.b;
  return std::pow(6 * measure.volume / SIMD_PI, 1.0F / 3.0F);
}

std::vector<const Stone*> by_size(std::vector<const Stone*> stones) {
  std::sort(stones.begin(), stones.end(),
            [](const Stone* a, const Stone* b) { return a->size < b->size; });
  return stones;
}

}  // namespace

std::vector<Stone> make_stones(const AskedGradation& gradation, RockMix mix, int count,
                               unsigned seed) {
  Draws size_draws(mixed_seed(seed, 1));
  std::vector<Stone> stones;
  unsigned number = 0;
  for (const Length size : gradation.draw_sizes(count, size_draws)) {
    Draws draws(mixed_seed(seed, 1000 + number++));
    const RockShape shape = draw_shape(mix, draws);
    Stone stone;
    const Vec3 axes = draw_axes(shape, draws);
    stone.body = RockBody::make(shape, axes, draws);
    const StoneMeasure unscaled = measure_stone(stone.body.mesh(4));
    const float factor =
        static_cast<float>(size.meters()) / size_of(unscaled, gradation.curve().basis().size);
    stone.body.scale(factor);
    stone.measure = scaled(unscaled, factor);
    stone.size = static_cast<float>(size.meters());
    stones.push_back(std::move(stone));
  }
  return stones;
}

double percent_smaller(const std::vector<const Stone*>& stones, float size) {
  double smaller = 0;
  double all = 0;
  for (const Stone* stone : stones) {
    all += stone->measure.volume;
    if (stone->size < size) smaller += stone->measure.volume;
  }
  return all > 0 ? 100 * smaller / all : 0;
}

float size_at(const std::vector<const Stone*>& stones, double percent) {
  double all = 0;
  for (const Stone* stone : stones) all += stone->measure.volume;
  const std::vector<const Stone*> sorted = by_size(stones);
  double below = 0;
  double previous_middle = 0;
  float previous_size = sorted.empty() ? 0 : sorted.front()->size;
  for (const Stone* stone : sorted) {
    const double middle = below + stone->measure.volume / 2;
    if (middle >= percent / 100 * all) {
      const double share = (percent / 100 * all - previous_middle) / (middle - previous_middle);
      return previous_size * std::pow(stone->size / previous_size, static_cast<float>(share));
    }
    below += stone->measure.volume;
    previous_middle = middle;
    previous_size = stone->size;
  }
  return previous_size;
}

}  // namespace proofstone::piles
