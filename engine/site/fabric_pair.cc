#include <fmt/format.h>

#include <algorithm>

#include "engine/filter/geotextile_strength.h"
#include "engine/quantity/rounding.h"
#include "engine/site/filter_pairs.h"
#include "engine/soil/hazen_conductivity.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

struct Missing {
  std::vector<std::string> values;
  void unless(bool there, const char* name) {
    if (!there) values.emplace_back(name);
  }
};

void falls(PairVerdict& pair, std::string reason) {
  pair.outcome = Outcome::falls_short;
  pair.reasons.push_back(std::move(reason));
}

/// Class of strength against what rock and drop ask for.
void judge_strength(const GeotextileFilter& fabric, const RockAbove& rock, PairVerdict& pair,
                    Missing& missing, const Wording& wording) {
  GeotextileStrengthInputs inputs;
  inputs.stone_mass = rock.largest_stone;
  if (fabric.drop_height) inputs.drop_height = *fabric.drop_height;
  inputs.fabric = fabric.fabric;
  inputs.bedding = rock.bedding_between ? GeotextileStrengthInputs::Bedding::yes
                                        : GeotextileStrengthInputs::Bedding::no;
  const auto needed = geotextile_strength(inputs, pair.steps);
  if (!needed) return falls(pair, needed.problems().front().what);
  const int number = static_cast<int>(needed->strength_class.number());
  const auto words = fmt::format("stones of up to {} dropped {}, {}",
                                 wording.of(rock.largest_stone), wording.ground(inputs.drop_height),
                                 rock.bedding_between ? "on bedding" : "straight on the fabric");
  missing.unless(fabric.strength_class.has_value(), "its strength class");
  pair.reasons.push_back(fmt::format("Strength Class {} is needed for {}: {}.", number, words,
                                     strength_text(number, fabric.fabric)));
  if (fabric.strength_class && *fabric.strength_class > number) {
    falls(pair, fmt::format("Its Class {} is too weak.", *fabric.strength_class));
  }
}

void judge_water(const GeotextileFilter& fabric, const GeotextileFilterResult& needed,
                 PairVerdict& pair, Missing& missing, const Wording& wording) {
  if (fabric.opening_size > needed.most_opening * (1 + rounding)) {
    falls(pair, fmt::format("Its openings of {} are too large.",
                            grain_text(fabric.opening_size, wording)));
  }
  if (fabric.opening_size < needed.least_opening * (1 - rounding)) {
    pair.reasons.push_back(fmt::format(
        "Its openings are finer than the {} preferred against clogging: test the gradient ratio "
        "with this soil (ASTM D5101, at most 3).",
        grain_text(needed.least_opening, wording)));
  }
  missing.unless(fabric.permittivity.has_value(), "its permittivity");
  if (fabric.permittivity && *fabric.permittivity < needed.least_permittivity * (1 - rounding)) {
    falls(pair,
          fmt::format("Its permittivity of {} is too small.", wording.of(*fabric.permittivity)));
  }
}

void put_fabric_outcome(const GeotextileFilterResult& needed, const Missing& missing,
                        PairVerdict& pair) {
  for (const auto& words : needed.excluded_because) pair.reasons.push_back(words);
  for (const auto& words : needed.conflict_words) pair.reasons.push_back(words);
  if (pair.outcome == Outcome::falls_short) {
    pair.next = "Take a fabric that keeps these values, or granular bedding.";
  } else if (!needed.excluded_because.empty()) {
    pair.outcome = Outcome::ask_the_designer;
    pair.next = "Prefer granular bedding, or have the fabric designed for this very soil.";
  } else if (!missing.values.empty()) {
    pair.outcome = Outcome::not_yet_known;
    pair.next = fmt::format("State {} as its data sheet has them.", listed(missing.values));
  } else if (!needed.conflict_words.empty()) {
    pair.outcome = Outcome::ask_the_designer;
    pair.next = "Test the gradient ratio of the fabric with this soil, or prefer granular bedding.";
  } else {
    pair.outcome = Outcome::meets;
    pair.next = "Nothing to do.";
  }
}

}  // namespace

namespace {

/// For one sample of the soil.
std::optional<GeotextileFilterResult> needed_for(const SoilBelow& soil, const LayerCurves& sample,
                                                 const GeotextileFilter& fabric,
                                                 const RockAbove& rock, Steps& steps) {
  const auto& curve = sample.fine();
  const auto fines = known_percent(curve, sieve::no_200);
  const auto d85 = sample.finest(85);
  if (!fines || !d85) return std::nullopt;
  GeotextileFilterInputs inputs;
  inputs.soil_d15 = sample.coarsest(15).value_or(std::min(*d85, curve.front().size));
  inputs.soil_d85 = *d85;
  if (const auto cu = uniformity(curve)) inputs.uniformity = Dimensionless::number(*cu);
  inputs.fines = Dimensionless::of(*fines, unit::percent);
  inputs.plasticity_index = soil.plasticity_index;
  if (const auto d10 = size_on_curve(curve, 10)) {
    HazenConductivityInputs hazen;
    hazen.d10 = *d10;
    if (const auto k = hazen_conductivity(hazen, steps)) inputs.soil_conductivity = k->conductivity;
  }
  inputs.fabric_thickness = fabric.thickness;
  inputs.fabric = fabric.fabric;
  inputs.attack =
      rock.waves || !rock.bedding_between ? FabricAttack::dynamic : FabricAttack::steady;
  inputs.dispersion = soil.dispersion;
  inputs.gap = size_gap(curve) ? GeotextileFilterInputs::Gap::yes : GeotextileFilterInputs::Gap::no;
  const auto needed = geotextile_filter(inputs, steps);
  if (!needed) return std::nullopt;
  return *needed;
}

void add_new(const std::vector<std::string>& more, std::vector<std::string>& words) {
  for (const auto& one : more) {
    if (std::find(words.begin(), words.end(), one) == words.end()) words.push_back(one);
  }
}

}  // namespace

std::optional<GeotextileFilterResult> fabric_needed(const SoilBelow& soil,
                                                    const GeotextileFilter& fabric,
                                                    const RockAbove& rock, Steps& steps) {
  auto strictest = needed_for(soil, soil.curves, fabric, rock, steps);
  if (!strictest) return std::nullopt;
  for (const auto& sample : soil.further) {
    Steps own;
    const auto needed = needed_for(soil, sample, fabric, rock, own);
    if (!needed) return std::nullopt;
    if (needed->most_opening < strictest->most_opening) {
      strictest->most_opening = needed->most_opening;
      steps.append(own);
    }
    strictest->least_opening = std::max(strictest->least_opening, needed->least_opening);
    strictest->least_permittivity =
        std::max(strictest->least_permittivity, needed->least_permittivity);
    add_new(needed->excluded_because, strictest->excluded_because);
    add_new(needed->conflict_words, strictest->conflict_words);
  }
  return strictest;
}

PairVerdict judge_fabric(const SoilBelow& soil, const GeotextileFilter& fabric,
                         const RockAbove& rock, const Wording& wording) {
  PairVerdict pair;
  pair.lower = soil.curves.name();
  pair.upper = "the geotextile";
  pair.sources = geotextile_filter_method().description().sources;
  pair.sources.push_back(geotextile_strength_method().description().sources.front());
  const auto needed = fabric_needed(soil, fabric, rock, pair.steps);
  if (!needed) {
    pair.sentence = fmt::format(
        "A geotextile on {}: not known. Its curve does not tell d85 and what passes the No. 200 "
        "sieve.",
        pair.lower);
    pair.next = "Wash the soil over the No. 200 sieve and give the percent passing 0.075 mm.";
    return pair;
  }
  pair.sentence = fmt::format(
      "A geotextile on {}: openings of {}, where {} at most hold the soil; permittivity {}, where "
      "{} is needed.",
      pair.lower, grain_text(fabric.opening_size, wording),
      grain_text(needed->most_opening, wording),
      fabric.permittivity ? wording.of(*fabric.permittivity) : std::string("not stated"),
      wording.of(needed->least_permittivity));
  pair.middle = needed->most_opening / fabric.opening_size;
  pair.worst = pair.middle;
  Missing missing;
  judge_water(fabric, *needed, pair, missing, wording);
  judge_strength(fabric, rock, pair, missing, wording);
  put_fabric_outcome(*needed, missing, pair);
  return pair;
}

}  // namespace proofstone
