#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// How much larger than the critical size rock must be for a chance that is accepted, and the
/// chance that a ratio of sizes leaves: ratio = exp(β·σG), chance = Φ(−β). Exactly one of the two
/// is given.
struct TargetReliabilityInputs {
  Dimensionless spread;                        ///< σG, deviation of ln(available/critical)
  std::optional<Dimensionless> chance;         ///< accepted chance in that flood
  std::optional<Dimensionless> safety_factor;  ///< available over critical size
};

struct TargetReliabilityResult {
  Dimensionless beta;
  Dimensionless chance;
  Dimensionless safety_factor;
};

/// Problem: neither or both are given.
Expected<TargetReliabilityResult> target_reliability(const TargetReliabilityInputs& inputs,
                                                     Steps& steps);

const Method& target_reliability_method();

}  // namespace proofstone
