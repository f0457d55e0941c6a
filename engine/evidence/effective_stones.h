#pragma once

#include <vector>

namespace proofstone {

/// Stones of one size that carry one weight each in a curve by mass. Internal to the evidence.
struct WeightedStones {
  double stones = 0;  ///< may be a fraction where it was estimated
  double weight = 1;  ///< of each stone, in any unit
  /// Variance of the weights within the group over their mean squared: 0 where all weigh the same.
  double scatter = 0;
};

/// Number of equally informative stones behind a weighted share, and how it falls off where a few
/// heavy stones decide.
struct EffectiveStones {
  double overall = 0;             ///< (Σm)²/Σm² (Kish 1965 [memory]; reference §3.5)
  std::vector<double> at_points;  ///< behind the share up to and with each of the groups
};

/// For groups sorted from small to large stones. `part_below[i]` of group i counts as smaller at
/// the point of group i: 1 for a bin read at its upper edge, ½ for a stone read at its own size.
///
/// With p smaller and q = 1 − p larger, the delta variance of the share (reference §3.5) is
/// p·q·(q·w_below + p·w_above)/S, where S is the sum of all weights and w = Σw²/Σw of the stones
/// below and above. It equals that of S/(q·w_below + p·w_above) equal stones. Above, one more stone
/// as heavy as the heaviest is counted, because the share of the largest stones is told by those
/// that happened to be picked. At the fine end, where the small stones are many and weigh little,
/// these are more than `overall` and may be more than were counted. Of a group that is read in the
/// middle, the c − 1 stones beside the one that is read lie on both sides in known parts and
/// scatter less. Equal weights, each stone a group, give the plain count.
EffectiveStones effective_stones(const std::vector<WeightedStones>& groups, double part_below);

}  // namespace proofstone
