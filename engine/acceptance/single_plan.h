#pragma once

#include "engine/acceptance/share_risks.h"
#include "engine/method/method.h"

namespace proofstone {

/// Count n stones; accept when at most c of them lie on the wrong side of the limit.
struct SinglePlan {
  int stones = 0;
  int accept_at_most = 0;
};

/// Chance that at most `plan.accept_at_most` of its stones are on the wrong side when the true
/// share is `share` (0 to 1).
double chance_of_acceptance(const SinglePlan& plan, double share);

/// The plan of fewest stones that keeps both risks. A Problem when more than 5,000 would be needed.
Expected<SinglePlan> single_plan(const ShareRisks& risks);

struct SinglePlanInputs : ShareRisks {
  /// The true share at which the operating characteristic is asked; as p1 where absent.
  std::optional<Dimensionless> share;
  /// A plan to look at instead of the smallest one that keeps the risks; both or neither.
  std::optional<Dimensionless> stones;
  std::optional<Dimensionless> accept_at_most;
};

struct SinglePlanResult {
  Dimensionless stones;
  Dimensionless accept_at_most;
  Dimensionless accepted_when_acceptable;
  Dimensionless accepted_when_unacceptable;
  Dimensionless accepted_at_share;
};

Expected<SinglePlanResult> single_sampling_plan(const SinglePlanInputs& in, Steps& steps);

/// The same by name: "single-sampling-plan".
const Method& single_sampling_plan_method();

}  // namespace proofstone
