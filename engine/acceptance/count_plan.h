#pragma once

#include <vector>

#include "engine/acceptance/counted_limits.h"

namespace proofstone {

/// How many stones one limit of a band takes.
struct LimitPlan {
  CountedLimit limit;
  int stones = 0;                ///< of the single plan: count so many
  int accept_at_most = 0;        ///< with it
  int first_acceptance = 0;      ///< stone after which a count one by one can end well
  double average_when_good = 0;  ///< stones of the count one by one, rock good by `good_by`
  double average_at_limit = 0;   ///< and rock at the limit
};

/// How many stones to count before going out.
struct CountPlan {
  std::vector<LimitPlan> limits;
  int stones = 0;  ///< that keep the risks of every limit at once
  std::size_t hardest = 0;
};

/// The single plan and the sequential plan of every limit of a band, none counted yet. A Problem
/// when the band has no limit that a count can test, or one takes more than 5,000 stones.
Expected<CountPlan> count_plan(const GradationBand& band, const DecisionRisks& risks,
                               double good_by);

/// The stones alone, without what a count one by one takes on average: the quick part.
Expected<CountPlan> single_count_plan(const GradationBand& band, const DecisionRisks& risks,
                                      double good_by);

}  // namespace proofstone
