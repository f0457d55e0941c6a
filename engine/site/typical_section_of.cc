#include "engine/site/typical_section_of.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <variant>

#include "engine/filter/beddings.h"
#include "engine/site/slope_parts.h"
#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// Which way the channel lies from the bank, along the stations.
double outward(const Zone& zone) { return zone.bank == BankSide::left ? 1 : -1; }

/// The ground from the toe up to the top, in that order.
std::vector<GroundPoint> slope_line(const Section& survey, const ZoneSlope& slope) {
  const Length low = std::min(slope.toe_station, slope.top_station);
  const Length high = std::max(slope.toe_station, slope.top_station);
  std::vector<GroundPoint> line{{low, survey.ground_at(low)}};
  for (const auto& point : survey.points()) {
    if (point.station > low && point.station < high) {
      line.push_back({point.station, point.elevation});
    }
  }
  line.push_back({high, survey.ground_at(high)});
  if (slope.toe_station > slope.top_station) std::reverse(line.begin(), line.end());
  return line;
}

/// A toe dug in: the layer goes on down at the slope of the bank.
void dig_toe(Picture& picture, const Zone& zone, const ZoneSlope& slope, const Wording& wording) {
  const double tangent = std::tan(slope.angle.radians());
  const Length depth = zone.toe->depth;
  if (!(tangent > 1e-3)) return;
  const GroundPoint toe = picture.surface.front();
  const GroundPoint foot{toe.station + outward(zone) / tangent * depth, toe.elevation - depth};
  picture.surface.insert(picture.surface.begin(), foot);
  picture.toe_depth =
      Picture::Depth{fmt::format("toe dug in {} below the bed", wording.ground(depth)),
                     {foot.station, toe.elevation},
                     foot};
}

/// A block on the bed side of the toe.
void place_toe_block(Picture& picture, const Zone& zone, const Wording& wording) {
  const ZoneToe& toe = *zone.toe;
  const bool thickened = toe.kind == ToeKind::thickened;
  const Length height = thickened ? *toe.thickness : zone.layer_thickness;
  const Length width =
      thickened ? *toe.width
                : Length::meters(toe.stored->square_meters() / zone.layer_thickness.meters());
  const GroundPoint at = picture.surface.front();
  const Length bottom = at.elevation - toe.depth;
  const Length far = at.station + outward(zone) * width;
  Picture::Block block;
  block.label = thickened ? fmt::format("thickened toe, {} wide and {} thick",
                                        wording.ground(width), wording.rock(height))
                          : fmt::format("launchable toe storing {}, drawn as thick as the layer",
                                        wording.of(*toe.stored));
  block.outline = {
      {at.station, bottom}, {far, bottom}, {far, bottom + height}, {at.station, bottom + height}};
  picture.blocks.push_back(std::move(block));
  if (toe.depth.meters() > 0) {
    picture.toe_depth =
        Picture::Depth{fmt::format("foot {} below the bed", wording.ground(toe.depth)),
                       {far, at.elevation},
                       {far, bottom}};
  }
}

void place_key(Picture& picture, const Zone& zone, const Wording& wording) {
  const GroundPoint top = picture.surface.back();
  const Length back = top.station - outward(zone) * zone.top_key->width;
  const Length bottom = top.elevation - zone.top_key->depth;
  Picture::Block block;
  block.is_key = true;
  block.label =
      fmt::format("key at the top, {} wide and {} deep", wording.ground(zone.top_key->width),
                  wording.ground(zone.top_key->depth));
  block.outline = {
      {top.station, top.elevation}, {back, top.elevation}, {back, bottom}, {top.station, bottom}};
  picture.blocks.push_back(std::move(block));
}

void add_parts(Picture& picture, const Zone& zone, const ZoneSlope& slope,
               const std::vector<ZoneWater>& waters, const std::string& class_name,
               const Wording& wording) {
  const Length foot = picture.surface.front().elevation;
  const std::string thick = wording.rock(zone.layer_thickness) + " thick";
  Length from = foot;
  for (const auto& kind : stated_kinds(zone, slope.toe_elevation, slope.top_elevation, waters)) {
    if (!kind.top || !(*kind.top > from)) continue;
    picture.parts.push_back(
        {kind.stated->kind,
         fmt::format("{}, {} rock, {}", class_name, rock_kind_word(kind.stated->kind), thick), from,
         *kind.top});
    from = *kind.top;
  }
  if (slope.top_elevation - from > Length::millimeters(1)) {
    picture.parts.push_back({RockKind::bare,
                             fmt::format("{}, {}; kind of rock not stated", class_name, thick),
                             from, slope.top_elevation});
  }
}

/// What lies between soil and rock, from the rock down.
void add_under(Picture& picture, const Site& site, const Zone& zone, const Wording& wording) {
  if (!zone.filter) return;
  const auto& layers = zone.filter->layers;
  for (auto layer = layers.rbegin(); layer != layers.rend(); ++layer) {
    if (const auto* granular = std::get_if<GranularFilter>(&*layer)) {
      const auto material = site.materials.find(granular->bedding);
      picture.under.push_back(
          {fmt::format("{}, {} thick",
                       material == site.materials.end() ? find_bedding(granular->bedding)->name
                                                        : material->second.name,
                       wording.rock(granular->thickness)),
           granular->thickness});
    } else {
      picture.under.push_back({"geotextile", Length::meters(0)});
    }
  }
}

const char* stake_word(StakeForm form) {
  switch (form) {
    case StakeForm::wedge:
      return "wedge stakes";
    case StakeForm::staple:
      return "staples";
    case StakeForm::pin:
      break;
  }
  return "pins";
}

std::optional<Picture::Cover> drawn_cover(const Zone& zone, const ZoneSlope& slope,
                                          const std::vector<ZoneWater>& waters,
                                          const Wording& wording) {
  if (!zone.cover) return std::nullopt;
  const ZoneCover& stated = *zone.cover;
  const auto from = elevation_of(stated.from, waters, slope.toe_elevation);
  if (!from || !(*from < slope.top_elevation)) return std::nullopt;
  Picture::Cover cover;
  cover.from = std::max(*from, slope.toe_elevation);
  cover.seeded = !stated.seed.empty();
  if (stated.topsoil) {
    cover.topsoil = *stated.topsoil;
    cover.topsoil_label = fmt::format("topsoil {}{}", wording.rock(*stated.topsoil),
                                      cover.seeded ? ", seeded: " + stated.seed : "");
  }
  if (stated.blanket) cover.blanket_label = "blanket, type " + stated.blanket->type;
  if (stated.stakes) {
    cover.stakes_label = fmt::format("{} {} long", stake_word(stated.stakes->form),
                                     wording.rock(stated.stakes->length));
    cover.stake_length = stated.stakes->length;
    if (stated.stakes->spacing) {
      cover.stake_spacing = *stated.stakes->spacing;
      cover.stakes_label += fmt::format(", every {}", wording.ground(*stated.stakes->spacing));
    }
  }
  if (stated.top_trench) {
    cover.top_trench = stated.top_trench->depth;
    cover.back_from_crest = stated.top_trench->back_from_crest.value_or(Length::meters(0));
  }
  if (stated.water_edge_trench) cover.water_edge_trench = stated.water_edge_trench->depth;
  return cover;
}

void add_levels(Picture& picture, const std::vector<ZoneWater>& waters, const Wording& wording) {
  for (const ZoneWater& water : waters) {
    const auto level = water_level_of(water);
    if (!level) continue;
    picture.water_levels.push_back(
        {fmt::format("{}, {}", water.flow_case->name, wording.ground(*level)), *level});
  }
}

std::string described(const Picture& picture, const Zone& zone) {
  std::vector<std::string> words;
  for (const auto& part : picture.parts) words.push_back(part.label);
  for (const auto& under : picture.under) words.push_back(under.label);
  for (const auto& block : picture.blocks) words.push_back(block.label);
  if (picture.toe_depth) words.push_back(picture.toe_depth->label);
  if (picture.cover) {
    for (const auto& label : {picture.cover->topsoil_label, picture.cover->blanket_label,
                              picture.cover->stakes_label}) {
      if (!label.empty()) words.push_back(label);
    }
  }
  return fmt::format("Typical section of {} to true scale, slope {}H:1V, from the toe up: {}.",
                     zone.name, picture.slope_text, fmt::join(words, "; "));
}

}  // namespace

std::optional<TypicalSectionPicture> typical_section(const Site& site, const Zone& zone,
                                                     const std::vector<ZoneWater>& waters,
                                                     const ZoneSizing& sizing,
                                                     const Wording& wording) {
  if (zone.section.empty() || zone.place != ZonePlace::bank) return std::nullopt;
  const auto& section = site.sections.at(zone.section);
  const auto slope = slope_of_zone(zone, section);
  if (!slope) return std::nullopt;
  Picture picture;
  picture.id = "typical." + zone.id;
  picture.title = fmt::format("Typical section of {}", zone.name);
  for (const auto& point : section.survey.points()) {
    picture.ground.push_back({point.station, point.elevation});
  }
  picture.surface = slope_line(section.survey, *slope);
  picture.thickness = zone.layer_thickness;
  picture.thickness_text = wording.rock(zone.layer_thickness);
  picture.median_stone = sizing.specified->nominal_d50;
  picture.angularity = site.sources.at(zone.source).rock.angularity;
  picture.rise_per_run = std::tan(slope->angle.radians());
  picture.slope_text = significant(1 / picture.rise_per_run, 2);
  add_levels(picture, waters, wording);
  if (zone.toe && zone.toe->kind == ToeKind::trench) dig_toe(picture, zone, *slope, wording);
  if (zone.toe && zone.toe->kind != ToeKind::trench) place_toe_block(picture, zone, wording);
  if (zone.top_key) place_key(picture, zone, wording);
  add_parts(picture, zone, *slope, waters, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  picture.cover = drawn_cover(zone, *slope, waters, wording);
  picture.description = described(picture, zone);
  return picture;
}

}  // namespace proofstone
