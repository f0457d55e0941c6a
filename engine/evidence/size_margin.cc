#include "engine/evidence/size_margin.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/evidence_sources.h"
#include "engine/evidence/size_error.h"
#include "engine/evidence/stones_needed.h"

namespace proofstone {

Problems problems_of_requirement(double percent, Length required) {
  Problems problems;
  if (!(percent > 0 && percent < 100)) {
    problems.push_back({"percent-out-of-range", "The percent is not between 0 and 100.", "",
                        "percent", "above 0 and below 100"});
  }
  if (!(std::isfinite(required.si()) && required.si() > 0)) {
    problems.push_back(
        {"not-positive", "The required size is not above 0.", "", "required", "a size above 0"});
  }
  return problems;
}

Expected<SizeMargin> size_margin(const MeasuredGradation& measured, double percent, Length required,
                                 const DecisionRisks& risks) {
  Problems problems = problems_of_requirement(percent, required);
  if (auto problem = problem_of_risks(risks)) problems.push_back(std::move(*problem));
  if (!problems.empty()) return problems;

  const Gradation& curve = measured.curve;
  const bool open_below =
      required < curve.points().front().size && curve.points().front().percent_smaller > 0;
  const double smaller = curve.percent_smaller(required);
  const double known_smaller = open_below ? 0 : smaller;
  const double stones = measured.effective_stones_at(required);

  SizeMargin margin;
  const auto holds_by_size = confidence_size_at_least(measured, percent, required);
  const auto broken_by_size = confidence_size_at_most(measured, percent, required);
  margin.confidence_holds =
      holds_by_size ? *holds_by_size : confidence_at_most(smaller, stones, percent);
  margin.confidence_broken =
      broken_by_size ? *broken_by_size : confidence_at_least(known_smaller, stones, percent);
  if (margin.confidence_holds >= risks.to_accept()) {
    margin.outcome = Outcome::meets;
  } else if (margin.confidence_broken >= risks.to_turn_away()) {
    margin.outcome = Outcome::falls_short;
  } else if (holds_by_size) {
    margin.stones_to_decide = least_number(measured.stones, [&](int total) {
      const double times = static_cast<double>(total) / measured.stones;
      return *confidence_size_at_least(measured, percent, required, times) >= risks.to_accept() ||
             *confidence_size_at_most(measured, percent, required, times) >= risks.to_turn_away();
    });
  } else if (!open_below) {
    margin.stones_to_decide = stones_needed(measured, required, [&](double more) {
      return confidence_at_most(smaller, more, percent) >= risks.to_accept() ||
             confidence_at_least(smaller, more, percent) >= risks.to_turn_away();
    });
  }

  const auto size_name = fmt::format("D{:g}", percent);
  if (const auto size = curve.size_at(percent)) {
    margin.margin = *size / required;
    margin.steps.computed_rock(
        size_name, fmt::format("measured size of which {:g} % by mass is smaller", percent),
        "straight in log D between the points of the curve", *size);
  }
  margin.steps.given_rock(size_name + " required", "required size", required);
  if (margin.margin) {
    margin.steps.computed("margin", "measured over required size",
                          size_name + " / " + size_name + " required", measure(*margin.margin));
  }
  const auto limits = size_interval(measured, percent, risks.to_accept());
  if (limits.low) {
    margin.low = *limits.low / required;
    margin.steps.computed_rock(size_name + " low", "lower confidence limit of the measured size",
                               "read on the curve where the limit of the percent crosses",
                               *limits.low, percentile_limits_source().sentence());
  }
  if (limits.high) {
    margin.high = *limits.high / required;
    margin.steps.computed_rock(size_name + " high", "upper confidence limit of the measured size",
                               "read on the curve where the limit of the percent crosses",
                               *limits.high, percentile_limits_source().sentence());
  }
  margin.steps.computed("F", "percent by mass smaller than the required size", "read on the curve",
                        measure(smaller));
  margin.steps.given("ne", "equally informative stones behind that share", measure(stones));
  margin.steps.computed(
      "confidence", fmt::format("that at most {:g} % is smaller than the required size", percent),
      holds_by_size
          ? "Φ(ln(Dp / Dp required) / e), e the error of Dp"
          : "1 − P(at most ne·F/100 of ne smaller | true share p), binomial in its beta form",
      measure(margin.confidence_holds), holds_by_size ? "" : clopper_pearson_source().sentence());
  return margin;
}

Expected<SizeMargin> size_margin(const MeasuredGradation& measured, double percent, Length required,
                                 double confidence) {
  return size_margin(measured, percent, required, DecisionRisks::at(confidence));
}

}  // namespace proofstone
