#include <fmt/format.h>

#include <algorithm>

#include "engine/site/extents_in_zone.h"
#include "engine/site/typical_section_of.h"
#include "engine/site/typical_section_parts.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// Depths are square to the slope from the layer's surface, stations along the bank from its end.
void draw_key(Picture& picture, const ZoneKeys& keys, const Wording& wording) {
  const Length under = -1 * picture.thickness;
  const Length bottom = -1 * keys.depth;
  const Length side = 0.5 * (keys.top_width - keys.bottom_width);
  Picture::Block block;
  block.label = fmt::format("key, {} of its rock below the layer", wording.of(keys.volume));
  block.is_key = true;
  block.outline = {
      {Length{}, under}, {side, bottom}, {keys.top_width - side, bottom}, {keys.top_width, under}};
  picture.blocks.push_back(std::move(block));
  picture.dimensions.push_back(
      {fmt::format("key {} deep from the layer's surface, square to the slope",
                   wording.ground(keys.depth)),
       {-0.15 * keys.top_width, Length{}},
       {-0.15 * keys.top_width, bottom}});
  const Length below = bottom - 0.15 * keys.depth;
  picture.dimensions.push_back(
      {fmt::format("{} wide at the bottom", wording.ground(keys.bottom_width)),
       {side, below},
       {keys.top_width - side, below}});
  picture.dimensions.push_back(
      {fmt::format("{} wide under the layer", wording.ground(keys.top_width)),
       {Length{}, 0.2 * keys.depth},
       {keys.top_width, 0.2 * keys.depth}});
}

/// The layer is thicker near its end; what of that lies within the key is not drawn again.
void draw_thicker_end(Picture& picture, const ZoneExtents& extents, Length from,
                      const Wording& wording) {
  if (!(extents.end_length > from) || !(extents.end_thickness > picture.thickness)) return;
  const Length top = -1 * picture.thickness;
  const Length bottom = -1 * extents.end_thickness;
  Picture::Block block;
  block.label = fmt::format("layer {} thick over the last {}", wording.rock(extents.end_thickness),
                            wording.ground(extents.end_length));
  block.outline = {
      {from, top}, {from, bottom}, {extents.end_length, bottom}, {extents.end_length, top}};
  picture.blocks.push_back(std::move(block));
}

}  // namespace

std::optional<Picture> end_key_section(const Site& site, const Zone& zone,
                                       const std::vector<ZoneWater>& waters,
                                       const ZoneSizing& sizing, const Wording& wording) {
  const auto extents = extents_of_zone(zone, waters);
  if (!extents || !extents->keys) return std::nullopt;
  const auto& keys = *extents->keys;
  if (!(keys.top_width.meters() > 0) || !(keys.depth > zone.layer_thickness)) return std::nullopt;
  auto picture = begin_typical_section(site, zone, sizing, wording);
  picture.id = "keys." + zone.id;
  picture.title = fmt::format("Key at each end of {}", zone.name);
  picture.level = true;
  const Length stretch = std::max(2.5 * keys.top_width, 1.5 * extents->end_length);
  const Length zero;
  picture.surface = {{stretch, zero}, {zero, zero}};
  picture.ground = {{-0.3 * stretch, zero}, {stretch, zero}};
  add_whole_part(picture, zone, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  draw_key(picture, keys, wording);
  draw_thicker_end(picture, *extents, keys.top_width, wording);
  picture.notes.push_back({"the layer goes on; its other end is the mirror of this",
                           {0.9 * stretch, -0.5 * zone.layer_thickness}});
  if (keys.spacing.meters() > 0) {
    picture.notes.push_back(
        {fmt::format("keys between the ends at most every {}", wording.ground(keys.spacing)),
         {0.8 * stretch, zero}});
  }
  describe(picture, "seen along the bank, square to its slope");
  return picture;
}

}  // namespace proofstone
