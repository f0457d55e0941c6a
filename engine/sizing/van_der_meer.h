#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// van der Meer (1988) for rock slopes in deep water that waves do not overtop. It works in the
/// nominal diameter (cube of the median mass), the mean period, and at most 7500 waves.
struct VanDerMeerInputs {
  Length wave_height;  ///< significant, at the toe
  Duration mean_period;
  Angle slope;
  Dimensionless permeability = Dimensionless::number(0.1);  ///< P
  Dimensionless damage = Dimensionless::number(2);          ///< S
  Dimensionless waves = Dimensionless::number(7500);        ///< N
  Density rock = Density::kilograms_per_cubic_meter(2650);
  Density water = Density::kilograms_per_cubic_meter(1000);
};

struct VanDerMeerResult {
  Dimensionless steepness;        ///< sm
  Dimensionless surf_similarity;  ///< ξm
  Dimensionless critical_surf_similarity;
  Dimensionless stability_number;  ///< Hs/(Δ·Dn50)
  Length nominal_diameter;
  Mass median_mass;
  Length d50;  ///< sphere of the median mass
};

Expected<VanDerMeerResult> van_der_meer(const VanDerMeerInputs& inputs, Steps& steps);
/// The same arithmetic without its steps, for simulation.
Expected<VanDerMeerResult> van_der_meer(const VanDerMeerInputs& inputs);

const SizingMethod& van_der_meer_method();

}  // namespace proofstone
