#include "piles/pile.h"

#include <cmath>

namespace proofstone::piles {
namespace {

/// Share of the place that stones take, voids of about 0.37 and the rough surface considered.
constexpr float filled = 0.6F;
constexpr float layer_thickness_in_d50 = 1.9F;

constexpr float long_for_wide = 14.0F / 11;

float volume_of(const std::vector<Stone>& stones) {
  float volume = 0;
  for (const Stone& stone : stones) volume += stone.measure.volume;
  return volume;
}

/// A layer is 14 by 11 D50 at about 500 stones and grows alike; a truck bed is filled 0.45 of its
/// width deep and is 1.9 times as long as wide.
void size_place(Place& place, const std::vector<Stone>& stones, float d50) {
  const float volume = volume_of(stones);
  if (place.kind == PileKind::layer) {
    const float area = volume / filled / (layer_thickness_in_d50 * d50);
    place.length = std::sqrt(area * long_for_wide);
    place.width = area / place.length;
  } else if (place.kind == PileKind::truck) {
    place.width = std::pow(volume / filled / (0.45F * 1.9F), 1.0F / 3.0F);
    place.length = 1.9F * place.width;
  }
}

}  // namespace

int stones_in_layer_of(float length_in_d50, const AskedGradation& gradation, RockMix mix,
                       unsigned seed) {
  constexpr int some = 1000;
  const float d50 = static_cast<float>(gradation.d50().meters());
  const float volume = volume_of(make_stones(gradation, mix, some, seed)) / (d50 * d50 * d50);
  const float wanted =
      length_in_d50 * length_in_d50 / long_for_wide * layer_thickness_in_d50 * filled;
  return static_cast<int>(std::lround(some * wanted / volume));
}

Vec3 Pile::up() const { return {0, std::sin(request.place.slope), std::cos(request.place.slope)}; }

std::vector<const Stone*> Pile::all() const {
  std::vector<const Stone*> all;
  for (const Stone& stone : stones) all.push_back(&stone);
  return all;
}

Pile make_pile(PileRequest request) {
  Pile pile{std::move(request), {}, {}};
  pile.stones =
      make_stones(pile.request.gradation, pile.request.mix, pile.request.stones, pile.request.seed);
  size_place(pile.request.place, pile.stones, pile.d50());
  pile.poses = settle(pile.stones, pile.request.place, pile.d50(), pile.request.seed);
  return pile;
}

}  // namespace proofstone::piles
