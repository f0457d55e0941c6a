#include "engine/site/designed_mix.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/mix_stability.h"

namespace proofstone {
namespace {

/// The same mix with the materials to design with.
PreparedMix for_design(const Site& site, const PreparedMix& prepared) {
  PreparedMix wanted = prepared;
  const auto& named = prepared.site_mix->on_offer;
  if (!named.empty()) {
    wanted.mix.fills.clear();
    wanted.mix.fill_parts.clear();
    wanted.materials.clear();
    for (const auto& id : named) add_fill(wanted, site.materials.at(id), 1);
  }
  if (wanted.mix.fills.empty()) {
    for (const auto& [id, material] : site.materials) add_fill(wanted, material, 1);
  }
  wanted.mix.rock_parts = 1;
  return wanted;
}

MixFitness fitness_of(const MixAsFilter& filter) {
  MixFitness fitness;
  fitness.stability = filter.stability_outcome;
  fitness.criteria_kept = static_cast<int>(
      std::count_if(filter.stability.verdicts.begin(), filter.stability.verdicts.end(),
                    [](const StabilityVerdict& one) { return one.outcome == Outcome::meets; }));
  if (filter.on_soil) fitness.as_filter = filter.on_soil->outcome;
  return fitness;
}

std::string not_full(const DesignedMix& made) {
  const auto& design = made.design;
  std::string text =
      fmt::format(" No whole buckets, at most {} to a batch, fill {:.2f} of the voids",
                  made.mix.site_mix->most_buckets, least_filling);
  if (!design.dilation_to_fill) return text + " without more than they hold.";
  return text + fmt::format(
                    " and leave the stones touching: what fills them holds the rock apart by "
                    "{:.2f} at least, where {:.2f} is usual at most. Of those that leave them "
                    "touching this fills most.",
                    *design.dilation_to_fill, most_dilation);
}

/// Of those that fill the voids, in the words of the one that was chosen.
std::string soil_words(const MixDesign& design, const MixAsFilter& filter) {
  if (!filter.on_soil) {
    return " Whether it keeps the ground below is not known: the zone states no soil.";
  }
  if (design.fitness.as_filter == Outcome::meets) {
    return fmt::format(" This one keeps the soil below, as {} of them do{}.", design.full_as_filter,
                       design.full_as_filter == 1 ? "es" : "");
  }
  const char* verdict = " None of them keeps the soil below for certain. The nearest: ";
  if (design.fitness.as_filter == Outcome::falls_short) {
    verdict = " None of them keeps the soil below. The nearest: ";
  }
  return verdict + filter.on_soil->sentence;
}

std::string stability_words(const MixDesign& design, const MixAsFilter& filter) {
  if (design.fitness.stability == Outcome::meets) return "";
  if (design.full_stable > 0) {
    return fmt::format(
        " The soil comes first: {} of them hold{} {} own fine grains by every criterion, and none "
        "of those keeps the soil as well.",
        design.full_stable, design.full_stable == 1 ? "s" : "",
        design.full_stable == 1 ? "its" : "their");
  }
  return fmt::format(
      " None holds its own fine grains by every criterion; this one holds them by {} of {}. {}",
      design.fitness.criteria_kept, filter.stability.verdicts.size(), filter.stability.sentence);
}

}  // namespace

Expected<DesignedMix> designed_mix(const Site& site, const Zone& zone,
                                   const PreparedMix& prepared) {
  const auto wanted = for_design(site, prepared);
  const Wording unread(UnitSystem::si);
  const auto judge = [&](const FilledMix& mix, const MixBalance& balance) {
    const auto filter = mix_as_filter(site, zone, "", mix, balance, unread);
    return filter ? fitness_of(*filter) : MixFitness{};
  };
  const auto design = design_mix(wanted.mix, prepared.site_mix->most_buckets, judge);
  if (!design) return design.problems();
  DesignedMix made{wanted, *design, {}};
  made.mix.recipe = nullptr;
  made.mix.mix = with_recipe(wanted.mix, design->recipe);
  made.mix.materials.clear();
  for (std::size_t i = 0; i < design->recipe.fill_buckets.size(); ++i) {
    if (design->recipe.fill_buckets[i] > 0) made.mix.materials.push_back(wanted.materials[i]);
  }
  std::string named;
  for (const auto& problem : design->left_out) {
    if (problem.where == named) continue;  // the first reason is enough
    named = problem.where;
    made.left_out.push_back("Left out of the proportions: " + problem.sentence());
  }
  return made;
}

std::string what_is_kept(const Site& site, const Zone& zone, const DesignedMix& made,
                         const Wording& wording) {
  const auto& design = made.design;
  if (design.full == 0) return not_full(made);
  const auto balance = balance_of(made.mix.mix);
  if (!balance) return "";
  const auto filter =
      mix_as_filter(site, zone, made.mix.site_mix->name, made.mix.mix, *balance, wording);
  if (!filter) return "";
  if (design.full_both > 0) {
    return fmt::format(
        " Of {} proportions that fill the voids and leave the stones touching, {} keep{} the soil "
        "below and {} own fine grains; this is the fullest of those.",
        design.full, design.full_both, design.full_both == 1 ? "s" : "",
        design.full_both == 1 ? "its" : "their");
  }
  return fmt::format(" {} fill{} the voids and leave{} the stones touching.",
                     design.full == 1 ? "One proportion of whole buckets"
                                      : fmt::format("{} proportions of whole buckets", design.full),
                     design.full == 1 ? "s" : "", design.full == 1 ? "s" : "") +
         soil_words(design, *filter) + stability_words(design, *filter);
}

std::string advice_on_kept(const Zone& zone, const MixDesign& design) {
  if (design.full == 0) return "";
  if (!zone.soil.empty() && design.fitness.as_filter != Outcome::meets) {
    return "Put bedding or a fabric below the layer, or offer a material whose sizes lie between "
           "those of the fill and the soil.";
  }
  if (design.fitness.stability == Outcome::meets) return "";
  return "Offer the sizes that are missing between rock and fill, or cover the face of the layer "
         "until plants hold the fill.";
}

}  // namespace proofstone
