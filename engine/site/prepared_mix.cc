#include "engine/site/prepared_mix.h"

#include <fmt/format.h>

#include "engine/rock/middle_curve.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

MixFill fill_of(const Material& material) {
  MixFill fill{material.name, material.gradation, std::nullopt,
               material.state.in_place_over_loose()};
  if (material.state.porosity) fill.porosity = material.state.porosity->number();
  return fill;
}

void take_recipe(const Site& site, PreparedMix& prepared) {
  const auto& recipe = *prepared.recipe;
  prepared.mix.rock_parts = recipe.rock_parts;
  prepared.mix.fills = recipe.fills;
  prepared.mix.fill_parts = recipe.fill_parts;
  prepared.materials.assign(recipe.fills.size(), nullptr);
  const auto soil = site.materials.find(prepared.site_mix->soil);
  if (recipe.soil_parts > 0 && soil != site.materials.end()) {
    add_fill(prepared, soil->second, recipe.soil_parts);
  }
}

/// The curve of the class with sizes as materials state theirs.
Expected<Gradation> rock_curve(const RockClass& rock_class) {
  auto middle = middle_curve(rock_class.band);
  if (!middle || middle->basis() == GradationBasis{}) return middle;
  std::vector<GradationPoint> points = middle->points();
  const GradationBasis wanted{};
  for (auto& point : points) {
    point.size = convert_size(point.size, middle->basis().size, wanted.size);
  }
  return Gradation::make(std::move(points), wanted);
}

}  // namespace

void add_fill(PreparedMix& prepared, const Material& material, double parts) {
  prepared.mix.fills.push_back(fill_of(material));
  prepared.mix.fill_parts.push_back(parts);
  prepared.materials.push_back(&material);
}

Expected<PreparedMix> prepare_mix(const Site& site, const Zone& zone) {
  const auto& stated = site.mixes.at(zone.mix);
  const auto& class_id = stated.rock_class.empty() ? zone.rock_class : stated.rock_class;
  const RockClass* rock_class = find_class(site, class_id);
  Problems problems;
  if (!stated.rock_voids) {
    problems.push_back({"missing-field", "The voids of the rock are not stated.", "",
                        "/mixes/" + stated.id + "/rock_voids",
                        "a share such as \"0.38\", measured or by the method rock-voids"});
  }
  auto curve = rock_class != nullptr
                   ? rock_curve(*rock_class)
                   : Expected<Gradation>(Problem{"no-such-class", "The class is not known.", "",
                                                 "/mixes/" + stated.id + "/class", ""});
  if (!curve) {
    problems.insert(problems.end(), curve.problems().begin(), curve.problems().end());
  }
  if (!problems.empty()) return problems;
  PreparedMix prepared{
      &stated,
      rock_class,
      find_recipe(stated.recipe),
      {{std::move(*curve), stated.rock_voids->number()}, stated.rock_parts, {}, {}, stated.placing},
      {}};
  if (prepared.recipe != nullptr) take_recipe(site, prepared);
  for (const auto& part : stated.parts) {
    add_fill(prepared, site.materials.at(part.material), part.parts);
  }
  return prepared;
}

}  // namespace proofstone
