#include <fmt/format.h>

#include "engine/site/filter_chain.h"
#include "engine/site/zone_filter_findings.h"

namespace proofstone {
namespace {

FilterPicture::Layer drawn(const LayerCurves& layer, FilterPicture::Part part) {
  return {layer.name(), part, layer.coarse(), layer.is_band() ? layer.fine() : CurvePoints{}};
}

void put_control_points(const FilterLimits& limits, FilterPicture& picture) {
  picture.control_points = {{15, limits.max_d15, true}, {15, limits.min_d15, false},
                            {60, limits.max_d60, true}, {60, limits.min_d60, false},
                            {5, limits.min_d5, false},  {100, limits.max_d100, true},
                            {90, limits.max_d90, true}};
}

}  // namespace

std::optional<FilterPicture> filter_picture(const Site& site, const Zone& zone) {
  if (zone.soil.empty() && !zone.filter) return std::nullopt;
  FilterPicture picture;
  picture.id = "filter." + zone.id;
  picture.title = fmt::format("Soil, filter and rock of {}", zone.name);
  std::vector<std::string> names;
  const auto put = [&](const LayerCurves& layer, FilterPicture::Part part) {
    picture.layers.push_back(drawn(layer, part));
    names.push_back(layer.name());
  };
  if (const auto soil = soil_below(site, zone)) {
    put(soil->curves, FilterPicture::Part::soil);
    for (const auto& sample : soil->further) put(sample, FilterPicture::Part::soil);
    auto choices = filter_choices(zone);
    choices.dispersion = soil->dispersion;
    Steps not_shown;
    const auto limits = filter_limits(soil->samples(), choices, not_shown);
    if (limits) put_control_points(*limits, picture);
  }
  if (zone.filter) {
    for (const auto& layer : zone.filter->layers) {
      if (const auto* granular = std::get_if<GranularFilter>(&layer)) {
        put(bedding_curves(site, granular->bedding), FilterPicture::Part::filter);
      } else {
        picture.fabric_opening = std::get<GeotextileFilter>(layer).opening_size;
      }
    }
  }
  const auto* rock = find_class(site, zone.rock_class);
  put({rock->name, rock->band}, FilterPicture::Part::rock);
  picture.description = fmt::format(
      "Percent smaller by mass against grain size, from left to right: {}.{}{}", listed(names),
      picture.control_points.empty()
          ? ""
          : " Arrows mark the control points between which a filter on the soil must lie.",
      picture.fabric_opening ? " A line marks the openings of the geotextile." : "");
  return picture;
}

}  // namespace proofstone
