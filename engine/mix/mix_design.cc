#include "engine/mix/mix_design.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <tuple>

#include "engine/finding/outcome_order.h"
#include "engine/mix/packed_material.h"
#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

constexpr double alike = 0.01;  // of the degree of filling
constexpr int largest_most_buckets = 20;

/// Packs many recipes of the same materials, all within what the packing model reaches.
class RecipeBalance {
 public:
  explicit RecipeBalance(const FilledMix& mix) : rock_density_(1 - mix.rock.voids) {
    std::vector<PackedClass> fills;
    for (const auto& fill : mix.fills) {
      const double density = 1 - fill.porosity.value_or(0.4);  // all of them have one here
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

/// Everything that whole buckets of the fills come to.
class Search {
 public:
  Search(const FilledMix& mix, int most_buckets)
      : mix_(mix), most_(most_buckets), balance_(mix), buckets_(mix.fills.size(), 0) {}

  void run() {
    for (int rock = 1; rock < most_; ++rock) {
      rock_ = rock;
      add_buckets(0, most_ - rock);
    }
  }

  /// Those in which the stones touch.
  std::vector<MixRecipe>& in_contact() { return in_contact_; }
  /// Of those that fill the voids, touching or not.
  std::optional<double> least_dilation() const { return least_dilation_; }

 private:
  /// Whether the fill goes into the voids. More of anything only fills further, so that a recipe
  /// that does not ends its branch.
  bool try_recipe() {
    std::vector<double> ratios;
    int common = rock_;
    for (const int buckets : buckets_) {
      ratios.push_back(static_cast<double>(buckets) / rock_);
      common = std::gcd(common, buckets);
    }
    auto balance = balance_.of(ratios, mix_.rock.voids);
    if (balance.filling > 1 + rounding) return false;
    if (common > 1) return true;  // fewer buckets come to the same
    const double dilation = balance.dilation.value_or(1);
    const bool mixed = mix_.placing == MixPlacing::mixed;
    if (mixed && is_full(balance)) {
      least_dilation_ = std::min(least_dilation_.value_or(dilation), dilation);
    }
    if (mixed && dilation > most_dilation) return true;
    in_contact_.push_back({rock_, buckets_, std::move(balance)});
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
  std::vector<MixRecipe> in_contact_;
  std::optional<double> least_dilation_;
};

FilledMix with_one_fill(const FilledMix& mix, const MixFill& fill) {
  return {mix.rock, 1, {fill}, {1}, mix.placing};
}

/// What stands in the way of designing with a fill.
Problems problems_of_fill(const FilledMix& mix, const MixFill& fill) {
  const auto alone = with_one_fill(mix, fill);
  const auto balance = balance_of(alone);
  Problems problems = balance ? balance->beyond_packing : balance.problems();
  std::erase_if(problems, [](const Problem& problem) { return problem.where == of_rock; });
  if (!fill.porosity) {
    problems.push_back({"porosity-not-known", "Its porosity in place is not known.", "", fill.name,
                        "a porosity of 0.1 to 0.7"});
  }
  if (mix.placing == MixPlacing::washed_in && !can_be_washed_in(alone).value_or(true)) {
    problems.push_back({"too-coarse", "It is too coarse to be washed into rock that lies.", "",
                        fill.name, "nine tenths of it smaller than 0.15 of the rock's D15"});
  }
  return problems;
}

Problems problems_of_rock(const FilledMix& mix) {
  Problems problems;
  if (mix.fills.empty()) {
    problems.push_back({"no-fill", "The mix has no fill.", "", "", "at least one fill"});
    return problems;
  }
  auto balance = balance_of(with_one_fill(mix, mix.fills.front()));
  problems = balance ? balance->beyond_packing : balance.problems();
  std::erase_if(problems, [](const Problem& problem) { return problem.where != of_rock; });
  return problems;
}

/// What is better comes first.
std::tuple<int, int, int> order_of(const MixFitness& fitness) {
  return {weight(fitness.as_filter), weight(fitness.stability), -fitness.criteria_kept};
}

double fullest(const std::vector<MixRecipe>& recipes) {
  double most = 0;
  for (const auto& recipe : recipes) most = std::max(most, recipe.balance.filling);
  return most;
}

/// The balance as of the mix without the fills that the recipe leaves out.
MixBalance balance_of_taken(const MixRecipe& recipe) {
  MixBalance balance = recipe.balance;
  balance.solids.clear();
  for (std::size_t i = 0; i < recipe.fill_buckets.size(); ++i) {
    if (recipe.fill_buckets[i] > 0) balance.solids.push_back(recipe.balance.solids[i]);
  }
  return balance;
}

/// The best of recipes that all keep the contact and fill as far as is possible.
void choose(const FilledMix& mix, std::vector<MixRecipe> recipes, const MixJudge& judge,
            MixDesign& design) {
  std::vector<MixFitness> fitness(recipes.size());
  for (std::size_t i = 0; judge && i < recipes.size(); ++i) {
    fitness[i] = judge(with_recipe(mix, recipes[i]), balance_of_taken(recipes[i]));
  }
  std::vector<MixRecipe> best;
  for (std::size_t i = 0; i < recipes.size(); ++i) {
    const bool filters = fitness[i].as_filter == Outcome::meets;
    const bool stable = fitness[i].stability == Outcome::meets;
    if (is_full(recipes[i].balance)) {
      ++design.full;
      design.full_as_filter += filters ? 1 : 0;
      design.full_stable += stable ? 1 : 0;
      design.full_both += filters && stable ? 1 : 0;
    }
    if (best.empty() || order_of(fitness[i]) < order_of(design.fitness)) {
      best.clear();
      design.fitness = fitness[i];
    }
    if (order_of(fitness[i]) == order_of(design.fitness)) best.push_back(recipes[i]);
  }
  const double most = fullest(best);
  for (auto& recipe : best) {
    if (recipe.balance.filling < most - alike) continue;
    if (design.recipe.rock_buckets > 0 && recipe.buckets() >= design.recipe.buckets()) continue;
    design.recipe = std::move(recipe);
  }
}

}  // namespace

int MixRecipe::buckets() const {
  return std::accumulate(fill_buckets.begin(), fill_buckets.end(), rock_buckets);
}

Expected<MixDesign> design_mix(const FilledMix& mix, int most_buckets, const MixJudge& judge) {
  if (most_buckets < 2 || most_buckets > largest_most_buckets) {
    return Problem{"buckets-out-of-range", fmt::format("{} buckets make no mix.", most_buckets), "",
                   "buckets", fmt::format("2 to {}", largest_most_buckets)};
  }
  if (auto problems = problems_of_rock(mix); !problems.empty()) return problems;
  MixDesign design;
  FilledMix usable{mix.rock, 1, {}, {}, mix.placing};
  std::vector<std::size_t> place;
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    const auto problems = problems_of_fill(mix, mix.fills[i]);
    design.left_out.insert(design.left_out.end(), problems.begin(), problems.end());
    if (!problems.empty()) continue;
    usable.fills.push_back(mix.fills[i]);
    usable.fill_parts.push_back(1);
    place.push_back(i);
  }
  if (usable.fills.empty()) return design.left_out;
  Search search(usable, most_buckets);
  search.run();
  auto& recipes = search.in_contact();
  if (recipes.empty()) {
    return Problem{"no-recipe", "No whole buckets fit without forcing the rock apart.", "", "",
                   "more buckets to a batch, or finer fill"};
  }
  const double most = fullest(recipes);
  const double floor = std::min(least_filling, most - alike);
  std::erase_if(recipes, [&](const MixRecipe& one) { return one.balance.filling < floor; });
  choose(usable, std::move(recipes), judge, design);
  if (design.full == 0) design.dilation_to_fill = search.least_dilation();
  // As one of the fills that were given.
  auto& recipe = design.recipe;
  std::vector<int> buckets(mix.fills.size(), 0);
  std::vector<double> solids(mix.fills.size(), 0);
  for (std::size_t i = 0; i < place.size(); ++i) {
    buckets[place[i]] = recipe.fill_buckets[i];
    solids[place[i]] = recipe.balance.solids[i];
  }
  recipe.fill_buckets = std::move(buckets);
  recipe.balance.solids = std::move(solids);
  return design;
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
