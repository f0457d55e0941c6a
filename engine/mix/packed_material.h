#pragma once

#include <optional>
#include <string>

#include "engine/finding/problem.h"
#include "engine/mix/packing_model.h"
#include "engine/rock/gradation.h"

namespace proofstone {

/// Voids that grains, placed alone, can have at all (common practice).
inline constexpr double least_voids = 0.1;
inline constexpr double most_voids = 0.7;

/// A material as the packing model sees it: the sizes of its curve, all with the one density that
/// gives it, packed alone, the density that it has.
std::vector<PackedClass> packed_classes(const Gradation& gradation, double density, double index);

/// The porosities that grains of a curve, packed alone, can have by the packing model, whose sizes
/// each take 0.2 to below K/(1 + K) of their volume.
struct PorosityReach {
  double least = 0;
  double most = 1;
};
PorosityReach porosity_reach(const Gradation& gradation, double index);

/// Nothing where the packing model reaches the porosity that a material has when packed alone.
/// Codes "too-loose" and "too-dense"; what is allowed is rounded inwards to 0.01.
std::optional<Problem> beyond_packing(const std::string& name, const Gradation& gradation,
                                      double porosity, double index);

}  // namespace proofstone
