#include <fmt/format.h>

#include <algorithm>

#include "engine/quantities/ordered_measure.h"
#include "engine/site/quantities.h"

namespace proofstone {
namespace {

const char* const how_known =
    "Volumes and masses from the geometry of the section and the course in plan";

Finding begin_finding(std::string id, std::string title) {
  Finding finding;
  finding.topic = Topic::quantities;
  finding.id = std::move(id);
  finding.title = std::move(title);
  finding.sources = {{how_known, "each step", SourceStanding::computed}};
  return finding;
}

/// "Rock, Class III, ordered: 1180 ton"
std::vector<std::string> state_rows(Finding& finding, const std::vector<QuantityRow>& rows,
                                    UnitSystem units) {
  std::vector<std::string> ordered;
  for (const auto& row : rows) {
    if (!row.amount) continue;
    finding.values.push_back({row.item + (row.of.empty() ? "" : "." + row.of), "", row.what,
                              *row.amount, LengthUse::ground});
    if (!row.priced_as.empty()) {
      ordered.push_back(fmt::format("{}: {}", row.what, ordered_measure(*row.amount, units).text));
    }
  }
  return ordered;
}

std::string sentence_of(const std::vector<std::string>& ordered, const std::optional<double>& cost,
                        const std::string& currency) {
  std::string sentence;
  for (const auto& one : ordered) sentence += (sentence.empty() ? "" : "; ") + one;
  sentence = sentence.empty() ? "Nothing can be counted yet." : sentence + ".";
  if (cost) sentence += fmt::format(" Cost: {}.", money_text(*cost, currency));
  return sentence;
}

void note_costs(Finding& finding, const std::vector<QuantityRow>& rows,
                const std::string& currency) {
  for (const auto& row : rows) {
    if (!row.cost) continue;
    finding.reasons.push_back(
        fmt::format("{}: {} ({}).", row.what, money_text(*row.cost, currency), row.price));
  }
}

Finding zone_finding(const ZoneQuantities& zone, const QuantityTable& table, UnitSystem units) {
  auto finding =
      begin_finding("quantities." + zone.zone, fmt::format("Quantities of {}", zone.name));
  finding.about.zone = zone.zone;
  finding.steps = zone.steps;
  finding.sentence = sentence_of(state_rows(finding, zone.rows, units), zone.cost, table.currency);
  finding.reasons = zone.missing;
  finding.reasons.insert(finding.reasons.end(), zone.notes.begin(), zone.notes.end());
  note_costs(finding, zone.rows, table.currency);
  finding.outcome = zone.missing.empty() ? Outcome::meets : Outcome::not_yet_known;
  finding.next = zone.missing.empty() ? "Hold the amounts against the drawings before ordering."
                                      : zone.missing.front();
  return finding;
}

Finding total_finding(const QuantityTable& table, UnitSystem units) {
  auto finding = begin_finding("quantities", "Quantities of all zones");
  finding.governs = true;
  finding.sentence =
      sentence_of(state_rows(finding, table.totals, units), table.cost, table.currency);
  for (const auto& total : table.totals) {
    if (!total.amount) continue;
    finding.steps.computed("Σ", total.what, total.how, *total.amount);
  }
  for (const auto& zone : table.zones) {
    if (!zone.missing.empty()) {
      finding.reasons.push_back(fmt::format("{} is not wholly counted.", zone.name));
    }
  }
  note_costs(finding, table.totals, table.currency);
  if (!table.currency.empty()) {
    finding.reasons.push_back(fmt::format("Prices: {}.", table.prices_from));
    for (const auto& what : table.without_price) {
      finding.reasons.push_back(fmt::format("No price, and no cost counted: {}.", what));
    }
  }
  finding.outcome = table.complete() ? Outcome::meets : Outcome::not_yet_known;
  finding.next = table.complete() ? "Hold the amounts against the drawings before ordering."
                                  : "Give what is missing for the zones named.";
  finding.cautions = {
      "Quantities are for planning and ordering. What is paid for is measured or weighed at the "
      "place, as the contract says."};
  return finding;
}

}  // namespace

std::vector<Finding> quantity_findings(const QuantityTable& table, UnitSystem units) {
  std::vector<Finding> findings;
  if (table.zones.empty()) return findings;
  findings.reserve(table.zones.size() + 1);
  for (const auto& zone : table.zones) findings.push_back(zone_finding(zone, table, units));
  findings.push_back(total_finding(table, units));
  return findings;
}

}  // namespace proofstone
