#pragma once

#include "engine/chute/chute_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock on the face of an emergency spillway: Front Range storage guidance (USDCM), the Abt and
/// Johnson equation with 1.35 for no movement and 2 for gathered flow, US units.
struct SpillwayFaceRockInputs : ChuteFlow {
  std::optional<Length> crest_head;                              ///< H; then q = C·H^1.5
  Dimensionless crest_coefficient = Dimensionless::number(3.0);  ///< C, ft units
  Slope slope;                                                   ///< of the face
  Dimensionless concentration = Dimensionless::number(2.0);      ///< Cf
};

struct SpillwayFaceRockResult {
  UnitDischarge unit_discharge;
  UnitDischarge sizing_discharge;  ///< 1.35·Cf·q
  Length d50;
};

/// Problems: neither the unit discharge nor the head over the crest is known.
Expected<SpillwayFaceRockResult> spillway_face_rock(const SpillwayFaceRockInputs& inputs,
                                                    Steps& steps);

const SizingMethod& spillway_face_rock_method();

}  // namespace proofstone
