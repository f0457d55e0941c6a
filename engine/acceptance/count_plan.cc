#include "engine/acceptance/count_plan.h"

#include <cmath>

#include "engine/acceptance/sequential_plan.h"
#include "engine/acceptance/single_plan.h"
#include "engine/evidence/band_comparison.h"

namespace proofstone {

Expected<CountPlan> single_count_plan(const GradationBand& band, const DecisionRisks& risks,
                                      double good_by) {
  CountPlan plan;
  for (auto& limit : counted_limits(band, risks, good_by)) {
    LimitPlan one;
    if (limit.no_stone_at_all) {
      one.stones = limit.stones_without_wrong;
    } else {
      const auto single = single_plan(limit.risks);
      if (!single) return single.problems();
      one.stones = single->stones;
      one.accept_at_most = single->accept_at_most;
    }
    one.limit = std::move(limit);
    if (one.stones > plan.stones) {
      plan.stones = one.stones;
      plan.hardest = plan.limits.size();
    }
    plan.limits.push_back(std::move(one));
  }
  if (plan.limits.empty()) {
    return Problem{"nothing-to-test", "No limit of the band can be tested by counting stones.", "",
                   "/class", "a class with at least one limit"};
  }
  return plan;
}

Expected<CountPlan> count_plan(const GradationBand& band, const DecisionRisks& risks,
                               double good_by) {
  auto plan = single_count_plan(band, risks, good_by);
  if (!plan) return plan;
  constexpr double tolerable = default_tolerable_percent_beyond / 100;
  for (auto& one : plan->limits) {
    if (one.limit.no_stone_at_all) {
      one.first_acceptance = one.stones;
      one.average_when_good = one.stones;
      one.average_at_limit = (1 - std::pow(1 - tolerable, one.stones)) / tolerable;
      continue;
    }
    const auto sequential = SequentialPlan::make(one.limit.risks);
    if (!sequential) return sequential.problems();
    one.first_acceptance = sequential->first_acceptance();
    one.average_when_good =
        sequential->operation(one.limit.risks.acceptable.number()).average_stones;
    one.average_at_limit =
        sequential->operation(one.limit.risks.unacceptable.number()).average_stones;
  }
  return plan;
}

}  // namespace proofstone
