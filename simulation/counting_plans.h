#pragma once

#include "engine/acceptance/share_risks.h"

namespace proofstone {

/// What became of many counts, stone by stone, of rock with one true share on the wrong side.
struct CountsMade {
  double accepted = 0;        ///< share of the counts
  double average_stones = 0;  ///< counted until the decision
};

/// By the single plan of these risks. Precondition: there is one.
CountsMade count_by_single_plan(const ShareRisks& risks, double share, int counts, unsigned seed);

/// By the sequential plan, which ends after its last stone at the nearer line.
CountsMade count_by_sequential_plan(const ShareRisks& risks, double share, int counts,
                                    unsigned seed);

}  // namespace proofstone
