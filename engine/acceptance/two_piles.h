#pragma once

#include <vector>

#include "engine/method/method.h"

namespace proofstone {

/// Largest distance between the curves of two samples, with the exact chance of one at least as
/// large when both are the same rock; ties are counted as ties (Schröer & Trenkler 1995), without
/// which binned counts would seem more alike than they are.
struct LargestDistance {
  double distance = 0;
  double chance = 1;
};
/// Neither sample empty, both finite. The work grows with the product of their sizes.
LargestDistance largest_distance(std::vector<double> first, std::vector<double> second);

/// k-sample Anderson–Darling statistic with mid-ranks (Scholz & Stephens 1987), standardised by
/// T = (A² − (k − 1))/σ, and the chance of a T at least as large, between 0.1 % and 25 %.
struct RankDistance {
  double statistic = 0;
  double standardised = 0;
  double chance = 1;
};
/// At least two samples, none empty, not all values the same.
Expected<RankDistance> rank_distance(const std::vector<std::vector<double>>& samples);

struct TwoPilesInputs {
  std::vector<Dimensionless> first;  ///< sizes of stones, in any one unit
  std::vector<Dimensionless> second;
};
struct TwoPilesResult {
  Dimensionless distance;
  Dimensionless distance_chance;
  Dimensionless rank_statistic;
  Dimensionless rank_standardised;
  Dimensionless rank_chance;
};

Expected<TwoPilesResult> two_piles(const TwoPilesInputs& in, Steps& steps);

/// The same by name: "two-piles".
const Method& two_piles_method();

}  // namespace proofstone
