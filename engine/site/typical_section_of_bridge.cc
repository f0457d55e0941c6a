#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/quantity/measure.h"
#include "engine/site/chosen_inputs.h"
#include "engine/site/typical_section_parts.h"
#include "engine/site/typical_section_places.h"
#include "engine/sizing/pier_riprap_layout.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// Water of the design cases over a bed at zero, by its depth there.
void add_depths(Picture& picture, const std::vector<ZoneWater>& waters, const Wording& wording) {
  for (const auto& at : waters) {
    if (!at.setting || at.flow_case->purpose != FlowPurpose::design) continue;
    const auto& setting = *at.setting;
    const Length depth = setting.stated.depth.value_or(setting.local_depth);
    if (!(depth.meters() > 0)) continue;
    picture.water_levels.push_back(
        {fmt::format("{}, {} deep", at.flow_case->name, wording.ground(depth)), depth});
  }
}

Length highest_water(const Picture& picture) {
  Length highest;
  for (const auto& level : picture.water_levels) highest = std::max(highest, level.level);
  return highest;
}

/// How far rock and filter reach from the middle of a pier, and from its face.
struct PierReach {
  Length half_pier;
  Length rock;
  std::optional<PierRiprapLayoutResult> layout;  ///< absent: no width is given
};

/// A pier of a width that is not known, and rock round it: shares of the layer, to be seen alone.
PierReach as_it_may_be(const Zone& zone) {
  return {zone.layer_thickness, 4 * zone.layer_thickness, std::nullopt};
}

std::optional<PierRiprapLayoutResult> pier_layout(const Zone& zone, const ZoneSizing& sizing) {
  const auto width = chosen_length(zone, &sizing, {"pier_width"});
  if (!width) return std::nullopt;
  PierRiprapLayoutInputs inputs;
  inputs.d50 = sizing.specified->nominal_d50;
  inputs.pier_width = *width;
  inputs.pier_length = chosen_length(zone, &sizing, {"pier_length"}).value_or(*width);
  const auto choices = zone.method_choices->find("pier-riprap-layout");
  if (choices != zone.method_choices->end() && choices->is_object()) {
    const auto skew = choices->find("skew");
    if (skew != choices->end() && skew->is_string()) {
      if (const auto angle = parse_quantity<Angle>(skew->get<std::string>())) inputs.skew = *angle;
    }
  }
  Steps not_shown;
  const auto layout = pier_riprap_layout(inputs, not_shown);
  if (!layout) return std::nullopt;
  return *layout;
}

PierReach reach_of(const Zone& zone, const ZoneSizing& sizing) {
  const auto layout = pier_layout(zone, sizing);
  if (!layout) return as_it_may_be(zone);
  return {0.5 * layout->projected_width, layout->extent, layout};
}

bool is_spill_through(const Zone& zone) {
  const auto choices = zone.method_choices->find("abutment-riprap");
  return choices != zone.method_choices->end() && choices->is_object() &&
         choices->value("form", "") == "spill-through";
}

/// The fill of a spill-through abutment above its toe, covered as high as the method asks.
void draw_fill(Picture& picture, const Zone& zone, const ZoneSizing& sizing,
               const Wording& wording) {
  const auto stated = chosen_slope(zone, &sizing);
  const double slope = stated ? stated->ratio() : 0.5;
  const Length above = output_of(governing_of(sizing), "height_above_water").value_or(Length{});
  const Length top = highest_water(picture) + above;
  const Length back = -1 / slope * top;
  picture.surface.push_back({back, top});
  picture.ground.insert(picture.ground.begin(), {{1.6 * back, top}, {back, top}});
  picture.rise_per_run = slope;
  picture.slope_text = significant(1 / slope, 2);
  picture.slope_at = GroundPoint{0.5 * back, 0.5 * top};
  if (!stated) {
    picture.notes.push_back(
        {"slope of the fill not stated: drawn at 2H:1V", {0.35 * back, 0.35 * top}});
  }
  if (!(above.meters() > 0)) return;
  picture.dimensions.push_back(
      {fmt::format("rock at least {} above the design water", wording.ground(above)),
       {1.25 * back, top - above},
       {1.25 * back, top}});
}

void draw_wall(Picture& picture, const Zone& zone) {
  const Length zero;
  const Length top = 1.25 * std::max(highest_water(picture), 2 * zone.layer_thickness);
  const Length bottom = -2 * zone.layer_thickness;
  const Length back = -1 * std::max(0.5 * zone.layer_thickness, 0.12 * top);
  picture.structures.push_back(
      {"vertical wall of the abutment; its footing is drawn as it may be, not as it is",
       {{back, bottom}, {zero, bottom}, {zero, top}, {back, top}}});
  picture.ground.insert(picture.ground.begin(), {{6 * back, top}, {back, top}, {back, zero}});
}

}  // namespace

std::optional<Picture> pier_section(const DrawnPlace& place, Picture picture) {
  const auto& [site, zone, waters, sizing, wording] = place;
  const auto reach = reach_of(zone, sizing);
  const Length zero;
  const Length half = reach.half_pier;
  const Length edge = half + reach.rock;
  picture.surface = {{edge, zero}, {-1 * edge, zero}};
  picture.ground = {{-1.5 * edge, zero}, {1.5 * edge, zero}};
  picture.level = true;
  add_depths(picture, waters, wording);
  const Length top = std::max(1.2 * highest_water(picture), 2 * zone.layer_thickness);
  const Length bottom = -1.6 * zone.layer_thickness;
  picture.structures.push_back(
      {reach.layout ? fmt::format("pier, {} wide across the flow; its foundation goes on below",
                                  wording.ground(reach.layout->projected_width))
                    : std::string("pier, of a width that is not stated"),
       {{-1 * half, bottom}, {half, bottom}, {half, top}, {-1 * half, top}}});
  const Length above = 0.45 * zone.layer_thickness;
  const auto& method = pier_riprap_layout_method().description();
  if (reach.layout) {
    picture.dimensions.push_back(
        {fmt::format(
             "rock {} from the pier's face on all sides, its top level with the bed, by: {}",
             wording.ground(reach.layout->extent), method.title),
         {half, above},
         {edge, above}});
  } else {
    picture.notes.push_back(
        {fmt::format("pier and reach of the rock drawn as they may be: give pier_width under "
                     "method_choices, {}",
                     method.id),
         {0.5 * (half + edge), zero}});
  }
  add_whole_part(picture, zone, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  for (auto& under : picture.under) {
    if (!reach.layout) break;
    under.short_of_ends = reach.layout->extent - reach.layout->filter_extent;
    under.label +=
        fmt::format(", to {} from the pier's face", wording.ground(reach.layout->filter_extent));
  }
  describe(picture, "across the flow, heights over the bed");
  return picture;
}

std::optional<Picture> abutment_section(const DrawnPlace& place, Picture picture) {
  const auto& [site, zone, waters, sizing, wording] = place;
  const auto* asked = governing_of(sizing);
  const auto apron = output_of(asked, "apron_width");
  if (!apron || !(apron->meters() > 0)) return std::nullopt;
  const Length zero;
  picture.surface = {{*apron, zero}, {zero, zero}};
  picture.ground = {{zero, zero}, {1.4 * *apron, zero}};
  picture.level = true;
  add_depths(picture, waters, wording);
  if (is_spill_through(zone)) {
    draw_fill(picture, zone, sizing, wording);
  } else {
    draw_wall(picture, zone);
  }
  const Length above = 0.5 * zone.layer_thickness;
  picture.dimensions.push_back(
      {fmt::format("apron {} from the toe into the waterway, by: {}", wording.ground(*apron),
                   asked->method->description().title),
       {zero, above},
       {*apron, above}});
  if (const auto along = output_of(asked, "slope_coverage")) {
    picture.notes.push_back(
        {fmt::format("the embankment is covered {} beyond where it leaves the abutment",
                     wording.ground(*along)),
         picture.surface.back()});
  }
  add_whole_part(picture, zone, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  describe(picture, "across the flow, heights over the bed at the toe");
  return picture;
}

}  // namespace proofstone
