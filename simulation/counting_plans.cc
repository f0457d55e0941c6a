#include "simulation/counting_plans.h"

#include "engine/acceptance/sequential_plan.h"
#include "engine/acceptance/single_plan.h"
#include "simulation/draws.h"

namespace proofstone {
namespace {

struct Decision {
  bool accepted = false;
  int stones = 0;
};

Decision count_until_decided(const SequentialPlan& plan, double share, Draws& draws) {
  int wrong = 0;
  for (int stones = 1; stones <= plan.last_stone(); ++stones) {
    if (draws.uniform() < share) ++wrong;
    const auto accept = plan.accept_at_most(stones);
    if (accept && wrong <= *accept) return {true, stones};
    const auto reject = plan.reject_at_least(stones);
    if (reject && wrong >= *reject) return {false, stones};
  }
  const double middle =
      plan.slope() * plan.last_stone() + (plan.reject_offset() - plan.accept_offset()) / 2;
  return {wrong < middle, plan.last_stone()};
}

}  // namespace

CountsMade count_by_single_plan(const ShareRisks& risks, double share, int counts, unsigned seed) {
  const auto plan = single_plan(risks);
  Draws draws(seed);
  CountsMade made;
  for (int count = 0; count < counts; ++count) {
    int wrong = 0;
    for (int stone = 0; stone < plan->stones; ++stone) {
      if (draws.uniform() < share) ++wrong;
    }
    if (wrong <= plan->accept_at_most) made.accepted += 1.0 / counts;
  }
  made.average_stones = plan->stones;
  return made;
}

CountsMade count_by_sequential_plan(const ShareRisks& risks, double share, int counts,
                                    unsigned seed) {
  const auto plan = SequentialPlan::make(risks);
  Draws draws(seed);
  CountsMade made;
  for (int count = 0; count < counts; ++count) {
    const auto decision = count_until_decided(*plan, share, draws);
    if (decision.accepted) made.accepted += 1.0 / counts;
    made.average_stones += static_cast<double>(decision.stones) / counts;
  }
  return made;
}

}  // namespace proofstone
