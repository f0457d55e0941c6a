#include "engine/sizing/abutment_riprap.h"
#include "engine/sizing/typed_sizing_method.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

using DescribedAbutmentRiprap = TypedSizingMethod<AbutmentRiprapInputs, AbutmentRiprapResult>;

constexpr double branch_froude = 0.80;

const char* const dg14_of_abutment_riprap = "FHWA HEC-23 Vol. 2 (2009) DG14 (from memory; confirm)";

struct Branch {
  double coefficient;
  double exponent;
  const char* formula;
};

Branch branch_of(AbutmentForm form, bool rapid) {
  const bool spill_through = form == AbutmentForm::spill_through;
  if (rapid) return {spill_through ? 0.61 : 0.69, 0.14, "y·[K/(Ss−1)]·[V²/(g·y)]^0.14"};
  return {spill_through ? 0.89 : 1.02, 1, "y·[K/(Ss−1)]·V²/(g·y)"};
}

std::variant<AbutmentRiprapInputs, NotApplicable> abutment_riprap_from_zone(
    const ZoneSetting& zone) {
  AbutmentRiprapInputs in;
  in.velocity = zone.average_velocity;
  in.depth = zone.local_depth;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_abutment_riprap() {
  MethodDescription about;
  about.id = "abutment-riprap";
  about.title = "Rock at a bridge abutment";
  about.purpose =
      "Median size and extent of rock that protects a bridge abutment, from the velocity and depth "
      "of the contracted flow beside it.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"FHWA HEC-23 Vol. 2, 3rd ed. (FHWA-NHI-09-112, 2009)", "Design Guideline 14",
                    SourceStanding::memory}};
  about.cautions = {
      "V is the characteristic average velocity by the setback rule, not that of the channel.",
      ("The form of the abutment of a zone is taken as a vertical wall, which asks for more, "
       "unless form is chosen."),
      ("The two branches do not meet exactly at Froude number 0.80: near it look at both, which "
       "the steps show."),
      ("Carry the apron along the whole toe and round the ends to the tangent points; its top is "
       "at or below the bed."),
      ("The layer is not thinner than 1.5·D50 and D100; half as much again under water; a filter "
       "below all of it.")};
  return about;
}

DescribedAbutmentRiprap build_abutment_riprap() {
  DescribedAbutmentRiprap method(
      describe_abutment_riprap(), &abutment_riprap, &abutment_riprap_from_zone,
      [](const AbutmentRiprapResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::abutment});
  method.choice({"form", "K", "form of the abutment"}, &AbutmentRiprapInputs::form,
                {{AbutmentForm::spill_through, "spill-through", "sloping fill in front"},
                 {AbutmentForm::vertical_wall, "vertical-wall", "vertical wall"}});
  method.required({"velocity", "V", "characteristic average velocity in the contracted section"},
                  &AbutmentRiprapInputs::velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.required({"depth", "y", "depth of flow in the contracted section"},
                  &AbutmentRiprapInputs::depth, unit::foot, AllowedRange::positive_to(300));
  method.optional({"overbank_depth", "y_o", "depth on the overbank beside the embankment"},
                  &AbutmentRiprapInputs::overbank_depth, unit::foot, AllowedRange::positive_to(300),
                  "the depth of the contracted section");
  method.defaulted({"specific_gravity", "Ss", "specific gravity of the rock"},
                   &AbutmentRiprapInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.output({"froude_number", "Fr", "Froude number of the contracted section"},
                &AbutmentRiprapResult::froude_number, unit::number);
  method.output({"d50", "D50", "required median size"}, &AbutmentRiprapResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"apron_width", "W_a", "apron from the toe into the waterway"},
                &AbutmentRiprapResult::apron_width, unit::foot);
  method.output({"slope_coverage", "L_s", "cover of the embankment beyond the tangent point"},
                &AbutmentRiprapResult::slope_coverage, unit::foot);
  method.output({"height_above_water", "h", "cover of the slope above the design water level"},
                &AbutmentRiprapResult::height_above_water, unit::foot);
  return method;
}

void lay_out(const AbutmentRiprapInputs& in, AbutmentRiprapResult& result, Steps& steps) {
  const Length overbank = in.overbank_depth.value_or(in.depth);
  const Length two_depths = 2 * overbank;
  result.apron_width = std::min(two_depths, Length::feet(25));
  result.slope_coverage = std::max(two_depths, Length::feet(25));
  result.height_above_water = Length::feet(2);
  steps.given("y_o", "depth on the overbank beside the embankment", measure(overbank),
              in.overbank_depth ? "" : "taken as the depth of the contracted section");
  steps.computed("W_a", "apron from the toe into the waterway", "2·y_o, at most 25 ft",
                 measure(result.apron_width), dg14_of_abutment_riprap);
  steps.computed("L_s", "cover of the embankment beyond the tangent point",
                 "the larger of 2·y_o and 25 ft", measure(result.slope_coverage),
                 dg14_of_abutment_riprap);
  steps.given("h", "cover of the slope above the design water level, at least",
              measure(result.height_above_water), dg14_of_abutment_riprap);
}

}  // namespace

Expected<AbutmentRiprapResult> abutment_riprap(const AbutmentRiprapInputs& inputs, Steps& steps) {
  const double V = inputs.velocity.feet_per_second();
  const double y = inputs.depth.feet();
  const double Ss = inputs.specific_gravity.number();
  const double square = V * V / (g_us * y);
  const double Fr = std::sqrt(square);
  const bool rapid = Fr > branch_froude;
  const Branch used = branch_of(inputs.form, rapid);
  const Branch other = branch_of(inputs.form, !rapid);
  const auto size = [&](const Branch& branch) {
    return Length::feet(y * branch.coefficient / (Ss - 1) * std::pow(square, branch.exponent));
  };

  AbutmentRiprapResult result;
  result.froude_number = Dimensionless::number(Fr);
  result.d50 = size(used);
  steps.given("V", "characteristic average velocity", measure(inputs.velocity));
  steps.given("y", "depth of flow in the contracted section", measure(inputs.depth));
  steps.given("Ss", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.computed("Fr", "Froude number of the contracted section", "V/√(g·y), g = 32.174 ft/s²",
                 measure(result.froude_number));
  steps.given(
      "K", rapid ? "coefficient above Froude number 0.80" : "coefficient up to Froude number 0.80",
      measure(used.coefficient), dg14_of_abutment_riprap);
  steps.computed_rock("D50", "note, not used: by the other branch", other.formula, size(other),
                      dg14_of_abutment_riprap);
  steps.computed_rock("D50", "required median size", used.formula, result.d50,
                      dg14_of_abutment_riprap);
  lay_out(inputs, result, steps);
  return result;
}

const SizingMethod& abutment_riprap_method() {
  static const DescribedAbutmentRiprap method = build_abutment_riprap();
  return method;
}

}  // namespace proofstone
