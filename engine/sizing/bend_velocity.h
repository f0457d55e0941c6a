#pragma once

#include "engine/finding/source.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// Velocity at the toe of the outer bank of a bend over the average velocity at the upstream end of
/// the bend: V_SS/V_AVG of USACE EM 1110-2-1601 Plate B-33, by the logarithmic fits that FHWA
/// HEC-23 DG4 prints.
///  - natural channel: 1.74 − 0.52·log₁₀(R/W), 1.0 where R/W > 26
///  - trapezoidal channel: 1.71 − 0.78·log₁₀(R/W), 1.0 where R/W > 8; the plate also reads the bend
///    angle and the aspect ratio, so this fit is on the upper side (about 9 % above the manual's
///    own Problem 2)
/// R is the centreline radius and W the water-surface width of the main channel, both positive.
Dimensionless bend_velocity_ratio(ChannelForm form, Length bend_radius, Length top_width);

/// The formula of `form` as its source writes it, for steps.
std::string bend_velocity_formula(ChannelForm form);

const Source& bend_velocity_source();

/// The ratio at a distance below the downstream tangent point of the bend: unchanged for one width,
/// then 0.1 less for each further width, down to 1 (WES Streambank Handbook App. A sec. A.3). A
/// ratio below 1 stays as it is; a distance below zero lies in the bend.
Dimensionless bend_ratio_below(Dimensionless ratio_in_bend, Length distance, Length top_width);

/// The distance below the bend at which the ratio has come down to 1.
Length bend_effect_ends(Dimensionless ratio_in_bend, Length top_width);

const Source& bend_decay_source();

}  // namespace proofstone
