#pragma once

#include <vector>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Grains of one size in a mix.
struct PackedClass {
  Length size;
  double density = 0.6;  ///< solids share of the volume when packed alone, placed the same way
  double share = 0;      ///< of the volume of all solids; all shares 1 together
};

/// How a mix of sizes packs.
struct Packing {
  double density = 0;  ///< solids share of the volume of the mix
  /// What each class would reach at most if it alone carried the load; in the order given.
  std::vector<double> virtual_densities;
};

/// How a mix is placed: the compaction index K of the model.
inline constexpr double poured_index = 4.1;
inline constexpr double rodded_index = 4.5;
inline constexpr double vibrated_index = 4.75;
inline constexpr double pressed_index = 9;

/// What grains of one size, packed alone, take of their volume: from loosest_class on and below
/// densest_class.
inline constexpr double loosest_class = 0.2;
constexpr double densest_class(double index) { return index / (1 + index); }

/// How much a finer class (`ratio` = its size over that of the coarser) loosens the coarser one:
/// a = √(1 − (1 − ratio)^1.02).
double loosening(double ratio);
/// How much a coarser class holds the finer off its walls: b = 1 − (1 − ratio)^1.5.
double wall_effect(double ratio);

/// Compressible packing model (de Larrard 1999): Φ from Σ (y/β)/(1/Φ − 1/γ) = K. Classes may come
/// in any order. Problems: no class, sizes that are not positive, densities outside 0.2 to below
/// K/(1 + K), shares that are not 1 together to 0.001, K outside 2 to 20.
Expected<Packing> compressible_packing(const std::vector<PackedClass>& classes, double index);

/// The same for one set of sizes and many sets of shares: what the sizes do to one another is
/// worked out once. The classes are sound, as compressible_packing asks.
class PackedSizes {
 public:
  PackedSizes(const std::vector<PackedClass>& classes, double index);
  Packing pack(const std::vector<double>& shares) const;

 private:
  double virtual_density(const std::vector<double>& shares, std::size_t i) const;

  double index_;
  std::vector<double> beta_;
  std::vector<std::vector<double>> taken_;  ///< by class j of the room of class i
};

/// How far the rock is forced apart: solids share of the rock packed alone over its share within
/// the mix; 1 when every stone still lies as it would alone.
inline double dilation_index(double rock_density, double mix_density, double rock_share) {
  return rock_density / (mix_density * rock_share);
}

}  // namespace proofstone
