#include "engine/site/remedy_order.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/finding/outcome_order.h"
#include "engine/finding/stable_order.h"

namespace proofstone {
namespace {

constexpr const char* remedy_cost_key = "remedy_cost";

std::optional<double> cost_of(const Finding& finding) {
  for (const auto& value : finding.values) {
    if (value.key == remedy_cost_key) return value.value.si;
  }
  return std::nullopt;
}

std::string why(Outcome outcome, bool by_cost) {
  std::string words;
  switch (outcome) {
    case Outcome::meets:
      words = "it is shown to serve at the stated risks";
      break;
    case Outcome::not_yet_known:
      words = "it may serve, more must be measured";
      break;
    case Outcome::ask_the_designer:
      words = "it is for the designer to decide";
      break;
    case Outcome::falls_short:
      words = "it does not serve";
  }
  return words + (by_cost ? "; of several such the cheapest comes first"
                          : "; of several such the one that disturbs the work least comes first");
}

}  // namespace

std::optional<Mass> mass_of_lot(const Site& site, const Lot& lot) {
  if (lot.available) return lot.available;
  Mass delivered;
  for (const auto& [id, load] : site.loads) {
    if (load.lot == lot.id && load.mass) delivered = delivered + *load.mass;
  }
  if (delivered.si() > 0) return delivered;
  return lot.supply ? lot.supply->planned_mass : std::nullopt;
}

void put_remedy_cost(Finding& finding, double cost) {
  finding.values.push_back(
      {remedy_cost_key, "", "cost of the remedy, in the document's money", measure(cost)});
}

void rank_remedies(std::vector<Finding>& remedies) {
  sort_in_order(remedies.begin(), remedies.end(), [](const Finding& a, const Finding& b) {
    return weight(a.outcome) < weight(b.outcome);
  });
  for (auto begin = remedies.begin(); begin != remedies.end();) {
    const auto outcome = begin->outcome;
    const auto end = std::find_if(begin, remedies.end(), [outcome](const Finding& finding) {
      return finding.outcome != outcome;
    });
    const bool by_cost = std::all_of(
        begin, end, [](const Finding& finding) { return cost_of(finding).has_value(); });
    if (by_cost) {
      sort_in_order(begin, end, [](const Finding& a, const Finding& b) {
        return cost_of(a).value_or(0) < cost_of(b).value_or(0);
      });
    }
    for (auto at = begin; at != end; ++at) {
      at->reasons.insert(at->reasons.begin(),
                         fmt::format("Remedy {} of {}: {}.", at - remedies.begin() + 1,
                                     remedies.size(), why(outcome, by_cost)));
    }
    begin = end;
  }
}

}  // namespace proofstone
