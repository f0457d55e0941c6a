#include "engine/site/mended_filter.h"

#include <fmt/format.h>

#include "engine/filter/filter_bands.h"
#include "engine/site/filter_chain.h"
#include "engine/site/filter_layer_findings.h"
#include "engine/site/filter_options.h"

namespace proofstone {
namespace {

std::size_t granular_layers(const std::vector<FilterLayer>& layers) {
  std::size_t number = 0;
  for (const auto& layer : layers) number += std::holds_alternative<GranularFilter>(layer) ? 1 : 0;
  return number;
}

/// As thick as the method asks; what is thicker already stays so.
void make_thick_enough(const Site& site, const Zone& zone, std::vector<FilterLayer>& layers) {
  const auto number = granular_layers(layers);
  for (auto& layer : layers) {
    auto* granular = std::get_if<GranularFilter>(&layer);
    if (granular == nullptr) continue;
    Steps not_shown;
    const auto least =
        least_filter_thickness(zone, number, bedding_curves(site, granular->bedding), not_shown);
    granular->thickness = std::max(granular->thickness, least);
  }
}

/// Judges chains against the rock of the zone and keeps the first that serves.
class Mending {
 public:
  Mending(const Site& site, const Zone& zone, const Wording& wording)
      : site_(site),
        zone_(zone),
        wording_(wording),
        rock_(find_class(site, zone.rock_class)->name, find_class(site, zone.rock_class)->band) {}

  std::optional<MendedFilter> run() {
    if (zone_.soil.empty()) return std::nullopt;
    if (own_layers_and_one_more()) return found_;
    for (const auto& ids : beddings_that_serve(site_, zone_, rock_, wording_)) {
      std::vector<FilterLayer> layers;
      for (const auto& id : ids) layers.emplace_back(GranularFilter{id, {}});
      if (take(site_, layers, {})) return found_;
    }
    made_layer_on_layer();
    if (!found_) fabric();
    return found_;
  }

 private:
  bool take(const Site& site, std::vector<FilterLayer> layers, std::vector<Material> made) {
    make_thick_enough(site, zone_, layers);
    if (judge_chain(site, zone_, layers, rock_, wording_).outcome != Outcome::meets) return false;
    ZoneFilter filter{std::move(layers)};
    const auto words = layers_text(site, filter, wording_);
    found_ = MendedFilter{std::move(filter), std::move(made), words};
    return true;
  }

  bool own_layers_and_one_more() {
    const auto& own = layers_of(zone_);
    if (own.empty()) return false;
    if (take(site_, own, {})) return true;
    for (const auto& id : bedding_ids(site_)) {
      auto layers = own;
      layers.emplace_back(GranularFilter{id, {}});
      if (take(site_, layers, {})) return true;
    }
    return false;
  }

  void made_layer_on_layer() {
    const auto soil = soil_below(site_, zone_);
    auto choices = filter_choices(zone_);
    choices.dispersion = soil->dispersion;
    const auto bands = filter_bands(soil->samples(), rock_, choices);
    if (!bands.why_not.empty() || bands.layers.empty()) return;
    Site with = site_;
    std::vector<FilterLayer> layers;
    std::vector<Material> made;
    for (const auto& limits : bands.layers) {
      auto curve = middle_of(limits);
      if (!curve) return;
      const auto number = made.size() + 1;
      Material material{fmt::format("made-filter-{}", number),
                        fmt::format("Filter made to its band, layer {}", number),
                        *curve,
                        {}};
      with.materials.insert_or_assign(material.id, material);
      layers.emplace_back(GranularFilter{material.id, {}});
      made.push_back(std::move(material));
    }
    take(with, layers, made);
  }

  /// Straight under the rock, as its soil asks.
  void fabric() {
    const auto soil = soil_below(site_, zone_);
    GeotextileFilter fabric;
    fabric.strength_class = 1;
    fabric.drop_height = Length::feet(1);
    const RockAbove above{largest_stone_mass(site_, zone_, rock_), false,
                          zone_.place == ZonePlace::shore};
    Steps not_shown;
    const auto needed = fabric_needed(*soil, fabric, above, not_shown);
    if (!needed) return;
    fabric.opening_size = needed->most_opening;
    fabric.permittivity = needed->least_permittivity;
    take(site_, {fabric}, {});
  }

  const Site& site_;
  const Zone& zone_;
  const Wording& wording_;
  LayerCurves rock_;
  std::optional<MendedFilter> found_;
};

}  // namespace

std::optional<MendedFilter> mended_filter(const Site& site, const Zone& zone,
                                          const Wording& wording) {
  return Mending(site, zone, wording).run();
}

std::string layers_text(const Site& site, const ZoneFilter& filter, const Wording& wording) {
  std::vector<std::string> layers;
  for (const auto& layer : filter.layers) {
    if (const auto* granular = std::get_if<GranularFilter>(&layer)) {
      layers.push_back(fmt::format("{}, {}", bedding_curves(site, granular->bedding).name(),
                                   wording.rock(granular->thickness)));
    } else {
      const auto& fabric = std::get<GeotextileFilter>(layer);
      auto text =
          fmt::format("geotextile, openings of {}", grain_text(fabric.opening_size, wording));
      if (fabric.permittivity) {
        text += fmt::format(", permittivity of {}", wording.of(*fabric.permittivity));
      }
      if (fabric.strength_class) text += fmt::format(", Class {}", *fabric.strength_class);
      layers.push_back(std::move(text));
    }
  }
  return layers.empty() ? "none" : fmt::format("{}", fmt::join(layers, "; "));
}

}  // namespace proofstone
