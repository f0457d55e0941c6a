#include "engine/site/typical_section_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <variant>

#include "engine/filter/beddings.h"
#include "engine/quantity/measure.h"
#include "engine/site/slope_parts.h"
#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// Which way the channel lies from the bank, along the stations.
double outward(const Zone& zone) { return zone.bank == BankSide::left ? 1 : -1; }

/// A toe dug in: the layer goes on down at the slope of the bank.
void dig_toe(Picture& picture, const Zone& zone, const Wording& wording) {
  const double tangent = picture.rise_per_run;
  const Length depth = zone.toe->depth;
  if (!(tangent > 1e-3)) return;
  const GroundPoint toe = picture.surface.front();
  const GroundPoint foot{toe.station + outward(zone) / tangent * depth, toe.elevation - depth};
  picture.surface.insert(picture.surface.begin(), foot);
  picture.toe_depth =
      Picture::Dimension{fmt::format("toe dug in {} below the bed", wording.ground(depth)),
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
        Picture::Dimension{fmt::format("foot {} below the bed", wording.ground(toe.depth)),
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

std::string part_label(const Zone& zone, const std::string& class_name, RockKind kind,
                       const Wording& wording) {
  return fmt::format("{}, {} rock, {} thick", class_name, rock_kind_word(kind),
                     wording.rock(zone.layer_thickness));
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

}  // namespace

const SizeAsked* governing_of(const ZoneSizing& sizing) {
  return sizing.governing ? &sizing.asked[*sizing.governing] : nullptr;
}

std::optional<Length> output_of(const SizeAsked* asked, const char* key) {
  if (asked == nullptr) return std::nullopt;
  const auto& outputs = asked->evaluation.outputs;
  const auto at = std::find_if(outputs.begin(), outputs.end(),
                               [&](const OutputValue& output) { return output.key == key; });
  if (at == outputs.end()) return std::nullopt;
  return at->value.unchecked_as<Length>();
}

std::optional<Picture::Cover> drawn_cover(const Zone& zone, Length foot, Length top,
                                          const std::vector<ZoneWater>& waters,
                                          const Wording& wording) {
  if (!zone.cover) return std::nullopt;
  const ZoneCover& stated = *zone.cover;
  const auto from = elevation_of(stated.from, waters, foot);
  if (!from || !(*from < top)) return std::nullopt;
  Picture::Cover cover;
  cover.from = std::max(*from, foot);
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

void add_tailwaters(Picture& picture, const std::vector<ZoneWater>& waters, Length bed,
                    const Wording& wording) {
  for (const auto& at : waters) {
    if (!at.setting || !at.setting->stated.tailwater_depth) continue;
    const Length depth = *at.setting->stated.tailwater_depth;
    picture.water_levels.push_back(
        {fmt::format("{}, tailwater {}", at.flow_case->name, wording.ground(depth)), bed + depth});
  }
}

Picture begin_typical_section(const Site& site, const Zone& zone, const ZoneSizing& sizing,
                              const Wording& wording) {
  Picture picture;
  picture.id = "typical." + zone.id;
  picture.title = fmt::format("Typical section of {}", zone.name);
  picture.thickness = zone.layer_thickness;
  picture.thickness_text = wording.rock(zone.layer_thickness);
  picture.median_stone = sizing.specified->nominal_d50;
  picture.angularity = site.sources.at(zone.source).rock.angularity;
  return picture;
}

void add_whole_part(Picture& picture, const Zone& zone, const std::string& class_name,
                    const Wording& wording) {
  Picture::Part part;
  part.bottom = picture.surface.front().elevation;
  part.top = picture.surface.back().elevation;
  if (zone.kinds.size() == 1) {
    part.kind = zone.kinds.front().kind;
    part.label = part_label(zone, class_name, part.kind, wording);
  } else {
    part.label = fmt::format("{}, {} thick; {}", class_name, wording.rock(zone.layer_thickness),
                             zone.kinds.empty() ? "kind of rock not stated"
                                                : "kinds of rock that change with the level");
  }
  picture.parts.push_back(std::move(part));
}

void add_parts_by_level(Picture& picture, const Zone& zone, const std::vector<ZoneWater>& waters,
                        const std::string& class_name, const Wording& wording) {
  const Length foot = picture.surface.front().elevation;
  const Length top = picture.surface.back().elevation;
  Length from = foot;
  for (const auto& kind : stated_kinds(zone, foot, top, waters)) {
    if (!kind.top || !(*kind.top > from)) continue;
    picture.parts.push_back({kind.stated->kind,
                             part_label(zone, class_name, kind.stated->kind, wording), from,
                             *kind.top});
    from = *kind.top;
  }
  if (top - from > Length::millimeters(1)) {
    picture.parts.push_back({RockKind::bare,
                             fmt::format("{}, {} thick; kind of rock not stated", class_name,
                                         wording.rock(zone.layer_thickness)),
                             from, top});
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
           granular->thickness,
           {}});
    } else {
      picture.under.push_back({"geotextile", Length::meters(0), {}});
    }
  }
}

void add_levels(Picture& picture, const std::vector<ZoneWater>& waters, const Wording& wording) {
  for (const ZoneWater& water : waters) {
    const auto level = water_level_of(water);
    if (!level) continue;
    picture.water_levels.push_back(
        {fmt::format("{}, {}", water.flow_case->name, wording.ground(*level)), *level});
  }
}

void add_toe_and_key(Picture& picture, const Zone& zone, const Wording& wording) {
  if (zone.toe && zone.toe->kind == ToeKind::trench) dig_toe(picture, zone, wording);
  if (zone.toe && zone.toe->kind != ToeKind::trench) place_toe_block(picture, zone, wording);
  if (zone.top_key) place_key(picture, zone, wording);
}

void describe(Picture& picture, const std::string& seen) {
  std::vector<std::string> words;
  for (const auto& part : picture.parts) words.push_back(part.label);
  for (const auto& under : picture.under) words.push_back(under.label);
  for (const auto& structure : picture.structures) words.push_back(structure.label);
  for (const auto& block : picture.blocks) words.push_back(block.label);
  if (picture.toe_depth) words.push_back(picture.toe_depth->label);
  for (const auto& dimension : picture.dimensions) words.push_back(dimension.label);
  if (picture.conduit) words.push_back(picture.conduit->label);
  for (const auto& note : picture.notes) words.push_back(note.label);
  if (picture.cover) {
    for (const auto& label : {picture.cover->topsoil_label, picture.cover->blanket_label,
                              picture.cover->stakes_label}) {
      if (!label.empty()) words.push_back(label);
    }
  }
  picture.description =
      fmt::format("{} to true scale, {}: {}.", picture.title, seen, fmt::join(words, "; "));
}

}  // namespace proofstone
