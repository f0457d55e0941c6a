#include "engine/evidence/effective_stones.h"

#include <algorithm>

namespace proofstone {

EffectiveStones effective_stones(const std::vector<WeightedStones>& groups, double part_below) {
  double sum = 0;
  double sum_of_squares = 0;
  double heaviest = 0;
  for (const auto& group : groups) {
    sum += group.stones * group.weight;
    sum_of_squares += group.stones * group.weight * group.weight;
    if (group.stones > 0) heaviest = std::max(heaviest, group.weight);
  }
  EffectiveStones effective;
  if (!(sum > 0)) return effective;
  effective.overall = sum * sum / sum_of_squares;

  double below = 0;
  double squares_below = 0;
  for (const auto& group : groups) {
    const double own = group.stones * group.weight;
    const double smaller = below + part_below * own;
    const double squares_smaller = squares_below + part_below * own * group.weight;
    const double p = smaller / sum;
    const double weight_below = smaller > 0 ? squares_smaller / smaller : 0;
    const double weight_above =
        (sum_of_squares - squares_smaller + heaviest * heaviest) / (sum - smaller + heaviest);
    const double there = sum / ((1 - p) * weight_below + p * weight_above);
    effective.at_points.push_back(p > 0 ? std::min(effective.overall, there) : effective.overall);
    below += own;
    squares_below += own * group.weight;
  }
  return effective;
}

}  // namespace proofstone
