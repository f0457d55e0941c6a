#include "engine/site/filter_pairs.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/filter/filter_band.h"
#include "engine/filter/filter_ratios.h"
#include "engine/quantity/rounding.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

constexpr double steep_gravel_fines = 15;
constexpr double broad_from = 20;

PairVerdict begin(const LayerCurves& lower, const LayerCurves& upper, const Method& method) {
  PairVerdict pair;
  pair.lower = lower.name();
  pair.upper = upper.name();
  pair.sources = method.description().sources;
  return pair;
}

void not_known(PairVerdict& pair, const std::string& what, std::string next) {
  pair.outcome = Outcome::not_yet_known;
  pair.sentence = fmt::format("{} on {}: not known. {}", pair.upper, pair.lower, what);
  pair.next = std::move(next);
}

/// D15 of the upper layer at its coarsest, in the middle, and at its finest.
struct Upper {
  Length coarsest;
  Length middle;
  Length finest;
};

std::optional<Upper> upper_of(const LayerCurves& layer) {
  const auto coarsest = layer.coarsest(15);
  const auto middle = layer.middle(15);
  const auto finest = layer.finest(15);
  if (!coarsest || !middle || !finest) return std::nullopt;
  return Upper{*coarsest, *middle, *finest};
}

const char* const give_d15 = "Give its gradation down to 15 % smaller.";

void put_outcome(PairVerdict& pair, bool middle_holds, bool worst_holds, const std::string& limit) {
  if (!middle_holds) {
    pair.outcome = Outcome::falls_short;
    pair.next = "See which filters would serve.";
  } else if (!worst_holds) {
    pair.outcome = Outcome::ask_the_designer;
    pair.sentence += " It holds in the middle of the bands, not at their edges.";
    pair.next = fmt::format("Judge the gradation that is delivered, or ask for {}.", limit);
  } else {
    pair.outcome = Outcome::meets;
    pair.next = "Nothing to do.";
  }
}

/// Where regrading alone fails a gravel, the exception of the procedure is named.
void note_exception(const SoilBelow& soil, const Upper& upper, FilterChoices choices,
                    PairVerdict& pair) {
  if (pair.outcome != Outcome::falls_short || choices.regrading == Regrading::never) return;
  for (const auto& sample : soil.samples()) {
    const auto& curve = sample.finest;
    const bool few_fines = known_percent(curve, sieve::no_200).value_or(100) < steep_gravel_fines;
    const bool even = !size_gap(curve) && uniformity(curve).value_or(1e9) <= broad_from;
    if (!few_fines || !even) return;
  }
  choices.regrading = Regrading::never;
  Steps other;
  const auto limits = filter_limits(soil.samples(), choices, other);
  if (!limits || upper.coarsest > limits->max_d15 || upper.finest < limits->permeable_d15) return;
  pair.outcome = Outcome::ask_the_designer;
  pair.reasons.push_back(
      "Without regrading to the No. 4 sieve it holds. The procedure allows that for soil with "
      "gravel that is neither gap-graded nor broadly graded, with less than 15 % of fines (from "
      "memory, in doubt).");
  pair.next = "Decide whether the gravel counts, under method_choices: filter-band, regrading.";
}

void note_dispersion(const SoilBelow& soil, const FilterLimits& limits, const Upper& upper,
                     PairVerdict& pair, const Wording& wording) {
  if (soil.dispersion != Dispersion::not_tested || limits.category > 2) return;
  const Length stricter = max_filter_d15(limits.fines, limits.base_d85, Dispersion::yes);
  pair.reasons.push_back(fmt::format(
      "The soil was not tested for dispersion; were it dispersive, D15 could be {} at most.",
      grain_text(stricter, wording)));
  if (pair.outcome != Outcome::meets || upper.coarsest <= stricter) return;
  pair.outcome = Outcome::not_yet_known;
  pair.next = "Test the soil for dispersion (crumb or pinhole test).";
}

void note_band(const FilterLimits& limits, const Upper& upper, PairVerdict& pair,
               const Wording& wording) {
  if (upper.finest < limits.permeable_d15 || upper.finest >= limits.min_d15) return;
  pair.reasons.push_back(
      fmt::format("Its finest D15, {}, lies outside the narrowed band, which begins at {}: no "
                  "fault where one gradation is delivered throughout.",
                  grain_text(upper.finest, wording), grain_text(limits.min_d15, wording)));
}

/// Which of several samples decides.
void note_samples(const SoilBelow& soil, const FilterLimits& limits, PairVerdict& pair) {
  if (soil.further.empty()) return;
  const auto name = [&](std::size_t i) {
    return i == 0 ? soil.curves.name() : soil.further[i - 1].name();
  };
  pair.reasons.push_back(
      fmt::format("Of {} samples {} decides what holds the soil and {} what lets the water out.",
                  soil.further.size() + 1, name(limits.retained), name(limits.drained)));
}

}  // namespace

std::vector<FilterBase> SoilBelow::samples() const {
  std::vector<FilterBase> all{{curves.fine(), curves.coarse()}};
  for (const auto& sample : further) all.push_back({sample.fine(), sample.coarse()});
  return all;
}

std::string grain_text(Length size, const Wording& wording) {
  return size < Length::inches(1) ? wording.shown(measure(size), LengthUse::grain)
                                  : wording.rock(size);
}

PairVerdict judge_on_soil(const SoilBelow& soil, const LayerCurves& upper, FilterChoices choices,
                          const Wording& wording) {
  auto pair = begin(soil.curves, upper, filter_band_method());
  choices.dispersion = soil.dispersion;
  const auto limits = filter_limits(soil.samples(), choices, pair.steps);
  if (!limits) {
    const auto& problem = limits.problems().front();
    not_known(pair, problem.what, fmt::format("Give {}.", problem.allowed));
    if (problem.code == "no-filter-fits") pair.outcome = Outcome::ask_the_designer;
    return pair;
  }
  const auto d15 = upper_of(upper);
  if (!d15) {
    not_known(pair, fmt::format("The curve of {} does not tell its D15.", upper.name()), give_d15);
    return pair;
  }
  pair.worst = limits->max_d15 / d15->coarsest;
  pair.middle = limits->max_d15 / d15->middle;
  pair.steps.computed_grain("D15", "of the upper layer, coarsest", "", d15->coarsest);
  pair.steps.computed_grain("D15", "of the upper layer, finest", "", d15->finest);
  pair.steps.computed("D15F/D15", "allowed over coarsest", "", measure(*pair.worst));
  const auto holds = [&](Length coarse, Length fine) {
    return coarse <= limits->max_d15 * (1 + rounding) &&
           fine >= limits->permeable_d15 * (1 - rounding);
  };
  pair.sentence = fmt::format(
      "{} on {}: its D15 of {} must lie between {}, to let the water out, and {}, to hold the soil "
      "(category {}).",
      upper.name(), soil.curves.name(),
      upper.is_band() ? fmt::format("{} to {}", grain_text(d15->finest, wording),
                                    grain_text(d15->coarsest, wording))
                      : grain_text(d15->middle, wording),
      grain_text(limits->permeable_d15, wording), grain_text(limits->max_d15, wording),
      limits->category);
  put_outcome(pair, holds(d15->middle, d15->middle), holds(d15->coarsest, d15->finest),
              fmt::format("D15 between {} and {}", grain_text(limits->permeable_d15, wording),
                          grain_text(limits->max_d15, wording)));
  note_exception(soil, *d15, choices, pair);
  note_dispersion(soil, *limits, *d15, pair, wording);
  note_band(*limits, *d15, pair, wording);
  note_samples(soil, *limits, pair);
  return pair;
}

namespace {

/// The ratios with one D15 and one D50 above and one curve below.
struct RatioSizes {
  std::optional<Length> upper_d15;
  std::optional<Length> upper_d50;
  std::optional<Length> lower_d15;
  std::optional<Length> lower_d50;
  std::optional<Length> lower_d85;
};

Expected<FilterRatiosResult> ratios_of(const RatioSizes& sizes, Steps& steps) {
  if (!sizes.upper_d15 || !sizes.lower_d15 || !sizes.lower_d85) {
    return Problem{"curve-does-not-reach", "The curves do not tell D15 above and d15, d85 below.",
                   "", "", "gradations from 15 to 85 % smaller"};
  }
  FilterRatiosInputs inputs;
  inputs.upper_d15 = *sizes.upper_d15;
  inputs.upper_d50 = sizes.upper_d50;
  inputs.lower_d15 = *sizes.lower_d15;
  inputs.lower_d50 = sizes.lower_d50;
  inputs.lower_d85 = *sizes.lower_d85;
  return filter_ratios(inputs, steps);
}

}  // namespace

PairVerdict judge_on_layer(const LayerCurves& lower, const LayerCurves& upper,
                           const Wording& wording) {
  auto pair = begin(lower, upper, filter_ratios_method());
  const auto middle = ratios_of(
      {upper.middle(15), upper.middle(50), lower.middle(15), lower.middle(50), lower.middle(85)},
      pair.steps);
  Steps worst_steps;
  // The coarsest above against the finest below.
  const auto worst = ratios_of(
      {upper.coarsest(15), std::nullopt, lower.middle(15), std::nullopt, lower.finest(85)},
      worst_steps);
  if (!middle || !worst) {
    const auto& problem = (middle ? worst : middle).problems().front();
    not_known(pair, problem.what, fmt::format("Give {}.", problem.allowed));
    return pair;
  }
  const auto finest = upper.finest(15);
  const auto coarsest_below = lower.coarsest(15);
  const double drains = finest && coarsest_below ? *finest / *coarsest_below : 0;
  pair.worst = worst->margin.number();
  pair.middle = middle->margin.number();
  pair.steps.computed("D15/d85", "coarsest above, finest below", "", measure(worst->retention));
  pair.steps.computed("D15/d15", "finest above, coarsest below", "", measure(drains));
  pair.sentence = fmt::format(
      "{} on {}: D15/d85 is {} in the middle and {} at the worst, where less than 5 is "
      "allowed; D15/d15 is {}.",
      upper.name(), lower.name(), significant(middle->retention.number(), 3),
      significant(worst->retention.number(), 3), significant(middle->permeability.number(), 3));
  for (const auto& missed : middle->not_kept)
    pair.reasons.push_back("In the middle: " + missed + ".");
  if (drains <= 5) {
    pair.reasons.push_back(
        fmt::format("With the finest above and the coarsest below, D15/d15 is {}; "
                    "more than 5 is asked.",
                    significant(drains, 3)));
  }
  const bool worst_holds = worst->retention.number() < 5 && drains > 5;
  const auto finest_d85 = lower.finest(85);
  put_outcome(pair, middle->not_kept.empty(), worst_holds,
              finest_d85 ? fmt::format("D15 of {} below {}", upper.name(),
                                       grain_text(5 * *finest_d85, wording))
                         : std::string("narrower bands"));
  return pair;
}

}  // namespace proofstone
