#pragma once

#include "engine/chute/chute_flow.h"

namespace proofstone {

/// Boulders of a grouted sloping drop, simplified design by critical velocity: USDCM Vol. 2 (2001
/// HS-4, later Table 9-4), US units.
struct GroutedBoulderDropInputs : ChuteFlow {
  Slope slope;                        ///< of the face
  std::optional<Length> drop_height;  ///< only to watch the limit
  Dimensionless specific_gravity = Dimensionless::number(2.5);
};

struct GroutedBoulderDropResult {
  UnitDischarge unit_discharge;
  Length critical_depth;
  Velocity critical_velocity;
  Length approach_depth;         ///< least energy over the crest, 1.5·yc
  Dimensionless rock_parameter;  ///< Rp = Vc·S^0.17/(Ss−1)^0.66
  Length boulder;                ///< nominal size
  Length grout;                  ///< to half the nominal size
};

/// Nominal boulder for Rp; nothing above 8.0. Below 4.5 the smallest, 18 in.
std::optional<Length> boulder_for(Dimensionless rock_parameter);

/// Problems: the unit discharge is not known; Rp above 8.0, where the table ends.
Expected<GroutedBoulderDropResult> grouted_boulder_drop(const GroutedBoulderDropInputs& inputs,
                                                        Steps& steps);

const Method& grouted_boulder_drop_method();

}  // namespace proofstone
