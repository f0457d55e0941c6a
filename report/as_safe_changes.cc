#include "report/as_safe_changes.h"

#include <fmt/format.h>

#include <cmath>
#include <nlohmann/json.hpp>

namespace proofstone {
namespace {

using nlohmann::json;

/// What was only converted between units may be off by so much of a last place.
constexpr double rounding = 1e-6;

/// In whole steps, no less than it is.
std::string at_least(Length length, UnitSystem units) {
  const auto up = [](double value, double step) {
    return std::ceil(value / step - rounding) * step;
  };
  return units == UnitSystem::us_customary ? fmt::format("{:g} in", up(length.inches(), 0.25))
                                           : fmt::format("{:g} mm", up(length.millimeters(), 5));
}

/// To a thousandth of a millimetre, no more than it is.
std::string at_most(Length opening) {
  constexpr double step = 1000;
  return fmt::format("{:g} mm", std::floor(opening.millimeters() * step + rounding) / step);
}

/// To a thousandth, no less than it is.
std::string at_least(Rate permittivity) {
  constexpr double step = 1000;
  return fmt::format("{:g} /s", std::ceil(permittivity.si() * step - rounding) / step);
}

std::string_view fabric_word(Fabric fabric) {
  switch (fabric) {
    case Fabric::woven_monofilament:
      return "woven monofilament";
    case Fabric::woven_slit_film:
      return "woven slit film";
    default:
      return "nonwoven";
  }
}

json layer_json(const FilterLayer& layer, UnitSystem units) {
  if (const auto* granular = std::get_if<GranularFilter>(&layer)) {
    return {{"kind", "granular"},
            {"bedding", granular->bedding},
            {"thickness", at_least(granular->thickness, units)}};
  }
  const auto& fabric = std::get<GeotextileFilter>(layer);
  json one = {{"kind", "geotextile"},
              {"opening_size", at_most(fabric.opening_size)},
              {"fabric", fabric_word(fabric.fabric)}};
  if (fabric.permittivity) one["permittivity"] = at_least(*fabric.permittivity);
  if (fabric.thickness) one["thickness"] = fmt::format("{:g} mm", fabric.thickness->millimeters());
  if (fabric.strength_class) one["strength_class"] = *fabric.strength_class;
  if (fabric.drop_height) {
    one["drop_height"] = units == UnitSystem::us_customary
                             ? fmt::format("{:g} ft", fabric.drop_height->feet())
                             : fmt::format("{:g} m", fabric.drop_height->meters());
  }
  return one;
}

json material_json(const Material& material) {
  json rows = json::array();
  for (const auto& point : material.gradation.points()) {
    rows.push_back({{"size", fmt::format("{:.6g} mm", point.size.millimeters())},
                    {"smaller", fmt::format("{:.6g} %", point.percent_smaller)}});
  }
  return {{"name", material.name}, {"gradation", std::move(rows)}};
}

class Changes {
 public:
  explicit Changes(UnitSystem units) : units_(units) {}

  void zone(const Substitution::AsSafe& as_safe) {
    const auto& [zone, before] = std::tie(as_safe.zone, as_safe.before);
    const auto at = "/zones/" + zone.id;
    if (zone.source != before.source) set(at + "/source", zone.source);
    if (zone.rock_class != before.rock_class) set(at + "/class", zone.rock_class);
    if (zone.layer_thickness > before.layer_thickness * (1 + rounding)) {
      set(at + "/layer_thickness", at_least(zone.layer_thickness, units_));
    }
    for (const auto& made : as_safe.made) set("/materials/" + made.id, material_json(made));
    if (!as_safe.mended_filter) return;
    json layers = json::array();
    for (const auto& layer : zone.filter->layers) layers.push_back(layer_json(layer, units_));
    set(at + "/filter", std::move(layers));
  }

  void mix(const SiteMix& mix, const SiteMix& before) {
    const auto at = "/mixes/" + mix.id;
    if (mix.rock_class != before.rock_class) set(at + "/class", mix.rock_class);
    for (const auto& [field, stands, stood] :
         {std::tuple{"/recipe", &mix.recipe, &before.recipe}, {"/soil", &mix.soil, &before.soil}}) {
      if (stands->empty() && !stood->empty()) changes_.push_back({{"remove", at + field}});
    }
    if (mix.parts.empty()) return;
    set(at + "/rock_parts", fmt::format("{:g}", mix.rock_parts));
    json parts = json::array();
    for (const auto& part : mix.parts) {
      parts.push_back({{"material", part.material}, {"parts", fmt::format("{:g}", part.parts)}});
    }
    set(at + "/parts", std::move(parts));
  }

  json taken() { return std::move(changes_); }

 private:
  void set(std::string pointer, json value) {
    changes_.push_back({{"set", std::move(pointer)}, {"to", std::move(value)}});
  }

  UnitSystem units_;
  json changes_ = json::array();
};

}  // namespace

json as_safe_changes(const Substitution::AsSafe& as_safe, UnitSystem units) {
  Changes changes(units);
  changes.zone(as_safe);
  if (as_safe.mix && as_safe.mix_before) changes.mix(*as_safe.mix, *as_safe.mix_before);
  return changes.taken();
}

}  // namespace proofstone
