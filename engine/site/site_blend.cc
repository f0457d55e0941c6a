#include "engine/site/site_blend.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofstone {
namespace {

OfferedMaterial offered(const Material& material) {
  const auto& state = material.state;
  return {material.id,     material.name, material.gradation, state.price_per_tonne,
          state.available, state.load,    state.scalp_at};
}

Expected<std::vector<OfferedMaterial>> chosen_materials(const Site& site,
                                                        const BlendQuestion& question) {
  if (question.materials.empty()) return offered_materials(site);
  std::vector<OfferedMaterial> chosen;
  Problems problems;
  for (const auto& id : question.materials) {
    const auto known = site.materials.find(id);
    if (known != site.materials.end()) {
      chosen.push_back(offered(known->second));
      continue;
    }
    std::string allowed;
    for (const auto& [other, material] : site.materials) {
      allowed += (allowed.empty() ? "" : ", ") + other;
    }
    problems.push_back({"no-such-item", fmt::format("No material is called \"{}\".", id), "",
                        "/materials", allowed.empty() ? "there is no material yet" : allowed});
  }
  if (!problems.empty()) return problems;
  return chosen;
}

/// The size to scalp at for all that state none of their own. Where a curve gives nothing below it,
/// or does not reach it, the material stays as it is and `why` says so.
void take_scalping(Length size, std::vector<OfferedMaterial>& materials,
                   std::vector<std::string>& why) {
  for (auto& material : materials) {
    if (material.scalp_at) continue;
    const auto less = scalped(material.gradation, size);
    if (less) {
      material.scalp_at = size;
    } else {
      why.push_back(
          fmt::format("{} is not scalped. {}", material.name, less.problems().front().sentence()));
    }
  }
}

void note_all(std::vector<std::string>& why, const Problems& problems) {
  for (const auto& problem : problems) why.push_back(problem.sentence());
}

void find_whole_loads(const BlendQuestion& question, SiteBlend& blend) {
  auto recipe = best_recipe(blend.target, question.buckets);
  if (recipe) {
    blend.recipe = std::move(*recipe);
  } else {
    note_all(blend.why, recipe.problems());
  }
  if (!question.mass) return;
  auto loads = cheapest_loads(blend.target, blend.materials, {*question.mass, question.margin});
  if (loads) {
    blend.loads = std::move(*loads);
  } else {
    note_all(blend.why, loads.problems());
  }
}

}  // namespace

std::vector<OfferedMaterial> offered_materials(const Site& site) {
  std::vector<OfferedMaterial> all;
  for (const auto& [id, material] : site.materials) all.push_back(offered(material));
  return all;
}

Expected<SiteBlend> blend_on_site(const Site& site, const BlendQuestion& question) {
  const auto* rock_class = find_class(site, question.rock_class);
  if (rock_class == nullptr) {
    return Problem{"no-such-class", fmt::format("No class is called \"{}\".", question.rock_class),
                   "", "/class", "an id that `proofstone classes` lists, or one of the document"};
  }
  if (!(question.margin >= 0 && question.margin <= 50)) {
    return Problem{"out-of-range", "This is no margin to a limit.", "", "/margin", "0 to 50 %"};
  }
  auto chosen = chosen_materials(site, question);
  if (!chosen) return chosen.problems();
  std::vector<std::string> why;
  if (question.scalp_at) take_scalping(*question.scalp_at, *chosen, why);
  auto materials = with_scalped(*chosen);
  if (!materials) return materials.problems();
  auto target = blend_target(*materials, rock_class->band);
  if (!target) return target.problems();

  SiteBlend blend;
  blend.rock_class = rock_class;
  blend.materials = std::move(*materials);
  blend.target = std::move(*target);
  blend.why = std::move(why);
  blend.ranges = feasible_ranges(blend.target);
  blend.widest = widest_margin(blend.target);
  if (const auto fitted = best_fit(blend.target)) blend.fitted = *fitted;
  if (!blend.ranges) {
    blend.nearest = nearest_blend(blend.target);
    if (blend.nearest) blend.why.push_back(why_infeasible(blend.target, *blend.nearest));
    return blend;
  }
  blend.cheapest = cheapest_shares(blend.target, blend.materials, question.margin);
  find_whole_loads(question, blend);
  return blend;
}

}  // namespace proofstone
