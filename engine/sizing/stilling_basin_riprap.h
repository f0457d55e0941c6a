#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Which statement of the curve for stone below stilling basins is used.
enum class StillingBasinForm {
  curve,  ///< Peterka's curve: bottom velocity 2.6·√d (ft/s, in)
  fit,    ///< the printed fit, D50 = 0.0122·V^2.06 (ft, ft/s), of the average velocity
};

/// Stone below stilling basins: USBR Engineering Monograph 25 (Peterka) sec. 10, Fig. 165. The two
/// forms differ by 12 to 15 %, and the result says which was used. Not homogeneous.
struct StillingBasinRiprapInputs {
  StillingBasinForm form = StillingBasinForm::fit;
  std::optional<Velocity> bottom_velocity;        ///< for the curve
  std::optional<Velocity> average_velocity;       ///< for the fit
  std::optional<Dimensionless> specific_gravity;  ///< only to watch the limit
};

struct StillingBasinRiprapResult {
  Length d50;
};

/// Problems: the velocity that the form needs is not given.
Expected<StillingBasinRiprapResult> stilling_basin_riprap(const StillingBasinRiprapInputs& inputs,
                                                          Steps& steps);

const SizingMethod& stilling_basin_riprap_method();

}  // namespace proofstone
