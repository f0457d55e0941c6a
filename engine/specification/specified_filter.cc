#include "engine/specification/specified_filter.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/filter/beddings.h"
#include "engine/site/filter_chain.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

/// Sieves at which either limit of a layer has a point, from large to small.
std::vector<Length> sizes_of(const LayerCurves& curves) {
  std::vector<Length> sizes;
  for (const auto& point : curves.coarse()) sizes.push_back(point.size);
  for (const auto& point : curves.fine()) sizes.push_back(point.size);
  std::sort(sizes.begin(), sizes.end(), [](Length one, Length other) { return one > other; });
  const auto same = [](Length one, Length other) { return one / other < 1 + 1e-9; };
  sizes.erase(std::unique(sizes.begin(), sizes.end(), same), sizes.end());
  return sizes;
}

SpecifiedBedding begin_bedding(const Site& site, const std::string& id) {
  const auto curves = bedding_curves(site, id);
  SpecifiedBedding bedding;
  bedding.id = id;
  bedding.name = curves.name();
  bedding.is_band = curves.is_band();
  const bool own = site.materials.contains(id);
  const auto* standard = own ? nullptr : find_bedding(id);
  bedding.source = standard != nullptr ? standard->source
                                       : Source{"the document", "gradation of the material",
                                                SourceStanding::stated};
  for (const Length size : sizes_of(curves)) {
    SpecifiedSieve sieve{size, known_percent(curves.coarse(), size),
                         known_percent(curves.fine(), size)};
    // "At least none" and "at most all" limit nothing.
    if (bedding.is_band && sieve.least && *sieve.least <= 0) sieve.least.reset();
    if (bedding.is_band && sieve.most && *sieve.most >= 100 && sieve.least != 100.0) {
      sieve.most.reset();
    }
    if (sieve.least || sieve.most) bedding.sieves.push_back(sieve);
  }
  return bedding;
}

FilterPlace place_of(const Zone& zone, std::size_t layer) {
  FilterPlace place;
  place.zone = zone.name;
  const auto layers = zone.filter->layers.size();
  if (layers > 1) place.from_the_soil = fmt::format("layer {} of {} from the soil", layer, layers);
  place.under_water = zone.placement == Placement::under_water;
  return place;
}

}  // namespace

SpecifiedFilters specified_filters(const Site& site) {
  SpecifiedFilters filters;
  for (const auto& [id, zone] : site.zones) {
    if (!zone.filter) continue;
    std::size_t number = 0;
    for (const auto& layer : zone.filter->layers) {
      auto place = place_of(zone, ++number);
      if (const auto* fabric = std::get_if<GeotextileFilter>(&layer)) {
        filters.fabrics.push_back({*fabric, std::move(place)});
        continue;
      }
      const auto& granular = std::get<GranularFilter>(layer);
      place.thickness = granular.thickness;
      auto found =
          std::find_if(filters.beddings.begin(), filters.beddings.end(),
                       [&](const SpecifiedBedding& known) { return known.id == granular.bedding; });
      if (found == filters.beddings.end()) {
        filters.beddings.push_back(begin_bedding(site, granular.bedding));
        found = filters.beddings.end() - 1;
      }
      found->places.push_back(std::move(place));
    }
  }
  return filters;
}

}  // namespace proofstone
