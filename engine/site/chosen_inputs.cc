#include "engine/site/chosen_inputs.h"

#include <nlohmann/json.hpp>

#include "engine/quantity/measure.h"

namespace proofstone {
namespace {

/// Every object of method_choices, that of the governing method first.
std::vector<const nlohmann::json*> choices_in_order(const Zone& zone, const ZoneSizing* sizing) {
  std::vector<const nlohmann::json*> all;
  const auto add = [&](const std::string& id) {
    const auto found = zone.method_choices->find(id);
    if (found != zone.method_choices->end() && found->is_object()) all.push_back(&*found);
  };
  if (sizing != nullptr && sizing->governing) {
    add(sizing->asked[*sizing->governing].method->description().id);
  }
  if (sizing != nullptr) {
    for (const auto& asked : sizing->asked) add(asked.method->description().id);
  }
  for (const auto& [id, choices] : zone.method_choices->items()) add(id);
  return all;
}

template <class Q>
std::optional<Q> chosen(const Zone& zone, const ZoneSizing* sizing,
                        const std::vector<std::string>& keys) {
  for (const auto* choices : choices_in_order(zone, sizing)) {
    for (const auto& key : keys) {
      const auto value = choices->find(key);
      if (value == choices->end() || !value->is_string()) continue;
      const auto read = parse_quantity<Q>(value->get<std::string>());
      if (read && read->si() > 0) return *read;
    }
  }
  return std::nullopt;
}

}  // namespace

std::optional<Length> chosen_length(const Zone& zone, const ZoneSizing* sizing,
                                    const std::vector<std::string>& keys) {
  return chosen<Length>(zone, sizing, keys);
}

std::optional<Slope> chosen_slope(const Zone& zone, const ZoneSizing* sizing) {
  return chosen<Slope>(zone, sizing, {"slope"});
}

std::optional<Angle> chosen_slope_angle(const Zone& zone, const ZoneSizing* sizing) {
  return chosen<Angle>(zone, sizing, {"slope"});
}

std::optional<Duration> chosen_period(const Zone& zone, const ZoneSizing* sizing) {
  return chosen<Duration>(zone, sizing, {"period"});
}

}  // namespace proofstone
