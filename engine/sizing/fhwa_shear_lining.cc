#include "engine/sizing/fhwa_shear_lining.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include "engine/hydraulics/bracketed_root.h"
#include "engine/sizing/hec15_curves.h"

namespace proofstone {

namespace {

using Inputs = FhwaShearLiningInputs;
using Result = FhwaShearLiningResult;

constexpr double water_unit_weight = 62.4;        // lb/ft³
constexpr double kinematic_viscosity = 1.217e-5;  // ft²/s, about 60 °F
constexpr double g = standard_gravity.feet_per_second_squared();
constexpr double mild_up_to = 0.05;
constexpr double steep_from = 0.10;
constexpr double steep_side_z = 3;        // sides steeper than 3H:1V need rock of their own
constexpr double smallest_trial = 0.001;  // ft
constexpr double trial_step = 1.01;
constexpr int most_trials = 1037;  // the last is 30 ft
constexpr double no_size = std::numeric_limits<double>::infinity();

const char* const hec15_mark = "FHWA HEC-15 3rd ed. (2005) ch. 3 (from memory; confirm)";
const char* const hec15_rock = "FHWA HEC-15 3rd ed. (2005) ch. 6 (from memory; confirm)";

/// What the requirement at a trial size depends on, in feet and radians.
struct Place {
  double depth = 0;
  double slope = 0;
  double kb = 1;
  double theta = 0;
  double phi = 0;
  double k1 = 1;
  double k2 = 1;
  double specific_gravity = 2.65;

  double z() const { return 1 / std::tan(theta); }
  bool on_bank() const { return theta > 0; }
  bool uses_mild() const { return slope < steep_from; }
  bool uses_steep() const { return slope > mild_up_to; }
  /// What a side needs over the bottom. Where K1/K2 is below 1, or the side is flatter than
  /// 3H:1V, the side is built of the bottom's rock.
  double side_over_bottom() const {
    if (!on_bank() || z() > steep_side_z - 1e-9) return 1;
    return std::max(1.0, k1 / k2);
  }
  double particle_reynolds(double d50) const {
    return std::sqrt(g * depth * slope) * d50 / kinematic_viscosity;
  }
};

/// D50 of the bottom that the mild form asks for at a trial size.
double bottom_required(const Place& place, double trial) {
  const auto at = hec15::shields(place.particle_reynolds(trial));
  return at.safety_factor * place.kb * place.depth * place.slope /
         (at.f_star * (place.specific_gravity - 1));
}

double steep_factor_at(const Place& place, double trial) {
  hec15::SteepTrial steep;
  steep.k1 = place.k1;
  steep.d_s = place.kb * place.depth * place.slope;
  steep.slope = place.slope;
  steep.theta = place.theta;
  steep.phi = place.phi;
  steep.specific_gravity = place.specific_gravity;
  steep.d50 = trial;
  steep.shields = hec15::shields(place.particle_reynolds(trial));
  return hec15::steep_factor(steep).value_or(no_size);
}

/// D50 that the steep form asks for at a trial size. Δ holds the side's own shear and slope, so it
/// takes the place of both K1 and K2.
double steep_required(const Place& place, double trial) {
  return steep_factor_at(place, trial) * bottom_required(place, trial);
}

/// What the procedure asks for at a place when rock of size `trial` lies there. On a bank in the
/// mild form the side gets K1/K2 times what the bottom gets.
double required_here(const Place& place, double trial) {
  double required = 0;
  if (place.uses_mild()) {
    required = place.side_over_bottom() * bottom_required(place, trial / place.side_over_bottom());
  }
  if (place.uses_steep()) required = std::max(required, steep_required(place, trial));
  return required;
}

/// The smallest size that is not smaller than what is required at that size, trying upward.
template <class Required>
std::optional<double> smallest_sufficient(Required&& required) {
  double below = 0;
  double trial = smallest_trial;
  for (int i = 0; i < most_trials; ++i) {
    if (trial >= required(trial)) {
      return turning_point(below, trial, [&](double size) { return size >= required(size); });
    }
    below = trial;
    trial *= trial_step;
  }
  return std::nullopt;
}

/// The first larger size that is again smaller than what is required at it, if there is one.
std::optional<Length> failing_again_above(const Place& place, Length found) {
  double trial = smallest_trial;
  for (int i = 0; i < most_trials; ++i) {
    if (trial > found.feet() && trial < required_here(place, trial)) return Length::feet(trial);
    trial *= trial_step;
  }
  return std::nullopt;
}

Expected<double> bend(const Inputs& in, Steps& steps) {
  if (!in.bend_radius) {
    steps.given("Kb", "bend factor on shear", measure(1.0), "straight reach");
    return 1.0;
  }
  const bool by_top = in.bend_basis == BendBasis::top_width;
  const std::optional<Length>& width = by_top ? in.top_width : in.bottom_width;
  if (!width) {
    return Problem{"missing-input", "In a bend this width is needed.", "",
                   by_top ? "/top_width" : "/bottom_width", "a length"};
  }
  steps.given("Rc", "centreline radius of the bend", measure(*in.bend_radius));
  steps.given(by_top ? "T" : "B", by_top ? "top width" : "bottom width", measure(*width));
  const double kb = hec15::bend_factor(*in.bend_radius / *width);
  steps.computed("Kb",
                 by_top ? "bend factor on shear, by Rc/T"
                        : "bend factor on shear, by Rc/B as HEC-22 enters the curve",
                 "2.38 − 0.206·r + 0.0073·r², 2.00 where r ≤ 2, 1.05 where r ≥ 10", measure(kb),
                 hec15_mark);
  return kb;
}

Problem too_steep() {
  return {"bank-too-steep",
          "The bank is as steep as the rock's angle of repose or steeper; loose rock does not stay "
          "on it.",
          "", "/bank_angle", "a bank flatter than angle_of_repose"};
}

Expected<Place> read_place(const Inputs& in, Steps& steps) {
  Place place;
  place.depth = in.depth.feet();
  place.slope = in.slope.ratio();
  place.theta = in.bank_angle.radians();
  place.phi = in.angle_of_repose.radians();
  place.specific_gravity = in.specific_gravity.number();
  steps.given("d", "greatest depth", measure(in.depth));
  steps.given("S", "slope", measure(in.slope));
  const auto kb = bend(in, steps);
  if (!kb) return kb.problems();
  place.kb = *kb;
  if (!place.on_bank()) return place;

  place.k1 = hec15::side_shear_factor(place.z());
  const auto k2 = hec15::side_stability_factor(place.theta, place.phi);
  if (!k2) return too_steep();
  place.k2 = *k2;
  steps.given("θ", "side slope from horizontal", measure(in.bank_angle));
  steps.given("φ", "angle of repose of the rock", measure(in.angle_of_repose));
  steps.computed("K1", "side shear over bottom shear",
                 "0.066·Z + 0.67, 0.77 where Z ≤ 1.5, 1 where Z ≥ 5 (Z horizontal over vertical)",
                 measure(place.k1), hec15_mark);
  steps.computed("K2", "stability of rock on the side over rock on the bottom",
                 "√(1 − sin²θ/sin²φ)", measure(place.k2), hec15_rock);
  return place;
}

Problem no_size_holds() {
  return {"no-stable-size", "No rock up to 30 ft holds here by this procedure.", "", "/depth",
          "less depth, a flatter slope or a flatter bank"};
}

/// The smallest sufficient size as a step.
template <class Required>
Expected<Length> find_size(const char* symbol, const char* meaning, const char* formula,
                           Required&& required, Steps& steps) {
  const auto found = smallest_sufficient(required);
  if (!found) return no_size_holds();
  const Length size = Length::feet(*found);
  steps.computed_rock(symbol, meaning, formula, size, hec15_rock);
  return size;
}

const char* form_of(const Place& place) {
  if (!place.uses_steep()) return "smallest D50 ≥ SF·Kb·d·S/[F*·(SG−1)], on a side × K1/K2";
  if (!place.uses_mild()) return "smallest D50 ≥ SF·Kb·d·S·Δ/[F*·(SG−1)]";
  return "smallest D50 ≥ the larger of SF·Kb·d·S/[F*·(SG−1)] (on a side × K1/K2) and "
         "SF·Kb·d·S·Δ/[F*·(SG−1)]";
}

/// What the procedure says at one size: Reynolds number, F*, SF, Δ and the requirement.
void look_at(const Place& place, Length size, Result& result, Steps& steps) {
  const double d50 = size.feet();
  const double reynolds = place.particle_reynolds(d50);
  const auto at = hec15::shields(reynolds);
  result.particle_reynolds = Dimensionless::number(reynolds);
  result.shields = Dimensionless::number(at.f_star);
  result.safety_factor = Dimensionless::number(at.safety_factor);
  steps.computed("Re", "particle Reynolds number at this size",
                 "√(g·d·S)·D50/ν, ν = 1.217e-5 ft²/s", measure(reynolds), hec15_rock);
  steps.computed("F*", "Shields parameter", "0.047 to 0.15 as Re goes from 4e4 to 2e5",
                 measure(at.f_star), hec15_rock);
  steps.computed("SF", "safety factor", "1.0 to 1.5 as Re goes from 4e4 to 2e5",
                 measure(at.safety_factor), hec15_rock);
  const double permissible = at.f_star * (place.specific_gravity - 1) * water_unit_weight * d50;
  result.shear_permissible = Stress::pounds_per_square_foot(permissible);
  steps.computed("τp", "permissible shear at this size", "F*·(γs−γ)·D50",
                 measure(result.shear_permissible), hec15_rock);
  double delta = 1;
  if (place.uses_steep()) {
    delta = steep_factor_at(place, d50);
    // Where no balance exists the requirement is without bound; a finding can carry no infinity.
    if (!std::isfinite(delta)) delta = 0;
    steps.computed("Δ",
                   delta > 0 ? "steep-slope factor, K1 within it"
                             : "steep-slope factor: at this size the moments cannot balance",
                   "K1·(1+sin(α+β))·tanφ/[2·(cosθ·tanφ − SF·sinθ·cosβ)]", measure(delta),
                   "FHWA HEC-15 3rd ed. (2005) eq. 6.11 and App. D (from memory; confirm)");
  }
  result.steep_factor = Dimensionless::number(delta);
}

void shear(const Place& place, Result& result, Steps& steps) {
  const double tau = place.kb * water_unit_weight * place.depth * place.slope;
  result.shear_bottom = Stress::pounds_per_square_foot(tau);
  result.shear_side = Stress::pounds_per_square_foot(place.k1 * tau);
  steps.computed("τb", "greatest shear on the bottom", "Kb·γ·d·S, γ = 62.4 lb/ft³",
                 measure(result.shear_bottom), "FHWA HEC-22 3rd ed. (2009) sec. 5; HEC-15 eq. 3.1");
  if (place.on_bank()) {
    steps.computed("τs", "greatest shear on the side", "K1·τb", measure(result.shear_side),
                   hec15_mark);
  }
}

}  // namespace

Expected<FhwaShearLiningResult> fhwa_shear_lining(const FhwaShearLiningInputs& inputs,
                                                  Steps& steps) {
  const auto read = read_place(inputs, steps);
  if (!read) return read.problems();
  const Place& place = *read;
  Place bottom = place;
  bottom.theta = 0;
  bottom.k1 = bottom.k2 = 1;

  Result result;
  result.bend_factor = Dimensionless::number(place.kb);
  result.side_shear = Dimensionless::number(place.k1);
  result.side_stability = Dimensionless::number(place.k2);
  shear(place, result, steps);
  steps.given("SG", "specific gravity of the rock", measure(inputs.specific_gravity));

  // On a level bottom Δ is 1 and the steep form falls back to the mild one.
  const auto for_bottom = find_size(
      "D50,bottom", "size for the bottom", "smallest D50 ≥ SF·Kb·d·S/[F*·(SG−1)]",
      [&](double trial) { return bottom_required(bottom, trial); }, steps);
  if (!for_bottom) return for_bottom.problems();
  result.d50_bottom = *for_bottom;
  result.d50_side = *for_bottom;
  if (place.on_bank()) {
    const auto for_side = find_size(
        "D50,side", "size for the side", form_of(place),
        [&](double trial) { return required_here(place, trial); }, steps);
    if (!for_side) return for_side.problems();
    result.d50_side = std::max(*for_side, *for_bottom);
  }
  result.d50 = result.d50_side;
  result.fails_again_at = failing_again_above(place, result.d50);
  if (result.fails_again_at) {
    steps.computed_rock("D50",
                        "caution: rock of this larger size is again too small for what is "
                        "asked at it",
                        form_of(place), *result.fails_again_at, hec15_rock);
  }

  const Length tried = inputs.trial_size.value_or(result.d50);
  if (inputs.trial_size) steps.given_rock("D50", "size to try", tried, "given");
  look_at(place, tried, result, steps);
  const double required = required_here(place, tried.feet());
  if (!std::isfinite(required)) {
    return Problem{"no-stable-size",
                   "Rock of the size tried cannot hold on this side slope by this procedure.", "",
                   "/trial_size", "another size, or a flatter bank"};
  }
  result.required_at_trial = Length::feet(required);
  steps.computed_rock("D50", "size asked for at the size tried", form_of(place),
                      result.required_at_trial, hec15_rock);
  return result;
}

}  // namespace proofstone
