#include "engine/site/quantity_totals.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/quantities/truck_loads.h"

namespace proofstone {
namespace {

void add_to(QuantityRow& total, const QuantityRow& row) {
  if (!row.amount) {
    total.partial = true;
    return;
  }
  if (!total.amount) {
    total.amount = row.amount;
    total.also = row.also;
    return;
  }
  total.amount->si += row.amount->si;
  // What one zone can be counted by, all must be.
  std::erase_if(total.also, [&](Measure& sum) {
    const auto same = std::find_if(row.also.begin(), row.also.end(),
                                   [&](const Measure& one) { return one.kind == sum.kind; });
    if (same == row.also.end()) return true;
    sum.si += same->si;
    return false;
  });
}

QuantityRow* row_like(std::vector<QuantityRow>& rows, const std::string& item,
                      const std::string& of) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const QuantityRow& row) {
    return row.item == item && row.of == of;
  });
  return found == rows.end() ? nullptr : &*found;
}

std::optional<double> amount_as(const QuantityRow& row, QuantityKind kind) {
  if (!row.amount) return std::nullopt;
  if (row.amount->kind == kind) return row.amount->si;
  for (const auto& other : row.also) {
    if (other.kind == kind) return other.si;
  }
  return std::nullopt;
}

void recount_loads(QuantityTable& table, const Ordering& ordering) {
  for (auto& total : table.totals) {
    for (const auto& truck : ordering.trucks) {
      if (total.item != loads_item + truck.name || !total.amount) continue;
      const auto* ordered = row_like(table.totals, "rock-ordered", total.of);
      if (ordered == nullptr || !ordered->amount) continue;
      Steps steps;
      const TruckLoadsInputs inputs{ordered->amount->unchecked_as<Mass>(), Dimensionless::number(0),
                                    truck.load};
      total.amount = measure(truck_loads(inputs, steps)->loads);
      total.how = "all that is ordered over the truck's load, rounded up";
    }
  }
}

void recount_fill_loads(QuantityTable& table) {
  for (auto& total : table.totals) {
    if (total.item != fill_loads_item || !total.load) continue;
    const auto* fill = row_like(table.totals, "fill", total.of);
    const auto mass = fill == nullptr ? std::nullopt : amount_as(*fill, QuantityKind::mass);
    if (mass) total.amount = measure(std::ceil(*mass / total.load->kilograms() - 1e-9));
  }
}

const UnitPrice* price_of(const QuantityRow& row, const Prices& prices) {
  if (row.priced_as == "rock") {
    const auto own = prices.classes.find(row.of);
    if (own != prices.classes.end()) return &own->second;
  }
  const auto found = prices.items.find(row.priced_as);
  return found == prices.items.end() ? nullptr : &found->second;
}

std::optional<UnitPrice> own_price_of(const QuantityRow& row) {
  if (!row.price_per_tonne) return std::nullopt;
  return UnitPrice{*row.price_per_tonne, measure(Mass::kilograms(1000)), "1 tonne"};
}

/// The price and cost of each row, and their sum; absent where nothing has a cost.
std::optional<double> price_rows(std::vector<QuantityRow>& rows, const Prices& prices,
                                 std::vector<std::string>* without) {
  std::optional<double> sum;
  for (auto& row : rows) {
    if (row.priced_as.empty()) continue;
    const auto own = own_price_of(row);
    const auto* price = own ? &*own : price_of(row, prices);
    const auto amount = price == nullptr ? std::nullopt : amount_as(row, price->per.kind);
    if (price != nullptr) {
      row.price = fmt::format("{}: {} {} for {}", row.priced_as, significant(price->amount, 6),
                              prices.currency, price->text);
    }
    if (amount) {
      row.cost = price->amount * *amount / price->per.si;
      sum = sum.value_or(0) + *row.cost;
    } else if (without != nullptr) {
      without->push_back(row.what);
    }
  }
  return sum;
}

}  // namespace

void add_up(QuantityTable& table, const Ordering& ordering) {
  for (const auto& zone : table.zones) {
    for (const auto& row : zone.rows) {
      auto* total = row_like(table.totals, row.item, row.of);
      if (total == nullptr) {
        table.totals.push_back(
            {row.item, row.of, row.what, std::nullopt, "sum over the zones", {}, row.priced_as});
        total = &table.totals.back();
        total->price_per_tonne = row.price_per_tonne;
        total->load = row.load;
      }
      add_to(*total, row);
    }
  }
  recount_loads(table, ordering);
  recount_fill_loads(table);
}

void put_prices(QuantityTable& table, const Prices& prices) {
  table.currency = prices.currency;
  table.prices_from = prices.from;
  for (auto& zone : table.zones) zone.cost = price_rows(zone.rows, prices, nullptr);
  table.cost = price_rows(table.totals, prices, &table.without_price);
}

}  // namespace proofstone
