#include "engine/evidence/band_comparison.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/evidence/condition_trial.h"
#include "engine/evidence/evidence_sources.h"
#include "engine/evidence/stones_needed.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

/// Whether a sample tests the condition with a confidence, rather than by what was seen.
bool is_tested(const BandCondition& condition) {
  const auto kind = condition_kind(condition);
  return kind != ConditionKind::holds_of_itself && kind != ConditionKind::largest_reaches;
}

Outcome together(const std::vector<ConditionCheck>& checks) {
  for (const auto worst :
       {Outcome::falls_short, Outcome::not_yet_known, Outcome::ask_the_designer}) {
    if (std::any_of(checks.begin(), checks.end(),
                    [&](const ConditionCheck& check) { return check.outcome == worst; })) {
      return worst;
    }
  }
  return Outcome::meets;
}

Problems problems_of_comparison(const MeasuredGradation& measured, const GradationBand& band,
                                const DecisionRisks& risks, double tolerable) {
  Problems problems;
  if (auto problem = problem_of_risks(risks)) problems.push_back(std::move(*problem));
  if (!(tolerable > 0 && tolerable < 50)) {
    problems.push_back({"tolerable-share-out-of-range",
                        "The tolerable share beyond the extreme limits is not believable.", "",
                        "tolerable percent beyond", "above 0 and below 50 percent"});
  }
  const auto measured_percent = measured.curve.basis().percent;
  const auto& conditions = band.conditions();
  const auto other = std::find_if(conditions.begin(), conditions.end(), [&](const auto& condition) {
    return percent_of(condition, band.basis()) != measured_percent;
  });
  if (other != conditions.end() && !measured.picked_on_grid) {
    problems.push_back(
        {"different-basis",
         fmt::format("The band is stated in percent by {}, the measured curve in percent by {}.",
                     percent_of_name(percent_of(*other, band.basis())),
                     percent_of_name(measured_percent)),
         "", "band", "a count on a grid, which serves both, or a band by mass"});
  }
  return problems;
}

void say_risks(const DecisionRisks& risks, const DecisionRisks& of_each, double conditions,
               Steps& steps) {
  steps.given("β", "owner's risk: chance to accept rock that breaks a limit",
              measure(risks.owners));
  steps.given("α", "producer's risk: chance to turn away rock that keeps all limits",
              measure(risks.producers));
  steps.given("k", "conditions tested with a confidence", measure(conditions));
  steps.computed("C to accept", "confidence that each condition must be kept with", "1 − β",
                 measure(of_each.to_accept()),
                 "intersection–union test, Berger 1982 (from memory)");
  steps.computed("C to turn away", "confidence that one condition must be broken with", "1 − α/k",
                 measure(of_each.to_turn_away()), "Bonferroni's inequality");
}

void say_basis(const GradationBasis& measured, const GradationBasis& band, Steps& steps) {
  if (measured.percent != band.percent) {
    steps.given("basis", "the band is by count: the share of the points of the grid serves for it",
                measure(1.0), "FHWA FP-14 Table 705-1, read in a document that quotes it");
  }
  if (measured.size != band.size) {
    steps.computed("r",
                   fmt::format("size as {} of a stone whose size as {} is 1",
                               size_meaning_name(measured.size), size_meaning_name(band.size)),
                   "by the mass of the stone",
                   measure(convert_size(Length::meters(1), band.size, measured.size).meters()));
  }
}

void say_check(const ConditionTrial& trial, const ConditionCheck& check, std::size_t number,
               Steps& steps) {
  steps.computed(fmt::format("F{}", number), "percent smaller, for: " + check.condition.wording,
                 "read on the curve", measure(check.measured_percent));
  steps.given(fmt::format("ne{}", number), "equally informative stones behind it",
              measure(trial.effective_stones()));
  steps.computed(fmt::format("confidence {}", number), "that it is kept", trial.formula(),
                 measure(check.confidence_kept), clopper_pearson_source().sentence());
}

/// The most stones that any of the open conditions needs; absent where one cannot be decided.
std::optional<int> most_needed(const std::vector<ConditionTrial>& open,
                               std::optional<int> (ConditionTrial::*needed)() const) {
  int most = 0;
  for (const auto& trial : open) {
    const auto number = (trial.*needed)();
    if (!number) return std::nullopt;
    most = std::max(most, *number);
  }
  return most;
}

}  // namespace

bool kept_by_estimate(const Gradation& curve, const BandCondition& condition,
                      SizeMeaning band_size) {
  const Length size = convert_size(condition.size, band_size, curve.basis().size);
  return share_keeps(share_smaller(curve, size, condition_kind(condition)), condition);
}

Expected<BandComparison> compare_with_band(const MeasuredGradation& measured,
                                           const GradationBand& band, const DecisionRisks& risks,
                                           double tolerable_percent_beyond) {
  if (auto problems = problems_of_comparison(measured, band, risks, tolerable_percent_beyond);
      !problems.empty()) {
    return problems;
  }
  const auto& conditions = band.conditions();
  if (conditions.empty()) {
    return Problem{"nothing-to-test", "No condition of the band limits the rock.", "", "band",
                   "at least one limit"};
  }
  const auto tested = std::count_if(conditions.begin(), conditions.end(), is_tested);
  const double each = static_cast<double>(std::max<std::ptrdiff_t>(1, tested));
  const DecisionRisks of_each{risks.owners, risks.producers / each};

  BandComparison comparison;
  comparison.risks = risks;
  say_risks(risks, of_each, each, comparison.steps);
  say_basis(measured.curve.basis(), band.basis(), comparison.steps);

  comparison.inside_by_estimate = true;
  std::vector<ConditionTrial> open;
  for (const auto& condition : conditions) {
    const Length size =
        convert_size(condition.size, band.basis().size, measured.curve.basis().size);
    const ConditionTrial trial(measured, condition, size, of_each, tolerable_percent_beyond);
    auto check = trial.judge();
    comparison.inside_by_estimate = comparison.inside_by_estimate && trial.kept_by_estimate();
    if (check.outcome == Outcome::not_yet_known) open.push_back(trial);
    say_check(trial, check, comparison.checks.size() + 1, comparison.steps);
    comparison.checks.push_back(std::move(check));
  }
  comparison.outcome = together(comparison.checks);
  if (comparison.outcome == Outcome::not_yet_known) {
    comparison.stones_to_decide = most_needed(open, &ConditionTrial::stones_to_decide);
    if (measured.photos > 0) {
      comparison.counted_stones_to_decide =
          most_needed(open, &ConditionTrial::counted_stones_to_decide);
    }
  }
  return comparison;
}

Expected<BandComparison> compare_with_band(const MeasuredGradation& measured,
                                           const GradationBand& band, double confidence,
                                           double tolerable_percent_beyond) {
  return compare_with_band(measured, band, DecisionRisks::at(confidence), tolerable_percent_beyond);
}

}  // namespace proofstone
