#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Cover factor of grass grown through a turf-reinforcement mat, from tests of both: FHWA HEC-15
/// 3rd ed. (2005) ch. 5. It takes the place of the grass cover factor.
struct TurfMatCoverInputs {
  Stress grass_shear;         ///< τp of the grass alone in the test
  Stress mat_shear;           ///< τp of grass and mat in the test
  Dimensionless grass_cover;  ///< Cf of the grass in the test
};

struct TurfMatCoverResult {
  Dimensionless cover;  ///< Cf with the mat
};

/// Problem (mat-weaker): a mat that bears less than the grass alone.
Expected<TurfMatCoverResult> turf_mat_cover(const TurfMatCoverInputs& inputs, Steps& steps);

const Method& turf_mat_cover_method();

}  // namespace proofstone
