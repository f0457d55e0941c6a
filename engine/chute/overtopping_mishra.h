#pragma once

#include "engine/chute/chute_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock on an overtopped embankment with flow over and within the layer: Mishra 1998 (Frizell, Ruff
/// and Mishra 1998) as in FHWA HEC-23 3rd ed. (2009) Design Guideline 5. US units.
struct OvertoppingMishraInputs : ChuteFlow {
  Slope slope;
  Dimensionless uniformity = Dimensionless::number(1.75);  ///< Cu = D60/D10
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angle angle_of_repose = Angle::degrees(42);
  Dimensionless porosity = Dimensionless::number(0.45);
};

struct OvertoppingMishraResult {
  Length d50;
  Velocity interstitial_velocity;        ///< Vi, in the pores
  Length surface_depth;                  ///< h, what the rock can carry above itself
  Dimensionless roughness;               ///< n of the surface
  UnitDischarge surface_discharge;       ///< q1, never more than q
  UnitDischarge interstitial_discharge;  ///< q2 = q − q1
  Length depth_in_rock;                  ///< y that q2 fills
  Dimensionless depth_over_size;         ///< y/D50
  Length depth_all_in_rock;              ///< y if the whole of q ran within the rock
  Length layer_thickness;                ///< the larger of 2·D50 and y
};

/// Problems: the unit discharge is not known; a face as steep as the rock's repose, or rock that
/// would float off the face.
Expected<OvertoppingMishraResult> overtopping_mishra(const OvertoppingMishraInputs& inputs,
                                                     Steps& steps);

const SizingMethod& overtopping_mishra_method();

}  // namespace proofstone
