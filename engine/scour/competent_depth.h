#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Depth to which water must scour before it is slow enough to leave the grains of the bed: that at
/// which the critical velocity of FHWA HEC-18 (2012) eq. 6.1 carries the discharge,
/// y = [q/(11.17·D50^⅓)]^(6/7) (ft, ft²/s) [memory].
struct CompetentDepthInputs {
  Length depth;  ///< existing
  Length bed_grain;
  UnitDischarge unit_discharge;
};

struct CompetentDepthResult {
  Length competent_depth;
  Length scour;  ///< competent depth less the existing one, not below 0
};

Expected<CompetentDepthResult> competent_depth(const CompetentDepthInputs& inputs, Steps& steps);

const Method& competent_depth_method();

}  // namespace proofstone
