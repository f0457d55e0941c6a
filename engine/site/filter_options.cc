#include "engine/site/filter_options.h"

#include <fmt/format.h>

#include <utility>

#include "engine/filter/beddings.h"
#include "engine/filter/filter_band.h"
#include "engine/filter/filter_bands.h"
#include "engine/filter/filter_thickness.h"
#include "engine/filter/geotextile_strength.h"
#include "engine/site/filter_chain.h"

namespace proofstone {
namespace {

/// Chains of standard beddings and materials that were tried, by their ids from the soil up.
struct Tried {
  std::vector<std::vector<std::string>> serve;
  std::vector<std::vector<std::string>> serve_in_the_middle;
};

/// A bedding or material by itself: its curves, and what it comes to on the soil and under the
/// rock.
struct TriedBedding {
  std::string id;
  LayerCurves curves;
  Outcome on_soil = Outcome::not_yet_known;
  Outcome under_rock = Outcome::not_yet_known;
};

Outcome worse_of(Outcome one, Outcome other) { return is_worse(one, other) ? one : other; }

Tried try_chains(const Site& site, const Zone& zone, const LayerCurves& rock,
                 const Wording& wording) {
  Tried tried;
  const auto soil = soil_below(site, zone);
  if (!soil) return tried;
  const auto choices = filter_choices(zone);
  std::vector<TriedBedding> beddings;
  for (const auto& id : bedding_ids(site)) {
    auto curves = bedding_curves(site, id);
    const auto on_soil = judge_on_soil(*soil, curves, choices, wording).outcome;
    const auto under_rock = judge_on_layer(curves, rock, wording).outcome;
    beddings.push_back({id, std::move(curves), on_soil, under_rock});
  }
  const auto note = [&](Outcome outcome, const std::vector<std::string>& ids) {
    if (outcome == Outcome::meets) tried.serve.push_back(ids);
    if (outcome == Outcome::ask_the_designer) tried.serve_in_the_middle.push_back(ids);
  };
  for (const auto& lower : beddings) {
    note(worse_of(lower.on_soil, lower.under_rock), {lower.id});
    for (const auto& upper : beddings) {
      const auto ends = worse_of(lower.on_soil, upper.under_rock);
      // What falls short at an end is mended by nothing between.
      if (upper.id == lower.id || ends == Outcome::falls_short) continue;
      const auto between = judge_on_layer(lower.curves, upper.curves, wording).outcome;
      note(worse_of(ends, between), {lower.id, upper.id});
    }
  }
  return tried;
}

/// "Type I under Type II; Surge".
std::string either(const Site& site, const std::vector<std::vector<std::string>>& chains) {
  std::string text;
  for (const auto& chain : chains) {
    if (!text.empty()) text += "; ";
    for (std::size_t i = 0; i < chain.size(); ++i) {
      text += (i == 0 ? "" : " under ") + bedding_curves(site, chain[i]).name();
    }
  }
  return text;
}

/// "D15 between 1 mm and 5 mm, D60 between …".
std::string band_text(const FilterLimits& limits, const Wording& wording) {
  return fmt::format(
      "D15 between {} and {}, D60 between {} and {}, at most 5 % passing the No. "
      "200 sieve and not plastic, D90 at most {}, no grain above {}",
      grain_text(limits.min_d15, wording), grain_text(limits.max_d15, wording),
      grain_text(limits.min_d60, wording), grain_text(limits.max_d60, wording),
      grain_text(limits.max_d90, wording), grain_text(limits.max_d100, wording));
}

void put_band(const FilterLimits& limits, Finding& finding, const Wording& wording) {
  const auto state = [&](const char* key, const char* symbol, const char* meaning, Length size) {
    finding.values.push_back({key, symbol, meaning, measure(size), LengthUse::grain});
  };
  state("min_d15", "D15F", "least, control point 2", limits.min_d15);
  state("max_d15", "D15F", "largest, control point 1", limits.max_d15);
  state("min_d60", "D60F", "least, control point 4", limits.min_d60);
  state("max_d60", "D60F", "largest, control point 3", limits.max_d60);
  state("min_d5", "D5F", "least, control point 5", limits.min_d5);
  state("max_d90", "D90F", "largest, control point 7", limits.max_d90);
  state("max_d100", "D100F", "largest, control point 6", limits.max_d100);
  finding.reasons.push_back(fmt::format("The lowest layer: {}.", band_text(limits, wording)));
}

/// The bands above the lowest, each made for the one below it, until the rock serves.
void put_bands_above(const SoilBelow& soil, const LayerCurves& rock, const FilterChoices& choices,
                     Finding& finding, const Wording& wording) {
  const auto bands = filter_bands(soil.samples(), rock, choices);
  for (std::size_t i = 1; i < bands.layers.size(); ++i) {
    finding.reasons.push_back(
        fmt::format("Layer {} from the soil, on a lower one that keeps its "
                    "band: {}.",
                    i + 1, band_text(bands.layers[i], wording)));
  }
  if (!bands.why_not.empty()) {
    finding.reasons.push_back("Layer on layer no band reaches the rock. " + bands.why_not);
  } else if (bands.layers.size() > 1) {
    finding.reasons.push_back(
        fmt::format("On {} such layers the rock serves with every gradation that its class allows.",
                    bands.layers.size()));
  } else if (bands.layers.size() == 1) {
    finding.reasons.emplace_back(
        "On that one layer the rock serves with every gradation that its class allows.");
  }
}

void put_fabric(const Site& site, const Zone& zone, const SoilBelow& soil, const LayerCurves& rock,
                Finding& finding, const Wording& wording) {
  const RockAbove above{largest_stone_mass(site, zone, rock), true, zone.place == ZonePlace::shore};
  const auto needed = fabric_needed(soil, {}, above, finding.steps);
  if (!needed) return;
  finding.values.push_back({"most_opening", "O95", "largest opening of a geotextile",
                            measure(needed->most_opening), LengthUse::grain});
  finding.values.push_back({"least_permittivity", "ψ", "least permittivity of a geotextile",
                            measure(needed->least_permittivity), LengthUse::ground});
  finding.reasons.push_back(fmt::format(
      "Or a nonwoven geotextile under bedding: openings of {} at most, permittivity of {} or more, "
      "Class 2 ({}).",
      grain_text(needed->most_opening, wording), wording.of(needed->least_permittivity),
      strength_text(2, Fabric::nonwoven)));
  for (const auto& words : needed->excluded_because) {
    finding.reasons.push_back("Against a geotextile: " + words);
  }
  for (const auto& words : needed->conflict_words) finding.reasons.push_back(words);
  finding.reasons.push_back(
      "Granular bedding is the more forgiving where rock presses into uneven ground, fabric may "
      "tear or be undermined, or the layer is placed under water (common practice).");
}

void put_thickness(const Zone& zone, Finding& finding, const Wording& wording) {
  FilterThicknessInputs inputs;
  inputs.placing =
      zone.placement == Placement::dry ? FilterPlacing::dry : FilterPlacing::under_water;
  const auto single = filter_thickness(inputs, finding.steps);
  inputs.layers = FilterLayers::several;
  const auto each = filter_thickness(inputs, finding.steps);
  if (!single || !each) return;
  finding.reasons.push_back(fmt::format(
      "At least {} thick where it is one layer, {} each of several{}, and 1.5 times its largest "
      "grain.",
      wording.rock(single->thickness), wording.rock(each->thickness),
      zone.placement == Placement::dry ? "" : ", placed under water"));
}

}  // namespace

std::vector<std::string> bedding_ids(const Site& site) {
  std::vector<std::string> ids;
  for (const auto& [id, material] : site.materials) ids.push_back(id);
  for (const auto& bedding : bedding_catalog()) ids.push_back(bedding.id);
  return ids;
}

std::vector<std::vector<std::string>> beddings_that_serve(const Site& site, const Zone& zone,
                                                          const LayerCurves& rock,
                                                          const Wording& wording) {
  return try_chains(site, zone, rock, wording).serve;
}

std::optional<Finding> filter_options(const Site& site, const Zone& zone, const LayerCurves& rock,
                                      const Wording& wording) {
  const auto soil = soil_below(site, zone);
  if (!soil) return std::nullopt;
  Finding finding;
  finding.topic = Topic::filter;
  finding.about.zone = zone.id;
  finding.about.method = "filter-band";
  finding.id = "filter." + zone.id + ".options";
  finding.title = fmt::format("What would serve below {}", zone.name);
  finding.sources = filter_band_method().description().sources;
  const auto& thickness = filter_thickness_method().description().sources;
  finding.sources.insert(finding.sources.end(), thickness.begin(), thickness.end());
  auto choices = filter_choices(zone);
  choices.dispersion = soil->dispersion;
  const auto limits = filter_limits(soil->samples(), choices, finding.steps);
  if (!limits) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence =
        fmt::format("What would serve is not known. {}", limits.problems().front().what);
    finding.next = fmt::format("Give {}.", limits.problems().front().allowed);
    finding.steps.given_rock("T", "thickness of the rock", zone.layer_thickness, "document");
    return finding;
  }
  put_band(*limits, finding, wording);
  put_bands_above(*soil, rock, choices, finding, wording);
  const auto tried = try_chains(site, zone, rock, wording);
  finding.outcome = tried.serve.empty() ? Outcome::ask_the_designer : Outcome::meets;
  if (!tried.serve.empty()) {
    finding.sentence = fmt::format("From the soil up, these serve: {}.", either(site, tried.serve));
    finding.next = "Choose one and state it as the filter of the zone.";
  } else {
    finding.sentence =
        "No standard bedding and no material on offer serves with every gradation it allows.";
    finding.next = "Ask for a gradation in the band given here, or for a geotextile.";
  }
  if (!tried.serve_in_the_middle.empty()) {
    finding.reasons.push_back(fmt::format("In the middle of their bands only: {}.",
                                          either(site, tried.serve_in_the_middle)));
  }
  put_thickness(zone, finding, wording);
  put_fabric(site, zone, *soil, rock, finding, wording);
  return finding;
}

}  // namespace proofstone
