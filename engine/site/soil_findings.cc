#include "engine/site/soil_findings.h"

#include <fmt/format.h>

#include <algorithm>

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

/// One sample of the ground: the soil's own, or a further one.
struct Sample {
  const std::string& name;
  const CurvePoints& curve;
  double fines() const { return known_percent(curve, sieve::no_200).value_or(0); }
};

std::vector<Sample> samples_of(const Soil& soil) {
  std::vector<Sample> samples{{soil.name, soil.gradation.points()}};
  for (const auto& one : soil.further) samples.push_back({one.name, one.gradation.points()});
  return samples;
}

/// " of Boring B-2", where there is more than one sample to be of.
std::string of_sample(const std::vector<Sample>& samples, const Sample& sample) {
  return samples.size() > 1 ? " of " + sample.name : "";
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

/// The class of a sample; absent where `finding` is told why it is not known.
std::optional<SoilClassificationResult> class_of(const Soil& soil, const Sample& sample,
                                                 Steps& steps, Finding& finding) {
  const auto& curve = sample.curve;
  const auto fines = known_percent(curve, sieve::no_200);
  const auto passing_no_4 = known_percent(curve, sieve::no_4);
  if (!fines) {
    steps.given_grain("", "finest sieve of the soil", curve.front().size, "document");
    not_known(finding, sample.name, "its curve does not tell what passes the No. 200 sieve",
              "Wash the soil over the No. 200 sieve and add the percent passing 0.075 mm.");
    return std::nullopt;
  }
  if (!passing_no_4) {
    steps.given_grain("", "coarsest sieve of the soil", curve.back().size, "document");
    not_known(finding, sample.name, "its curve does not tell what passes the No. 4 sieve",
              "Add the percent passing 4.75 mm.");
    return std::nullopt;
  }
  SoilClassificationInputs inputs;
  inputs.passing_no_200 = Dimensionless::of(below_three_inch(curve, *fines), unit::percent);
  inputs.passing_no_4 = Dimensionless::of(below_three_inch(curve, *passing_no_4), unit::percent);
  inputs.d10 = size_on_curve(curve, 10);
  inputs.d30 = size_on_curve(curve, 30);
  inputs.d60 = size_on_curve(curve, 60);
  inputs.liquid_limit = soil.liquid_limit;
  inputs.plasticity_index = soil.plasticity_index;
  const auto classified = soil_classification(inputs, steps);
  if (!classified) {
    const auto& problem = classified.problems().front();
    not_known(finding, sample.name, "it hangs on what is not given, " + problem.allowed,
              fmt::format("Test and give {}.", problem.allowed));
    return std::nullopt;
  }
  return *classified;
}

/// The class by the sample with most fines, which is the hardest to hold; the others beside it.
void classify(const Soil& soil, Finding& finding) {
  const auto samples = samples_of(soil);
  const auto finest = std::max_element(
      samples.begin(), samples.end(),
      [](const Sample& one, const Sample& other) { return one.fines() < other.fines(); });
  std::vector<std::string> others;
  std::optional<SoilClassificationResult> governing;
  for (const auto& sample : samples) {
    Steps steps;
    const auto classified = class_of(soil, sample, steps, finding);
    const bool governs = &sample == &*finest;
    if (governs || !classified) finding.steps.append(steps);
    if (!classified) return;
    if (governs) {
      governing = classified;
    } else {
      others.push_back(fmt::format("{} is {}, {}", sample.name, classified->soil.symbol(),
                                   classified->soil.name));
    }
  }
  finding.outcome = Outcome::meets;
  finding.sentence =
      fmt::format("{} is {}, {}.", finest->name, governing->soil.symbol(), governing->soil.name);
  finding.next = "Nothing to do.";
  finding.values.push_back({"fines", "F", "passes the No. 200 sieve" + of_sample(samples, *finest),
                            measure(governing->fines), LengthUse::ground});
  if (others.empty()) return;
  finding.sentence +=
      fmt::format(" Of {} samples it has the most fines and is the hardest to hold. {}.",
                  samples.size(), fmt::join(others, "; "));
  finding.next =
      "Nothing to do; filters and mixes are judged by the strictest sample at each limit.";
  if (soil.liquid_limit || soil.plasticity_index) {
    finding.reasons.push_back(
        "One set of plasticity limits is stated and taken for every sample: test each where they "
        "look or feel different.");
  }
}

/// Conductivity of the sample that lets most water through, which asks most of a filter.
void note_conductivity(const std::vector<Sample>& samples, Finding& finding) {
  const Sample* most_open = nullptr;
  std::optional<Length> coarsest;
  std::optional<Length> finest;
  for (const auto& sample : samples) {
    const auto d10 = size_on_curve(sample.curve, 10);
    if (!d10) continue;
    if (!coarsest || *d10 > *coarsest) most_open = &sample;
    coarsest = std::max(coarsest.value_or(*d10), *d10);
    finest = std::min(finest.value_or(*d10), *d10);
  }
  if (most_open == nullptr) return;
  HazenConductivityInputs inputs;
  inputs.d10 = *coarsest;
  if (const auto cu = uniformity(most_open->curve)) inputs.uniformity = Dimensionless::number(*cu);
  if (const auto k = hazen_conductivity(inputs, finding.steps)) {
    finding.values.push_back(
        {"conductivity", "k",
         "hydraulic conductivity, a first estimate" + of_sample(samples, *most_open),
         measure(k->conductivity), LengthUse::ground});
    add_sources(finding, hazen_conductivity_method());
  }
  if (finest->millimeters() < 0.1 || coarsest->millimeters() > 3) {
    finding.reasons.push_back(
        "The conductivity stands outside the range of its formula (D10 of 0.1 to 3 mm): measure "
        "it.");
  }
}

void note_water(const Soil& soil, Finding& finding) {
  note_conductivity(samples_of(soil), finding);
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

/// What one sample is prone to, by its name where there are several.
void note_flags_of(const Soil& soil, const Sample& sample, bool several, Finding& finding,
                   const Wording& wording) {
  if (const auto gap = size_gap(sample.curve)) {
    finding.reasons.push_back(fmt::format(
        "{} is gap-graded: next to nothing lies between {} and {}.", several ? sample.name : "It",
        grain_text(gap->from, wording), grain_text(gap->to, wording)));
  }
  const bool coheres = soil.plasticity_index && soil.plasticity_index->number() > 7;
  if (coheres || sample.fines() > 50) return;
  const auto stability = internal_stability(sample.curve, finding.steps);
  const std::string of = several ? sample.name + ": " : "";
  finding.reasons.push_back(of + stability.sentence);
  for (const auto& verdict : stability.verdicts) {
    finding.reasons.push_back(of + verdict.sentence + ".");
  }
}

void note_flags(const Soil& soil, Finding& finding, const Wording& wording) {
  const auto samples = samples_of(soil);
  double fines = 0;
  for (const auto& sample : samples) fines = std::max(fines, sample.fines());
  if (soil.dispersion == Dispersion::yes) {
    finding.reasons.push_back("It disperses: clear water carries it through fine cracks.");
  } else if (soil.dispersion == Dispersion::not_tested && fines >= 40) {
    finding.reasons.push_back("It was not tested for dispersion (crumb or pinhole test).");
  }
  for (const auto& sample : samples) {
    note_flags_of(soil, sample, samples.size() > 1, finding, wording);
  }
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
