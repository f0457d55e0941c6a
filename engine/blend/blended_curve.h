#pragma once

#include <vector>

#include "engine/blend/offered_material.h"

namespace proofstone {

/// The curve of materials brought together by shares of mass, one a material: P = Σ f·P at every
/// size at which one of the curves has a point, from small to large. Materials without a share do
/// not count. Where a curve ends, its last percent goes on.
std::vector<GradationPoint> blended_curve(const std::vector<OfferedMaterial>& materials,
                                          const std::vector<double>& shares);

}  // namespace proofstone
