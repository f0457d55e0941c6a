#include "simulation/compared_piles.h"

#include "engine/acceptance/two_piles.h"
#include "engine/evidence/same_rock.h"

namespace proofstone {
namespace {

constexpr double confidence_of_compared = 0.95;

std::vector<double> meters_of(const std::vector<Length>& sizes) {
  std::vector<double> meters;
  meters.reserve(sizes.size());
  for (const Length size : sizes) meters.push_back(size.meters());
  return meters;
}

bool differ(const KnownPile& one, const KnownPile& other, const Observer& observer, Draws& draws) {
  if (observer.picking == StonePicking::grid && observer.bin_ratio <= 1) {
    const auto first = meters_of(read_stones(one, observer, draws));
    const auto second = meters_of(read_stones(other, observer, draws));
    return largest_distance(first, second).chance <= 1 - confidence_of_compared;
  }
  const auto first = look_at(one, observer, draws);
  const auto second = look_at(other, observer, draws);
  const auto test = same_rock({first, second}, confidence_of_compared);
  // Where a few heavy stones are nearly all of a load, the engine does not compare.
  return test && test->differ;
}

}  // namespace

double found_different(const KnownPile& one, const KnownPile& other, const Observer& observer,
                       int pairs, unsigned seed) {
  Draws draws(seed);
  int found = 0;
  for (int pair = 0; pair < pairs; ++pair) found += differ(one, other, observer, draws) ? 1 : 0;
  return static_cast<double>(found) / pairs;
}

}  // namespace proofstone
