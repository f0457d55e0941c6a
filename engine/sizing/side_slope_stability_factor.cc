#include "engine/sizing/side_slope_stability_factor.h"

#include <cmath>

#include "engine/hydraulics/bracketed_root.h"
#include "engine/hydraulics/water_weight.h"

namespace proofstone {

namespace {

constexpr double largest_number = 1e4;

const char* const hds6 = "FHWA HDS-6 (2001) eqs. 6.3 to 6.16";
const char* const hds6_memory = "FHWA HDS-6 (2001) (from memory; confirm)";
const char* const julien = "Julien, Erosion and Sedimentation (1995) (from memory; confirm)";

StabilityCase case_of(const SideSlopeStabilityFactorInputs& in, double eta) {
  StabilityCase at;
  at.eta = eta;
  at.theta = in.bank_angle.radians();
  at.theta_0 = in.form == StabilityForm::julien ? in.bed_angle.radians() : 0;
  at.lambda = in.flow_angle.radians();
  at.phi = in.angle_of_repose.radians();
  return at;
}

bool by_velocity(const SideSlopeStabilityFactorInputs& in) {
  return in.reference_velocity || in.mean_velocity;
}

/// Velocity one D50 above the bed, ft/s; D in ft.
double reference_velocity(const SideSlopeStabilityFactorInputs& in, double D) {
  if (in.reference_velocity) return in.reference_velocity->feet_per_second();
  return 3.4 * in.mean_velocity->feet_per_second() / std::log(12.3 * in.depth->feet() / D);
}

/// η of a stone of D ft.
double stability_number(const SideSlopeStabilityFactorInputs& in, double D) {
  const double delta = in.specific_gravity.number() - 1;
  if (by_velocity(in)) {
    const double Vr = reference_velocity(in, D);
    return 0.30 * Vr * Vr / (delta * g_us * D);
  }
  const double tau = in.shear->pounds_per_square_foot();
  const double coefficient = in.form == StabilityForm::julien ? 1 / 0.047 : 21;
  return coefficient * tau / (delta * gamma_w * D);
}

/// The smallest D, ft, that brings η down to `required`; nothing where, under a mean velocity, no
/// stone smaller than the depth does.
std::optional<double> smallest_size(const SideSlopeStabilityFactorInputs& in, double required) {
  // Apart from the mean velocity, η·D is the same for every stone.
  if (!in.mean_velocity) return stability_number(in, 1) / required;
  const auto enough = [&](double D) { return stability_number(in, D) <= required; };
  const double depth = in.depth->feet();
  if (!enough(depth)) return std::nullopt;
  return turning_point(0, depth, enough);
}

Problems attack_problems(const SideSlopeStabilityFactorInputs& in) {
  const bool both_velocities = in.reference_velocity && in.mean_velocity;
  const bool none = !in.shear && !in.reference_velocity && !in.mean_velocity;
  if (both_velocities || none) {
    return {{"one-of", "The attack of the water is given by a shear or by one velocity.", "",
             both_velocities ? "/mean_velocity" : "/shear",
             "shear, reference_velocity, or mean_velocity with depth"}};
  }
  if (in.mean_velocity && !in.depth) {
    return {
        {"missing-input", "With the mean velocity the depth is needed.", "", "/depth", "a length"}};
  }
  if (in.mean_velocity && in.trial_size && !(*in.trial_size <= *in.depth)) {
    return {{"outside-allowed", "The size tried is larger than the water is deep.", "",
             "/trial_size", "at most the depth"}};
  }
  return {};
}

/// Largest stability number at which the factor asked for is reached; nothing where even still
/// water would leave less.
std::optional<double> largest_number_for(const SideSlopeStabilityFactorInputs& in) {
  const double asked = in.stability_factor.number();
  const auto too_much = [&](double eta) {
    return !(stability_moments(case_of(in, eta)).factor >= asked);
  };
  constexpr double nearly_still = 1e-9;
  if (too_much(nearly_still)) return std::nullopt;
  return turning_point(nearly_still, largest_number, too_much);
}

void note_attack(const SideSlopeStabilityFactorInputs& in, Steps& steps) {
  if (in.reference_velocity) {
    steps.given("Vr", "velocity one D50 above the bed", measure(*in.reference_velocity));
  } else if (in.mean_velocity) {
    steps.given("V", "mean velocity", measure(*in.mean_velocity));
    steps.given("y", "water depth", measure(*in.depth));
  } else {
    steps.given("τ0", "shear on the slope", measure(*in.shear));
  }
  steps.given("θ", "bank angle from horizontal", measure(in.bank_angle));
  steps.given("λ", "flow angle in the slope, positive down it", measure(in.flow_angle));
  if (in.form == StabilityForm::julien) {
    steps.given("θ0", "slope of the bed downstream", measure(in.bed_angle));
  }
  steps.given("φ", "angle of repose of the rock", measure(in.angle_of_repose));
  steps.given("Ss", "specific gravity of the rock", measure(in.specific_gravity));
}

const char* number_formula(const SideSlopeStabilityFactorInputs& in) {
  if (by_velocity(in)) return "0.30·Vr²/[(Ss−1)·g·D]";
  return in.form == StabilityForm::julien ? "τ0/[0.047·(γs−γ)·D]" : "21·τ0/[(Ss−1)·γ·D]";
}

const char* size_formula(const SideSlopeStabilityFactorInputs& in) {
  if (in.mean_velocity) return "smallest D with 0.30·Vr²/[(Ss−1)·g·D] ≤ η, Vr = 3.4·V/ln(12.3·y/D)";
  if (in.reference_velocity) return "0.30·Vr²/[(Ss−1)·g·η]";
  return in.form == StabilityForm::julien ? "τ0/[0.047·(γs−γ)·η]" : "21·τ0/[(Ss−1)·γ·η]";
}

void note_moments(const SideSlopeStabilityFactorInputs& in,
                  const SideSlopeStabilityFactorResult& result, Steps& steps) {
  const bool plain = in.form == StabilityForm::stevens_simons;
  const char* const source = plain ? hds6 : julien;
  steps.computed("η", "stability number of that size", number_formula(in),
                 measure(result.stability_number), source);
  steps.computed("β", "angle between the stone's path and the line of steepest fall",
                 plain ? "atan{cosλ/[2·sinθ/(η·tanφ) + sinλ]}"
                       : "atan{cos(λ+ϑ)/[2·√(1−a²)/(η·tanφ) + sin(λ+ϑ)]}, a² = cos²θ − sin²θ0, "
                         "tanϑ = sinθ0/sinθ",
                 measure(result.drag_angle), source);
  steps.computed("η'", "stability number on the slope",
                 plain ? "η·[1 + sin(λ+β)]/2" : "η·[1 + sin(λ+β+ϑ)]/2",
                 measure(result.side_stability_number), source);
  steps.computed("SF", "stability factor of that size",
                 plain ? "cosθ·tanφ/(η'·tanφ + sinθ·cosβ)" : "a·tanφ/(η'·tanφ + √(1−a²)·cosβ)",
                 measure(result.stability_factor), source);
}

}  // namespace

StabilityMoments stability_moments(const StabilityCase& given) {
  const double sin_bank = std::sin(given.theta);
  const double sin_bed = std::sin(given.theta_0);
  const double a = std::sqrt(std::cos(given.theta) * std::cos(given.theta) - sin_bed * sin_bed);
  const double steepness = std::hypot(sin_bank, sin_bed);  // √(1−a²)
  const double turned = given.lambda + std::atan2(sin_bed, sin_bank);
  const double tan_phi = std::tan(given.phi);

  StabilityMoments moments;
  moments.beta =
      std::atan2(std::cos(turned), 2 * steepness / (given.eta * tan_phi) + std::sin(turned));
  moments.eta_side = given.eta * (1 + std::sin(turned + moments.beta)) / 2;
  moments.factor = a * tan_phi / (moments.eta_side * tan_phi + steepness * std::cos(moments.beta));
  return moments;
}

Expected<SideSlopeStabilityFactorResult> side_slope_stability_factor(
    const SideSlopeStabilityFactorInputs& inputs, Steps& steps) {
  const Problems attack = attack_problems(inputs);
  if (!attack.empty()) return attack;
  const auto required = largest_number_for(inputs);
  if (!required) {
    return Problem{"bank-too-steep",
                   "The bank is too steep for this stability factor: even in still water it would "
                   "not be reached.",
                   "", "/bank_angle", "a flatter bank, or a smaller stability_factor"};
  }
  const auto smallest = smallest_size(inputs, *required);
  if (!smallest) {
    return Problem{"no-stable-size",
                   "Even a stone as large as the water is deep would not reach this factor.", "",
                   "/stability_factor", "slower or deeper water, or a flatter bank"};
  }

  SideSlopeStabilityFactorResult result;
  result.required_number = Dimensionless::number(*required);
  result.d50 = Length::feet(*smallest);
  const Length D = inputs.trial_size.value_or(result.d50);
  const double eta = stability_number(inputs, D.feet());
  const auto moments = stability_moments(case_of(inputs, eta));
  result.stability_number = Dimensionless::number(eta);
  result.drag_angle = Angle::radians(moments.beta);
  result.side_stability_number = Dimensionless::number(moments.eta_side);
  result.stability_factor = Dimensionless::number(moments.factor);

  note_attack(inputs, steps);
  steps.given("SF", "stability factor asked for", measure(inputs.stability_factor));
  steps.computed("η", "largest stability number that reaches it", "by halving",
                 measure(result.required_number));
  steps.computed_rock("D50", "required median size", size_formula(inputs), result.d50, hds6);
  if (inputs.trial_size) {
    steps.given_rock("D", "size tried", *inputs.trial_size);
  } else {
    steps.computed_rock("D", "size taken below", "D50", result.d50);
  }
  if (inputs.mean_velocity) {
    steps.computed("Vr", "velocity one D50 above the bed", "3.4·V/ln(12.3·y/D)",
                   measure(Velocity::feet_per_second(reference_velocity(inputs, D.feet()))),
                   hds6_memory);
  }
  note_moments(inputs, result, steps);
  return result;
}

}  // namespace proofstone
