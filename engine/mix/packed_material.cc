#include "engine/mix/packed_material.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

/// The sizes of a curve with their shares; densities are not set.
std::vector<PackedClass> classes_of(const Gradation& gradation) {
  const auto& points = gradation.points();
  std::vector<PackedClass> classes;
  const double first = points.front().percent_smaller;
  const double last = points.back().percent_smaller;
  // What lies beyond the ends of the curve is one class of half and of all the end's size.
  if (first > 0) classes.push_back({points.front().size / 2, 0, first / 100});
  for (std::size_t i = 1; i < points.size(); ++i) {
    const double share = (points[i].percent_smaller - points[i - 1].percent_smaller) / 100;
    if (!(share > 0)) continue;
    const double middle = std::sqrt(points[i].size.si() * points[i - 1].size.si());
    classes.push_back({Length::from_si(middle), 0, share});
  }
  if (last < 100) classes.push_back({points.back().size, 0, (100 - last) / 100});
  return classes;
}

/// What the material packs to where each of its sizes, alone, packs to `density`.
double density_together(std::vector<PackedClass>& classes, double density, double index) {
  std::vector<double> shares;
  for (auto& one : classes) {
    one.density = density;
    shares.push_back(one.share);
  }
  return PackedSizes(classes, index).pack(shares).density;
}

}  // namespace

std::vector<PackedClass> packed_classes(const Gradation& gradation, double density, double index) {
  auto classes = classes_of(gradation);
  double low = 0.05;
  double high = density;
  for (int halving = 0; halving < 30; ++halving) {
    const double middle = (low + high) / 2;
    (density_together(classes, middle, index) < density ? low : high) = middle;
  }
  return classes;
}

PorosityReach porosity_reach(const Gradation& gradation, double index) {
  auto classes = classes_of(gradation);
  return {1 - density_together(classes, densest_class(index), index),
          1 - density_together(classes, loosest_class, index)};
}

std::optional<Problem> beyond_packing(const std::string& name, const Gradation& gradation,
                                      double porosity, double index) {
  const auto reach = porosity_reach(gradation, index);
  const bool loose = porosity > reach.most;
  if (!loose && porosity > reach.least) return std::nullopt;
  // Inwards, so that what the sentence allows is taken.
  const double least = std::max(least_voids, std::ceil(reach.least * 100 + 1e-9) / 100);
  const double most = std::min(most_voids, std::floor(reach.most * 100 - 1e-9) / 100);
  return Problem{
      loose ? "too-loose" : "too-dense",
      fmt::format("With a porosity of {:.3g} its grains lie {} than the packing model reaches.",
                  porosity, loose ? "looser" : "denser"),
      "", name, fmt::format("a porosity of {:.2f} to {:.2f}", least, most)};
}

}  // namespace proofstone
