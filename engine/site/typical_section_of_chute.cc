#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/site/chosen_inputs.h"
#include "engine/site/typical_section_parts.h"
#include "engine/site/typical_section_places.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// A face along the flow from its crest, which is the origin: how far it runs and falls.
struct Face {
  Length run;
  Length fall;
  Length along;  ///< the ground
  std::string label;
  bool stated = false;
};

/// As long as the zone or the height of its drop says; else of a length for the picture alone.
Face face_of(const Zone& zone, const ZoneSizing& sizing, double slope, const Wording& wording) {
  const double stretch = std::hypot(1.0, slope);
  const auto of_length = [&](Length along) {
    return Face{along / stretch, slope / stretch * along, along, "", false};
  };
  const auto height = chosen_length(zone, &sizing, {"drop_height"});
  auto face = of_length(10 * zone.layer_thickness);
  if (zone.extent.length) {
    face = of_length(*zone.extent.length);
  } else if (height) {
    face = of_length(stretch / slope * *height);
  }
  face.stated = zone.extent.length || height;
  face.label = face.stated
                   ? fmt::format("face {} long down its slope{}", wording.ground(face.along),
                                 zone.extent.length ? ", as stated" : "")
                   : "length of the face not stated: drawn ten times as long as its rock "
                     "is thick";
  return face;
}

void draw_lines(Picture& picture, const Face& face, Length apron) {
  const Length zero;
  const Length foot = -1 * face.fall;
  const Length end = face.run + apron;
  picture.surface = {{end, foot}};
  if (apron.meters() > 0) picture.surface.push_back({face.run, foot});
  picture.surface.push_back({zero, zero});
  picture.ground = {
      {-0.3 * end, zero}, {zero, zero}, {face.run, foot}, {end, foot}, {1.25 * end, foot}};
}

void tell_lengths(Picture& picture, const Zone& zone, const ZoneSizing& sizing, const Face& face,
                  Length apron, const Wording& wording) {
  const Length zero;
  const Length above = std::max(zone.layer_thickness, 0.25 * face.fall);
  if (face.stated) {
    picture.dimensions.push_back({face.label, {zero, above}, {face.run, above}});
    const Length before = -0.08 * (face.run + apron);
    picture.dimensions.push_back({fmt::format("falls {}", wording.ground(face.fall)),
                                  {before, zero},
                                  {before, -1 * face.fall}});
  } else {
    picture.notes.push_back({face.label, {0.5 * face.run, -0.5 * face.fall}});
  }
  if (apron.meters() > 0) {
    const Length over = -1 * face.fall + 0.6 * zone.layer_thickness;
    picture.dimensions.push_back(
        {fmt::format("level apron {} long at the foot, by: {}", wording.ground(apron),
                     governing_of(sizing)->method->description().title),
         {face.run, over},
         {face.run + apron, over}});
  }
}

/// The wall that a table of drops sets on the crest.
void draw_crest_wall(Picture& picture, const Zone& zone, const ZoneSizing& sizing,
                     const Wording& wording) {
  const auto rise = output_of(governing_of(sizing), "crest_rise");
  if (!rise || !(rise->meters() > 0)) return;
  const Length bottom = -1.5 * zone.layer_thickness;
  const Length back = -0.35 * zone.layer_thickness;
  const Length zero;
  picture.structures.push_back(
      {fmt::format("crest wall, {} above the bed by: {}", wording.ground(*rise),
                   governing_of(sizing)->method->description().title),
       {{back, bottom}, {zero, bottom}, {zero, *rise}, {back, *rise}}});
}

}  // namespace

std::optional<Picture> chute_section(const DrawnPlace& place, Picture picture) {
  const auto& [site, zone, waters, sizing, wording] = place;
  const auto slope = chosen_slope(zone, &sizing);
  if (!slope || slope->ratio() < 1e-3) return std::nullopt;
  const auto* asked = governing_of(sizing);
  const auto face = face_of(zone, sizing, slope->ratio(), wording);
  const Length apron = output_of(asked, "apron_length").value_or(Length{});
  draw_lines(picture, face, apron);
  picture.level = true;  // one kind of rock from end to end
  picture.rise_per_run = slope->ratio();
  picture.slope_text = significant(1 / picture.rise_per_run, 2);
  picture.slope_at = GroundPoint{0.45 * face.run, -0.45 * face.fall};
  add_tailwaters(picture, waters, -1 * face.fall, wording);
  tell_lengths(picture, zone, sizing, face, apron, wording);
  draw_crest_wall(picture, zone, sizing, wording);
  if (const auto depth = output_of(asked, "depth")) {
    picture.notes.push_back(
        {fmt::format("uniform flow {} deep on the face, by: {}", wording.ground(*depth),
                     asked->method->description().title),
         {0.75 * face.run, -0.75 * face.fall}});
  }
  add_whole_part(picture, zone, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  describe(picture, fmt::format("along the flow from the crest, slope {}H:1V", picture.slope_text));
  return picture;
}

std::optional<Picture> basin_section(const DrawnPlace& place, Picture picture) {
  const auto& [site, zone, waters, sizing, wording] = place;
  const auto* asked = governing_of(sizing);
  const auto depth = output_of(asked, "scour_depth");
  const auto pool = output_of(asked, "pool_length");
  const auto length = output_of(asked, "basin_length");
  if (!depth || !pool || !length || !(*depth > Length{}) || !(*length > *pool)) return std::nullopt;
  const Length zero;
  const Length side = std::min(2 * *depth, 0.4 * *pool);
  const Length floor = -1 * *depth;
  picture.surface = {
      {*length, zero}, {*pool, zero}, {*pool - side, floor}, {side, floor}, {zero, zero}};
  picture.ground = {{-0.2 * *length, zero}, {zero, zero},  {side, floor},
                    {*pool - side, floor},  {*pool, zero}, {*length, zero},
                    {1.2 * *length, zero}};
  picture.level = true;
  const auto& method = asked->method->description().title;
  const auto conduit = chosen_length(zone, &sizing, {"width", "brink_depth"});
  if (conduit) {
    picture.conduit = Picture::Conduit{
        fmt::format("conduit, {} wide", wording.ground(*conduit)), {zero, zero}, *conduit};
  }
  add_tailwaters(picture, waters, zero, wording);
  Length above = 1.2 * std::max(conduit.value_or(Length{}), 2 * zone.layer_thickness);
  for (const auto& level : picture.water_levels) above = std::max(above, 1.2 * level.level);
  picture.dimensions = {
      {fmt::format("basin {} long by: {}", wording.ground(*length), method),
       {zero, 1.25 * above},
       {*length, 1.25 * above}},
      {fmt::format("pool {} long", wording.ground(*pool)), {zero, above}, {*pool, above}},
      {fmt::format("{} deep below the invert", wording.ground(*depth)),
       {0.5 * *pool, zero},
       {0.5 * *pool, floor}}};
  picture.notes.push_back(
      {"slopes into and out of the pool drawn at 2H:1V: the method gives its "
       "lengths and depth alone",
       {*pool - 0.5 * side, 0.5 * floor}});
  const auto entry = output_of(asked, "entry_thickness");
  if (entry && *entry > zone.layer_thickness) {
    picture.notes.push_back(
        {fmt::format("{} thick on the entry slope by that method", wording.rock(*entry)),
         {0.5 * side, 0.5 * floor}});
  }
  if (const auto width = output_of(asked, "basin_width")) {
    picture.notes.push_back(
        {fmt::format("{} wide at its end by that method", wording.ground(*width)),
         {*length, zero}});
  }
  add_whole_part(picture, zone, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  describe(picture, "along the flow, from the conduit's end");
  return picture;
}

}  // namespace proofstone
