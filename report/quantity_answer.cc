#include "report/quantity_answer.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "engine/quantities/ordered_measure.h"
#include "engine/site/findings_text.h"
#include "report/markup.h"

namespace proofstone {
namespace {

using nlohmann::json;

json row_json(const QuantityRow& row, const std::string& currency, UnitSystem units) {
  json into = {{"item", row.item}, {"of", row.of},       {"what", row.what},
               {"how", row.how},   {"price", row.price}, {"partial", row.partial}};
  if (row.amount) {
    const auto shown = ordered_measure(*row.amount, units);
    into["value"] = shown.value;
    into["unit"] = shown.unit;
    into["text"] = shown.text;
    into["si"] = row.amount->si;
    into["kind"] = kind_name(row.amount->kind);
  }
  if (row.cost) {
    into["cost"] = *row.cost;
    into["cost_text"] = money_text(*row.cost, currency);
  }
  return into;
}

json rows_json(const std::vector<QuantityRow>& rows, const std::string& currency,
               UnitSystem units) {
  json list = json::array();
  for (const auto& row : rows) list.push_back(row_json(row, currency, units));
  return list;
}

void put_cost(json& into, const std::optional<double>& cost, const std::string& currency) {
  if (!cost) return;
  into["cost"] = *cost;
  into["cost_text"] = money_text(*cost, currency);
}

std::string csv_text(std::string text) {
  if (!text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos) {
    text.insert(0, "'");
  }
  std::string quoted = "\"";
  for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
  return quoted + "\"";
}

std::string csv_row(const std::string& zone, const QuantityRow& row, UnitSystem units) {
  std::string line = csv_text(zone) + "," + csv_text(row.what) + ",";
  if (row.amount) {
    const auto shown = ordered_measure(*row.amount, units);
    line += fmt::format("{},{}", significant(shown.value, 12), csv_text(shown.unit));
  } else {
    line += ",";
  }
  line += "," + csv_text(row.amount ? (row.partial ? "in part: " : "") + row.how : "not yet known");
  line += "," + csv_text(row.price) + ",";
  if (row.cost) line += fmt::format("{:.2f}", *row.cost);
  return line + "\r\n";
}

std::string cell(const std::string& text, const char* attributes = "") {
  return fmt::format("<td role=\"cell\"{}>{}</td>", attributes, escaped(text));
}

std::string html_rows(const std::string& zone, const std::vector<QuantityRow>& rows,
                      const QuantityTable& table, UnitSystem units) {
  std::string html;
  for (const auto& row : rows) {
    auto amount = row.amount ? ordered_measure(*row.amount, units).text : "not yet known";
    if (row.amount && row.partial) amount += ", in part";
    html += "<tr role=\"row\">" + cell(zone) + cell(row.what) +
            cell(amount, " class=\"value\" data-name=\"Amount\"") +
            cell(row.how, " data-name=\"How\"");
    if (!table.currency.empty()) {
      html += cell(row.price, " data-name=\"Price\"") +
              cell(row.cost ? money_text(*row.cost, table.currency) : "",
                   " class=\"value\" data-name=\"Cost\"");
    }
    html += "</tr>\n";
  }
  return html;
}

}  // namespace

json quantities_json(const QuantityTable& table, UnitSystem units) {
  json into = {{"currency", table.currency},
               {"prices_from", table.prices_from},
               {"without_price", table.without_price},
               {"complete", table.complete()},
               {"zones", json::array()},
               {"totals", rows_json(table.totals, table.currency, units)}};
  put_cost(into, table.cost, table.currency);
  for (const auto& zone : table.zones) {
    json one = {{"zone", zone.zone},
                {"name", zone.name},
                {"rows", rows_json(zone.rows, table.currency, units)},
                {"steps", steps_json(zone.steps, units)},
                {"missing", zone.missing},
                {"notes", zone.notes}};
    put_cost(one, zone.cost, table.currency);
    into["zones"].push_back(std::move(one));
  }
  return into;
}

std::string quantities_csv(const QuantityTable& table, UnitSystem units) {
  const auto cost = table.currency.empty() ? std::string("Cost") : "Cost in " + table.currency;
  std::string csv =
      "\"Zone\",\"What\",\"Amount\",\"Unit\",\"How\",\"Price\"," + csv_text(cost) + "\r\n";
  for (const auto& zone : table.zones) {
    for (const auto& row : zone.rows) csv += csv_row(zone.name, row, units);
  }
  for (const auto& row : table.totals) csv += csv_row("All zones", row, units);
  return csv;
}

std::string quantities_html(const QuantityTable& table, UnitSystem units) {
  if (table.zones.empty()) return {};
  std::string html =
      "<section>\n<h2>Quantities</h2>\n<table role=\"table\" class=\"quantities\">\n<thead><tr>"
      "<th>Zone</th><th>What</th><th>Amount</th><th>How</th>";
  if (!table.currency.empty()) html += "<th>Price</th><th>Cost</th>";
  html += "</tr></thead>\n<tbody>\n";
  for (const auto& zone : table.zones) html += html_rows(zone.name, zone.rows, table, units);
  html += html_rows("All zones", table.totals, table, units) + "</tbody>\n</table>\n";
  if (table.cost) {
    html +=
        fmt::format("<p><b>Cost: {}</b>. Prices: {}.</p>\n",
                    escaped(money_text(*table.cost, table.currency)), escaped(table.prices_from));
  }
  for (const auto& what : table.without_price) {
    html += fmt::format("<p>No price, and no cost counted: {}.</p>\n", escaped(what));
  }
  return html + "</section>\n";
}

}  // namespace proofstone
