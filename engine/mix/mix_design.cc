#include "engine/mix/mix_design.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

#include "engine/mix/packed_material.h"

namespace proofstone {
namespace {

constexpr double alike = 0.01;  // of the degree of filling
constexpr int largest_most_buckets = 20;
constexpr double rounding = 1e-9;

/// Packs many recipes of the same materials, all within what the packing model reaches.
class RecipeBalance {
 public:
  explicit RecipeBalance(const FilledMix& mix) : rock_density_(1 - mix.rock.voids) {
    std::vector<PackedClass> fills;
    for (const auto& fill : mix.fills) {
      const double density = 1 - fill.porosity.value_or(0.4);
      solids_of_loose_.push_back(density * fill.in_place_over_loose.value_or(1));
      const auto classes = packed_classes(fill.gradation, density, rodded_index);
      add(classes, fills);
    }
    fill_sizes_.emplace(fills, rodded_index);
    add(packed_classes(mix.rock.gradation, rock_density_, rodded_index), fills);
    all_sizes_.emplace(fills, rodded_index);
  }

  /// For `ratios` of loose fill to rock; one a fill.
  MixBalance of(const std::vector<double>& ratios, double voids) const {
    MixBalance balance;
    double all = 0;
    for (std::size_t i = 0; i < ratios.size(); ++i) {
      balance.loose_ratio += ratios[i];
      balance.solids.push_back(ratios[i] * solids_of_loose_[i]);
      all += balance.solids.back();
    }
    balance.fill_in_place = all / fill_sizes_->pack(shares(balance.solids, all)).density;
    balance.filling = balance.fill_in_place / voids;
    balance.bulking = std::max(1.0, 1 + balance.fill_in_place - voids);
    auto solids = balance.solids;
    solids.push_back(rock_density_);
    const double density = all_sizes_->pack(shares(solids, all + rock_density_)).density;
    balance.mix_density = density;
    balance.dilation =
        dilation_index(rock_density_, density, rock_density_ / (rock_density_ + all));
    return balance;
  }

 private:
  void add(const std::vector<PackedClass>& classes, std::vector<PackedClass>& into) {
    shares_within_.emplace_back();
    for (const auto& one : classes) {
      shares_within_.back().push_back(one.share);
      into.push_back(one);
    }
  }

  std::vector<double> shares(const std::vector<double>& solids, double all) const {
    std::vector<double> shares;
    for (std::size_t m = 0; m < solids.size(); ++m) {
      for (const double within : shares_within_[m]) shares.push_back(within * solids[m] / all);
    }
    return shares;
  }

  double rock_density_;
  std::vector<double> solids_of_loose_;
  std::vector<std::vector<double>> shares_within_;
  std::optional<PackedSizes> fill_sizes_;
  std::optional<PackedSizes> all_sizes_;
};

class Search {
 public:
  Search(const FilledMix& mix, int most_buckets)
      : mix_(mix), most_(most_buckets), balance_(mix), buckets_(mix.fills.size(), 0) {}

  std::optional<MixRecipe> run() {
    for (int rock = 1; rock < most_; ++rock) {
      rock_ = rock;
      add_buckets(0, most_ - rock);
    }
    const MixRecipe* chosen = nullptr;
    for (const auto& recipe : found_) {
      if (recipe.balance.filling < fullest_ - alike) continue;
      if (chosen == nullptr || recipe.buckets() < chosen->buckets()) chosen = &recipe;
    }
    return chosen == nullptr ? std::nullopt : std::optional<MixRecipe>(*chosen);
  }

 private:
  /// Whether the recipe at hand fits. More of anything only fills and forces further, so that a
  /// recipe that does not fit ends its branch.
  bool try_recipe() {
    std::vector<double> ratios;
    for (const int buckets : buckets_) ratios.push_back(static_cast<double>(buckets) / rock_);
    auto balance = balance_.of(ratios, mix_.rock.voids);
    if (balance.filling > 1 + rounding) return false;
    if (mix_.placing == MixPlacing::mixed && balance.dilation.value_or(1) > most_dilation) {
      return false;
    }
    fullest_ = std::max(fullest_, balance.filling);
    if (balance.filling >= fullest_ - alike) {
      found_.push_back({rock_, buckets_, std::move(balance)});
    }
    return true;
  }

  void add_buckets(std::size_t fill, int left) {
    if (fill == buckets_.size()) return;
    add_buckets(fill + 1, left);
    for (int count = 1; count <= left; ++count) {
      buckets_[fill] = count;
      if (!try_recipe()) break;
      add_buckets(fill + 1, left - count);
    }
    buckets_[fill] = 0;
  }

  const FilledMix& mix_;
  int most_;
  RecipeBalance balance_;
  std::vector<int> buckets_;
  int rock_ = 1;
  double fullest_ = 0;
  std::vector<MixRecipe> found_;  ///< the fullest so far, and those like it
};

}  // namespace

int MixRecipe::buckets() const {
  return std::accumulate(fill_buckets.begin(), fill_buckets.end(), rock_buckets);
}

Expected<MixRecipe> design_mix(const FilledMix& mix, int most_buckets) {
  if (most_buckets < 2 || most_buckets > largest_most_buckets) {
    return Problem{"buckets-out-of-range", fmt::format("{} buckets make no mix.", most_buckets), "",
                   "buckets", fmt::format("2 to {}", largest_most_buckets)};
  }
  FilledMix probe = mix;
  probe.rock_parts = 1;
  probe.fill_parts.assign(mix.fills.size(), 1);
  const auto sound = balance_of(probe);
  Problems problems = sound ? sound->beyond_packing : sound.problems();
  for (const auto& fill : mix.fills) {
    if (!fill.porosity && mix.fills.size() == 1) {
      problems.push_back({"porosity-not-known", "Its porosity in place is not known.", "",
                          fill.name, "a porosity of 0.1 to 0.7"});
    }
  }
  if (!problems.empty()) return problems;
  auto recipe = Search(mix, most_buckets).run();
  if (!recipe) {
    return Problem{"no-recipe", "No whole buckets fit without forcing the rock apart.", "", "",
                   "more buckets to a batch, or finer fill"};
  }
  return *recipe;
}

FilledMix with_recipe(const FilledMix& mix, const MixRecipe& recipe) {
  FilledMix made{mix.rock, static_cast<double>(recipe.rock_buckets), {}, {}, mix.placing};
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    if (recipe.fill_buckets[i] == 0) continue;
    made.fills.push_back(mix.fills[i]);
    made.fill_parts.push_back(recipe.fill_buckets[i]);
  }
  return made;
}

}  // namespace proofstone
