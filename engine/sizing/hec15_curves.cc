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

namespace {

constexpr double low_reynolds = 4e4;
constexpr double high_reynolds = 2e5;
constexpr double f_star_low = 0.047;
constexpr double f_star_high = 0.15;
constexpr double safety_low = 1.0;
constexpr double safety_high = 1.5;

}  // namespace

Shields shields(double particle_reynolds) {
  const double share =
      std::clamp((particle_reynolds - low_reynolds) / (high_reynolds - low_reynolds), 0.0, 1.0);
  return {f_star_low + share * (f_star_high - f_star_low),
          safety_low + share * (safety_high - safety_low)};
}

double sufficient_size(double shear_size, double reynolds_per_size) {
  const double small = shear_size * safety_low / f_star_low;
  if (reynolds_per_size * small <= low_reynolds) return small;
  const double large = shear_size * safety_high / f_star_high;
  if (reynolds_per_size * large >= high_reynolds) return large;
  // Between: with D = (low + w·t)/k, (low + w·t)·(f + Δf·t) = k·c·(s + Δs·t) for the share t.
  const double w = high_reynolds - low_reynolds;
  const double df = f_star_high - f_star_low;
  const double kc = reynolds_per_size * shear_size;
  const double a = w * df;
  const double b = low_reynolds * df + w * f_star_low - kc * (safety_high - safety_low);
  const double c = low_reynolds * f_star_low - kc * safety_low;  // negative here
  const double t = -2 * c / (b + std::sqrt(b * b - 4 * a * c));
  return (low_reynolds + w * t) / reynolds_per_size;
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
