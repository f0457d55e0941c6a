#pragma once

#include <optional>

#include "engine/finding/steps.h"
#include "engine/method/method.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {

/// One stone by its size or by its mass; exactly one of the two is given.
struct StoneMassInputs {
  std::optional<Length> size;
  std::optional<Mass> mass;
  SizeMeaning size_meaning = SizeMeaning::intermediate_axis;
  /// 165 lb/ft³: the unit weight that USACE and FHWA tables are printed for.
  Density rock_density = Density::pounds_mass_per_cubic_foot(165);
};

/// The same stone in every measure in use.
struct StoneMassResult {
  Mass mass;
  Length intermediate_axis;  ///< also the square opening that it passes, see size_and_mass.h
  Length sphere_diameter;    ///< of the sphere of the same mass
};

/// Mass of a stone from its size, or size from its mass: sphere (π/6)·ρ·D³ (USACE EM 1110-2-1601,
/// eq. 3-1), intermediate axis 0.85·ρ·D³ (FHWA HEC-23). Problems: neither or both given.
Expected<StoneMassResult> stone_mass_and_size(const StoneMassInputs& inputs, Steps& steps);

const Method& stone_mass_method();

}  // namespace proofstone
