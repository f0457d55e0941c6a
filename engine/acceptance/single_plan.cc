#include "engine/acceptance/single_plan.h"

#include <fmt/format.h>

#include "engine/acceptance/acceptance_sources.h"
#include "engine/evidence/confidence.h"
#include "engine/evidence/stones_needed.h"
#include "engine/evidence/whole_number.h"

namespace proofstone {
namespace {

using DescribedSinglePlan = TypedMethod<SinglePlanInputs, SinglePlanResult>;

/// The fewest stones, `from` or more, with which a share of `share` is accepted with at most
/// `risk`.
int fewest_stones(int accept_at_most, double share, double risk, int from) {
  int stones = from;
  while (stones <= most_stones_worth_counting &&
         chance_of_acceptance({stones, accept_at_most}, share) > risk) {
    ++stones;
  }
  return stones;
}

Expected<SinglePlan> asked_plan(const SinglePlanInputs& in) {
  if (!in.stones && !in.accept_at_most) return single_plan(in);
  if (!in.stones || !in.accept_at_most) {
    return Problem{"half-a-plan", "A plan has a number of stones and an acceptance number.", "",
                   in.stones ? "/accept_at_most" : "/stones", "both, or neither"};
  }
  const double n = in.stones->number();
  const double c = in.accept_at_most->number();
  if (auto problem = problem_of_count(n, "/stones")) return *problem;
  if (auto problem = problem_of_count(c, "/accept_at_most")) return *problem;
  if (c >= n) {
    return Problem{"no-plan",
                   fmt::format("{:g} stones with {:g} on the wrong side are no plan.", n, c), "",
                   "/accept_at_most", "less than the number of stones"};
  }
  return SinglePlan{static_cast<int>(n), static_cast<int>(c)};
}

DescribedSinglePlan build_single_plan() {
  MethodDescription about;
  about.id = "single-sampling-plan";
  about.title = "Single sampling plan";
  about.purpose =
      "How many stones to count, and how many of them may lie on the wrong side of a limit, so "
      "that "
      "good rock is not turned away and bad rock not accepted more often than stated.";
  about.group = MethodGroup::evidence;
  about.sources = {single_plan_source()};
  about.cautions = {
      "Holds for stones picked independently, as on a grid wider than the largest stone.",
      "A band has several limits; each has its own plan, and the risks add up."};
  DescribedSinglePlan method(std::move(about), &single_sampling_plan);
  describe_share_risks(method);
  method.optional({"share", "p", "true share on the wrong side, for the chance of acceptance"},
                  &SinglePlanInputs::share, unit::percent, AllowedRange::between(0, 100),
                  "the acceptable share");
  method.optional({"stones", "n", "stones of a plan to look at"}, &SinglePlanInputs::stones,
                  unit::number, AllowedRange::between(1, most_stones_worth_counting),
                  "the fewest that keep both risks");
  method.optional({"accept_at_most", "c", "most on the wrong side of a plan to look at"},
                  &SinglePlanInputs::accept_at_most, unit::number,
                  AllowedRange::between(0, most_stones_worth_counting),
                  "the number that keeps both risks");
  method.output({"stones", "n", "stones to count"}, &SinglePlanResult::stones, unit::number);
  method.output({"accept_at_most", "c", "accept with at most so many on the wrong side"},
                &SinglePlanResult::accept_at_most, unit::number);
  method.output({"accepted_when_acceptable", "P(p1)", "chance of acceptance at p1"},
                &SinglePlanResult::accepted_when_acceptable, unit::percent);
  method.output({"accepted_when_unacceptable", "P(p2)", "chance of acceptance at p2"},
                &SinglePlanResult::accepted_when_unacceptable, unit::percent);
  method.output({"accepted_at_share", "P(p)", "chance of acceptance at p"},
                &SinglePlanResult::accepted_at_share, unit::percent);
  return method;
}

}  // namespace

double chance_of_acceptance(const SinglePlan& plan, double share) {
  return chance_of_at_most(plan.accept_at_most, plan.stones, 100 * share);
}

Expected<SinglePlan> single_plan(const ShareRisks& risks) {
  auto problems = problems_of(risks);
  if (!problems.empty()) return problems;
  // More stones are needed with every further stone that may be wrong: the first plan that also
  // keeps the producer's risk is the smallest.
  int from = 1;
  for (int accept = 0; accept < most_stones_worth_counting; ++accept) {
    const SinglePlan plan{
        fewest_stones(accept, risks.unacceptable.number(), risks.owners_risk.number(), from),
        accept};
    if (plan.stones > most_stones_worth_counting) break;
    from = plan.stones + 1;
    if (chance_of_acceptance(plan, risks.acceptable.number()) >=
        1 - risks.producers_risk.number()) {
      return plan;
    }
  }
  return Problem{
      "too-many-stones",
      fmt::format("No plan of up to {} stones tells the two shares apart at these risks.",
                  most_stones_worth_counting),
      "", "/unacceptable", "shares further apart, or larger risks"};
}

Expected<SinglePlanResult> single_sampling_plan(const SinglePlanInputs& in, Steps& steps) {
  const auto plan = asked_plan(in);
  if (!plan) return plan.problems();
  SinglePlanResult result;
  const double share = in.share.value_or(in.acceptable).number();
  result.stones = Dimensionless::number(plan->stones);
  result.accept_at_most = Dimensionless::number(plan->accept_at_most);
  result.accepted_when_acceptable =
      Dimensionless::number(chance_of_acceptance(*plan, in.acceptable.number()));
  result.accepted_when_unacceptable =
      Dimensionless::number(chance_of_acceptance(*plan, in.unacceptable.number()));
  result.accepted_at_share = Dimensionless::number(chance_of_acceptance(*plan, share));
  const auto source = single_plan_source().sentence();
  steps.computed("n", "stones to count", "fewest with P(p1) ≥ 1 − α and P(p2) ≤ β",
                 measure(result.stones), source);
  steps.computed("c", "most on the wrong side", "with it", measure(result.accept_at_most));
  steps.computed("P(p1)", "chance of acceptance at the acceptable share",
                 "Σ C(n,i)·p^i·(1 − p)^(n−i), i = 0 … c", measure(result.accepted_when_acceptable),
                 source);
  steps.computed("P(p2)", "chance of acceptance at the unacceptable share",
                 "Σ C(n,i)·p^i·(1 − p)^(n−i), i = 0 … c",
                 measure(result.accepted_when_unacceptable), source);
  return result;
}

const Method& single_sampling_plan_method() {
  static const DescribedSinglePlan method = build_single_plan();
  return method;
}

}  // namespace proofstone
