#pragma once

#include "engine/cover/bare_soil_shear.h"

namespace proofstone {

enum class GrassCondition { excellent, very_good, good, fair, poor };
enum class GrassGrowth { sod, bunch, mixed };

/// Grass in a trapezoidal channel or swale: depth of flow, shear that reaches the soil, and the
/// shear the grass and its soil bear. FHWA HEC-15 3rd ed. (2005) ch. 4, SI units.
struct GrassLiningInputs : BareSoilShearInputs {
  Discharge discharge;
  Length bottom_width;
  Dimensionless side_slope = Dimensionless::number(3);  ///< Z: horizontal for 1 vertical
  Slope slope;
  Length stem_height;
  GrassCondition condition = GrassCondition::good;
  GrassGrowth growth = GrassGrowth::mixed;
  std::optional<Dimensionless> stiffness;  ///< Cs, SI; absent: by condition
};

struct GrassLiningResult {
  Dimensionless roughness_coefficient;  ///< Cn
  Length depth;
  Length hydraulic_radius;
  Stress mean_shear;        ///< τo
  Dimensionless roughness;  ///< n
  Velocity velocity;
  Stress greatest_shear;     ///< τd
  Dimensionless cover;       ///< Cf
  Stress effective_shear;    ///< τe, on the soil
  Stress permissible_shear;  ///< τp, of grass and soil
  Dimensionless margin;      ///< τp/τd
};

/// Problems: those of the soil; no depth up to 100 m carries the discharge.
Expected<GrassLiningResult> grass_lining(const GrassLiningInputs& inputs, Steps& steps);

const Method& grass_lining_method();

}  // namespace proofstone
