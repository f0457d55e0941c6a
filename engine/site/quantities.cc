#include "engine/site/quantities.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantities/ordered_measure.h"
#include "engine/quantities/truck_loads.h"
#include "engine/site/quantity_counting.h"
#include "engine/site/quantity_totals.h"
#include "engine/site/reach_water.h"
#include "engine/toe/trench_toe.h"

namespace proofstone {
namespace {

template <class Q>
std::optional<Measure> known(const std::optional<Q>& value) {
  return value ? std::optional<Measure>(measure(*value)) : std::nullopt;
}

/// The bank's slope as the water at the toe sees it.
std::optional<Slope> bank_slope(const std::vector<ZoneWater>& water) {
  for (auto at = water.rbegin(); at != water.rend(); ++at) {
    if (at->setting && at->setting->bank_angle.radians() > 0) {
      return slope_of(at->setting->bank_angle);
    }
  }
  return std::nullopt;
}

/// Rock and excavation of the toe as drawn, for each unit of length.
struct ToeSection {
  Area rock;
  Area excavation;
  std::string how;
};

std::optional<ToeSection> trench_section(Counting& counting) {
  const auto slope = bank_slope(counting.water);
  if (!slope || slope->ratio() < 0.05) {
    counting.counted.missing.push_back(
        "The rock of the toe is not known: the slope that it goes on down is not.");
    return std::nullopt;
  }
  TrenchToeInputs inputs;
  inputs.layer_thickness = counting.zone.layer_thickness;
  inputs.depth = counting.zone.toe->depth;
  inputs.bank_slope = *slope;
  if (!(inputs.depth.si() > 0)) return std::nullopt;
  Steps all_of_the_method;
  const auto toe = trench_toe(inputs, all_of_the_method);
  if (!toe) return std::nullopt;
  auto& steps = counting.counted.steps;
  steps.given("d", "depth of the toe below the bed", measure(inputs.depth), "document");
  steps.given("1/z", "slope of the bank", measure(*slope));
  steps.computed("A_t", "rock of the toe for each unit of length", "T·d·√(1 + z²)",
                 measure(toe->cross_section));
  steps.computed("A_e", "excavation of the trench for each unit of length",
                 "(b + B)/2·d, its water side at 1V:1H", measure(toe->excavation_section));
  return ToeSection{toe->cross_section, toe->excavation_section, "T·d·√(1 + z²)·L"};
}

std::optional<ToeSection> toe_section(Counting& counting) {
  if (!counting.zone.toe) return std::nullopt;
  const auto& toe = *counting.zone.toe;
  auto& steps = counting.counted.steps;
  switch (toe.kind) {
    case ToeKind::trench:
      return trench_section(counting);
    case ToeKind::launchable:
      steps.given("A_t", "rock stored at the toe for each unit of length", measure(*toe.stored),
                  "document");
      return ToeSection{*toe.stored, Area(), "A_t·L"};
    case ToeKind::thickened: {
      const double extra = std::max(0.0, (*toe.thickness - counting.zone.layer_thickness).meters());
      const auto rock = Area::square_meters(extra * toe.width->meters());
      steps.computed("A_t", "rock of the thicker part beyond the layer", "(t − T)·b",
                     measure(rock));
      return ToeSection{rock, rock, "(t − T)·b·L"};
    }
  }
  return std::nullopt;
}

void count_rock_ordered(Counting& counting, Volume volume, Mass mass) {
  const auto& ordering = counting.site.ordering;
  auto& steps = counting.counted.steps;
  const auto name = counting.rock_class.name;
  const auto ordered = mass * (1 + ordering.spare.number());
  steps.given("s", "ordered beyond that, as a share of it", measure(ordering.spare),
              ordering.stated ? "document" : "none stated");
  steps.computed("M_o", "mass ordered", "M·(1 + s)", measure(ordered));
  add_row(counting,
          {"rock-ordered",
           counting.rock_class.id,
           fmt::format("Rock, {}, ordered", name),
           measure(ordered),
           fmt::format("in place + {} % to spare", significant(100 * ordering.spare.number(), 3)),
           {measure(volume * (1 + ordering.spare.number()))},
           "rock"});
  for (const auto& truck : ordering.trucks) {
    const auto loads = truck_loads({mass, ordering.spare, truck.load}, steps);
    add_row(counting, {loads_item + truck.name, counting.rock_class.id,
                       fmt::format("Loads of {}, {}", name, truck.name), measure(loads->loads),
                       "ordered over the truck's load, rounded up"});
  }
}

/// Layer and toe. Rows stand in the table even where their amounts are not yet known.
void count_rock(Counting& counting) {
  const auto& rock_class = counting.rock_class;
  auto& steps = counting.counted.steps;
  const auto toe = toe_section(counting);
  std::optional<Volume> volume;
  std::optional<Volume> toe_volume;
  if (counting.part.area) {
    volume = Volume::cubic_meters(counting.part.area->square_meters() *
                                  counting.zone.layer_thickness.meters());
    steps.given("T", "thickness of the layer, square to the slope",
                measure(counting.zone.layer_thickness), "document");
    steps.computed("V", "rock of the layer, voids and all", "A·T", measure(*volume));
  }
  if (toe && counting.part.length) {
    toe_volume = Volume::cubic_meters(toe->rock.square_meters() * counting.part.length->meters());
    steps.computed("V_t", "rock of the toe, voids and all", "A_t·L", measure(*toe_volume));
  }
  add_row(counting, {"slope-area", "", "Area on the slope", known(counting.part.area),
                     counting.zone.extent.area ? "stated" : "length × length along the ground"});
  add_row(counting, {"rock-layer", rock_class.id,
                     fmt::format("Rock of the layer, {}, in place", rock_class.name), known(volume),
                     "area × thickness"});
  if (toe) {
    add_row(counting, {"rock-toe", rock_class.id,
                       fmt::format("Rock of the toe, {}, in place", rock_class.name),
                       known(toe_volume), toe->how});
    if (!toe_volume) {
      counting.counted.missing.push_back(
          "The rock of the toe is not known without the length of the zone.");
    }
  }
  if (!volume || (toe && !toe_volume)) {
    add_row(counting, {"rock-ordered", rock_class.id,
                       fmt::format("Rock, {}, ordered", rock_class.name), std::nullopt, ""});
    return;
  }
  const auto whole = *volume + toe_volume.value_or(Volume());
  const auto mass = placed_mass(whole, counting.placed, steps);
  add_row(counting, {"rock-mass",
                     rock_class.id,
                     fmt::format("Rock, {}, in place", rock_class.name),
                     measure(mass),
                     counting.placed.bulk_density ? "volume × density as weighed"
                                                  : "volume × Gs·(1 − n)·62.4 lb/ft³",
                     {measure(whole), measure(*counting.part.area)},
                     "placing"});
  count_rock_ordered(counting, whole, mass);
  counting.excavation = *volume;
  if (!toe) return;
  const auto trench =
      Volume::cubic_meters(toe->excavation.square_meters() * counting.part.length->meters());
  steps.computed("V_x", "excavation of the toe", "A_e·L", measure(trench));
  counting.excavation = counting.excavation + trench;
}

/// Of everything counted before: rock, toe and bedding.
void count_excavation(Counting& counting) {
  if (!(counting.excavation.si() > 0)) return;
  counting.counted.steps.computed("V_e", "excavation, as the ground lies now",
                                  "rock and bedding of the layer, and the toe's",
                                  measure(counting.excavation));
  add_row(counting, {"excavation",
                     "",
                     "Excavation, as it lies",
                     measure(counting.excavation),
                     "the layer and its bedding let into the ground, and the toe",
                     {},
                     "excavation"});
  counting.counted.notes.push_back(
      "The finished surface of the rock is taken to lie on the surveyed ground, so layer and "
      "bedding are dug in by their thickness.");
}

ZoneQuantities count_zone(const Site& site, const WateredZone& watered) {
  const Zone& zone = *watered.zone;
  Counting counting{site,
                    zone,
                    *watered.water,
                    *find_class(site, zone.rock_class),
                    lined_part(site, zone, *watered.water),
                    {},
                    {}};
  counting.placed.specific_gravity = site.sources.at(zone.source).rock.specific_gravity;
  counting.placed.voids = site.ordering.voids;
  counting.placed.bulk_density = site.ordering.bulk_density;
  counting.counted.zone = zone.id;
  counting.counted.name = zone.name;
  counting.counted.steps = counting.part.steps;
  counting.counted.missing = counting.part.missing;
  counting.counted.notes = counting.part.notes;
  count_rock(counting);
  count_fill(counting);
  count_filter(counting);
  count_excavation(counting);
  count_cover(counting);
  return std::move(counting.counted);
}

}  // namespace

bool asks_for_quantities(const Site& site, const Zone& zone) {
  return zone.extent.stated() || zone.along || site.ordering.stated || site.prices;
}

QuantityTable quantity_table(const Site& site, const std::vector<WateredZone>& zones) {
  QuantityTable table;
  for (const auto& watered : zones) {
    if (asks_for_quantities(site, *watered.zone)) table.zones.push_back(count_zone(site, watered));
  }
  add_up(table, site.ordering);
  if (site.prices) put_prices(table, *site.prices);
  return table;
}

QuantityTable quantities_of(const Site& site, const Wording& wording) {
  const auto reaches = water_in_reaches(site, wording);
  std::vector<std::vector<ZoneWater>> water;
  water.reserve(site.zones.size());
  std::vector<WateredZone> watered;
  for (const auto& [id, zone] : site.zones) {
    water.push_back(water_at_zone(site, zone, reaches, wording));
    watered.push_back({&zone, &water.back()});
  }
  return quantity_table(site, watered);
}

}  // namespace proofstone
