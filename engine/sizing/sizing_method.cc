#include "engine/sizing/sizing_method.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/rock/size_and_mass.h"

namespace proofstone {

Length size_as(const RequiredSize& required, SizeMeaning meaning) {
  if (!required.by_mass) return required.size;
  return convert_size(required.size, SizeMeaning::sphere, meaning);
}

Density density_of(const RockProperties& rock) {
  return Density::kilograms_per_cubic_meter(1000 * rock.specific_gravity.number());
}

HeldInputs::HeldInputs() : held_(std::make_shared<nlohmann::json>(nlohmann::json::object())) {}

void HeldInputs::hold(const std::string& key, double value) { (*held_)[key] = value; }

bool serves(const SizingMethod& method, ZonePlace place) {
  const auto& places = method.places();
  return std::find(places.begin(), places.end(), place) != places.end();
}

const nlohmann::json* choices_for(const std::string& method, const ZoneSetting& zone) {
  if (zone.method_choices == nullptr) return nullptr;
  const auto chosen = zone.method_choices->find(method);
  return chosen == zone.method_choices->end() ? nullptr : &*chosen;
}

bool all_chosen(const nlohmann::json* choices, const std::vector<std::string>& keys) {
  return std::all_of(keys.begin(), keys.end(), [choices](const std::string& key) {
    return choices != nullptr && choices->contains(key);
  });
}

NotApplicable made_for_other_places(const std::vector<ZonePlace>& places, ZonePlace place) {
  std::string words;
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (i > 0) words += i + 1 == places.size() ? " and " : ", ";
    words += zone_place_word(places[i]);
  }
  return {fmt::format("It is made for zones of place {}, and this one is of place {}.", words,
                      zone_place_word(place))};
}

}  // namespace proofstone
