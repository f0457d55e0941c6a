#include "engine/evidence/band_comparison.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/evidence/evidence_sources.h"
#include "engine/evidence/size_text.h"
#include "engine/evidence/stones_needed.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

constexpr double percent_rounding = 1e-9;
constexpr double size_rounding = 1e-9;
/// "No stone larger" allows one of just that size; a curve of measured stones reaches 100 % one
/// part in a million above its largest stone.
constexpr double just_beyond = 2e-6;

enum class Kind { trivial, ordinary, none_larger, none_smaller };

Kind kind_of(const BandCondition& condition) {
  if (condition.sense == BandCondition::Sense::at_most) {
    if (condition.percent >= 100 - percent_rounding) return Kind::trivial;
    return condition.percent <= percent_rounding ? Kind::none_smaller : Kind::ordinary;
  }
  if (condition.percent <= percent_rounding) return Kind::trivial;
  return condition.percent >= 100 - percent_rounding ? Kind::none_larger : Kind::ordinary;
}

/// What a curve says of the share smaller than a size: one value, or two where the size lies inside
/// an open smallest bin.
struct Share {
  double lowest = 0;
  double highest = 0;
};

Share share_smaller(const Gradation& curve, Length size, Kind kind) {
  if (kind == Kind::none_larger) size = (1 + just_beyond) * size;
  if (kind == Kind::none_smaller) size = (1 - just_beyond) * size;
  const double percent = curve.percent_smaller(size);
  return {size < curve.points().front().size ? 0 : percent, percent};
}

bool kept_by(const Share& share, const BandCondition& condition) {
  if (condition.sense == BandCondition::Sense::at_most) {
    return share.highest <= condition.percent + percent_rounding;
  }
  return share.lowest >= condition.percent - percent_rounding;
}

/// One condition under test: the evidence at its size and the question put to it.
struct Trial {
  const MeasuredGradation& measured;
  const BandCondition& condition;
  Kind kind;
  Length size;  ///< of the condition, in the sense of size of the measured curve
  Share share;
  double effective_stones;
  double level;      ///< confidence asked of each condition
  double tolerable;  ///< percent beyond an extreme limit

  bool at_most() const { return condition.sense == BandCondition::Sense::at_most; }
  double kept(double stones) const {
    switch (kind) {
      case Kind::trivial:
        return 1;
      case Kind::none_larger:
        return confidence_at_least(share.lowest, stones, 100 - tolerable);
      case Kind::none_smaller:
        return confidence_at_most(share.highest, stones, tolerable);
      case Kind::ordinary:
        break;
    }
    return at_most() ? confidence_at_most(share.highest, stones, condition.percent)
                     : confidence_at_least(share.lowest, stones, condition.percent);
  }
  double broken(double stones) const {
    if (kind != Kind::ordinary) return 0;
    return at_most() ? confidence_at_least(share.lowest, stones, condition.percent)
                     : confidence_at_most(share.highest, stones, condition.percent);
  }
  /// Whether a stone beyond an extreme limit was seen.
  bool stone_seen_beyond() const {
    if (kind == Kind::none_larger) {
      return measured.seen_larger_than && *measured.seen_larger_than >= (1 - size_rounding) * size;
    }
    return kind == Kind::none_smaller && measured.seen_smaller_than &&
           *measured.seen_smaller_than <= (1 + size_rounding) * size;
  }
  /// Whether more of the same could decide it: not where the size lies within an open smallest bin
  /// or a bin reaches across an extreme limit.
  bool depends_on_stones() const {
    if (kind == Kind::none_larger || kind == Kind::none_smaller) return kept_by(share, condition);
    return share.highest - share.lowest <= percent_rounding;
  }
};

void judge_extreme(const Trial& trial, ConditionCheck& check) {
  const bool larger = trial.kind == Kind::none_larger;
  const char* beyond = larger ? "larger" : "smaller";
  const auto limit = size_in_both_systems(trial.condition.size);
  if (trial.stone_seen_beyond()) {
    check.confidence_kept = 0;
    check.confidence_broken = 1;
    check.outcome = Outcome::falls_short;
    check.reason = fmt::format("A stone {} than {} was measured.", beyond, limit);
  } else if (!kept_by(trial.share, trial.condition)) {
    check.outcome = Outcome::not_yet_known;
    check.reason = fmt::format(
        "The limit of {} lies within a bin that holds stones: measure the {} stones one by one.",
        limit, larger ? "largest" : "smallest");
  } else {
    const bool shown = check.confidence_kept >= trial.level;
    check.outcome = shown ? Outcome::meets : Outcome::not_yet_known;
    check.reason = fmt::format(
        "No stone {} than {} was found among those measured, which {} with {:.1f} % confidence "
        "that "
        "such stones are at most {:g} % of the lot; a sample cannot show that there is none.",
        beyond, limit, shown ? "shows" : "shows only", 100 * check.confidence_kept,
        trial.tolerable);
  }
}

void judge_ordinary(const Trial& trial, ConditionCheck& check) {
  if (trial.share.highest - trial.share.lowest > percent_rounding) {
    check.reason =
        fmt::format("{} lies within the open smallest bin: between 0 and {:.1f} % is smaller.",
                    size_in_both_systems(trial.condition.size), trial.share.highest);
  } else {
    check.reason = fmt::format("{:.1f} % is smaller than {}, {} {:g} % asked.",
                               check.measured_percent, size_in_both_systems(trial.condition.size),
                               trial.at_most() ? "at most" : "at least", trial.condition.percent);
  }
  if (check.confidence_kept >= trial.level) {
    check.outcome = Outcome::meets;
    check.reason += fmt::format(" Kept with {:.1f} % confidence.", 100 * check.confidence_kept);
  } else if (check.confidence_broken >= trial.level) {
    check.outcome = Outcome::falls_short;
    check.reason +=
        fmt::format(" Not kept, with {:.1f} % confidence.", 100 * check.confidence_broken);
  } else {
    check.outcome = Outcome::not_yet_known;
    check.reason += fmt::format(" Confidence that it is kept {:.1f} %, asked {:.1f} %.",
                                100 * check.confidence_kept, 100 * trial.level);
  }
}

ConditionCheck judge(const Trial& trial) {
  ConditionCheck check{trial.condition,
                       trial.share.highest,
                       trial.kept(trial.effective_stones),
                       trial.broken(trial.effective_stones),
                       Outcome::meets,
                       {}};
  if (trial.kind == Kind::trivial) {
    check.reason = "Holds of itself.";
  } else if (trial.kind == Kind::ordinary) {
    judge_ordinary(trial, check);
  } else {
    judge_extreme(trial, check);
  }
  return check;
}

std::optional<int> stones_to_decide(const Trial& trial) {
  if (!trial.depends_on_stones()) return std::nullopt;
  return stones_needed(trial.measured, trial.effective_stones, [&](double stones) {
    return trial.kept(stones) >= trial.level || trial.broken(stones) >= trial.level;
  });
}

void say(const Trial& trial, const ConditionCheck& check, std::size_t number, Steps& steps) {
  steps.computed(fmt::format("F{}", number), "percent smaller, for: " + trial.condition.wording,
                 "read on the curve", measure(check.measured_percent));
  const char* formula = "";
  switch (trial.kind) {
    case Kind::trivial:
      formula = "holds of itself";
      break;
    case Kind::ordinary:
      formula = trial.at_most()
                    ? "1 − P(at most ne·F/100 of ne smaller | true share at the limit)"
                    : "1 − P(at least ne·F/100 of ne smaller | true share at the limit)";
      break;
    case Kind::none_larger:
    case Kind::none_smaller:
      formula = trial.stone_seen_beyond() ? "a stone beyond the limit was seen"
                                          : "1 − (1 − tolerable share)^ne when none was seen";
      break;
  }
  steps.given(fmt::format("ne{}", number), "equally informative stones behind it",
              measure(trial.effective_stones));
  steps.computed(fmt::format("confidence {}", number), "that it is kept", formula,
                 measure(check.confidence_kept), clopper_pearson_source().sentence());
}

Outcome together(const std::vector<ConditionCheck>& checks) {
  const auto any = [&](Outcome outcome) {
    return std::any_of(checks.begin(), checks.end(),
                       [&](const ConditionCheck& check) { return check.outcome == outcome; });
  };
  if (any(Outcome::falls_short)) return Outcome::falls_short;
  return any(Outcome::not_yet_known) ? Outcome::not_yet_known : Outcome::meets;
}

Problems problems_of_comparison(const MeasuredGradation& measured, const GradationBand& band,
                                double confidence, double tolerable) {
  Problems problems;
  if (auto problem = problem_of_confidence(confidence)) problems.push_back(std::move(*problem));
  if (!(tolerable > 0 && tolerable < 50)) {
    problems.push_back({"tolerable-share-out-of-range",
                        "The tolerable share beyond the extreme limits is not believable.", "",
                        "tolerable percent beyond", "above 0 and below 50 percent"});
  }
  if (measured.curve.basis().percent != band.basis().percent && !measured.picked_on_grid) {
    problems.push_back(
        {"different-basis",
         fmt::format("The band is stated in percent by {}, the measured curve in percent by {}.",
                     percent_of_name(band.basis().percent),
                     percent_of_name(measured.curve.basis().percent)),
         "", "band", "a count on a grid, which serves both, or a band by mass"});
  }
  return problems;
}

}  // namespace

bool kept_by_estimate(const Gradation& curve, const BandCondition& condition,
                      SizeMeaning band_size) {
  const Length size = convert_size(condition.size, band_size, curve.basis().size);
  return kept_by(share_smaller(curve, size, kind_of(condition)), condition);
}

Expected<BandComparison> compare_with_band(const MeasuredGradation& measured,
                                           const GradationBand& band, double confidence,
                                           double tolerable_percent_beyond) {
  if (auto problems = problems_of_comparison(measured, band, confidence, tolerable_percent_beyond);
      !problems.empty()) {
    return problems;
  }
  const auto& conditions = band.conditions();
  const auto tested =
      std::count_if(conditions.begin(), conditions.end(),
                    [](const BandCondition& c) { return kind_of(c) != Kind::trivial; });
  if (tested == 0) {
    return Problem{"nothing-to-test", "No condition of the band limits the rock.", "", "band",
                   "at least one percent between 0 and 100"};
  }
  const double level = 1 - (1 - confidence) / static_cast<double>(tested);

  BandComparison comparison;
  comparison.confidence = confidence;
  comparison.steps.given("confidence", "asked for all conditions together", measure(confidence));
  comparison.steps.computed("k", "conditions that a sample can speak about", "count",
                            measure(static_cast<double>(tested)));
  comparison.steps.computed("level", "confidence asked of each condition", "1 − (1 − confidence)/k",
                            measure(level), "Bonferroni's inequality");
  if (measured.curve.basis().percent != band.basis().percent) {
    comparison.steps.given(
        "basis", "the band is by count: the share of the points of the grid serves for it",
        measure(1.0), "FHWA FP-14 Table 705-1, read in a document that quotes it");
  }
  if (measured.curve.basis().size != band.basis().size) {
    comparison.steps.computed(
        "r",
        fmt::format("size as {} of a stone whose size as {} is 1, by its mass",
                    size_meaning_name(measured.curve.basis().size),
                    size_meaning_name(band.basis().size)),
        "by the mass of the stone",
        measure(convert_size(Length::meters(1), band.basis().size, measured.curve.basis().size)
                    .meters()));
  }

  comparison.inside_by_estimate = true;
  std::optional<int> most_needed = 0;
  for (const auto& condition : conditions) {
    const Kind kind = kind_of(condition);
    const Length size =
        convert_size(condition.size, band.basis().size, measured.curve.basis().size);
    const Trial trial{measured,
                      condition,
                      kind,
                      size,
                      share_smaller(measured.curve, size, kind),
                      measured.effective_stones_at(size),
                      level,
                      tolerable_percent_beyond};
    auto check = judge(trial);
    if (!kept_by(trial.share, condition)) comparison.inside_by_estimate = false;
    if (check.outcome == Outcome::not_yet_known && most_needed) {
      const auto needed = stones_to_decide(trial);
      most_needed = needed ? std::optional(std::max(*most_needed, *needed)) : std::nullopt;
    }
    comparison.checks.push_back(std::move(check));
    say(trial, comparison.checks.back(), comparison.checks.size(), comparison.steps);
  }
  comparison.outcome = together(comparison.checks);
  if (comparison.outcome == Outcome::not_yet_known) comparison.stones_to_decide = most_needed;
  return comparison;
}

}  // namespace proofstone
