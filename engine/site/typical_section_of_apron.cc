#include <fmt/format.h>

#include <algorithm>

#include "engine/site/chosen_inputs.h"
#include "engine/site/typical_section_parts.h"
#include "engine/site/typical_section_places.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

/// How long and how wide an apron is drawn, and who says so.
struct Apron {
  Length length;
  std::optional<Length> end_width;
  std::optional<Length> conduit;  ///< its height, or diameter
};

std::optional<Apron> apron_of(const Zone& zone, const ZoneSizing& sizing) {
  const auto* asked = governing_of(sizing);
  const auto length = zone.extent.length ? zone.extent.length : output_of(asked, "apron_length");
  if (!length || !(length->meters() > 0)) return std::nullopt;
  Apron apron{*length, output_of(asked, "end_width"),
              chosen_length(zone, &sizing, {"height", "diameter"})};
  if (!apron.end_width) apron.end_width = output_of(asked, "apron_width");
  return apron;
}

/// "apron 20 ft long by: Rock apron at a culvert outlet".
std::string length_label(const Zone& zone, const SizeAsked* asked, Length length,
                         const Wording& wording) {
  return fmt::format(
      "apron {} long, {}", wording.ground(length),
      zone.extent.length ? "as stated" : "by: " + asked->method->description().title);
}

std::string label_with_width(const Zone& zone, const SizeAsked* asked, const Apron& apron,
                             const Wording& wording) {
  auto label = length_label(zone, asked, apron.length, wording);
  if (!apron.end_width) return label;
  if (!zone.extent.length) {
    return label +
           fmt::format("; {} wide at its end by that method", wording.ground(*apron.end_width));
  }
  return label + fmt::format("; {} wide at its end by: {}", wording.ground(*apron.end_width),
                             asked->method->description().title);
}

/// Where an apron begins: the methods that flare it begin with three diameters of the conduit.
struct Beginning {
  Length width;
  std::string words;
};

std::optional<Beginning> beginning_of(const Apron& apron, Length end, const Wording& wording) {
  if (!apron.conduit) return std::nullopt;
  const Length three = 3 * *apron.conduit;
  if (three > end) return std::nullopt;
  return Beginning{
      three, fmt::format("{} wide at the conduit, three times its height", wording.ground(three))};
}

}  // namespace

std::optional<Picture> apron_section(const DrawnPlace& place, Picture picture) {
  const auto& [site, zone, waters, sizing, wording] = place;
  const auto apron = apron_of(zone, sizing);
  if (!apron) return std::nullopt;
  const Length length = apron->length;
  const Length zero;
  // The elevations are heights over the invert at the conduit's end, the stations lengths from it.
  picture.surface = {{length, zero}, {zero, zero}};
  picture.ground = {{-0.3 * length, zero}, {zero, zero}, {1.3 * length, zero}};
  picture.level = true;
  Length highest = 2 * zone.layer_thickness;
  if (apron->conduit) {
    picture.conduit =
        Picture::Conduit{fmt::format("conduit, {} high", wording.ground(*apron->conduit)),
                         {zero, zero},
                         *apron->conduit};
    highest = std::max(highest, *apron->conduit);
  }
  add_tailwaters(picture, waters, zero, wording);
  for (const auto& level : picture.water_levels) highest = std::max(highest, level.level);
  const Length above = 1.2 * highest;
  picture.dimensions.push_back({label_with_width(zone, governing_of(sizing), *apron, wording),
                                {zero, above},
                                {length, above}});
  add_whole_part(picture, zone, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  describe(picture, "along the flow, from the conduit's end");
  return picture;
}

std::optional<Picture> apron_plan(const Site& site, const Zone& zone, const ZoneSizing& sizing,
                                  const Wording& wording) {
  const auto apron = apron_of(zone, sizing);
  if (!apron) return std::nullopt;
  const auto* asked = governing_of(sizing);
  const auto end = apron->end_width ? apron->end_width : zone.extent.slope_length;
  if (!end || !(end->meters() > 0)) return std::nullopt;
  auto picture = begin_typical_section(site, zone, sizing, wording);
  picture.id = "plan-view." + zone.id;
  picture.title = fmt::format("{} from above", zone.name);
  picture.in_plan = true;
  picture.level = true;
  const Length zero;
  const Length length = apron->length;
  const Length half_end = 0.5 * *end;
  const auto beginning = beginning_of(*apron, *end, wording);
  const Length half = beginning ? 0.5 * beginning->width : half_end;
  Picture::Block rock;
  rock.label =
      fmt::format("{}, {} thick", sizing.specified->name, wording.rock(zone.layer_thickness));
  rock.outline = {{zero, -1 * half}, {length, -1 * half_end}, {length, half_end}, {zero, half}};
  picture.blocks.push_back(std::move(rock));
  if (apron->conduit) {
    const Length radius = 0.5 * *apron->conduit;
    const Length back = -1 * std::max(*apron->conduit, 0.15 * length);
    picture.structures.push_back(
        {fmt::format("conduit, {} high", wording.ground(*apron->conduit)),
         {{back, -1 * radius}, {zero, -1 * radius}, {zero, radius}, {back, radius}}});
  }
  const Length beside = -1 * half_end - 0.12 * *end;
  picture.dimensions.push_back(
      {length_label(zone, asked, length, wording), {zero, beside}, {length, beside}});
  const Length beyond = 1.08 * length;
  picture.dimensions.push_back(
      {fmt::format("{} wide at its end, {}", wording.ground(*end),
                   apron->end_width ? "by: " + asked->method->description().title
                                    : std::string("as stated")),
       {beyond, -1 * half_end},
       {beyond, half_end}});
  if (beginning) {
    const Length inside = 0.06 * length;
    picture.dimensions.push_back({beginning->words, {inside, -1 * half}, {inside, half}});
  }
  describe(picture, "flow from left to right");
  return picture;
}

}  // namespace proofstone
