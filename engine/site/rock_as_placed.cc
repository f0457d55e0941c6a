#include "engine/site/rock_as_placed.h"

#include <fmt/format.h>

#include "engine/acceptance/layer_survey.h"
#include "engine/sizing/layer_thickness.h"

namespace proofstone {
namespace {

/// Layer that the measured rock asks for where the zone lies.
Expected<LayerThicknessResult> layer_for(const Zone& zone, const MeasuredGradation& measured,
                                         Steps& steps) {
  LayerThicknessInputs inputs;
  inputs.place = zone.place;
  inputs.placement = zone.placement;
  if (const auto size = measured.curve.size_at(50)) {
    inputs.d50 = *size;
    inputs.d50_upper = *size;
  }
  inputs.d100_upper = measured.curve.points().back().size;
  if (zone.scour) {
    inputs.contraction_scour = zone.scour->contraction.value_or(Length{});
    inputs.degradation = zone.scour->long_term.value_or(Length{});
  }
  return layer_thickness(inputs, steps);
}

Finding finding_of(const Site& site, const Zone& zone, const LotEvidence& evidence,
                   const LayerSurvey& survey, const Wording& wording) {
  Finding finding;
  finding.topic = Topic::layer;
  finding.about.zone = zone.id;
  finding.about.lot = evidence.lot->id;
  finding.about.method = layer_thickness_method().description().id;
  finding.id = fmt::format("as-placed.{}.{}.{}", zone.id, evidence.lot->id, survey.id);
  finding.title = fmt::format("{} as it lies in {}", evidence.lot->name, zone.name);
  const auto needed = layer_for(zone, *evidence.together, finding.steps);
  LayerSurveyInputs inputs;
  inputs.thicknesses = survey.thicknesses;
  inputs.required = zone.layer_thickness;
  inputs.slope = survey.vertical_on;
  inputs.confidence = Dimensionless::number(site.evidence.confidence);
  inputs.mean_within = zone.layer_thickness / 10;
  const auto placed = layer_survey(inputs, finding.steps);
  if (!needed || !placed) {
    finding.sentence = (needed ? placed.problems() : needed.problems()).front().sentence();
    finding.next = "Measure more points of the layer, and the largest stones one by one.";
    return finding;
  }
  finding.sources = {needed->source};
  finding.margin = Margin{placed->mean / needed->least, placed->lower_bound / needed->least, {}};
  finding.values.push_back({"needed", "T min", "layer that the measured rock asks for",
                            measure(needed->least), LengthUse::rock});
  finding.values.push_back(
      {"placed", "t̄", "mean thickness as surveyed", measure(placed->mean), LengthUse::rock});
  finding.sentence = fmt::format(
      "The measured rock asks for a layer of {} ({}); it lies {} thick on the mean, at least {}.",
      wording.rock(needed->least), needed->governed_by, wording.rock(placed->mean),
      wording.rock(placed->lower_bound));
  if (placed->mean < needed->least) {
    finding.outcome = Outcome::falls_short;
    finding.next = "Take out the stones that stand above the layer, or lay it thicker.";
  } else if (placed->lower_bound < needed->least) {
    finding.outcome = Outcome::not_yet_known;
    finding.next = "Measure more points.";
  } else {
    finding.outcome = Outcome::meets;
    finding.next = "Keep the survey with the record.";
  }
  return finding;
}

}  // namespace

std::vector<Finding> rock_as_placed(const Site& site, const Zone& zone, const LotEvidence& evidence,
                                    const Wording& wording) {
  std::vector<Finding> findings;
  if (!evidence.together) return findings;
  for (const auto& [id, survey] : site.layer_surveys) {
    if (survey.zone != zone.id) continue;
    findings.push_back(finding_of(site, zone, evidence, survey, wording));
  }
  return findings;
}

}  // namespace proofstone
