#include "engine/sizing/hec15_curves.h"

#include <algorithm>
#include <cmath>

#include "engine/sizing/side_slope_factor.h"

namespace proofstone {

namespace hec15 {

double side_shear_factor(double z) {
  if (z <= 1.5) return 0.77;
  if (z >= 5) return 1.0;
  return 0.066 * z + 0.67;
}

std::optional<double> side_stability_factor(double theta, double phi) {
  return side_slope_factor_analytic(Angle::radians(theta), Angle::radians(phi));
}

double bend_factor(double radius_over_width) {
  const double r = radius_over_width;
  if (r <= 2) return 2.00;
  if (r >= 10) return 1.05;
  return 2.38 - 0.206 * r + 0.0073 * r * r;
}

Shields shields(double particle_reynolds) {
  constexpr double low = 4e4;
  constexpr double high = 2e5;
  const double share = std::clamp((particle_reynolds - low) / (high - low), 0.0, 1.0);
  return {0.047 + share * (0.15 - 0.047), 1.0 + share * (1.5 - 1.0)};
}

std::optional<double> steep_factor(const SteepTrial& trial) {
  const double alpha = std::atan(trial.slope);
  const double theta = trial.theta;
  const double tan_phi = std::tan(trial.phi);
  const double sf = trial.shields.safety_factor;
  // τs = K1·γ·d·S over F*·(γs−γ)·D50; the unit weight of water falls out.
  const double eta =
      trial.k1 * trial.d_s / (trial.shields.f_star * (trial.specific_gravity - 1) * trial.d50);
  const double beta =
      std::atan2(std::cos(alpha), 2 * std::sin(theta) / (eta * tan_phi) + std::sin(alpha));
  const double resisting = 2 * (std::cos(theta) * tan_phi - sf * std::sin(theta) * std::cos(beta));
  if (!(resisting > 0)) return std::nullopt;
  return trial.k1 * (1 + std::sin(alpha + beta)) * tan_phi / resisting;
}

}  // namespace hec15

}  // namespace proofstone
