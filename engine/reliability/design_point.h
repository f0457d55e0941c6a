#pragma once

#include <vector>

#include "engine/reliability/limit_state.h"

namespace proofstone {

/// What the first-order reliability method (FORM) says of a limit state.
struct DesignPoint {
  double beta = 0;             ///< distance from the median point to the nearest place of failure
  double probability = 0;      ///< Φ(−β)
  std::vector<double> values;  ///< the most likely values at which the rock moves, SI
  std::vector<double> alphas;  ///< unit vector from the medians to it, in independent scores
  std::vector<double> importance;  ///< share of the variance of each variable; they add to 1
  int steps = 0;
  bool bracketed = false;  ///< the iteration wandered, and the distance was found by bracketing
};

/// The design point by the iteration of Hasofer, Lind, Rackwitz and Fiessler in standard normal
/// scores; where it does not settle, the distance along the steepest direction is bracketed and the
/// direction turned as long as that brings failure nearer.
/// Problems: as first_order, and form-not-settled where no design point is found within 8 standard
/// deviations.
Expected<DesignPoint> find_design_point(const LimitState& limit,
                                        const std::vector<Correlation>& correlations = {});

}  // namespace proofstone
