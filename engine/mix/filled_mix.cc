#include "engine/mix/filled_mix.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/blend.h"
#include "engine/mix/packed_material.h"

namespace proofstone {
namespace {

bool is_share(double value) { return value >= least_voids && value <= most_voids; }

Problems problems_of(const FilledMix& mix) {
  Problems problems;
  const auto positive = [&](double parts, const std::string& where) {
    if (!(std::isfinite(parts) && parts > 0)) {
      problems.push_back({"not-positive", "Its parts are not above zero.", "", where, "above 0"});
    }
  };
  positive(mix.rock_parts, of_rock);
  if (!is_share(mix.rock.voids)) {
    problems.push_back(
        {"voids-outside", "No rock has this share of voids.", "", of_rock, "0.1 to 0.7"});
  }
  if (mix.fills.empty()) {
    problems.push_back({"no-fill", "The mix has no fill.", "", "", "at least one fill"});
  }
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    const auto& fill = mix.fills[i];
    positive(mix.fill_parts[i], fill.name);
    if (!fill.in_place_over_loose) {
      problems.push_back({"factor-not-known",
                          "How far it shrinks from loose to in place is not known.", "", fill.name,
                          "loose_over_bank and in_place_over_bank"});
    } else if (!(*fill.in_place_over_loose >= 0.3 && *fill.in_place_over_loose <= 1.5)) {
      problems.push_back({"factor-outside", "No earth shrinks or grows so far.", "", fill.name,
                          "0.3 to 1.5 of its loose volume"});
    }
    if (fill.porosity && !is_share(*fill.porosity)) {
      problems.push_back(
          {"voids-outside", "No grains have this porosity.", "", fill.name, "0.1 to 0.7"});
    }
    if (!fill.porosity && mix.fills.size() > 1) {
      problems.push_back({"porosity-not-known", "Its porosity in place is not known.", "",
                          fill.name, "a porosity of 0.1 to 0.7"});
    }
  }
  return problems;
}

/// Loose volume of a fill for each unit of rock.
double loose_of(const FilledMix& mix, std::size_t i) { return mix.fill_parts[i] / mix.rock_parts; }

/// Classes of several materials with their shares of the solids.
std::vector<PackedClass> classes_together(const std::vector<std::vector<PackedClass>>& materials,
                                          const std::vector<double>& solids) {
  double all = 0;
  for (const double one : solids) all += one;
  std::vector<PackedClass> together;
  for (std::size_t m = 0; m < materials.size(); ++m) {
    for (PackedClass one : materials[m]) {
      one.share *= solids[m] / all;
      together.push_back(one);
    }
  }
  return together;
}

/// Precondition: the packing model reaches every material.
double density_together(const std::vector<std::vector<PackedClass>>& materials,
                        const std::vector<double>& solids) {
  const auto classes = classes_together(materials, solids);
  std::vector<double> shares;
  for (const auto& one : classes) shares.push_back(one.share);
  return PackedSizes(classes, rodded_index).pack(shares).density;
}

Problems fills_beyond_packing(const FilledMix& mix) {
  Problems problems;
  for (const auto& fill : mix.fills) {
    if (!fill.porosity) continue;
    auto beyond = beyond_packing(fill.name, fill.gradation, *fill.porosity, rodded_index);
    if (beyond) problems.push_back(std::move(*beyond));
  }
  return problems;
}

void weigh_volumes(const FilledMix& mix, MixBalance& balance) {
  for (std::size_t i = 0; i < mix.fills.size(); ++i) balance.loose_ratio += loose_of(mix, i);
  const double n = mix.rock.voids;
  balance.filling = balance.fill_in_place / n;
  balance.bulking = std::max(1.0, 1 + balance.fill_in_place - n);
  if (mix.fills.size() == 1) balance.compaction_that_fits = n / balance.loose_ratio;
}

constexpr double rounding_of_amounts = 1e-6;

/// Rock to 0 % smaller.
Gradation to_its_end(const Gradation& rock) {
  auto points = rock.points();
  if (points.front().percent_smaller <= 0) return rock;
  points.insert(points.begin(), {0.5 * points.front().size, 0});
  const auto ended = Gradation::make(std::move(points), rock.basis());
  return ended ? *ended : rock;
}

}  // namespace

bool is_full(const MixBalance& balance) {
  return balance.filling >= least_filling - rounding_of_amounts;
}

Expected<MixBalance> balance_of(const FilledMix& mix) {
  if (auto problems = problems_of(mix); !problems.empty()) return problems;
  MixBalance balance;
  balance.beyond_packing = fills_beyond_packing(mix);
  const bool several = mix.fills.size() > 1;
  if (several && !balance.beyond_packing.empty()) return balance.beyond_packing;
  std::vector<std::vector<PackedClass>> materials;
  double all_solids = 0;
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    const auto& fill = mix.fills[i];
    const double in_place = loose_of(mix, i) * fill.in_place_over_loose.value_or(1);
    balance.fill_in_place += in_place;
    if (!fill.porosity) continue;
    balance.solids.push_back(in_place * (1 - *fill.porosity));
    all_solids += balance.solids.back();
    materials.push_back(packed_classes(fill.gradation, 1 - *fill.porosity, rodded_index));
  }
  if (several) balance.fill_in_place = all_solids / density_together(materials, balance.solids);
  weigh_volumes(mix, balance);
  auto rock = beyond_packing(of_rock, mix.rock.gradation, mix.rock.voids, rodded_index);
  if (rock) balance.beyond_packing.push_back(std::move(*rock));
  const bool known = materials.size() == mix.fills.size();
  if (!known || !balance.beyond_packing.empty()) return balance;
  const double rock_density = 1 - mix.rock.voids;
  materials.push_back(packed_classes(mix.rock.gradation, rock_density, rodded_index));
  auto solids = balance.solids;
  solids.push_back(rock_density);
  balance.mix_density = density_together(materials, solids);
  balance.dilation = dilation_index(rock_density, *balance.mix_density,
                                    rock_density / (rock_density + all_solids));
  return balance;
}

bool rock_is_open_below(const FilledMix& mix) {
  return mix.rock.gradation.points().front().percent_smaller > 0;
}

Expected<Gradation> mix_curve(const FilledMix& mix, const MixBalance& balance) {
  if (balance.solids.size() != mix.fills.size()) {
    return Problem{"porosity-not-known", "The porosity of a fill is not known.", "", "",
                   "a porosity of every fill"};
  }
  std::vector<BlendPart> parts{{to_its_end(mix.rock.gradation), 1 - mix.rock.voids}};
  for (std::size_t i = 0; i < mix.fills.size(); ++i) {
    parts.push_back({mix.fills[i].gradation, balance.solids[i]});
  }
  return blend(parts);
}

std::optional<bool> can_be_washed_in(const FilledMix& mix) {
  const auto rock = mix.rock.gradation.size_at(15);
  if (!rock) return std::nullopt;
  for (const auto& fill : mix.fills) {
    const auto coarse = fill.gradation.size_at(90);
    if (!coarse) return std::nullopt;
    if (*coarse > washed_in_ratio * *rock) return false;
  }
  return true;
}

}  // namespace proofstone
