#include "engine/site/placing_design_of.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/acceptance/layer_survey.h"
#include "engine/site/filter_chain.h"

namespace proofstone {
namespace {

/// Placed rock varies by about this share of its thickness from point to point before anything is
/// measured (common practice, no source); the mean is wanted to within a tenth.
constexpr double usual_spread = 0.2;
constexpr double mean_within = 0.1;

std::vector<MixShare> shares_of(const Site& site, const Zone& zone) {
  std::vector<MixShare> shares;
  if (zone.mix.empty()) return shares;
  const auto& mix = site.mixes.at(zone.mix);
  const auto* rock = find_class(site, mix.rock_class.empty() ? zone.rock_class : mix.rock_class);
  const std::string rock_name = rock == nullptr ? "rock" : rock->name;
  const auto* recipe = find_recipe(mix.recipe);
  if (recipe != nullptr) {
    shares.push_back({"rock", rock_name, recipe->rock_parts});
    for (std::size_t i = 0; i < recipe->fills.size(); ++i) {
      shares.push_back(
          {fmt::format("fill-{}", i + 1), recipe->fills[i].name, recipe->fill_parts[i]});
    }
    if (recipe->soil_parts > 0 && !mix.soil.empty()) {
      shares.push_back({mix.soil, site.materials.at(mix.soil).name, recipe->soil_parts});
    }
  } else if (!mix.parts.empty()) {
    shares.push_back({"rock", rock_name, mix.rock_parts});
    for (const auto& part : mix.parts) {
      shares.push_back({part.material, site.materials.at(part.material).name, part.parts});
    }
  }
  return shares;
}

void add_filter(const Site& site, const Zone& zone, PlacingDesign& design) {
  if (!zone.filter) return;
  for (const auto& layer : zone.filter->layers) {
    DesignedFilterLayer designed;
    if (const auto* granular = std::get_if<GranularFilter>(&layer)) {
      designed.name = bedding_curves(site, granular->bedding).name();
      designed.thickness = granular->thickness;
    } else {
      const auto& fabric = std::get<GeotextileFilter>(layer);
      designed.fabric = true;
      designed.strength_class = fabric.strength_class;
      designed.drop_height = fabric.drop_height;
    }
    design.filter.push_back(std::move(designed));
  }
}

std::optional<DesignedKey> trench_of(const std::optional<AnchorTrench>& trench) {
  if (!trench) return std::nullopt;
  return DesignedKey{trench->width, trench->depth};
}

DesignedCover cover_of(const ZoneCover& cover) {
  DesignedCover designed;
  designed.topsoil = cover.topsoil;
  designed.seed = !cover.seed.empty();
  designed.blanket = cover.blanket.has_value();
  if (cover.blanket) {
    designed.side_overlap = cover.blanket->side_overlap;
    designed.end_overlap = cover.blanket->end_overlap;
  }
  if (cover.stakes) {
    designed.stake_length = cover.stakes->length;
    designed.stake_spacing = cover.stakes->spacing;
  }
  designed.top_trench = trench_of(cover.top_trench);
  designed.water_edge_trench = trench_of(cover.water_edge_trench);
  return designed;
}

}  // namespace

PlacingDesign placing_design(const Site& site, const Zone& zone) {
  PlacingDesign design;
  if (const auto* rock_class = find_class(site, zone.rock_class)) {
    design.class_name = rock_class->name;
    design.largest_stone = rock_class->largest_stone;
  }
  design.layer_thickness = zone.layer_thickness;
  design.length = zone.extent.length;
  if (!design.length && zone.along) design.length = zone.along->to - zone.along->from;
  design.under_water = zone.placement == Placement::under_water;
  design.survey_points =
      points_for_mean(usual_spread, mean_within, 0.5 * (1 - site.evidence.confidence)).value_or(0);
  add_filter(site, zone, design);
  design.filled =
      !zone.mix.empty() || std::any_of(zone.kinds.begin(), zone.kinds.end(),
                                       [](const KindUpSlope& one) { return is_filled(one.kind); });
  design.mix = shares_of(site, zone);
  if (zone.toe) {
    design.toe_depth = zone.toe->depth;
    design.toe_thickness = zone.toe->thickness;
    design.toe_stored = zone.toe->kind == ToeKind::launchable;
  }
  if (zone.top_key) design.top_key = DesignedKey{zone.top_key->width, zone.top_key->depth};
  if (zone.cover) design.cover = cover_of(*zone.cover);
  design.tolerances = site.placing_tolerances;
  return design;
}

}  // namespace proofstone
