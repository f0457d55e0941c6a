#include "engine/sizing/fhwa_shear_lining.h"

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/water_weight.h"
#include "engine/sizing/hec15_curves.h"
#include "engine/sizing/shear_lining_place.h"

namespace proofstone {

namespace {

using Place = ShearLiningPlace;

const char* const hec15_mark = "FHWA HEC-15 3rd ed. (2005) ch. 3 (from memory; confirm)";
const char* const hec15_rock = "FHWA HEC-15 3rd ed. (2005) ch. 6 (from memory; confirm)";

/// The width that Rc is measured by.
const std::optional<Length>& bend_width(const FhwaShearLiningInputs& in) {
  return in.bend_basis == BendBasis::top_width ? in.top_width : in.bottom_width;
}

Expected<double> bend(const FhwaShearLiningInputs& in) {
  if (!in.bend_radius) return 1.0;
  const auto& width = bend_width(in);
  if (!width) {
    return Problem{"missing-input", "In a bend this width is needed.", "",
                   in.bend_basis == BendBasis::top_width ? "/top_width" : "/bottom_width",
                   "a length"};
  }
  return hec15::bend_factor(*in.bend_radius / *width);
}

void explain_bend(const FhwaShearLiningInputs& in, double kb, Steps& steps) {
  if (!in.bend_radius) {
    steps.given("Kb", "bend factor on shear", measure(kb), "straight reach");
    return;
  }
  const bool by_top = in.bend_basis == BendBasis::top_width;
  steps.given("Rc", "centreline radius of the bend", measure(*in.bend_radius));
  if (const auto& width = bend_width(in)) {
    steps.given(by_top ? "T" : "B", by_top ? "top width" : "bottom width", measure(*width));
  }
  steps.computed("Kb",
                 by_top ? "bend factor on shear, by Rc/T"
                        : "bend factor on shear, by Rc/B as HEC-22 enters the curve",
                 "2.38 − 0.206·r + 0.0073·r², 2.00 where r ≤ 2, 1.05 where r ≥ 10", measure(kb),
                 hec15_mark);
}

Problem too_steep() {
  return {"bank-too-steep",
          "The bank is as steep as the rock's angle of repose or steeper; loose rock does not stay "
          "on it.",
          "", "/bank_angle", "a bank flatter than angle_of_repose"};
}

Expected<Place> place_of(const FhwaShearLiningInputs& in) {
  Place place;
  place.depth = in.depth.feet();
  place.slope = in.slope.ratio();
  place.theta = in.bank_angle.radians();
  place.phi = in.angle_of_repose.radians();
  place.specific_gravity = in.specific_gravity.number();
  const auto kb = bend(in);
  if (!kb) return kb.problems();
  place.kb = *kb;
  if (!place.on_bank()) return place;
  place.k1 = hec15::side_shear_factor(place.z());
  const auto k2 = hec15::side_stability_factor(place.theta, place.phi);
  if (!k2) return too_steep();
  place.k2 = *k2;
  return place;
}

void explain_place(const FhwaShearLiningInputs& in, const Place& place, Steps& steps) {
  steps.given("d", "greatest depth", measure(in.depth));
  steps.given("S", "slope", measure(in.slope));
  explain_bend(in, place.kb, steps);
  if (!place.on_bank()) return;
  steps.given("θ", "side slope from horizontal", measure(in.bank_angle));
  steps.given("φ", "angle of repose of the rock", measure(in.angle_of_repose));
  steps.computed("K1", "side shear over bottom shear",
                 "0.066·Z + 0.67, 0.77 where Z ≤ 1.5, 1 where Z ≥ 5 (Z horizontal over vertical)",
                 measure(place.k1), hec15_mark);
  steps.computed("K2", "stability of rock on the side over rock on the bottom",
                 "√(1 − sin²θ/sin²φ)", measure(place.k2), hec15_rock);
}

void explain_shear(const Place& place, const FhwaShearLiningResult& result, Steps& steps) {
  steps.computed("τb", "greatest shear on the bottom", "Kb·γ·d·S, γ = 62.4 lb/ft³",
                 measure(result.shear_bottom), "FHWA HEC-22 3rd ed. (2009) sec. 5; HEC-15 eq. 3.1");
  if (place.on_bank()) {
    steps.computed("τs", "greatest shear on the side", "K1·τb", measure(result.shear_side),
                   hec15_mark);
  }
}

const char* form_of(const Place& place) {
  if (!place.uses_steep()) return "smallest D50 ≥ SF·Kb·d·S/[F*·(SG−1)], on a side × K1/K2";
  if (!place.uses_mild()) return "smallest D50 ≥ SF·Kb·d·S·Δ/[F*·(SG−1)]";
  return "smallest D50 ≥ the larger of SF·Kb·d·S/[F*·(SG−1)] (on a side × K1/K2) and "
         "SF·Kb·d·S·Δ/[F*·(SG−1)]";
}

void explain_sizes(const Place& place, const FhwaShearLiningResult& result, Steps& steps) {
  steps.computed_rock("D50,bottom", "size for the bottom", "smallest D50 ≥ SF·Kb·d·S/[F*·(SG−1)]",
                      result.d50_bottom, hec15_rock);
  if (place.on_bank()) {
    steps.computed_rock("D50,side", "size for the side", form_of(place), result.d50_side,
                        hec15_rock);
  }
  if (!result.fails_again_at) return;
  steps.computed_rock("D50",
                      "caution: rock of this larger size is again too small for what is "
                      "asked at it",
                      form_of(place), *result.fails_again_at, hec15_rock);
}

/// What the procedure says at one size: Reynolds number, F*, SF, Δ.
void look_at(const Place& place, double d50, FhwaShearLiningResult& result) {
  const double reynolds = place.particle_reynolds(d50);
  const auto at = hec15::shields(reynolds);
  result.particle_reynolds = Dimensionless::number(reynolds);
  result.shields = Dimensionless::number(at.f_star);
  result.safety_factor = Dimensionless::number(at.safety_factor);
  result.shear_permissible =
      Stress::pounds_per_square_foot(at.f_star * (place.specific_gravity - 1) * gamma_w * d50);
  double delta = place.uses_steep() ? steep_factor_at(place, d50) : 1;
  // Where no balance exists the requirement is without bound; a finding can carry no infinity.
  if (!std::isfinite(delta)) delta = 0;
  result.steep_factor = Dimensionless::number(delta);
}

void explain_look(const Place& place, const FhwaShearLiningResult& result, Steps& steps) {
  steps.computed("Re", "particle Reynolds number at this size",
                 "√(g·d·S)·D50/ν, ν = 1.217e-5 ft²/s", measure(result.particle_reynolds),
                 hec15_rock);
  steps.computed("F*", "Shields parameter", "0.047 to 0.15 as Re goes from 4e4 to 2e5",
                 measure(result.shields), hec15_rock);
  steps.computed("SF", "safety factor", "1.0 to 1.5 as Re goes from 4e4 to 2e5",
                 measure(result.safety_factor), hec15_rock);
  steps.computed("τp", "permissible shear at this size", "F*·(γs−γ)·D50",
                 measure(result.shear_permissible), hec15_rock);
  if (!place.uses_steep()) return;
  steps.computed("Δ",
                 result.steep_factor.number() > 0
                     ? "steep-slope factor, K1 within it"
                     : "steep-slope factor: at this size the moments cannot balance",
                 "K1·(1+sin(α+β))·tanφ/[2·(cosθ·tanφ − SF·sinθ·cosβ)]",
                 measure(result.steep_factor),
                 "FHWA HEC-15 3rd ed. (2005) eq. 6.11 and App. D (from memory; confirm)");
}

Problem no_size_holds() {
  return {"no-stable-size", "No rock up to 30 ft holds here by this procedure.", "", "/depth",
          "less depth, a flatter slope or a flatter bank"};
}

Problem cannot_hold_at_trial() {
  return {"no-stable-size",
          "Rock of the size tried cannot hold on this side slope by this procedure.", "",
          "/trial_size", "another size, or a flatter bank"};
}

/// The bottom beside a place on the bank.
Place bottom_beside(Place place) {
  place.theta = 0;
  place.k1 = place.k2 = 1;
  return place;
}

Expected<FhwaShearLiningResult> at_place(const FhwaShearLiningInputs& inputs, const Place& place) {
  FhwaShearLiningResult result;
  result.bend_factor = Dimensionless::number(place.kb);
  result.side_shear = Dimensionless::number(place.k1);
  result.side_stability = Dimensionless::number(place.k2);
  const double tau = place.kb * gamma_w * place.depth * place.slope;
  result.shear_bottom = Stress::pounds_per_square_foot(tau);
  result.shear_side = Stress::pounds_per_square_foot(place.k1 * tau);
  const auto bottom = size_here(bottom_beside(place));
  const auto side = place.on_bank() ? size_here(place) : bottom;
  if (!bottom || !side) return no_size_holds();
  result.d50_bottom = Length::feet(*bottom);
  result.d50_side = Length::feet(std::max(*side, *bottom));
  result.d50 = result.d50_side;
  const double tried = inputs.trial_size.value_or(result.d50).feet();
  look_at(place, tried, result);
  const double required = required_here(place, tried);
  if (!std::isfinite(required)) return cannot_hold_at_trial();
  result.required_at_trial = Length::feet(required);
  return result;
}

}  // namespace

Expected<FhwaShearLiningResult> fhwa_shear_lining(const FhwaShearLiningInputs& inputs) {
  const auto place = place_of(inputs);
  if (!place) return place.problems();
  return at_place(inputs, *place);
}

Expected<FhwaShearLiningResult> fhwa_shear_lining(const FhwaShearLiningInputs& inputs,
                                                  Steps& steps) {
  const auto place = place_of(inputs);
  if (!place) return place.problems();
  auto result = at_place(inputs, *place);
  if (!result) return result;
  const auto again = failing_again_above(*place, result->d50.feet());
  if (again) result->fails_again_at = Length::feet(*again);
  explain_place(inputs, *place, steps);
  explain_shear(*place, *result, steps);
  steps.given("SG", "specific gravity of the rock", measure(inputs.specific_gravity));
  explain_sizes(*place, *result, steps);
  if (inputs.trial_size) steps.given_rock("D50", "size to try", *inputs.trial_size, "given");
  explain_look(*place, *result, steps);
  steps.computed_rock("D50", "size asked for at the size tried", form_of(*place),
                      result->required_at_trial, hec15_rock);
  return result;
}

}  // namespace proofstone
