#pragma once

#include "engine/chute/chute_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Loose rock on the face of a sloping drop, by velocity and slope: Smith and Murray, as in the
/// Front Range criteria (USDCM, Major Drainage, eq. 5-4, 1984), US units. Without a velocity of its
/// own the face is taken to run at critical velocity.
struct SlopingRockDropInputs : ChuteFlow {
  std::optional<Velocity> velocity;  ///< on the face; absent: critical velocity of q
  Slope slope;                       ///< of the face
  Dimensionless specific_gravity = Dimensionless::number(2.5);
  /// 4.5 by the published equation; a larger one gives smaller rock.
  Dimensionless constant = Dimensionless::number(4.5);
};

struct SlopingRockDropResult {
  Velocity velocity;             ///< used
  Dimensionless type_parameter;  ///< V·S^0.17/(Ss−1)^0.66
  Length d50;
  Dimensionless roughness;  ///< n = 0.0395·d50^(1/6), ft
};

/// Problems: neither velocity nor unit discharge is known.
Expected<SlopingRockDropResult> sloping_rock_drop(const SlopingRockDropInputs& inputs,
                                                  Steps& steps);

const SizingMethod& sloping_rock_drop_method();

}  // namespace proofstone
