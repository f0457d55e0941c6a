#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Shape of the pier's nose: K1 of FHWA HEC-23 DG11.
enum class PierNose {
  round,   ///< 1.5
  square,  ///< 1.7
};

/// Rock round a bridge pier: FHWA HEC-23 Vol. 2 (2009) Design Guideline 11,
/// D50 = 0.692·V²/[(Ss−1)·2g] with V = K1·K2·V_avg, which is Isbash with C 1.202. Homogeneous.
/// A countermeasure for existing piers; how far and how thick it lies: pier_riprap_layout.h.
struct PierRiprapInputs {
  Velocity average_velocity;               ///< of the approaching flow
  std::optional<Velocity> local_velocity;  ///< at the pier, when it is known; K2 is then 1
  PierNose nose = PierNose::square;
  Dimensionless location_factor = Dimensionless::number(1.7);  ///< K2, 0.9 to 1.7
  Dimensionless specific_gravity = Dimensionless::number(2.65);
};

struct PierRiprapResult {
  Velocity design_velocity;
  Length d50;
};

Expected<PierRiprapResult> pier_riprap(const PierRiprapInputs& inputs, Steps& steps);

const SizingMethod& pier_riprap_method();

}  // namespace proofstone
