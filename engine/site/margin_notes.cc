#include "engine/site/margin_notes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {

void note_density(Finding& finding, const RockSource& source, const MeasuredMargin& measured,
                  const DensityScatter& scatter) {
  if (measured.margin.margin) {
    const double lightest =
        *measured.margin.margin * (measured.required.size / scatter.needed_with_lightest);
    finding.reasons.push_back(fmt::format(
        "The {} tests of specific gravity scatter; the confidence and the limits of the margin "
        "take in how little sure their mean is. Were all the rock as light as the lightest ({}), "
        "the margin would be {}.",
        source.specific_gravity_tests.size(), significant(scatter.lightest.number(), 3),
        margin_text(lightest)));
  }
  double squares = 0;
  for (const double error : scatter.log_errors) squares += error * error;
  finding.steps.computed(
      "e_G", "scatter of the size needed, from the error of the mean specific gravity",
      "standard deviation of ln D needed over Student's t of the mean",
      measure(std::sqrt(squares / static_cast<double>(scatter.log_errors.size()))));
}

void note_thickness(Finding& finding, const Site& site, const Zone& zone,
                    const MeasuredMargin& measured, const Wording& wording) {
  const auto& inputs = measured.asked->method->description().inputs;
  const bool has_coefficient = std::any_of(inputs.begin(), inputs.end(), [](const auto& input) {
    return input.key == "thickness_coefficient";
  });
  const auto& margin = measured.margin;
  if (!has_coefficient || margin.outcome == Outcome::meets || !margin.low || *margin.low >= 1) {
    return;
  }
  auto text = fmt::format(
      "A layer thicker than the least may carry smaller stones by this method: at a "
      "layer-thickness "
      "coefficient CT of {} times the one used, or less, this rock would be shown to hold. Plate "
      "B-40 "
      "of EM 1110-2-1601, which gives it, is not held here: the designer reads it there",
      significant(*margin.low, 2));
  for (const auto& [id, survey] : site.layer_surveys) {
    if (survey.zone != zone.id || survey.thicknesses.empty() || survey.vertical_on) continue;
    Length sum;
    for (const auto thickness : survey.thicknesses) sum = sum + thickness;
    text += fmt::format("; by \"{}\" the layer lies {} thick on the mean, {} is drawn", survey.name,
                        wording.rock(sum / static_cast<double>(survey.thicknesses.size())),
                        wording.rock(zone.layer_thickness));
  }
  finding.reasons.push_back(text + ".");
}

}  // namespace proofstone
