#include "engine/site/shore_slope.h"

#include <cmath>

#include "engine/site/chosen_inputs.h"

namespace proofstone {
namespace {

/// The design case with the highest waves, else any with what is stated of the water.
const ZoneWater* attack_of(const std::vector<ZoneWater>& waters) {
  const ZoneWater* highest = nullptr;
  const auto height = [](const ZoneWater& at) {
    return at.setting->stated.wave_height.value_or(Length{}).meters();
  };
  for (const auto& at : waters) {
    if (at.flow_case->purpose != FlowPurpose::design || !at.setting) continue;
    if (highest == nullptr || height(at) > height(*highest)) highest = &at;
  }
  return highest;
}

}  // namespace

std::optional<ShoreSlope> slope_of_shore(const Zone& zone, const std::vector<ZoneWater>& waters,
                                         const ZoneSizing* sizing) {
  const auto angle = chosen_slope_angle(zone, sizing);
  const auto* attack = attack_of(waters);
  if (!angle || angle->radians() < 0.01 || angle->degrees() > 89 || attack == nullptr) {
    return std::nullopt;
  }
  const auto& water = attack->setting->stated;
  ShoreSlope shore;
  shore.angle = *angle;
  shore.attack = attack;
  shore.level_stated = water.water_level.has_value();
  shore.still = water.water_level.value_or(Length{});
  shore.foot_stated = water.depth && water.depth->meters() > 0;
  shore.top_stated = zone.extent.slope_length.has_value();
  const Length wave = water.wave_height.value_or(Length{});
  if ((!shore.foot_stated || !shore.top_stated) && !(wave.meters() > 0)) return std::nullopt;
  shore.foot = shore.still - (shore.foot_stated ? *water.depth : wave);
  shore.top = shore.top_stated ? shore.foot + std::sin(angle->radians()) * *zone.extent.slope_length
                               : shore.still + wave;
  if (!(shore.top > shore.foot)) return std::nullopt;
  return shore;
}

}  // namespace proofstone
