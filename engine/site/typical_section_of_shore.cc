#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/quantity/measure.h"
#include "engine/site/typical_section_parts.h"
#include "engine/site/typical_section_places.h"
#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// The slope that the governing method is given, else the first that any method is given.
std::optional<Angle> slope_of_shore(const Zone& zone, const ZoneSizing& sizing) {
  std::vector<const SizeAsked*> asked;
  if (sizing.governing) asked.push_back(&sizing.asked[*sizing.governing]);
  for (const auto& one : sizing.asked) asked.push_back(&one);
  for (const auto* one : asked) {
    const auto choices = zone.method_choices->find(one->method->description().id);
    if (choices == zone.method_choices->end() || !choices->is_object()) continue;
    const auto slope = choices->find("slope");
    if (slope == choices->end() || !slope->is_string()) continue;
    const auto angle = parse_quantity<Angle>(slope->get<std::string>());
    if (angle && angle->radians() > 0.01 && angle->degrees() < 89) return *angle;
  }
  return std::nullopt;
}

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

/// Elevations between which the rock is drawn.
struct Limits {
  Length still;
  Length foot;
  Length top;
  bool foot_stated = false;
  bool top_stated = false;
};

std::optional<Limits> limits_of(const Zone& zone, const StatedWater& water, Angle slope) {
  Limits limits;
  limits.still = water.water_level.value_or(Length{});
  limits.foot_stated = water.depth && water.depth->meters() > 0;
  limits.top_stated = zone.extent.slope_length.has_value();
  const Length wave = water.wave_height.value_or(Length{});
  if ((!limits.foot_stated || !limits.top_stated) && !(wave.meters() > 0)) return std::nullopt;
  limits.foot = limits.still - (limits.foot_stated ? *water.depth : wave);
  limits.top = limits.top_stated
                   ? limits.foot + std::sin(slope.radians()) * *zone.extent.slope_length
                   : limits.still + wave;
  return limits;
}

/// From the land to the water: level ground where an end of the rock is stated, slope that goes on
/// where it is not.
void draw_ground(Picture& picture, const Limits& limits) {
  const GroundPoint& foot = picture.surface.front();
  const GroundPoint& top = picture.surface.back();
  const Length beyond = 1.5 * (foot.station - top.station);
  const Length rise = picture.rise_per_run * beyond;
  picture.ground = {
      {top.station - beyond, limits.top_stated ? top.elevation : top.elevation + rise},
      top,
      foot,
      {foot.station + beyond, limits.foot_stated ? foot.elevation : foot.elevation - rise}};
}

void name_open_ends(Picture& picture, const Limits& limits) {
  if (!limits.top_stated) {
    picture.notes.push_back(
        {"upper end of the rock not stated: drawn one wave height above still water",
         picture.surface.back()});
  }
  if (!limits.foot_stated) {
    picture.notes.push_back(
        {"depth at the foot not stated: drawn one wave height below still water",
         picture.surface.front()});
  }
}

void draw_water(Picture& picture, const ZoneWater& at, const Limits& limits,
                const Wording& wording) {
  const auto& stated = at.setting->stated;
  picture.water_levels.push_back(
      {fmt::format("still water, {}{}", at.flow_case->name,
                   stated.water_level ? ", " + wording.ground(limits.still) : ""),
       limits.still});
  if (!stated.wave_height || !(stated.wave_height->meters() > 0)) return;
  const Length half = 0.5 * *stated.wave_height;
  const GroundPoint& foot = picture.surface.front();
  const Length station = foot.station + 0.3 * (foot.station - picture.surface.back().station);
  picture.dimensions.push_back(
      {fmt::format("significant wave height {}", wording.ground(*stated.wave_height)),
       {station, limits.still + half},
       {station, limits.still - half}});
}

}  // namespace

std::optional<Picture> shore_section(const Site& site, const Zone& zone,
                                     const std::vector<ZoneWater>& waters, const ZoneSizing& sizing,
                                     Picture picture, const Wording& wording) {
  const auto slope = slope_of_shore(zone, sizing);
  const auto* attack = attack_of(waters);
  if (!slope || attack == nullptr) return std::nullopt;
  const auto limits = limits_of(zone, attack->setting->stated, *slope);
  if (!limits || !(limits->top > limits->foot)) return std::nullopt;
  picture.rise_per_run = std::tan(slope->radians());
  picture.slope_text = significant(1 / picture.rise_per_run, 2);
  picture.surface = {{Length{}, limits->foot},
                     {-1 / picture.rise_per_run * (limits->top - limits->foot), limits->top}};
  draw_ground(picture, *limits);
  name_open_ends(picture, *limits);
  draw_water(picture, *attack, *limits, wording);
  const bool levels_known = attack->setting->stated.water_level.has_value();
  add_toe_and_key(picture, zone, wording);
  if (levels_known) {
    add_parts_by_level(picture, zone, waters, sizing.specified->name, wording);
  } else {
    add_whole_part(picture, zone, sizing.specified->name, wording);
  }
  add_under(picture, site, zone, wording);
  describe(picture, fmt::format("slope {}H:1V, from the toe up", picture.slope_text));
  return picture;
}

}  // namespace proofstone
