#include "engine/mix/packing_model.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

Problems problems_of(const std::vector<PackedClass>& classes, double index) {
  Problems problems;
  if (classes.empty()) {
    problems.push_back({"no-class", "There is nothing to pack.", "", "", "at least one class"});
  }
  if (!(index >= 2 && index <= 20)) {
    problems.push_back({"index-outside", "This is no compaction index.", "", "K", "2 to 20"});
    return problems;
  }
  double sum = 0;
  for (std::size_t i = 0; i < classes.size(); ++i) {
    const auto& one = classes[i];
    const auto where = fmt::format("class {}", i + 1);
    if (!(std::isfinite(one.size.si()) && one.size.si() > 0)) {
      problems.push_back(
          {"size-not-positive", "Its size is not above zero.", "", where, "above 0"});
    }
    if (!(one.density >= loosest_class && one.density < densest_class(index))) {
      problems.push_back({"density-outside", "No grains pack to this share of the volume.", "",
                          where,
                          fmt::format("{} to below {:.3f}", loosest_class, densest_class(index))});
    }
    if (!(one.share >= 0)) {
      problems.push_back({"bad-share", "Its share is less than nothing.", "", where, "0 to 1"});
    }
    sum += one.share;
  }
  if (problems.empty() && !(std::abs(sum - 1) <= 0.001)) {
    problems.push_back({"shares-not-whole",
                        fmt::format("The shares are {:.4g} % together.", 100 * sum), "", "shares",
                        "100 % together, to 0.1 %"});
  }
  return problems;
}

/// The root of Σ (y/β)/(1/Φ − 1/γ) = K, which rises with Φ and ends at the least γ.
double density_at(const std::vector<double>& shares, const std::vector<double>& beta,
                  const std::vector<double>& gamma, double index) {
  double high = 1e9;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (shares[i] > 0) high = std::min(high, gamma[i]);
  }
  double low = 0;
  for (int halving = 0; halving < 60; ++halving) {
    const double middle = (low + high) / 2;
    double sum = 0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
      if (shares[i] > 0) sum += shares[i] / beta[i] / (1 / middle - 1 / gamma[i]);
    }
    (sum < index ? low : high) = middle;
  }
  return (low + high) / 2;
}

}  // namespace

double loosening(double ratio) { return std::sqrt(1 - std::pow(1 - ratio, 1.02)); }
double wall_effect(double ratio) { return 1 - std::pow(1 - ratio, 1.5); }

PackedSizes::PackedSizes(const std::vector<PackedClass>& classes, double index) : index_(index) {
  for (const auto& one : classes) beta_.push_back(one.density * (1 + 1 / index));
  for (std::size_t i = 0; i < classes.size(); ++i) {
    std::vector<double> taken;
    for (std::size_t j = 0; j < classes.size(); ++j) {
      const double ratio = classes[j].size / classes[i].size;
      if (j == i) {
        taken.push_back(0);
      } else if (ratio > 1) {
        const double b = wall_effect(1 / ratio);
        taken.push_back(1 - beta_[i] + b * beta_[i] * (1 - 1 / beta_[j]));
      } else {
        taken.push_back(1 - loosening(ratio) * beta_[i] / beta_[j]);
      }
    }
    taken_.push_back(std::move(taken));
  }
}

double PackedSizes::virtual_density(const std::vector<double>& shares, std::size_t i) const {
  double taken = 0;
  for (std::size_t j = 0; j < shares.size(); ++j) taken += taken_[i][j] * shares[j];
  return beta_[i] / (1 - taken);
}

Packing PackedSizes::pack(const std::vector<double>& shares) const {
  Packing packing;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    packing.virtual_densities.push_back(virtual_density(shares, i));
  }
  packing.density = density_at(shares, beta_, packing.virtual_densities, index_);
  return packing;
}

Expected<Packing> compressible_packing(const std::vector<PackedClass>& classes, double index) {
  if (auto problems = problems_of(classes, index); !problems.empty()) return problems;
  std::vector<double> shares;
  for (const auto& one : classes) shares.push_back(one.share);
  return PackedSizes(classes, index).pack(shares);
}

}  // namespace proofstone
