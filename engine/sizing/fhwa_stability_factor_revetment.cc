#include "engine/sizing/fhwa_stability_factor_revetment.h"

#include <cmath>

#include "engine/sizing/side_slope_factor.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedFhwaStabilityFactorRevetment =
    TypedSizingMethod<FhwaStabilityFactorRevetmentInputs, FhwaStabilityFactorRevetmentResult>;

constexpr double pier_factor = 3.38;

const char* const hec11 =
    "FHWA HEC-11 (1989) eqs. 6 to 9, as Colorado mine permits reprint them; US form second-hand";
const char* const hec11_memory = "FHWA HEC-11 (1989) (from memory; confirm)";

std::variant<FhwaStabilityFactorRevetmentInputs, NotApplicable>
fhwa_stability_factor_revetment_from_zone(const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The equation is for revetments in uniform or gradually varied flow, not for rock just "
        "below stilling basins, drops or gates."};
  }
  FhwaStabilityFactorRevetmentInputs in;
  in.average_velocity = zone.average_velocity;
  in.average_depth = zone.mean_depth;
  if (zone.place == ZonePlace::bank) in.bank_angle = zone.bank_angle;
  in.angle_of_repose = angle_of_repose_of(zone.rock);
  in.specific_gravity = zone.rock.specific_gravity;
  std::optional<double> r_over_w;
  if (zone.bend_side != BendSide::straight && zone.bend_radius) {
    r_over_w = *zone.bend_radius / zone.water_top_width;
  }
  in.stability_factor = hec11_stability_factor(r_over_w);
  return in;
}

MethodDescription describe_fhwa_stability_factor_revetment() {
  MethodDescription about;
  about.id = "fhwa-stability-factor-revetment";
  about.title = "FHWA stability-factor revetment";
  about.purpose =
      "Median size of rock on revetments from average velocity and depth, with a stability factor "
      "that stands for bends, debris, ice, waves and doubtful data; the older FHWA method.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"FHWA HEC-11, Design of Riprap Revetment (IP-89-016, 1989)",
                    "eqs. 6 to 9, as reprinted in Colorado mine permits (doc. 993768, p. 30)",
                    SourceStanding::published},
                   {"FHWA HEC-11 (1989)", "Table 1: stability factors; factor 3.38 at piers",
                    SourceStanding::memory}};
  about.cautions = {
      "Superseded by FHWA HEC-23 DG4; it stands here to redo older designs and to compare.",
      "Stability factor 1.0 to 1.2: straight or mildly curved, little debris, good data. 1.3 to "
      "1.6: moderate bends (R/W 10 to 30), moderate debris or waves. 1.6 to 2.0: sharp bends (R/W "
      "below 10), heavy debris or ice, waves of 1 to 2 ft, turbulence of abutments, poor data.",
      "The base equation already holds a stability factor of 1.2: no other safety factor is put "
      "on top.",
      "The layer is not thinner than D100 and 1.5·D50, nor than 12 in."};
  return about;
}

DescribedFhwaStabilityFactorRevetment build_fhwa_stability_factor_revetment() {
  DescribedFhwaStabilityFactorRevetment method(
      describe_fhwa_stability_factor_revetment(), &fhwa_stability_factor_revetment,
      &fhwa_stability_factor_revetment_from_zone,
      [](const FhwaStabilityFactorRevetmentResult& result) {
        return RequiredSize{50, result.d50};
      });
  method.required({"average_velocity", "Va", "average velocity of the main channel"},
                  &FhwaStabilityFactorRevetmentInputs::average_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.required({"average_depth", "d_avg", "average depth of the main channel"},
                  &FhwaStabilityFactorRevetmentInputs::average_depth, unit::foot,
                  AllowedRange::positive_to(300));
  method.required({"bank_angle", "θ", "bank angle from horizontal; 0° on a bed"},
                  &FhwaStabilityFactorRevetmentInputs::bank_angle, unit::degree,
                  AllowedRange::between(0, 90));
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock"},
                   &FhwaStabilityFactorRevetmentInputs::angle_of_repose, unit::degree,
                   AllowedRange::between(20, 60));
  method.defaulted({"specific_gravity", "Ss", "specific gravity of the rock"},
                   &FhwaStabilityFactorRevetmentInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"stability_factor", "SF", "stability factor, by Table 1"},
                   &FhwaStabilityFactorRevetmentInputs::stability_factor, unit::number,
                   AllowedRange::between(1, 5));
  method.safety_margin("stability_factor", 1);
  method.choice(
      {"use", "", "what the rock protects"}, &FhwaStabilityFactorRevetmentInputs::use,
      {{RevetmentUse::bank, "bank", "a bank or bed"},
       {RevetmentUse::pier_or_abutment, "pier-or-abutment", "a pier or abutment: 3.38 times"}});
  method.output({"k1", "K1", "bank angle correction"}, &FhwaStabilityFactorRevetmentResult::k1,
                unit::number);
  method.output({"csg", "Csg", "specific gravity correction"},
                &FhwaStabilityFactorRevetmentResult::csg, unit::number);
  method.output({"csf", "Csf", "stability factor correction"},
                &FhwaStabilityFactorRevetmentResult::csf, unit::number);
  method.output({"d50", "D50", "required median size"}, &FhwaStabilityFactorRevetmentResult::d50,
                unit::foot, LengthUse::rock);
  method.limit({"Water deeper than the stone is wide", "common practice"},
               [](const FhwaStabilityFactorRevetmentInputs& in) {
                 Steps unread;
                 const auto result = fhwa_stability_factor_revetment(in, unread);
                 return result && in.average_depth > result->d50;
               });
  method.limit({"Stability factor from 1.0 to 2.0, the range of Table 1", hec11_memory},
               [](const FhwaStabilityFactorRevetmentInputs& in) {
                 return in.stability_factor.number() < 2 + 1e-9;
               });
  method.for_comparison_until_chosen(
      {"stability_factor"},
      "the stability factor of this older method stands for bends, debris, ice, waves and the "
      "quality of the data, which a zone does not tell; by default it is the upper end of the "
      "range for the bend. Choose stability_factor for the zone to let it govern.");
  return method;
}

}  // namespace

Dimensionless hec11_stability_factor(std::optional<double> r_over_w) {
  if (!r_over_w || *r_over_w > 30) return Dimensionless::number(1.2);
  return Dimensionless::number(*r_over_w > 10 ? 1.6 : 2.0);
}

Expected<FhwaStabilityFactorRevetmentResult> fhwa_stability_factor_revetment(
    const FhwaStabilityFactorRevetmentInputs& inputs, Steps& steps) {
  const auto K1 = side_slope_factor_analytic(inputs.bank_angle, inputs.angle_of_repose);
  if (!K1) {
    return Problem{"bank-too-steep",
                   "The bank is as steep as the rock's angle of repose or steeper; loose rock does "
                   "not stay on it.",
                   "", "/bank_angle", "a bank flatter than angle_of_repose"};
  }
  const double V = inputs.average_velocity.feet_per_second();
  const double d = inputs.average_depth.feet();
  const double Ss = inputs.specific_gravity.number();
  const double SF = inputs.stability_factor.number();
  const double Cpa = inputs.use == RevetmentUse::bank ? 1 : pier_factor;

  const double Csg = 2.12 / std::pow(Ss - 1, 1.5);
  const double Csf = std::pow(SF / 1.2, 1.5);
  const double D50 = 0.001 * V * V * V / (std::sqrt(d) * std::pow(*K1, 1.5));
  const double corrected = Csg * Csf * Cpa * D50;

  FhwaStabilityFactorRevetmentResult result;
  result.k1 = Dimensionless::number(*K1);
  result.csg = Dimensionless::number(Csg);
  result.csf = Dimensionless::number(Csf);
  result.d50 = Length::feet(corrected);
  steps.given("Va", "average velocity of the main channel", measure(inputs.average_velocity));
  steps.given("d_avg", "average depth of the main channel", measure(inputs.average_depth));
  steps.given("θ", "bank angle from horizontal", measure(inputs.bank_angle));
  steps.given("φ", "angle of repose of the rock", measure(inputs.angle_of_repose));
  steps.computed("K1", "bank angle correction", "√(1 − sin²θ/sin²φ)", measure(result.k1), hec11);
  steps.computed_rock("D50", "base size, for Ss 2.65 and SF 1.2",
                      "0.001·Va³/(d_avg^0.5·K1^1.5) (ft, ft/s)", Length::feet(D50), hec11);
  steps.given("Ss", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.computed("Csg", "specific gravity correction", "2.12/(Ss−1)^1.5", measure(result.csg),
                 hec11);
  steps.given("SF", "stability factor", measure(inputs.stability_factor), hec11_memory);
  steps.computed("Csf", "stability factor correction", "(SF/1.2)^1.5", measure(result.csf), hec11);
  steps.given("Cp", "factor for piers and abutments, 1 elsewhere", measure(Cpa), hec11_memory);
  steps.computed_rock("D50'", "required median size", "Csg·Csf·Cp·D50", result.d50, hec11);
  return result;
}

const SizingMethod& fhwa_stability_factor_revetment_method() {
  static const DescribedFhwaStabilityFactorRevetment method =
      build_fhwa_stability_factor_revetment();
  return method;
}

}  // namespace proofstone
