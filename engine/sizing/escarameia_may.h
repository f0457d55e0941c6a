#pragma once

#include <optional>

#include "engine/sizing/pilarczyk.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Escarameia and May's stability formula (1992; CIRIA C683, The Rock Manual, 2007, eq. 5.223):
/// Dn50 = cT·ub²/(2gΔ), cT = 12.3·r − 0.20 for rock, 12.3·r − 1.65 for gabion mattresses.
/// Homogeneous. `r` is the turbulence intensity and ub the velocity at 10 % of the depth above the
/// bed. Slopes of 1V:2H or flatter.
struct EscarameiaMayInputs {
  Dimensionless turbulence_intensity = Dimensionless::number(0.12);  ///< r
  std::optional<Velocity> bottom_velocity;                           ///< ub
  std::optional<Velocity> average_velocity;  ///< U, from which ub is taken where r ≤ 0.30
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  ArmourKind armour = ArmourKind::rock;
  Angle bank_angle;  ///< only to watch the limit
};

struct EscarameiaMayResult {
  Dimensionless coefficient;  ///< cT
  Velocity bottom_velocity;
  Length dn50;  ///< side of the cube of the median mass
  Length d50;   ///< median size by sieve
};

/// Problems: no velocity; an average velocity alone where r > 0.30; a turbulence so low that the
/// coefficient is not positive.
Expected<EscarameiaMayResult> escarameia_may(const EscarameiaMayInputs& inputs, Steps& steps);
/// The same arithmetic without its steps, for simulation.
Expected<EscarameiaMayResult> escarameia_may(const EscarameiaMayInputs& inputs);

const SizingMethod& escarameia_may_method();

}  // namespace proofstone
