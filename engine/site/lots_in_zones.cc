#include "engine/site/lots_in_zones.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "engine/blend/lots_to_zones.h"
#include "engine/quantities/ordered_measure.h"
#include "engine/site/remedy_order.h"

namespace proofstone {
namespace {

/// Mass of rock ordered for a zone; absent where its extent is not known.
std::optional<Mass> rock_for(const QuantityTable& table, const std::string& zone) {
  for (const auto& one : table.zones) {
    if (one.zone != zone) continue;
    for (const auto& row : one.rows) {
      if (row.item == "rock-ordered" && row.amount) return Mass::kilograms(row.amount->si);
    }
  }
  return std::nullopt;
}

/// Lots and zones by their numbers in the question.
struct Table {
  std::vector<const Lot*> lots;
  std::vector<const Zone*> zones;
  LotsToZones question;
  bool priced = true;
  std::vector<std::string> unmeasured;  ///< names of zones whose rock is not known
};

template <class Item>
std::size_t number_of(std::vector<const Item*>& items, const Item* item) {
  const auto at = std::find(items.begin(), items.end(), item);
  if (at != items.end()) return static_cast<std::size_t>(at - items.begin());
  items.push_back(item);
  return items.size() - 1;
}

bool has_choice(const std::vector<LotInZone>& judged) {
  std::map<const Zone*, int> lots;
  for (const auto& one : judged) ++lots[one.zone];
  return std::any_of(lots.begin(), lots.end(), [](const auto& entry) { return entry.second > 1; });
}

Table table_of(const Site& site, const std::vector<LotInZone>& judged,
               const QuantityTable& quantities) {
  Table table;
  for (const auto& one : judged) {
    number_of(table.lots, one.lot);
    number_of(table.zones, one.zone);
  }
  const std::size_t zones = table.zones.size();
  table.question.cost.assign(table.lots.size(), std::vector<std::optional<double>>(zones));
  table.question.need.assign(table.lots.size(), std::vector<double>(zones, 0));
  for (const auto* lot : table.lots) {
    const auto mass = mass_of_lot(site, *lot);
    table.question.available.push_back(mass ? std::optional(mass->tonnes()) : std::nullopt);
    if (!lot->price_per_tonne) table.priced = false;
  }
  for (const auto* zone : table.zones) {
    if (!rock_for(quantities, zone->id)) table.unmeasured.push_back(zone->name);
  }
  for (const auto& one : judged) {
    const auto lot = number_of(table.lots, one.lot);
    const auto zone = number_of(table.zones, one.zone);
    const double tonnes = rock_for(quantities, one.zone->id).value_or(Mass()).tonnes();
    table.question.need[lot][zone] = tonnes;
    if (one.outcome != Outcome::meets) continue;
    const double price = table.priced ? *one.lot->price_per_tonne : 1;
    table.question.cost[lot][zone] = price * tonnes;
  }
  return table;
}

void word(Finding& finding, const Table& table, const ZoneAssignment& best,
          const std::string& currency, const Wording& wording) {
  std::vector<std::string> words;
  std::vector<std::string> without;
  for (std::size_t zone = 0; zone < table.zones.size(); ++zone) {
    const auto& lot = best.lot_of_zone[zone];
    if (!lot) {
      without.push_back(table.zones[zone]->name);
      continue;
    }
    const double tonnes = table.question.need[*lot][zone];
    words.push_back(fmt::format("{} to {}{}", table.lots[*lot]->name, table.zones[zone]->name,
                                tonnes > 0 ? " (" + wording.of(Mass::tonnes(tonnes)) + ")" : ""));
  }
  finding.sentence =
      words.empty() ? "No lot is shown to hold in any of its zones." : listed(words) + ".";
  if (table.priced && best.cost > 0) {
    finding.sentence +=
        fmt::format(" Rock costs {}; no other choice costs less.", money_text(best.cost, currency));
    put_remedy_cost(finding, best.cost);
  }
  if (without.empty()) {
    finding.outcome = Outcome::meets;
    finding.next = "Mark each pile with its zones before loading out.";
  } else {
    finding.outcome = Outcome::falls_short;
    finding.sentence += fmt::format(" Nothing that holds is left for {}.", listed(without));
    finding.next = "Order rock for what is left, or count more where the rock is not yet known.";
  }
}

}  // namespace

std::optional<Finding> lots_in_zones(const Site& site, const std::vector<LotInZone>& judged,
                                     const QuantityTable& quantities, const Wording& wording) {
  if (!has_choice(judged)) return std::nullopt;
  const auto table = table_of(site, judged, quantities);
  const auto best = assign_lots(table.question);
  Finding finding;
  finding.topic = Topic::remedy;
  finding.id = "lots-in-zones";
  finding.title = "Which lot goes to which zone";
  word(finding, table, best, site.prices ? site.prices->currency : "", wording);
  finding.reasons.push_back(
      best.proven
          ? "Branch and bound went through every choice: none serves more zones, or as many "
            "for less."
          : "The search was cut short: a better choice may exist.");
  if (!table.priced) {
    finding.reasons.push_back("Not every lot has a price: the choice takes the least rock.");
  }
  if (!table.unmeasured.empty()) {
    finding.reasons.push_back(fmt::format("How much rock {} takes is not known; it counts as none.",
                                          listed(table.unmeasured)));
  }
  finding.reasons.push_back(
      "A lot goes only where it is shown to hold at the stated risks, one lot to a zone.");
  finding.sources.push_back({"Assignment of lots to zones", "branch and bound, Land & Doig 1960",
                             SourceStanding::computed});
  finding.cautions.push_back(
      "The design of the zone must be the designer's own before rock of another gradation is "
      "placed in it.");
  return finding;
}

}  // namespace proofstone
