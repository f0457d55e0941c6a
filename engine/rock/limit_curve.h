#pragma once

#include <optional>
#include <vector>

#include "engine/rock/gradation.h"

namespace proofstone {

/// Points of a curve of percent smaller against size, neither of which ever falls: a gradation or
/// the limit of a band, which may also rise straight up. Between points it is straight in
/// log(size). Precondition of both functions: at least one point, sizes positive.
using CurvePoints = std::vector<GradationPoint>;

/// Percent smaller than `size`; outside the curve that of its nearest end.
double percent_on_curve(const CurvePoints& points, Length size);

/// The smallest size of which `percent` is smaller; absent where the curve does not reach.
std::optional<Length> size_on_curve(const CurvePoints& points, double percent);

}  // namespace proofstone
