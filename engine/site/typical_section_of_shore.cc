#include <fmt/format.h>

#include <cmath>

#include "engine/site/shore_slope.h"
#include "engine/site/typical_section_parts.h"
#include "engine/site/typical_section_places.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// From the land to the water: level ground where an end of the rock is stated, slope that goes on
/// where it is not.
void draw_ground(Picture& picture, const ShoreSlope& shore) {
  const GroundPoint& foot = picture.surface.front();
  const GroundPoint& top = picture.surface.back();
  const Length beyond = 1.5 * (foot.station - top.station);
  const Length rise = picture.rise_per_run * beyond;
  picture.ground = {
      {top.station - beyond, shore.top_stated ? top.elevation : top.elevation + rise},
      top,
      foot,
      {foot.station + beyond, shore.foot_stated ? foot.elevation : foot.elevation - rise}};
}

void name_open_ends(Picture& picture, const ShoreSlope& shore) {
  if (!shore.top_stated) {
    picture.notes.push_back(
        {"upper end of the rock not stated: drawn one wave height above still water",
         picture.surface.back()});
  }
  if (!shore.foot_stated) {
    picture.notes.push_back(
        {"depth at the foot not stated: drawn one wave height below still water",
         picture.surface.front()});
  }
}

void draw_water(Picture& picture, const ZoneWater& at, const ShoreSlope& shore,
                const Wording& wording) {
  const auto& stated = at.setting->stated;
  picture.water_levels.push_back(
      {fmt::format("still water, {}{}", at.flow_case->name,
                   stated.water_level ? ", " + wording.ground(shore.still) : ""),
       shore.still});
  if (!stated.wave_height || !(stated.wave_height->meters() > 0)) return;
  const Length half = 0.5 * *stated.wave_height;
  const GroundPoint& foot = picture.surface.front();
  const Length station = foot.station + 0.3 * (foot.station - picture.surface.back().station);
  picture.dimensions.push_back(
      {fmt::format("significant wave height {}", wording.ground(*stated.wave_height)),
       {station, shore.still + half},
       {station, shore.still - half}});
}

}  // namespace

std::optional<Picture> shore_section(const DrawnPlace& place, Picture picture) {
  const auto& [site, zone, waters, sizing, wording] = place;
  const auto shore = slope_of_shore(zone, waters, &sizing);
  if (!shore) return std::nullopt;
  picture.rise_per_run = std::tan(shore->angle.radians());
  picture.slope_text = significant(1 / picture.rise_per_run, 2);
  picture.surface = {{Length{}, shore->foot},
                     {-1 / picture.rise_per_run * (shore->top - shore->foot), shore->top}};
  draw_ground(picture, *shore);
  name_open_ends(picture, *shore);
  draw_water(picture, *shore->attack, *shore, wording);
  add_toe_and_key(picture, zone, wording);
  if (shore->level_stated) {
    add_parts_by_level(picture, zone, waters, sizing.specified->name, wording);
  } else {
    add_whole_part(picture, zone, sizing.specified->name, wording);
  }
  add_under(picture, site, zone, wording);
  picture.cover = drawn_cover(zone, shore->foot, shore->top, waters, wording);
  describe(picture, fmt::format("slope {}H:1V, from the toe up", picture.slope_text));
  return picture;
}

}  // namespace proofstone
