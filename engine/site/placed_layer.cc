#include "engine/site/placed_layer.h"

#include <fmt/format.h>

#include "engine/acceptance/layer_survey.h"

namespace proofstone {
namespace {

Finding begin_layer_finding(const Zone& zone, const LayerSurvey& survey) {
  Finding finding;
  finding.topic = Topic::placing;
  finding.about.zone = zone.id;
  const auto& about = layer_survey_method().description();
  finding.about.method = about.id;
  finding.id = fmt::format("placing.{}.{}", zone.id, survey.id);
  finding.title = fmt::format("{}, {}", survey.name, zone.name);
  finding.sources = about.sources;
  finding.cautions = about.cautions;
  return finding;
}

void judge(Finding& finding, const Zone& zone, const LayerSurvey& survey,
           const LayerSurveyResult& result, const Wording& wording) {
  const Length required = zone.layer_thickness;
  const auto points = survey.thicknesses.size();
  finding.sentence = fmt::format(
      "{} points: mean {}, at least {} at the asked confidence, "
      "thinnest {}; {} is asked for.",
      points, wording.rock(result.mean), wording.rock(result.lower_bound),
      wording.rock(result.thinnest), wording.rock(required));
  finding.margin = Margin{result.mean / required, result.lower_bound / required, std::nullopt};
  finding.values.push_back({"mean", "t̄", "mean thickness", measure(result.mean), LengthUse::rock});
  finding.values.push_back({"lower_bound", "t_low", "lower bound of the mean",
                            measure(result.lower_bound), LengthUse::rock});
  finding.values.push_back(
      {"thinnest", "t_1", "thinnest point", measure(result.thinnest), LengthUse::rock});
  if (survey.least && result.thinnest < *survey.least) {
    finding.outcome = Outcome::falls_short;
    finding.reasons.push_back(fmt::format("A point is thinner than the least thickness of {}.",
                                          wording.rock(*survey.least)));
    finding.next = "Add rock round the thin points, then measure there again.";
  } else if (result.mean < required) {
    finding.outcome = Outcome::falls_short;
    finding.next = "Add rock where the layer is thin, then measure again.";
  } else if (result.lower_bound < required) {
    finding.outcome = Outcome::not_yet_known;
    finding.next = fmt::format(
        "Measure more points: {:.0f} give the mean to within a tenth of the "
        "layer.",
        result.points_needed.number());
  } else {
    finding.outcome = Outcome::meets;
    finding.next = "Keep the survey with the record.";
  }
}

}  // namespace

std::vector<Finding> placed_layer_findings(const Site& site, const Zone& zone,
                                           const Wording& wording) {
  std::vector<Finding> findings;
  for (const auto& [id, survey] : site.layer_surveys) {
    if (survey.zone != zone.id) continue;
    auto finding = begin_layer_finding(zone, survey);
    LayerSurveyInputs inputs;
    inputs.thicknesses = survey.thicknesses;
    inputs.required = zone.layer_thickness;
    inputs.least = survey.least;
    inputs.slope = survey.vertical_on;
    inputs.confidence = Dimensionless::number(site.evidence.confidence);
    inputs.mean_within = zone.layer_thickness / 10;
    const auto result = layer_survey(inputs, finding.steps);
    if (result) {
      judge(finding, zone, survey, *result, wording);
    } else {
      finding.outcome = Outcome::not_yet_known;
      finding.sentence = result.problems().front().sentence();
      finding.next = "Measure more points.";
    }
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace proofstone
