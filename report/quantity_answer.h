#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "engine/quantity/measure.h"
#include "engine/site/quantity_table.h"

namespace proofstone {

/// A table of quantities as JSON: {currency, prices_from, zones [{zone, name, rows, steps, missing,
/// notes, cost}], totals, cost, without_price}; a row is {item, of, what, value, unit, text, si,
/// kind, how, price, cost, cost_text, partial}. Without an amount, value and the like are absent.
nlohmann::json quantities_json(const QuantityTable& table, UnitSystem units);

/// The same as one table of comma-separated values with a header, for spreadsheets: a text that a
/// spreadsheet would take for a formula begins with an apostrophe.
std::string quantities_csv(const QuantityTable& table, UnitSystem units);

/// The same as a section of the HTML report; empty without zones.
std::string quantities_html(const QuantityTable& table, UnitSystem units);

}  // namespace proofstone
