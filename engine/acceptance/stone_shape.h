#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct StoneShapeInputs {
  Length long_axis;
  Length middle_axis;
  Length short_axis;
  Density density = Density::kilograms_per_cubic_meter(2650);
};

struct StoneShapeResult {
  Dimensionless elongation;   ///< b/a
  Dimensionless flatness;     ///< c/b
  Dimensionless slenderness;  ///< a/c
  Length sieve_size;
  Dimensionless krumbein_sphericity;
  Dimensionless sneed_folk_sphericity;
  Dimensionless corey_factor;
  Mass ellipsoid_mass;
  Mass sphere_mass;
  Mass common_mass;  ///< 0.85·ρ·b³
  Length equal_volume_sphere;
};

/// What three axes of a stone say of its shape, sieve size and mass. Axes given in another order
/// are a Problem, never turned round silently.
Expected<StoneShapeResult> stone_shape(const StoneShapeInputs& in, Steps& steps);

/// The same by name: "stone-shape".
const Method& stone_shape_method();

}  // namespace proofstone
