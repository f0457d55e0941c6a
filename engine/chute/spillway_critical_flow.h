#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Flow over the crest of an emergency spillway, its critical velocity and the slope from which the
/// face runs rapid: FHWA HEC-22 3rd ed. (2009) §8.4.4.4, eqs. 8-26 to 8-28, SI units.
struct SpillwayCriticalFlowInputs {
  std::optional<Discharge> discharge;        ///< absent: by eq. 8-26 from head and coefficient
  std::optional<Length> head;                ///< Hp over the crest
  std::optional<Dimensionless> coefficient;  ///< Csp, SI, from the manual's Fig. 8-18
  Length width;                              ///< b, bottom of the crest
  Dimensionless roughness = Dimensionless::number(0.040);
  std::optional<Slope> face_slope;  ///< of the face below the crest
};

struct SpillwayCriticalFlowResult {
  Discharge discharge;
  UnitDischarge unit_discharge;
  Velocity critical_velocity;
  Slope critical_slope;
};

/// Problems: neither the discharge nor both head and coefficient are known.
Expected<SpillwayCriticalFlowResult> spillway_critical_flow(
    const SpillwayCriticalFlowInputs& inputs, Steps& steps);

const Method& spillway_critical_flow_method();

}  // namespace proofstone
