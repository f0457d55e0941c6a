#include "engine/evidence/size_margin.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

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

namespace {

/// "The size at a percent reaches the required one" under test.
struct SizeTrial {
  const MeasuredGradation& measured;
  double percent = 50;
  Length required;
  const std::vector<double>& required_errors;

  bool open_below(Length size) const {
    const auto& first = measured.curve.points().front();
    return size < first.size && first.percent_smaller > 0;
  }
  /// How sure, if `times` as many stones had been taken and the shares had stayed.
  double holds(double times) const {
    return mean([&](Length size) { return holds_at(size, times); });
  }
  double broken(double times) const {
    return mean([&](Length size) { return broken_at(size, times); });
  }

 private:
  template <class Confidence>
  double mean(Confidence confidence) const {
    if (required_errors.empty()) return confidence(required);
    double sum = 0;
    for (const double error : required_errors) sum += confidence(std::exp(error) * required);
    return sum / static_cast<double>(required_errors.size());
  }
  double holds_at(Length size, double times) const {
    if (const auto by_size = confidence_size_at_least(measured, percent, size, times)) {
      return *by_size;
    }
    // For being read between the edges of ranges, the share may be off either way.
    const double most =
        std::min(100.0, measured.curve.percent_smaller(size) + measured.reading_error_at(size));
    return confidence_at_most(most, measured.effective_stones_at(size, times), percent);
  }
  double broken_at(Length size, double times) const {
    if (const auto by_size = confidence_size_at_most(measured, percent, size, times)) {
      return *by_size;
    }
    const double least =
        open_below(size)
            ? 0
            : std::max(0.0, measured.curve.percent_smaller(size) - measured.reading_error_at(size));
    return confidence_at_least(least, measured.effective_stones_at(size, times), percent);
  }
};

/// A limit of the margin moved away from it by the scatter of the required size.
std::optional<double> widened(std::optional<double> limit, std::optional<double> margin,
                              const std::vector<double>& required_errors, double confidence) {
  if (!limit || !margin || required_errors.empty()) return limit;
  const double z = normal_quantile(1 - (1 - confidence) / 2);
  double squares = 0;
  for (const double error : required_errors) squares += error * error;
  squares *= z * z / static_cast<double>(required_errors.size());
  const double away = std::log(*limit / *margin);
  return *margin * std::exp(std::copysign(std::sqrt(away * away + squares), away));
}

}  // namespace

const SizeInterval& SizeMargins::limits_of(double percent) {
  const auto known = limits_.find(percent);
  if (known != limits_.end()) return known->second;
  return limits_.emplace(percent, size_interval(measured_, percent, risks_.to_accept()))
      .first->second;
}

Expected<SizeMargin> SizeMargins::at(double percent, Length required,
                                     const std::vector<double>& required_errors) {
  const MeasuredGradation& measured = measured_;
  const DecisionRisks& risks = risks_;
  Problems problems = problems_of_requirement(percent, required);
  if (auto problem = problem_of_risks(risks)) problems.push_back(std::move(*problem));
  if (!problems.empty()) return problems;

  const Gradation& curve = measured.curve;
  const SizeTrial trial{measured, percent, required, required_errors};
  const bool holds_by_size = confidence_size_at_least(measured, percent, required).has_value();
  const double smaller = curve.percent_smaller(required);
  const double stones = measured.effective_stones_at(required);

  SizeMargin margin;
  margin.confidence_holds = trial.holds(1);
  margin.confidence_broken = trial.broken(1);
  if (margin.confidence_holds >= risks.to_accept()) {
    margin.outcome = Outcome::meets;
  } else if (margin.confidence_broken >= risks.to_turn_away()) {
    margin.outcome = Outcome::falls_short;
  } else if (holds_by_size || !trial.open_below(required)) {
    const int now = measured.stones > 0 ? measured.stones
                                        : static_cast<int>(std::ceil(measured.effective_stones));
    if (now >= 1) {
      margin.stones_to_decide = least_number(now, [&](int total) {
        const double times = static_cast<double>(total) / now;
        return trial.holds(times) >= risks.to_accept() ||
               trial.broken(times) >= risks.to_turn_away();
      });
    }
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
  const SizeInterval& limits = limits_of(percent);
  if (limits.low) {
    margin.low = widened(*limits.low / required, margin.margin, required_errors, risks.to_accept());
    margin.steps.computed_rock(size_name + " low", "lower confidence limit of the measured size",
                               "read on the curve where the limit of the percent crosses",
                               *limits.low, percentile_limits_source().sentence());
  }
  if (limits.high) {
    margin.high =
        widened(*limits.high / required, margin.margin, required_errors, risks.to_accept());
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
                                 const DecisionRisks& risks,
                                 const std::vector<double>& required_errors) {
  return SizeMargins(measured, risks).at(percent, required, required_errors);
}

Expected<SizeMargin> size_margin(const MeasuredGradation& measured, double percent, Length required,
                                 double confidence) {
  return size_margin(measured, percent, required, DecisionRisks::at(confidence));
}

}  // namespace proofstone
