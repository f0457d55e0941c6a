#include "engine/site/filter_chain.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/filter/beddings.h"
#include "engine/filter/filter_band.h"
#include "engine/finding/outcome_order.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

PairVerdict soil_missing(const std::string& upper) {
  PairVerdict pair;
  pair.lower = "the soil";
  pair.upper = upper;
  pair.sentence = upper + " on the soil: not known, because the zone states no soil.";
  pair.next = "Have the soil sieved and give its gradation.";
  return pair;
}

/// What lies below the layer that is looked at: the soil at first, then layer upon layer.
struct Below {
  const SoilBelow* soil = nullptr;  ///< no granular layer lies between
  std::optional<LayerCurves> layer;
  bool on_fabric = false;  ///< a fabric parts it from what is below
};

}  // namespace

const PairVerdict* ChainVerdict::deciding() const {
  const PairVerdict* worst = nullptr;
  for (const auto& pair : pairs) {
    const bool worse = worst == nullptr || is_worse(pair.outcome, worst->outcome);
    // Of pairs that come to the same, the one with the least margin decides.
    const bool closer = worst != nullptr && pair.outcome == worst->outcome && pair.worst &&
                        worst->worst && *pair.worst < *worst->worst;
    if (worse || closer) worst = &pair;
  }
  return worst;
}

bool is_worse(Outcome one, Outcome other) { return weight(one) > weight(other); }

std::optional<SoilBelow> soil_below(const Site& site, const Zone& zone) {
  if (zone.soil.empty()) return std::nullopt;
  const auto& soil = site.soils.at(zone.soil);
  SoilBelow below{LayerCurves(soil.name, soil.gradation), soil.dispersion, soil.plasticity_index};
  for (const auto& sample : soil.further) below.further.emplace_back(sample.name, sample.gradation);
  return below;
}

LayerCurves bedding_curves(const Site& site, const std::string& bedding) {
  const auto own = site.materials.find(bedding);
  if (own != site.materials.end()) return {own->second.name, own->second.gradation};
  const auto* standard = find_bedding(bedding);
  return {standard->name, standard->band};
}

FilterChoices filter_choices(const Zone& zone) {
  FilterChoices choices;
  const auto found = zone.method_choices->find("filter-band");
  if (found == zone.method_choices->end() || !found->is_object()) return choices;
  const auto says = [&](const char* key, const char* word) {
    const auto value = found->find(key);
    return value != found->end() && *value == word;
  };
  if (says("edition", "1994")) choices.edition = FilterEdition::of_1994;
  if (says("regrading", "never")) choices.regrading = Regrading::never;
  return choices;
}

Mass largest_stone_mass(const Site& site, const Zone& zone, const LayerCurves& rock) {
  const auto& points = rock.coarse().empty() ? rock.fine() : rock.coarse();
  const auto source = site.sources.find(zone.source);
  const double gravity =
      source == site.sources.end() ? 2.65 : source->second.rock.specific_gravity.number();
  return stone_mass(points.back().size, SizeMeaning::sieve,
                    Density::kilograms_per_cubic_meter(1000 * gravity));
}

ChainVerdict judge_chain(const Site& site, const Zone& zone, const std::vector<FilterLayer>& layers,
                         const LayerCurves& rock, const Wording& wording) {
  const auto soil = soil_below(site, zone);
  const auto choices = filter_choices(zone);
  RockAbove above{largest_stone_mass(site, zone, rock), false, zone.place == ZonePlace::shore};
  ChainVerdict chain;
  Below below{soil ? &*soil : nullptr, std::nullopt, false};
  const auto put_granular = [&](const LayerCurves& upper) {
    if (below.on_fabric) {
      below.on_fabric = false;  // the fabric holds what is below it
    } else if (below.layer) {
      chain.pairs.push_back(judge_on_layer(*below.layer, upper, wording));
    } else if (below.soil != nullptr) {
      chain.pairs.push_back(judge_on_soil(*below.soil, upper, choices, wording));
    } else {
      chain.pairs.push_back(soil_missing(upper.name()));
    }
    below.layer = upper;
  };
  for (std::size_t i = 0; i < layers.size(); ++i) {
    if (const auto* granular = std::get_if<GranularFilter>(&layers[i])) {
      put_granular(bedding_curves(site, granular->bedding));
      continue;
    }
    above.bedding_between = i + 1 < layers.size();
    const auto& fabric = std::get<GeotextileFilter>(layers[i]);
    if (below.layer) {
      chain.pairs.push_back(
          judge_fabric({*below.layer, Dispersion::no, std::nullopt}, fabric, above, wording));
    } else if (below.soil != nullptr) {
      chain.pairs.push_back(judge_fabric(*below.soil, fabric, above, wording));
    } else {
      chain.pairs.push_back(soil_missing("A geotextile"));
    }
    below.on_fabric = true;
  }
  put_granular(rock);
  const auto* deciding = chain.deciding();
  // Rock straight on a fabric adds no pair, but a fabric did.
  chain.outcome = deciding != nullptr ? deciding->outcome : Outcome::not_yet_known;
  return chain;
}

}  // namespace proofstone
