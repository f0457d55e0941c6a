#include "engine/site/ordering_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace proofstone {
namespace {

constexpr double highest_price = 1e9;
constexpr std::size_t most_trucks = 20;

template <class Q>
std::optional<Q> positive(FieldReader& reader, const char* field) {
  const auto value = reader.optional_quantity<Q>(field);
  if (value && !(value->si() > 0)) {
    reader.report("not-positive", "This is more than zero.", field, "more than 0");
  }
  return value;
}

/// A share that may be left out, between two limits.
void read_share(FieldReader& reader, const char* field, double most, Dimensionless& into) {
  const auto value = reader.optional_quantity<Dimensionless>(field);
  if (!value) return;
  if (value->number() < 0 || value->number() > most) {
    reader.report("outside-allowed", "This share is not believed.", field,
                  fmt::format("0 to {} %", 100 * most));
  }
  into = *value;
}

std::optional<Density> read_density(FieldReader& reader, const char* field) {
  const auto density = reader.optional_quantity<Density>(field);
  if (density &&
      (density->pounds_mass_per_cubic_foot() < 50 || density->pounds_mass_per_cubic_foot() > 200)) {
    reader.report("implausible", "No placed rock or gravel weighs this.", field,
                  "50 lb/ft³ to 200 lb/ft³");
  }
  return density;
}

std::vector<Truck> read_trucks(FieldReader& ordering, Problems& problems) {
  std::vector<Truck> trucks;
  const auto* list = ordering.optional_list("trucks");
  if (list == nullptr) return trucks;
  if (list->size() > most_trucks) {
    ordering.report("too-many", "So many kinds of truck serve no site.", "trucks",
                    fmt::format("at most {}", most_trucks));
    return trucks;
  }
  std::set<std::string> names;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader reader((*list)[i], fmt::format("{}/trucks/{}", ordering.pointer(), i), problems);
    Truck truck;
    truck.name = reader.required_text("name");
    truck.load = reader.required_positive<Mass>("load", "A truck carries more than nothing.");
    if (!names.insert(truck.name).second) {
      reader.report("repeated", "Two trucks have this name.", "name", "a name of its own");
    }
    reader.finish();
    trucks.push_back(std::move(truck));
  }
  return trucks;
}

std::string kinds_text(const std::vector<QuantityKind>& kinds) {
  std::string text;
  for (const auto kind : kinds) {
    const auto units = kind == QuantityKind::dimensionless ? "a plain number" : allowed_units(kind);
    text += (text.empty() ? "" : ", ") + std::string(units);
  }
  return "an amount in " + text;
}

UnitPrice read_price(FieldReader& reader, const std::vector<QuantityKind>& kinds) {
  UnitPrice price;
  const auto amount = reader.required_quantity<Dimensionless>("amount");
  price.amount = amount.number();
  if (!(price.amount >= 0) || price.amount > highest_price) {
    reader.report("outside-allowed", "This is no price.", "amount", "0 to 1000000000");
  }
  const auto per = reader.required_text("per");
  for (const auto kind : kinds) {
    const auto measure = parse_measure(per, kind);
    if (measure && measure->si > 0) {
      price.per = *measure;
      price.text = per;
      return price;
    }
  }
  if (!per.empty()) {
    reader.report("wrong-kind", "A price of this item is not counted by that.", "per",
                  kinds_text(kinds));
  }
  return price;
}

using Kinds = std::vector<QuantityKind>;

/// Prices under their ids; `kinds_of` is nullptr for an id that has none.
template <class KindsOf>
std::map<std::string, UnitPrice> read_price_list(FieldReader& prices, const char* field,
                                                 Problems& problems, KindsOf kinds_of) {
  std::map<std::string, UnitPrice> read;
  const auto* json = prices.optional(field);
  if (json == nullptr) return read;
  if (!json->is_object()) {
    prices.report("not-an-object", "Prices under their ids belong here.", field,
                  R"({ "rock": { "amount": "62", "per": "1 ton" } })");
    return read;
  }
  for (const auto& [id, value] : json->items()) {
    const Kinds* kinds = kinds_of(id);
    if (kinds == nullptr) {
      std::string allowed;
      for (const auto& item : priced_items()) allowed += (allowed.empty() ? "" : ", ") + item.id;
      prices.report("unknown-item", fmt::format("Nothing that has a price is called \"{}\".", id),
                    std::string(field) + "/" + id, allowed);
      continue;
    }
    FieldReader reader(value, fmt::format("{}/{}/{}", prices.pointer(), field, id), problems);
    read[id] = read_price(reader, *kinds);
    reader.finish();
  }
  return read;
}

const Kinds* kinds_of_item(const std::string& id) {
  const auto& items = priced_items();
  const auto found = std::find_if(items.begin(), items.end(),
                                  [&](const PricedItem& item) { return item.id == id; });
  return found == items.end() ? nullptr : &found->kinds;
}

}  // namespace

const std::vector<PricedItem>& priced_items() {
  static const std::vector<PricedItem> items = {
      {"rock", {QuantityKind::mass, QuantityKind::volume}},
      {"placing", {QuantityKind::mass, QuantityKind::volume, QuantityKind::area}},
      {"bedding", {QuantityKind::mass, QuantityKind::volume}},
      {"geotextile", {QuantityKind::area}},
      {"fill", {QuantityKind::volume, QuantityKind::mass}},
      {"topsoil", {QuantityKind::volume}},
      {"blanket", {QuantityKind::area}},
      {"stakes", {QuantityKind::dimensionless}},
      {"excavation", {QuantityKind::volume}},
  };
  return items;
}

ZoneExtent read_extent(FieldReader& zone, Problems& problems) {
  ZoneExtent extent;
  const auto* json = zone.optional("extent");
  if (json == nullptr) return extent;
  FieldReader reader(*json, zone.pointer() + "/extent", problems);
  extent.length = positive<Length>(reader, "length");
  extent.slope_length = positive<Length>(reader, "slope_length");
  extent.area = positive<Area>(reader, "area");
  if (!extent.stated() && reader.is_object()) {
    reader.report("missing-field", "An extent states something.", "length",
                  "length, slope_length or area");
  }
  reader.finish();
  return extent;
}

Ordering read_ordering(FieldReader& state, Problems& problems) {
  Ordering ordering;
  const auto* json = state.optional("ordering");
  if (json == nullptr) return ordering;
  FieldReader reader(*json, "/ordering", problems);
  ordering.stated = true;
  read_share(reader, "voids", 0.7, ordering.voids);
  read_share(reader, "spare", 1, ordering.spare);
  ordering.bulk_density = read_density(reader, "bulk_density");
  ordering.bedding_density = read_density(reader, "bedding_density");
  ordering.fabric_roll_width = positive<Length>(reader, "fabric_roll_width");
  ordering.trucks = read_trucks(reader, problems);
  reader.finish();
  return ordering;
}

std::optional<Prices> read_prices(FieldReader& state, Problems& problems) {
  const auto* json = state.optional("prices");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, "/prices", problems);
  Prices prices;
  prices.currency = reader.required_text("currency");
  prices.from = reader.required_text("from");
  prices.items = read_price_list(reader, "items", problems, kinds_of_item);
  prices.classes = read_price_list(reader, "classes", problems,
                                   [](const std::string&) { return kinds_of_item("rock"); });
  reader.finish();
  return prices;
}

}  // namespace proofstone
