#include "engine/evidence/effective_stones.h"

#include <algorithm>

namespace proofstone {
namespace {

double squares_of(const WeightedStones& group) {
  return group.stones * group.weight * group.weight * (1 + group.scatter);
}

/// Least part of the variance of a share that reading groups in their middle leaves.
constexpr double least_variance = 0.05;

}  // namespace

EffectiveStones effective_stones(const std::vector<WeightedStones>& groups, double part_below) {
  double sum = 0;
  double sum_of_squares = 0;
  double squares_of_means = 0;
  double heaviest = 0;
  for (const auto& group : groups) {
    sum += group.stones * group.weight;
    sum_of_squares += squares_of(group);
    squares_of_means += group.stones * group.weight * group.weight;
    if (group.stones > 0) heaviest = std::max(heaviest, group.weight);
  }
  EffectiveStones effective;
  if (!(sum > 0)) return effective;
  effective.overall = sum * sum / squares_of_means;

  double below = 0;
  double squares_below = 0;
  for (const auto& group : groups) {
    const double own = group.stones * group.weight;
    const double own_squares = squares_of(group);
    const double smaller = below + part_below * own;
    const double squares_smaller = squares_below + part_below * own_squares;
    const double p = smaller / sum;
    const double weight_below = smaller > 0 ? squares_smaller / smaller : group.weight;
    const double weight_above =
        (sum_of_squares - squares_smaller + heaviest * heaviest) / (sum - smaller + heaviest);
    double of_one = ((1 - p) * weight_below + p * weight_above) / sum;
    if (group.stones > 1 && p > 0 && p < 1) {
      const double shared =
          part_below * (1 - part_below) * own_squares * (1 - 1 / group.stones) / (sum * sum);
      of_one = std::max(of_one - shared / (p * (1 - p)), least_variance * of_one);
    }
    effective.at_points.push_back(of_one > 0 ? 1 / of_one : effective.overall);
    below += own;
    squares_below += own_squares;
  }
  return effective;
}

}  // namespace proofstone
