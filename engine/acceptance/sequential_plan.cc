#include "engine/acceptance/sequential_plan.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "engine/acceptance/acceptance_sources.h"
#include "engine/acceptance/single_plan.h"
#include "engine/evidence/whole_number.h"
#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

using DescribedSequentialPlan = TypedMethod<SequentialPlanInputs, SequentialPlanResult>;

DescribedSequentialPlan build_sequential_plan() {
  MethodDescription about;
  about.id = "sequential-count";
  about.title = "Sequential count";
  about.purpose =
      "A count that stops as soon as the stated risks allow: after each stone, how many on the "
      "wrong "
      "side of the limit accept the rock, how many turn it away, and how many stones it takes on "
      "average.";
  about.group = MethodGroup::evidence;
  about.sources = {sequential_plan_source()};
  about.cautions = {
      "Holds for stones picked independently; the first stones must not be the ones nearest to "
      "hand.",
      "Ends at three times the single plan at the latest, with the nearer line (NIST §6.2.6)."};
  DescribedSequentialPlan method(std::move(about), &sequential_count);
  describe_share_risks(method);
  method.defaulted({"stones", "n", "stones counted so far"}, &SequentialPlanInputs::stones,
                   unit::number, AllowedRange::between(1, 15000));
  method.optional({"share", "p", "true share on the wrong side, for the operating characteristic"},
                  &SequentialPlanInputs::share, unit::percent, AllowedRange::between(0, 100),
                  "the acceptable share");
  method.optional({"last_stone", "n_max", "stone at which the count ends at the latest"},
                  &SequentialPlanInputs::last_stone, unit::number, AllowedRange::between(1, 15000),
                  "three times the single plan");
  method.output({"accept_offset", "h1", "offset of the acceptance line"},
                &SequentialPlanResult::accept_offset, unit::number);
  method.output({"reject_offset", "h2", "offset of the rejection line"},
                &SequentialPlanResult::reject_offset, unit::number);
  method.output({"slope", "g", "slope of both lines"}, &SequentialPlanResult::slope, unit::number);
  method.output({"accept_at_most", "a", "accept with at most so many wrong; −1 for not yet"},
                &SequentialPlanResult::accept_at_most, unit::number);
  method.output({"reject_at_least", "r", "turn away with so many wrong or more"},
                &SequentialPlanResult::reject_at_least, unit::number);
  method.output({"first_acceptance", "n_1", "first stone after which rock can be accepted"},
                &SequentialPlanResult::first_acceptance, unit::number);
  method.output({"single_plan_stones", "n_s", "stones of the single plan of the same risks"},
                &SequentialPlanResult::single_plan_stones, unit::number);
  method.output({"accepted", "P(p)", "chance of acceptance at p"}, &SequentialPlanResult::accepted,
                unit::percent);
  method.output({"average_stones", "ASN", "stones counted on average at p"},
                &SequentialPlanResult::average_stones, unit::number);
  return method;
}

}  // namespace

Expected<SequentialLines> SequentialLines::make(const ShareRisks& risks) {
  auto problems = problems_of(risks);
  if (!problems.empty()) return problems;
  const double p1 = risks.acceptable.number();
  const double p2 = risks.unacceptable.number();
  const double alpha = risks.producers_risk.number();
  const double beta = risks.owners_risk.number();
  const double k = std::log(p2 * (1 - p1) / (p1 * (1 - p2)));
  SequentialLines lines;
  lines.accept_ = std::log((1 - alpha) / beta) / k;
  lines.reject_ = std::log((1 - beta) / alpha) / k;
  lines.slope_ = std::log((1 - p1) / (1 - p2)) / k;
  return lines;
}

Expected<SequentialPlan> SequentialPlan::make(const ShareRisks& risks) {
  const auto lines = SequentialLines::make(risks);
  if (!lines) return lines.problems();
  const auto single = single_plan(risks);
  if (!single) return single.problems();
  return SequentialPlan(*lines, 3 * single->stones);
}

std::optional<int> SequentialLines::accept_at_most(int stones) const {
  const double line = std::floor(slope_ * stones - accept_ + rounding);
  if (line < 0) return std::nullopt;
  return static_cast<int>(line);
}

std::optional<int> SequentialLines::reject_at_least(int stones) const {
  const double line = rounded_up(slope_ * stones + reject_);
  if (line > stones) return std::nullopt;
  return static_cast<int>(line);
}

int SequentialLines::first_acceptance() const {
  return static_cast<int>(rounded_up(accept_ / slope_));
}

SequentialPlan::Operation SequentialPlan::operation(double share, int last_stone) const {
  Operation operation;
  // Chance that the count still goes on after n stones with d wrong ones; it does with `fewest` to
  // `most` of them, between the lines, and all others are 0.
  std::vector<double> going_on(static_cast<std::size_t>(std::max(0, last_stone)) + 2, 0.0);
  const auto at = [&going_on](int d) -> double& { return going_on[static_cast<std::size_t>(d)]; };
  at(0) = 1;
  int fewest = 0;
  int most = 0;
  for (int n = 1; n <= last_stone && fewest <= most; ++n) {
    ++most;
    for (int d = most; d > fewest; --d) at(d) = at(d - 1) * share + at(d) * (1 - share);
    at(fewest) *= 1 - share;
    const int accept = accept_at_most(n).value_or(-1);
    const int reject = reject_at_least(n).value_or(n + 1);
    const bool ends = n == last_stone;
    for (int d = fewest; d <= most; ++d) {
      const bool accepted = d <= accept || (ends && d < reject && d <= slope() * n);
      if (!accepted && d < reject && !ends) continue;
      if (accepted) operation.accepted += at(d);
      operation.average_stones += n * at(d);
      at(d) = 0;
    }
    while (fewest <= most && !(at(fewest) > 0)) ++fewest;
    while (fewest <= most && !(at(most) > 0)) --most;
  }
  return operation;
}

Expected<SequentialPlanResult> sequential_count(const SequentialPlanInputs& in, Steps& steps) {
  const auto plan = SequentialPlan::make(in);
  if (!plan) return plan.problems();
  if (const auto problem = problem_of_count(in.stones.number(), "/stones")) return *problem;
  const int stones = static_cast<int>(in.stones.number());
  if (in.last_stone) {
    const auto problem = problem_of_count(in.last_stone->number(), "/last_stone");
    if (problem) return *problem;
  }
  const int last = in.last_stone ? static_cast<int>(in.last_stone->number()) : plan->last_stone();
  const auto operation = plan->operation(in.share.value_or(in.acceptable).number(), last);

  SequentialPlanResult result;
  result.accept_offset = Dimensionless::number(plan->accept_offset());
  result.reject_offset = Dimensionless::number(plan->reject_offset());
  result.slope = Dimensionless::number(plan->slope());
  result.accept_at_most = Dimensionless::number(plan->accept_at_most(stones).value_or(-1));
  result.reject_at_least =
      Dimensionless::number(plan->reject_at_least(stones).value_or(stones + 1));
  result.first_acceptance = Dimensionless::number(plan->first_acceptance());
  result.single_plan_stones = Dimensionless::number(plan->single_plan_stones());
  result.accepted = Dimensionless::number(operation.accepted);
  result.average_stones = Dimensionless::number(operation.average_stones);

  const auto source = sequential_plan_source().sentence();
  steps.computed("h1", "offset of the acceptance line",
                 "ln[(1 − α)/β]/k, k = ln[p2·(1 − p1)/(p1·(1 − p2))]",
                 measure(result.accept_offset), source);
  steps.computed("h2", "offset of the rejection line", "ln[(1 − β)/α]/k",
                 measure(result.reject_offset), source);
  steps.computed("g", "slope of both lines", "ln[(1 − p1)/(1 − p2)]/k", measure(result.slope),
                 source);
  steps.computed("a", "accept with at most", "⌊g·n − h1⌋", measure(result.accept_at_most));
  steps.computed("r", "turn away with at least", "⌈g·n + h2⌉", measure(result.reject_at_least));
  steps.computed("P(p)", "chance of acceptance", "recursion over the wrong stones, stone by stone",
                 measure(result.accepted));
  steps.computed("ASN", "stones counted on average", "the same recursion",
                 measure(result.average_stones));
  return result;
}

const Method& sequential_count_method() {
  static const DescribedSequentialPlan method = build_sequential_plan();
  return method;
}

}  // namespace proofstone
