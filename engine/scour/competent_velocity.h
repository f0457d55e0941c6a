#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Velocity at which the grains of a bed begin to move, by Laursen as FHWA HEC-18 (2012) eq. 6.1
/// prints it: Vc = 11.17·y^⅙·D^⅓ (ft, ft/s) [memory]. The metric print, 6.19, is 0.4 % higher; the
/// foot one is used. Depth and grain size positive.
Velocity critical_velocity(Length depth, Length grain);

/// Where it is printed, for steps.
const char* critical_velocity_source();

struct CompetentVelocityInputs {
  Length depth;
  Length bed_grain;  ///< D50 of the bed
};

struct CompetentVelocityResult {
  Velocity critical_velocity;
};

Expected<CompetentVelocityResult> competent_velocity(const CompetentVelocityInputs& inputs,
                                                     Steps& steps);

const Method& competent_velocity_method();

}  // namespace proofstone
