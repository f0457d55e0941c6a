#include "engine/sizing/side_slope_factor.h"

#include <cmath>

namespace proofstone {

std::optional<double> side_slope_factor_curve(Angle bank) {
  const double theta = bank.radians();
  const double start = Angle::degrees(14).radians();
  if (theta <= start) return 1.0;
  const double share = std::sin(theta - start) / std::sin(Angle::degrees(32).radians());
  if (!(share < 1)) return std::nullopt;
  return std::sqrt(1 - std::pow(share, 1.6));
}

std::optional<double> side_slope_factor_analytic(Angle bank, Angle angle_of_repose) {
  const double share = std::sin(bank.radians()) / std::sin(angle_of_repose.radians());
  if (!(share < 1)) return std::nullopt;
  return std::sqrt(1 - share * share);
}

Angle angle_of_repose_of(const RockProperties& rock) {
  return rock.angle_of_repose.value_or(
      Angle::degrees(rock.angularity == Angularity::angular ? 40 : 37));
}

}  // namespace proofstone
