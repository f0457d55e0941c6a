#include "engine/sizing/usace_bank_and_bed.h"

#include <cmath>
#include <string>

#include "engine/hydraulics/water_weight.h"
#include "engine/sizing/bend_velocity.h"
#include "engine/sizing/side_slope_factor.h"

namespace proofstone {

namespace {

const char* const em_of_usace_bank_and_bed = "USACE EM 1110-2-1601 (1994) (from memory; confirm)";
const char* const em_equation =
    "USACE EM 1110-2-1601 (1994) eq. 3-3 (form from memory; it returns "
    "all four printed D30 of App. H)";

bool is_bend(const UsaceBankAndBedInputs& in) { return in.attack == WaterAttack::outside_of_bend; }

Problem missing_for_bend(const char* key, const char* what) {
  return {"missing-input", std::string("On the outside of a bend this is needed: ") + what + ".",
          "", std::string("/") + key, "a length"};
}

Problems missing_bend_inputs(const UsaceBankAndBedInputs& in) {
  Problems problems;
  if (!is_bend(in)) return problems;
  if (!in.bend_radius) {
    problems.push_back(missing_for_bend("bend_radius", "the centreline radius"));
  }
  if (!in.top_width) {
    problems.push_back(missing_for_bend("top_width", "the water-surface width"));
  }
  return problems;
}

/// V_SS/V_AVG in the bend itself.
Dimensionless ratio_in_bend(const UsaceBankAndBedInputs& in) {
  return bend_velocity_ratio(in.channel_form, *in.bend_radius, *in.top_width);
}

/// V_SS/V_AVG at the rock.
Dimensionless velocity_ratio(const UsaceBankAndBedInputs& in) {
  if (is_bend(in)) {
    const auto ratio = ratio_in_bend(in);
    if (!in.distance_below_bend) return ratio;
    return bend_ratio_below(ratio, *in.distance_below_bend, *in.top_width);
  }
  return Dimensionless::number(in.attack == WaterAttack::impinging ? 1.6 : 1);
}

/// V: the depth-averaged velocity at the rock, on a bank V_SS.
void show_velocity(const UsaceBankAndBedInputs& in, const UsaceBankAndBedResult& result,
                   Steps& steps) {
  if (in.local_velocity) {
    steps.given("V_SS", "velocity at the rock", measure(*in.local_velocity), "given directly");
    return;
  }
  steps.given("V_AVG", "average velocity of the main channel", measure(in.average_velocity));
  std::string formula = "1 on a straight reach and the inside of a bend";
  std::string source = em_of_usace_bank_and_bed;
  if (is_bend(in)) {
    steps.given("R", "centreline radius of the bend", measure(*in.bend_radius));
    steps.given("W", "water-surface width of the main channel", measure(*in.top_width));
    formula = bend_velocity_formula(in.channel_form);
    source = bend_velocity_source().sentence();
    if (in.distance_below_bend) {
      steps.computed("V_SS/V_AVG", "velocity ratio in the bend", formula,
                     measure(ratio_in_bend(in)), source);
      steps.given("x", "distance below the bend", measure(*in.distance_below_bend));
      formula = "held for one width, then 0.1 less for each width, at least 1";
      source = "WES Streambank Handbook (1997) App. A";
    }
  } else if (in.attack == WaterAttack::impinging) {
    formula = "1.6 where braided or oblique flow runs at the bank";
    source = "WES Streambank Handbook (1997) App. A, p. A-26";
  }
  steps.computed("V_SS/V_AVG", "velocity ratio", formula, measure(result.velocity_ratio), source);
  steps.computed("V_SS", "velocity at the rock", "(V_SS/V_AVG)·V_AVG", measure(result.v_ss));
}

/// Cv: what the vertical distribution of velocity adds.
double vertical_distribution(const UsaceBankAndBedInputs& in) {
  switch (in.attack) {
    case WaterAttack::straight_or_inside:
      return 1;
    case WaterAttack::outside_of_bend: {
      const double r_w = *in.bend_radius / *in.top_width;
      return r_w > 26 ? 1.0 : 1.283 - 0.2 * std::log10(r_w);
    }
    case WaterAttack::below_concrete_channel:
    case WaterAttack::impinging:
    case WaterAttack::end_of_dike:
      return 1.25;
  }
  return 1;
}

void show_vertical_distribution(const UsaceBankAndBedInputs& in,
                                const UsaceBankAndBedResult& result, Steps& steps) {
  std::string formula = "1.0 on a straight reach and the inside of a bend";
  std::string source = em_of_usace_bank_and_bed;
  switch (in.attack) {
    case WaterAttack::straight_or_inside:
      break;
    case WaterAttack::outside_of_bend:
      formula = "1.283 − 0.2·log₁₀(R/W), 1 where R/W > 26";
      break;
    case WaterAttack::below_concrete_channel:
    case WaterAttack::impinging:
      formula = "1.25 below a concrete channel or where the flow runs at the bank";
      source = "WES Streambank Handbook (1997) App. A, p. A-26";
      break;
    case WaterAttack::end_of_dike:
      formula = "1.25 at the end of a dike";
      break;
  }
  steps.computed("Cv", "coefficient for the vertical distribution of velocity", formula,
                 measure(result.cv), source);
}

void note_side_slope(const char* meaning, const char* formula, std::optional<double> k1,
                     const char* source, Steps& steps) {
  if (k1) {
    steps.computed("K1", meaning, formula, measure(Dimensionless::number(*k1)), source);
  }
}

bool uses_curve(const UsaceBankAndBedInputs& in) {
  return in.side_slope_factor == SideSlopeFactor::published_curve;
}

std::optional<double> side_slope(const UsaceBankAndBedInputs& in) {
  if (in.side_slope_factor_value) return in.side_slope_factor_value->number();
  return uses_curve(in) ? side_slope_factor_curve(in.bank_angle)
                        : side_slope_factor_analytic(in.bank_angle, in.angle_of_repose);
}

Problem bank_too_steep(const UsaceBankAndBedInputs& in) {
  const bool use_curve = uses_curve(in);
  return {"bank-too-steep",
          use_curve ? "The bank is steeper than the published side-slope curve goes."
                    : "The bank is as steep as the rock's angle of repose or steeper; "
                      "loose rock does not stay on it.",
          "", "/bank_angle",
          use_curve ? "a bank flatter than 46°" : "a bank flatter than angle_of_repose"};
}

void show_side_slope(const UsaceBankAndBedInputs& in, Steps& steps) {
  if (in.side_slope_factor_value) {
    steps.given("K1", "side-slope factor", measure(*in.side_slope_factor_value), "given directly");
    return;
  }
  const auto curve = side_slope_factor_curve(in.bank_angle);
  const auto analytic = side_slope_factor_analytic(in.bank_angle, in.angle_of_repose);
  steps.given("θ", "bank angle from horizontal", measure(in.bank_angle));
  const char* const curve_formula = "√(1 − [sin(θ−14°)/sin 32°]^1.6), 1 where θ ≤ 14°";
  const char* const curve_source =
      "EM 1110-2-1601 Plate B-39 by the fit in FHWA HEC-23 (2009) DG4 (from memory; confirm)";
  const char* const analytic_formula = "√(1 − sin²θ/sin²φ)";
  const char* const analytic_source = "EM 1110-2-1601 eq. 3-4 (from memory; confirm)";
  if (uses_curve(in)) {
    note_side_slope("note, not used: side-slope factor of the analytic form", analytic_formula,
                    analytic, analytic_source, steps);
    note_side_slope("side-slope factor of the published curve", curve_formula, curve, curve_source,
                    steps);
  } else {
    steps.given("φ", "angle of repose of the rock", measure(in.angle_of_repose));
    note_side_slope(
        "note, not used: side-slope factor of the published curve, which alone "
        "returns the manual's own examples",
        curve_formula, curve, curve_source, steps);
    note_side_slope("side-slope factor of the analytic form", analytic_formula, analytic,
                    analytic_source, steps);
  }
}

Length median_size(const UsaceBankAndBedInputs& in, Length d30) {
  if (in.median_from_d30 == MedianFromD30::hec23_constant) return 1.20 * d30;
  const double exponent = in.median_from_d30 == MedianFromD30::rock_manual ? 0.32 : 1.0 / 3.0;
  return std::pow(in.size_ratio.number(), exponent) * d30;
}

void show_median_size(const UsaceBankAndBedInputs& in, const UsaceBankAndBedResult& result,
                      Steps& steps) {
  const char* const meaning = "median stone size that goes with it";
  if (in.median_from_d30 == MedianFromD30::hec23_constant) {
    steps.computed_rock("D50", meaning, "1.20·D30", result.d50,
                        "FHWA HEC-23 (2009) DG4 (from memory; confirm)");
    return;
  }
  steps.given("D85/D15", "how widely the sizes are spread", measure(in.size_ratio));
  const bool rock_manual = in.median_from_d30 == MedianFromD30::rock_manual;
  steps.computed_rock(
      "D50", meaning, rock_manual ? "D30·(D85/D15)^0.32" : "D30·(D85/D15)^⅓", result.d50,
      rock_manual ? "CIRIA C683 (2007) (from memory; confirm)" : em_of_usace_bank_and_bed);
}

double shape_coefficient(const UsaceBankAndBedInputs& in) {
  return in.angularity == Angularity::angular ? 0.30 : 0.375;
}

}  // namespace

Expected<UsaceBankAndBedResult> usace_bank_and_bed(const UsaceBankAndBedInputs& inputs) {
  Problems missing = missing_bend_inputs(inputs);
  if (!missing.empty()) return missing;
  const auto side_slope_factor = side_slope(inputs);
  if (!side_slope_factor) return bank_too_steep(inputs);

  UsaceBankAndBedResult result;
  if (inputs.local_velocity) {
    result.v_ss = *inputs.local_velocity;
  } else {
    result.velocity_ratio = velocity_ratio(inputs);
    result.v_ss = result.velocity_ratio.number() * inputs.average_velocity;
  }
  result.cv = Dimensionless::number(vertical_distribution(inputs));
  result.k1 = Dimensionless::number(*side_slope_factor);

  const double Sf = inputs.safety_factor.number();
  const double Cs = shape_coefficient(inputs);
  const double Cv = result.cv.number();
  const double CT = inputs.thickness_coefficient.number();
  const double d = inputs.local_depth.feet();
  const double gamma_s = inputs.specific_gravity.number() * gamma_w;
  const double V = result.v_ss.feet_per_second();
  const double K1 = result.k1.number();

  const double D30 =
      Sf * Cs * Cv * CT * d *
      std::pow(std::sqrt(gamma_w / (gamma_s - gamma_w)) * V / std::sqrt(K1 * g_us * d), 2.5);

  result.d30 = Length::feet(D30);
  result.d50 = median_size(inputs, result.d30);
  return result;
}

Expected<UsaceBankAndBedResult> usace_bank_and_bed(const UsaceBankAndBedInputs& inputs,
                                                   Steps& steps) {
  auto computed = usace_bank_and_bed(inputs);
  if (!computed) return computed;
  const UsaceBankAndBedResult& result = *computed;
  show_velocity(inputs, result, steps);
  show_vertical_distribution(inputs, result, steps);
  show_side_slope(inputs, steps);
  steps.given("Sf", "safety factor", measure(inputs.safety_factor));
  steps.given("Cs", inputs.angularity == Angularity::angular ? "angular rock" : "rounded rock",
              measure(shape_coefficient(inputs)), em_of_usace_bank_and_bed);
  steps.given("CT", "layer-thickness coefficient", measure(inputs.thickness_coefficient));
  steps.given("d", "water depth at the rock", measure(inputs.local_depth));
  steps.given("γs/γw", "specific gravity of the rock, water 62.4 lb/ft³",
              measure(inputs.specific_gravity));
  steps.computed_rock("D30", "required size, 30 % smaller by mass",
                      "Sf·Cs·Cv·CT·d·[(γw/(γs−γw))^½·V_SS/√(K1·g·d)]^2.5, g = 32.174 ft/s²",
                      result.d30, em_equation);
  show_median_size(inputs, result, steps);
  return computed;
}

}  // namespace proofstone
