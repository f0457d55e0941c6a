#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "engine/quantity/measure.h"
#include "engine/site/typical_section_parts.h"
#include "engine/site/typical_section_places.h"

namespace proofstone {
namespace {

using Picture = TypicalSectionPicture;

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

std::optional<Length> conduit_height(const Zone& zone, const SizeAsked* asked) {
  if (asked == nullptr) return std::nullopt;
  const auto choices = zone.method_choices->find(asked->method->description().id);
  if (choices == zone.method_choices->end() || !choices->is_object()) return std::nullopt;
  for (const char* key : {"height", "diameter"}) {
    const auto value = choices->find(key);
    if (value == choices->end() || !value->is_string()) continue;
    const auto height = parse_quantity<Length>(value->get<std::string>());
    if (height && height->meters() > 0) return *height;
  }
  return std::nullopt;
}

/// "apron 20 ft long by Rock apron at a culvert outlet, 25 ft wide at its end".
std::string length_label(const Zone& zone, const SizeAsked* asked, Length length,
                         const Wording& wording) {
  auto label =
      fmt::format("apron {} long, {}", wording.ground(length),
                  zone.extent.length ? "as stated" : "by: " + asked->method->description().title);
  auto width = output_of(asked, "end_width");
  if (!width) width = output_of(asked, "apron_width");
  if (width) label += fmt::format("; {} wide at its end by that method", wording.ground(*width));
  if (width && zone.extent.length) {
    label =
        fmt::format("apron {} long, as stated; {} wide at its end by: {}", wording.ground(length),
                    wording.ground(*width), asked->method->description().title);
  }
  return label;
}

void add_tailwaters(Picture& picture, const std::vector<ZoneWater>& waters,
                    const Wording& wording) {
  for (const auto& at : waters) {
    if (!at.setting || !at.setting->stated.tailwater_depth) continue;
    const Length depth = *at.setting->stated.tailwater_depth;
    picture.water_levels.push_back(
        {fmt::format("{}, tailwater {}", at.flow_case->name, wording.ground(depth)), depth});
  }
}

}  // namespace

std::optional<Picture> apron_section(const Site& site, const Zone& zone,
                                     const std::vector<ZoneWater>& waters, const ZoneSizing& sizing,
                                     Picture picture, const Wording& wording) {
  const auto* asked = governing_of(sizing);
  const auto length = zone.extent.length ? zone.extent.length : output_of(asked, "apron_length");
  if (!length || !(length->meters() > 0)) return std::nullopt;
  const Length zero;
  // The elevations are heights over the invert at the conduit's end, the stations lengths from it.
  picture.surface = {{*length, zero}, {zero, zero}};
  picture.ground = {{-0.3 * *length, zero}, {zero, zero}, {1.3 * *length, zero}};
  picture.level = true;
  Length highest = 2 * zone.layer_thickness;
  if (const auto height = conduit_height(zone, asked)) {
    picture.conduit = Picture::Conduit{
        fmt::format("conduit, {} high", wording.ground(*height)), {zero, zero}, *height};
    highest = std::max(highest, *height);
  }
  add_tailwaters(picture, waters, wording);
  for (const auto& level : picture.water_levels) highest = std::max(highest, level.level);
  const Length above = 1.2 * highest;
  picture.dimensions.push_back(
      {length_label(zone, asked, *length, wording), {zero, above}, {*length, above}});
  add_whole_part(picture, zone, sizing.specified->name, wording);
  add_under(picture, site, zone, wording);
  describe(picture, "along the flow, from the conduit's end");
  return picture;
}

}  // namespace proofstone
