#include "engine/site/soil_findings.h"

#include <fmt/format.h>

#include "engine/site/filter_pairs.h"
#include "engine/soil/critical_gradient.h"
#include "engine/soil/hazen_conductivity.h"
#include "engine/soil/internal_stability.h"
#include "engine/soil/soil_classification.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

void add_sources(Finding& finding, const Method& method) {
  const auto& sources = method.description().sources;
  finding.sources.insert(finding.sources.end(), sources.begin(), sources.end());
}

/// Percents of the part below 3 in, which is what the classification looks at.
double below_three_inch(const CurvePoints& curve, double percent) {
  const double whole = percent_on_curve(curve, sieve::three_inch);
  return whole > 0 ? 100 * percent / whole : percent;
}

void not_known(Finding& finding, const std::string& name, const std::string& what,
               const std::string& next) {
  finding.outcome = Outcome::not_yet_known;
  finding.sentence = fmt::format("What {} is cannot be said: {}.", name, what);
  finding.next = next;
}

void classify(const Soil& soil, Finding& finding) {
  const auto& curve = soil.gradation.points();
  const auto fines = known_percent(curve, sieve::no_200);
  const auto passing_no_4 = known_percent(curve, sieve::no_4);
  if (!fines) {
    finding.steps.given_grain("", "finest sieve of the soil", curve.front().size, "document");
    return not_known(finding, soil.name, "its curve does not tell what passes the No. 200 sieve",
                     "Wash the soil over the No. 200 sieve and add the percent passing 0.075 mm.");
  }
  if (!passing_no_4) {
    finding.steps.given_grain("", "coarsest sieve of the soil", curve.back().size, "document");
    return not_known(finding, soil.name, "its curve does not tell what passes the No. 4 sieve",
                     "Add the percent passing 4.75 mm.");
  }
  SoilClassificationInputs inputs;
  inputs.passing_no_200 = Dimensionless::of(below_three_inch(curve, *fines), unit::percent);
  inputs.passing_no_4 = Dimensionless::of(below_three_inch(curve, *passing_no_4), unit::percent);
  inputs.d10 = size_on_curve(curve, 10);
  inputs.d30 = size_on_curve(curve, 30);
  inputs.d60 = size_on_curve(curve, 60);
  inputs.liquid_limit = soil.liquid_limit;
  inputs.plasticity_index = soil.plasticity_index;
  const auto classified = soil_classification(inputs, finding.steps);
  if (!classified) {
    const auto& problem = classified.problems().front();
    return not_known(finding, soil.name, "it hangs on what is not given, " + problem.allowed,
                     fmt::format("Test and give {}.", problem.allowed));
  }
  finding.outcome = Outcome::meets;
  finding.sentence =
      fmt::format("{} is {}, {}.", soil.name, classified->soil.symbol(), classified->soil.name);
  finding.next = "Nothing to do.";
  finding.values.push_back(
      {"fines", "F", "passes the No. 200 sieve", measure(classified->fines), LengthUse::ground});
}

void note_water(const Soil& soil, Finding& finding) {
  const auto d10 = size_on_curve(soil.gradation.points(), 10);
  if (d10) {
    HazenConductivityInputs inputs;
    inputs.d10 = *d10;
    if (const auto cu = uniformity(soil.gradation.points())) {
      inputs.uniformity = Dimensionless::number(*cu);
    }
    if (const auto k = hazen_conductivity(inputs, finding.steps)) {
      finding.values.push_back({"conductivity", "k", "hydraulic conductivity, a first estimate",
                                measure(k->conductivity), LengthUse::ground});
      add_sources(finding, hazen_conductivity_method());
    }
    if (d10->millimeters() < 0.1 || d10->millimeters() > 3) {
      finding.reasons.push_back(
          "The conductivity stands outside the range of its formula (D10 of 0.1 to 3 mm): measure "
          "it.");
    }
  }
  if (!soil.porosity) return;
  CriticalGradientInputs inputs;
  if (soil.specific_gravity) inputs.specific_gravity = *soil.specific_gravity;
  inputs.porosity = *soil.porosity;
  if (const auto gradient = critical_gradient(inputs, finding.steps)) {
    finding.values.push_back({"critical_gradient", "i_c", "critical upward gradient",
                              measure(gradient->critical), LengthUse::ground});
    add_sources(finding, critical_gradient_method());
  }
}

void note_flags(const Soil& soil, Finding& finding, const Wording& wording) {
  const auto& curve = soil.gradation.points();
  if (const auto gap = size_gap(curve)) {
    finding.reasons.push_back(
        fmt::format("It is gap-graded: next to nothing lies between {} and {}.",
                    grain_text(gap->from, wording), grain_text(gap->to, wording)));
  }
  const double fines = known_percent(curve, sieve::no_200).value_or(0);
  if (soil.dispersion == Dispersion::yes) {
    finding.reasons.push_back("It disperses: clear water carries it through fine cracks.");
  } else if (soil.dispersion == Dispersion::not_tested && fines >= 40) {
    finding.reasons.push_back("It was not tested for dispersion (crumb or pinhole test).");
  }
  const bool coheres = soil.plasticity_index && soil.plasticity_index->number() > 7;
  if (coheres || fines > 50) return;
  const auto stability = internal_stability(curve, finding.steps);
  finding.reasons.push_back(stability.sentence);
  for (const auto& verdict : stability.verdicts) finding.reasons.push_back(verdict.sentence + ".");
}

Finding soil_finding(const Soil& soil, const Wording& wording) {
  Finding finding;
  finding.topic = Topic::soil;
  finding.id = "soil." + soil.id;
  finding.title = soil.name;
  finding.about.method = "soil-classification";
  add_sources(finding, soil_classification_method());
  classify(soil, finding);
  note_water(soil, finding);
  note_flags(soil, finding, wording);
  return finding;
}

}  // namespace

std::vector<Finding> soil_findings(const Site& site, const Wording& wording) {
  std::vector<Finding> findings;
  for (const auto& [id, soil] : site.soils) findings.push_back(soil_finding(soil, wording));
  return findings;
}

}  // namespace proofstone
