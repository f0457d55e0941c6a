#include "engine/sizing/pilarczyk.h"

#include <cmath>

#include "engine/sizing/nominal_diameter.h"
#include "engine/sizing/side_slope_factor.h"

namespace proofstone {

namespace {

/// In water shallower than this many stones k_h is 1.
constexpr double shallow_stones = 5;

const char* const rock_manual_of_pilarczyk = "CIRIA C683 (2007) eq. 5.219 (from memory; confirm)";

double stability_correction(ProtectionKind kind) {
  switch (kind) {
    case ProtectionKind::exposed_edge:
      return 1.5;
    case ProtectionKind::gabion_edge:
      return 1.0;
    case ProtectionKind::continuous:
      return 0.75;
    case ProtectionKind::interlocked:
      return 0.5;
  }
  return 1.5;
}

double critical_shear(ArmourKind kind) { return kind == ArmourKind::rock ? 0.035 : 0.070; }

/// k_h at a size, and how its logarithm grows with that of the size.
struct DepthFactor {
  double value;
  double growth;
};

DepthFactor depth_factor(const PilarczykInputs& in, double Dn50) {
  const double h = in.depth.meters();
  if (in.profile == VelocityProfile::not_developed) {
    const double stones = h / Dn50;
    return {std::pow(1 + stones, -0.2), 0.2 * stones / (1 + stones)};
  }
  const double roughness = 12 * h / (in.roughness_stones.number() * Dn50);
  const double logarithm = std::log10(1 + roughness);
  const double value = 2 / (logarithm * logarithm);
  if (value > 1) return {1, 0};
  return {value, 2 * roughness / ((1 + roughness) * logarithm * std::log(10.0))};
}

/// The size that fits its own depth factor, from the size `whole` at which that factor is 1. Where
/// the water would be shallower than five such stones, `whole` itself. By Newton's steps in the
/// logarithm of the size: the factor grows more slowly than the size, so that they close in.
double size_with_depth(const PilarczykInputs& in, double whole) {
  constexpr int most_steps = 60;
  constexpr double closed_in = 1e-15;
  const double largest = in.depth.meters() / shallow_stones;
  if (!(largest >= whole * depth_factor(in, largest).value)) return whole;
  double Dn50 = largest;
  for (int i = 0; i < most_steps; ++i) {
    const auto factor = depth_factor(in, Dn50);
    const double step = std::log(whole * factor.value / Dn50) / (1 - factor.growth);
    Dn50 *= std::exp(step);
    if (std::abs(step) < closed_in) break;
  }
  return Dn50;
}

std::optional<double> slope_factor(const PilarczykInputs& in) {
  const auto kd = side_slope_factor_analytic(in.bank_angle, in.angle_of_repose);
  const double phi = in.angle_of_repose.radians();
  const double kl = std::sin(phi - in.bed_angle.radians()) / std::sin(phi);
  if (!kd || !(kl > 0)) return std::nullopt;
  return *kd * kl;
}

void note_steps(const PilarczykInputs& in, const PilarczykResult& result, Steps& steps) {
  steps.given("U", "depth-averaged velocity", measure(in.velocity));
  steps.given("h", "water depth", measure(in.depth));
  steps.given("Δ", "specific gravity of the rock less 1",
              measure(in.specific_gravity.number() - 1));
  steps.given("φ_sc", "stability correction", measure(stability_correction(in.protection)),
              rock_manual_of_pilarczyk);
  steps.given("ψ_cr", "critical shear parameter", measure(critical_shear(in.armour)),
              rock_manual_of_pilarczyk);
  steps.given("k_t²", "turbulence factor", measure(in.turbulence_factor), rock_manual_of_pilarczyk);
  steps.given("α", "bank angle from horizontal", measure(in.bank_angle));
  steps.given("β", "slope of the bed in the direction of flow", measure(in.bed_angle));
  steps.given("φ", "angle of repose of the rock", measure(in.angle_of_repose));
  steps.computed("k_sl", "slope factor", "√(1 − sin²α/sin²φ) · sin(φ−β)/sinφ",
                 measure(result.slope_factor), rock_manual_of_pilarczyk);
  const bool developed = in.profile == VelocityProfile::developed;
  if (developed) steps.given("ks/Dn50", "roughness in stones", measure(in.roughness_stones));
  steps.computed("k_h", "depth factor, 1 where h < 5·Dn50",
                 developed ? "2/[log₁₀(1 + 12h/ks)]², at most 1" : "(1 + h/Dn50)^−0.2",
                 measure(result.depth_factor), rock_manual_of_pilarczyk);
  steps.computed_rock("Dn50", "required size, side of a cube of the median mass",
                      "(φ_sc/Δ)·(0.035/ψ_cr)·k_h·k_sl⁻¹·k_t²·U²/(2g)", result.dn50,
                      rock_manual_of_pilarczyk);
  steps.computed_rock("D50", "median size by sieve", "Dn50/0.84", result.d50,
                      nominal_over_sieve_source);
}

}  // namespace

Expected<PilarczykResult> pilarczyk(const PilarczykInputs& inputs) {
  const auto ksl = slope_factor(inputs);
  if (!ksl) {
    return Problem{"bank-too-steep",
                   "The slope is as steep as the rock's angle of repose or steeper; loose rock "
                   "does not stay on it.",
                   "", "/bank_angle", "slopes flatter than angle_of_repose"};
  }
  const double U = inputs.velocity.meters_per_second();
  const double delta = inputs.specific_gravity.number() - 1;
  const double phi_sc = stability_correction(inputs.protection);
  const double psi_cr = critical_shear(inputs.armour);
  const double kt2 = inputs.turbulence_factor.number();

  const double with_kh_1 = (phi_sc / delta) * (0.035 / psi_cr) / *ksl * kt2 * U * U / (2 * g_si);
  const double Dn50 = size_with_depth(inputs, with_kh_1);

  PilarczykResult result;
  result.depth_factor = Dimensionless::number(Dn50 / with_kh_1);
  result.slope_factor = Dimensionless::number(*ksl);
  result.dn50 = Length::meters(Dn50);
  result.d50 = sieve_size_of_nominal(result.dn50);
  return result;
}

Expected<PilarczykResult> pilarczyk(const PilarczykInputs& inputs, Steps& steps) {
  auto result = pilarczyk(inputs);
  if (result) note_steps(inputs, *result, steps);
  return result;
}

}  // namespace proofstone
