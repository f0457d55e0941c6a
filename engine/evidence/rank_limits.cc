#include "engine/evidence/rank_limits.h"

#include <fmt/format.h>

#include "engine/evidence/confidence.h"
#include "engine/evidence/evidence_sources.h"
#include "engine/evidence/whole_number.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

Source rank_source() {
  return {
      "Order statistics and the binomial distribution, as in Conover, Practical Nonparametric "
      "Statistics",
      "confidence interval of a quantile", SourceStanding::memory};
}

/// The largest whole number up to `most` for which `holds`, which turns from true to false once;
/// −1 when it never holds.
template <class Holds>
int last_whole(int most, Holds holds) {
  int low = -1;
  int high = most + 1;
  while (high - low > 1) {
    const int middle = low + (high - low) / 2;
    (holds(middle) ? low : high) = middle;
  }
  return low;
}

TypedMethod<RankLimitsInputs, RankLimitsResult> build_rank_limits() {
  MethodDescription about;
  about.id = "rank-limits";
  about.title = "Confidence limits of a size by rank";
  about.purpose =
      "Lay the stones of a count out by size: which two of them hold the size at a percent, such "
      "as "
      "D50, between them with a given confidence.";
  about.group = MethodGroup::evidence;
  about.sources = {rank_source()};
  about.cautions = {"Holds for stones picked independently, as on a grid."};
  TypedMethod<RankLimitsInputs, RankLimitsResult> method(std::move(about), &rank_limits);
  method.required({"stones", "n", "stones measured"}, &RankLimitsInputs::stones, unit::number,
                  AllowedRange::between(1, 1e6));
  method.defaulted({"percent", "p", "percent smaller"}, &RankLimitsInputs::percent, unit::percent,
                   AllowedRange::between(0.01, 99.99));
  method.defaulted({"confidence", "1 − α", "confidence of the two limits together"},
                   &RankLimitsInputs::confidence, unit::percent, AllowedRange::between(50, 99.99));
  method.output({"lower_rank", "l", "rank of the stone at the lower limit, 1 the smallest"},
                &RankLimitsResult::lower_rank, unit::number);
  method.output({"upper_rank", "u", "rank of the stone at the upper limit"},
                &RankLimitsResult::upper_rank, unit::number);
  method.output({"coverage", "C", "confidence reached with whole ranks"},
                &RankLimitsResult::coverage, unit::percent);
  return method;
}

}  // namespace

Expected<RankLimitsResult> rank_limits(const RankLimitsInputs& in, Steps& steps) {
  const double n = in.stones.number();
  if (const auto problem = problem_of_count(n, "/stones")) return *problem;
  const int stones = static_cast<int>(n);
  const double percent = in.percent.in(unit::percent);
  const double each_tail = (1 - in.confidence.number()) / 2;
  const int below =
      last_whole(stones, [&](int x) { return chance_of_at_most(x, n, percent) <= each_tail; });
  const int reached =
      last_whole(stones, [&](int x) { return chance_of_at_least(x, n, percent) > each_tail; });
  const int lower = below + 1;
  const int upper = reached + 1;
  if (lower < 1 || upper > stones) {
    return Problem{"too-few-stones",
                   fmt::format("{} stones are too few to hold the size at {:g} % between two of "
                               "them at this confidence.",
                               stones, percent),
                   "", "/stones", "more stones, or a lower confidence"};
  }
  const double coverage =
      1 - chance_of_at_most(below, n, percent) - chance_of_at_least(upper, n, percent);
  const auto source = rank_source().sentence();
  steps.computed("l", "rank of the stone at the lower limit", "largest l with P(B ≤ l − 1) ≤ α/2",
                 measure(static_cast<double>(lower)), source);
  steps.computed("u", "rank of the stone at the upper limit", "smallest u with P(B ≥ u) ≤ α/2",
                 measure(static_cast<double>(upper)), source);
  steps.computed("C", "confidence reached", "P(l ≤ B ≤ u − 1)", measure(coverage));
  return RankLimitsResult{Dimensionless::number(lower), Dimensionless::number(upper),
                          Dimensionless::number(coverage)};
}

const Method& rank_limits_method() {
  static const auto method = build_rank_limits();
  return method;
}

}  // namespace proofstone
