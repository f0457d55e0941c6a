#pragma once

#include "simulation/known_pile.h"

namespace proofstone {

/// How the neighbour rule did in many piles around a class. The rule (common practice, no source):
/// rock of a class reaches at least from the median size of the class below to that of the class
/// above. It is asked of the same stones that the band is held against at 95 %.
struct RuleAgainstBand {
  int piles = 0;
  int truly_inside = 0;  ///< the pile's own curve keeps every condition of the band
  int rule_yes_inside = 0;
  int rule_yes_outside = 0;
  int meets = 0;  ///< by the count
  int rule_yes_meets = 0;
  int falls_short = 0;
  int rule_yes_falls_short = 0;

  double yes_when_inside() const { return share(rule_yes_inside, truly_inside); }
  double yes_when_outside() const { return share(rule_yes_outside, piles - truly_inside); }
  double yes_when_meets() const { return share(rule_yes_meets, meets); }
  double yes_when_falls_short() const { return share(rule_yes_falls_short, falls_short); }

 private:
  static double share(int part, int whole) { return whole > 0 ? 1.0 * part / whole : 0; }
};

/// FHWA Classes II to IV in turn; medians from 0.6 to 1.4 of the class's own and spreads from 0.15
/// to 0.45, evenly; counts of `stones` on a grid.
RuleAgainstBand try_neighbour_rule(int piles, int stones, unsigned seed);

}  // namespace proofstone
