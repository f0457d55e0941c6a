#include "simulation/neighbour_rule.h"

#include <algorithm>
#include <cmath>

#include "engine/evidence/band_comparison.h"
#include "engine/rock/rock_class.h"

namespace proofstone {
namespace {

constexpr int classes = 3;
constexpr double confidence_of_verdict = 0.95;

const RockClass& fhwa_class(int number) {
  return *find_rock_class("fhwa-" + std::to_string(number));
}

/// A sample cannot show that no stone at all is larger, so for the pile's own curve "100 %" is all
/// but the share that is tolerable beyond the limit.
bool keeps(const KnownPile& pile, const BandCondition& condition) {
  const double percent = pile.percent_smaller(condition.size);
  if (condition.sense == BandCondition::Sense::at_least) {
    return percent >= std::min(condition.percent, 100 - default_tolerable_percent_beyond);
  }
  return percent <= condition.percent;
}

}  // namespace

RuleAgainstBand try_neighbour_rule(int piles, int stones, unsigned seed) {
  Draws draws(seed);
  RuleAgainstBand found;
  found.piles = piles;
  Observer observer;
  observer.stones = stones;
  for (int i = 0; i < piles; ++i) {
    const int number = 2 + i % classes;
    const RockClass& asked = fhwa_class(number);
    KnownPile pile;
    const double median = 0.6 + 0.8 * draws.uniform();
    pile.median = median * asked.nominal_d50;
    pile.spread = 0.15 + 0.3 * draws.uniform();
    const auto sizes = read_stones(pile, observer, draws);
    const auto [smallest, largest] = std::minmax_element(sizes.begin(), sizes.end());
    const bool reaches = *smallest <= fhwa_class(number - 1).nominal_d50 &&
                         *largest >= fhwa_class(number + 1).nominal_d50;
    const auto& conditions = asked.band.conditions();
    const bool inside = std::all_of(conditions.begin(), conditions.end(),
                                    [&](const BandCondition& one) { return keeps(pile, one); });
    if (inside) {
      ++found.truly_inside;
      if (reaches) ++found.rule_yes_inside;
    } else if (reaches) {
      ++found.rule_yes_outside;
    }
    const auto measured = gradation_from_stones(sizes, observer.picking);
    const auto verdict = compare_with_band(*measured, asked.band, confidence_of_verdict);
    if (verdict->outcome == Outcome::meets) {
      ++found.meets;
      if (reaches) ++found.rule_yes_meets;
    } else if (verdict->outcome == Outcome::falls_short) {
      ++found.falls_short;
      if (reaches) ++found.rule_yes_falls_short;
    }
  }
  return found;
}

}  // namespace proofstone
