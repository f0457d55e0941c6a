#include "engine/sizing/sizing_method.h"

#include <algorithm>

#include "engine/rock/size_and_mass.h"

namespace proofstone {

Length size_as(const RequiredSize& required, SizeMeaning meaning) {
  if (!required.by_mass) return required.size;
  return convert_size(required.size, SizeMeaning::sphere, meaning);
}

Density density_of(const RockProperties& rock) {
  return Density::kilograms_per_cubic_meter(1000 * rock.specific_gravity.number());
}

bool serves(const SizingMethod& method, ZonePlace place) {
  const auto& places = method.places();
  return std::find(places.begin(), places.end(), place) != places.end();
}

}  // namespace proofstone
