#include "engine/site/filter_layer_findings.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/filter/filter_thickness.h"
#include "engine/quantity/rounding.h"
#include "engine/site/filter_chain.h"
#include "engine/soil/internal_stability.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
Finding begin_filter_finding(const Zone& zone, const std::string& id, const std::string& title) {
  Finding finding;
  finding.topic = Topic::filter;
  finding.about.zone = zone.id;
  finding.about.rock_class = zone.rock_class;
  finding.id = id;
  finding.title = title;
  return finding;
}

const std::vector<FilterLayer>& layers_of(const Zone& zone) {
  static const std::vector<FilterLayer> none;
  return zone.filter ? zone.filter->layers : none;
}

Length least_filter_thickness(const Zone& zone, std::size_t granular, const LayerCurves& layer,
                              Steps& steps) {
  FilterThicknessInputs inputs;
  inputs.layers = granular > 1 ? FilterLayers::several : FilterLayers::single;
  inputs.placing =
      zone.placement == Placement::dry ? FilterPlacing::dry : FilterPlacing::under_water;
  if (!layer.coarse().empty()) inputs.largest_grain = layer.coarse().back().size;
  const auto least = filter_thickness(inputs, steps);
  return least ? least->thickness : Length::inches(6);
}

Finding thickness_finding(const Site& site, const Zone& zone, const GranularFilter& layer,
                          std::size_t number, const Wording& wording) {
  const auto curves = bedding_curves(site, layer.bedding);
  auto finding = begin_filter_finding(zone, fmt::format("filter.{}.thickness.{}", zone.id, number),
                                      fmt::format("Thickness of {}", curves.name()));
  finding.about.method = "filter-thickness";
  finding.sources = filter_thickness_method().description().sources;
  finding.steps.given_rock("t", "thickness of the layer", layer.thickness, "document");
  const auto& layers = layers_of(zone);
  const auto granular = std::count_if(layers.begin(), layers.end(), [](const FilterLayer& one) {
    return std::holds_alternative<GranularFilter>(one);
  });
  const Length least =
      least_filter_thickness(zone, static_cast<std::size_t>(granular), curves, finding.steps);
  finding.margin = Margin{layer.thickness / least, std::nullopt, std::nullopt};
  finding.sentence = fmt::format("{} is {} thick; at least {} is asked{}.", curves.name(),
                                 wording.rock(layer.thickness), wording.rock(least),
                                 zone.placement == Placement::dry ? "" : ", placed under water");
  const bool holds = layer.thickness >= least * (1 - rounding);
  finding.outcome = holds ? Outcome::meets : Outcome::falls_short;
  finding.next =
      holds ? "Nothing to do." : fmt::format("Make the layer {} thick.", wording.rock(least));
  return finding;
}

void note_stability(const Site& site, const GranularFilter& layer, Finding& finding) {
  const auto curves = bedding_curves(site, layer.bedding);
  if (curves.is_band()) return;
  Steps not_shown;
  const auto stability = internal_stability(curves.fine(), not_shown);
  finding.reasons.push_back(fmt::format("{}: {}", curves.name(), stability.sentence));
  if (stability.outcome == Outcome::meets) return;
  for (const auto& verdict : stability.verdicts) finding.reasons.push_back(verdict.sentence + ".");
}

void judge_fines(const Site& site, const GranularFilter& layer, Finding& finding) {
  const auto material = site.materials.find(layer.bedding);
  if (material == site.materials.end()) return;
  constexpr double most_fines = 5;  // percent; control point 5 of the procedure
  const auto& curve = material->second.gradation.points();
  const auto fines = known_percent(curve, sieve::no_200);
  const auto& name = material->second.name;
  const auto worsen = [&](Outcome outcome, std::string sentence, std::string next) {
    finding.reasons.push_back(sentence);
    if (!is_worse(outcome, finding.outcome)) return;
    finding.outcome = outcome;
    finding.sentence = std::move(sentence);
    finding.next = std::move(next);
  };
  if (fines && *fines > most_fines) {
    worsen(Outcome::ask_the_designer,
           fmt::format("{}: {} % of it passes the No. 200 sieve; a filter has 5 % at most.", name,
                       significant(*fines, 3)),
           fmt::format("Have {} washed, or take another bedding.", name));
  } else if (!fines && curve.front().percent_smaller > most_fines) {
    worsen(
        Outcome::not_yet_known,
        fmt::format("{}: its curve ends at {} mm with {} % smaller and does not tell what passes "
                    "the No. 200 sieve; a filter has 5 % at most.",
                    name, significant(curve.front().size.millimeters(), 3),
                    significant(curve.front().percent_smaller, 3)),
        fmt::format("Wash {} over the No. 200 sieve and add the percent smaller than 0.075 mm "
                    "(at /materials/{}/gradation).",
                    name, layer.bedding));
  }
}

bool all_filled(const Zone& zone) {
  return !zone.kinds.empty() &&
         std::all_of(zone.kinds.begin(), zone.kinds.end(),
                     [](const KindUpSlope& part) { return is_filled(part.kind); });
}

Finding pair_finding(const Zone& zone, const PairVerdict& pair, const std::string& id) {
  auto finding = begin_filter_finding(zone, id, fmt::format("{} on {}", pair.upper, pair.lower));
  finding.outcome = pair.outcome;
  finding.sentence = pair.sentence;
  finding.next = pair.next;
  finding.reasons = pair.reasons;
  finding.steps = pair.steps;
  finding.sources = pair.sources;
  if (pair.middle && pair.worst) {
    finding.margin = Margin{*pair.middle, std::min(*pair.worst, *pair.middle),
                            std::max(*pair.worst, *pair.middle)};
  }
  if (finding.sources.empty()) {
    finding.sources.push_back(
        {"trade", "soil is tested before a filter is chosen", SourceStanding::common_practice});
  }
  return finding;
}

}  // namespace proofstone
