#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "engine/hydraulics/water_weight.h"
#include "engine/site/designed_mix.h"
#include "engine/site/quantity_counting.h"
#include "engine/site/quantity_totals.h"
#include "engine/site/shore_slope.h"
#include "engine/site/slope_parts.h"
#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

/// What of a slope the mix fills, as a share of its length along the ground.
struct FilledShare {
  double share = 1;
  std::string why_not;  ///< empty: known
};

/// Whether a zone is filled in two ways, of which its one mix is but one.
bool filled_in_two_ways(const Zone& zone) {
  const auto has = [&](RockKind kind) {
    return std::any_of(zone.kinds.begin(), zone.kinds.end(),
                       [&](const KindUpSlope& part) { return part.kind == kind; });
  };
  return has(RockKind::soil_filled) && has(RockKind::void_filled);
}

/// Whether the mix of the zone fills its parts of this kind.
bool filled_by(const Zone& zone, const SiteMix& mix, RockKind kind) {
  if (!filled_in_two_ways(zone)) return is_filled(kind);
  return kind == (mix.kind == MixKind::soil_filled ? RockKind::soil_filled : RockKind::void_filled);
}

/// A slope between two elevations and the length of its ground between any two on it.
struct CountedSlope {
  Length foot;
  Length top;
  std::function<Length(Length, Length)> length_between;
};

std::optional<CountedSlope> counted_slope(const Counting& counting) {
  const auto& zone = counting.zone;
  if (zone.place == ZonePlace::shore) {
    const auto shore = slope_of_shore(zone, counting.water, nullptr);
    if (!shore || !shore->level_stated) return std::nullopt;
    return CountedSlope{shore->foot, shore->top,
                        [](Length low, Length high) { return high - low; }};
  }
  const auto section = counting.site.sections.find(zone.section);
  if (section == counting.site.sections.end()) return std::nullopt;
  const auto slope = slope_of_zone(zone, section->second);
  if (!slope) return std::nullopt;
  return CountedSlope{slope->toe_elevation, slope->top_elevation,
                      [&zone, section, slope](Length low, Length high) {
                        return slope_length_between(zone, section->second, *slope, low, high);
                      }};
}

FilledShare filled_share(const Counting& counting) {
  const auto& zone = counting.zone;
  const auto& mix = counting.site.mixes.at(zone.mix);
  if (zone.kinds.empty()) return {};
  if (zone.kinds.size() == 1 && is_filled(zone.kinds.front().kind)) return {};
  const auto slope = counted_slope(counting);
  if (!slope) {
    return {0,
            "The fill is not counted where the zone is filled on a part of a slope that the "
            "document does not give: make that part a zone of its own."};
  }
  Length filled;
  for (const auto& kind : stated_kinds(zone, slope->foot, slope->top, counting.water)) {
    if (!kind.top) {
      return {0,
              "The fill is not counted: how far up the slope it goes hangs on a water level that "
              "is not known."};
    }
    if (filled_by(zone, mix, kind.stated->kind) && *kind.top > kind.bottom) {
      filled = filled + slope->length_between(kind.bottom, *kind.top);
    }
  }
  const Length whole = slope->length_between(slope->foot, slope->top);
  return {whole.meters() > 0 ? filled / whole : 0, ""};
}

Expected<PreparedMix> mix_to_count(const Site& site, const Zone& zone) {
  auto prepared = prepare_mix(site, zone);
  if (!prepared || !prepared->mix.fills.empty()) return prepared;
  auto designed = designed_mix(site, zone, *prepared);
  if (!designed) return designed.problems();
  return std::move(designed->mix);
}

/// Dry mass of one fill; absent without its specific gravity or its porosity.
std::optional<Mass> mass_of_fill(const PreparedMix& prepared, const MixBalance& balance,
                                 std::size_t i, Volume rock) {
  const auto* material = prepared.materials[i];
  if (material == nullptr || !material->state.specific_gravity || i >= balance.solids.size()) {
    return std::nullopt;
  }
  return Mass::kilograms(material->state.specific_gravity->number() *
                         water_density.kilograms_per_cubic_meter() * balance.solids[i] *
                         rock.cubic_meters());
}

void count_fill_of(Counting& counting, const PreparedMix& prepared, const MixBalance& balance,
                   std::size_t i, Volume rock) {
  const auto& name = prepared.mix.fills[i].name;
  const auto* material = prepared.materials[i];
  const auto id = material == nullptr ? name : material->id;
  auto& steps = counting.counted.steps;
  const double ordered = 1 + counting.site.ordering.spare.number();
  const auto loose = ordered * prepared.mix.fill_parts[i] / prepared.mix.rock_parts * rock;
  steps.computed("V_l", "loose " + name + " ordered", "parts over those of the rock·V_R·(1 + s)",
                 measure(loose));
  QuantityRow row{"fill", id, fmt::format("Fill, {}, loose, ordered", name), measure(loose)};
  row.how = "parts of the mix × rock, and what is to spare";
  row.priced_as = "fill";
  const auto mass = mass_of_fill(prepared, balance, i, ordered * rock);
  if (mass) {
    steps.computed("M_l", "dry mass of that", "G_s·62.4 lb/ft³·solids", measure(*mass));
    row.also = {measure(*mass)};
    row.price_per_tonne = material->state.price_per_tonne;
  }
  add_row(counting, std::move(row));
  if (material == nullptr) return;
  if (material->state.loose_over_bank) {
    add_row(counting,
            {"fill-bank", id, fmt::format("Fill, {}, as it lies in the ground", name),
             measure(loose / material->state.loose_over_bank->number()), "loose over its swell"});
  }
  if (mass && material->state.load) {
    QuantityRow loads{
        fill_loads_item, id, fmt::format("Loads of {}", name),
        measure(std::ceil(mass->kilograms() / material->state.load->kilograms() - 1e-9))};
    loads.how = "dry mass over the load, rounded up";
    loads.load = material->state.load;
    add_row(counting, std::move(loads));
  }
}

void cannot_count(Counting& counting, std::string why) {
  counting.counted.missing.push_back(std::move(why));
  add_row(counting, {"fill", "", "Fill, loose, ordered", std::nullopt});
}

}  // namespace

void count_fill(Counting& counting) {
  const auto& zone = counting.zone;
  if (zone.mix.empty()) return;
  const auto filled = filled_share(counting);
  if (!filled.why_not.empty()) {
    cannot_count(counting, filled.why_not);
    return;
  }
  const auto prepared = mix_to_count(counting.site, zone);
  if (!prepared) {
    cannot_count(counting, prepared.problems().front().sentence());
    return;
  }
  const auto balance = balance_of(prepared->mix);
  if (!balance || !counting.part.area) {
    cannot_count(counting, balance ? "The fill is not known without the area of the zone."
                                   : balance.problems().front().sentence());
    return;
  }
  if (filled_in_two_ways(zone)) {
    counting.counted.missing.push_back(
        "The zone is soil-filled and void-filled, and names the mix of one of them alone: make the "
        "other part a zone of its own to count its fill.");
  }
  auto& steps = counting.counted.steps;
  if (filled.share < 1) {
    steps.computed("p", "part of the slope that is filled", "its length along the ground over all",
                   measure(filled.share));
  }
  const auto layer = Volume::cubic_meters(filled.share * counting.part.area->square_meters() *
                                          zone.layer_thickness.meters());
  const auto rock = layer / balance->bulking;
  steps.computed("V_R", "bulk volume of the rock in the mix",
                 filled.share < 1 ? "p·V/volume of the mix over its rock"
                                  : "V/volume of the mix over its rock",
                 measure(rock));
  const auto in_place = balance->fill_in_place * rock;
  steps.computed("V_F", "fill in place", "V_R·fill in place for each volume of rock",
                 measure(in_place));
  add_row(counting, {"fill-in-place", zone.mix,
                     fmt::format("Fill of {}, in place", counting.site.mixes.at(zone.mix).name),
                     measure(in_place), "what the voids of the layer take"});
  for (std::size_t i = 0; i < prepared->mix.fills.size(); ++i) {
    count_fill_of(counting, *prepared, *balance, i, rock);
  }
  counting.counted.notes.emplace_back(
      "The layer is counted as filled where the mix is, the rock of the toe as bare. Where the "
      "fill forces the rock "
      "apart, less rock is taken than is counted here.");
}

}  // namespace proofstone
