#include "engine/sizing/bend_shear.h"

#include "engine/method/typed_method.h"
#include "engine/sizing/fhwa_shear_lining.h"
#include "engine/sizing/hec15_curves.h"

namespace proofstone {

namespace {

struct BendShearInputs {
  BendBasis width_basis = BendBasis::top_width;
  Length bend_radius;
  Length width;
  Stress straight_shear;
};

struct BendShearResult {
  Dimensionless radius_over_width;
  Dimensionless bend_factor;
  Stress shear;
  Stress shear_upper;
};

/// The upper end of what a later study measured over the curve.
constexpr double measured_over_curve = 1.5;

const char* const hec15_of_bend_shear =
    "FHWA HEC-15 3rd ed. (2005) eqs. 3.6 and 3.7 (from memory; confirm)";

Expected<BendShearResult> compute_bend_shear(const BendShearInputs& inputs, Steps& steps) {
  const double ratio = inputs.bend_radius / inputs.width;
  BendShearResult result;
  result.radius_over_width = Dimensionless::number(ratio);
  result.bend_factor = Dimensionless::number(hec15::bend_factor(ratio));
  result.shear = inputs.straight_shear * result.bend_factor.number();
  result.shear_upper = measured_over_curve * result.shear;
  const bool top = inputs.width_basis == BendBasis::top_width;
  const std::string width = top ? "T" : "B";
  steps.given("Rc", "centreline radius of the bend", measure(inputs.bend_radius));
  steps.given(width, top ? "top width" : "bottom width", measure(inputs.width));
  steps.given("τd", "greatest shear in a straight reach, γ·d·S", measure(inputs.straight_shear));
  steps.computed("Rc/" + width, "radius over width", "Rc/" + width,
                 measure(result.radius_over_width));
  steps.computed(
      "Kb", "bend factor on shear",
      "2.00 up to 2; 2.38 − 0.206·x + 0.0073·x² with x = Rc/" + width + "; 1.05 from 10 on",
      measure(result.bend_factor), hec15_of_bend_shear);
  steps.computed("τb", "greatest shear in the bend", "Kb·τd", measure(result.shear));
  steps.computed("1.5·τb", "upper end of what was measured over this curve", "1.5·τb",
                 measure(result.shear_upper), "Thornton, Sin, Sclafani & Abt, CSU (2012)");
  return result;
}

TypedMethod<BendShearInputs, BendShearResult> build_bend_shear() {
  MethodDescription about;
  about.id = "bend-shear";
  about.title = "Shear in a bend";
  about.purpose =
      "The greatest shear on the bed and outer bank of a bend from that of a straight reach.";
  about.group = MethodGroup::water;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005)", "eqs. 3.6 and 3.7", SourceStanding::memory},
      {"Thornton, Sin, Sclafani & Abt, Boundary shear stress along rigid trapezoidal bends, CSU "
       "for the Bureau of Reclamation (2012)",
       "summary: measured factors 15 to 50 % above this curve", SourceStanding::published}};
  about.cautions = {
      "A later study measured factors 15 to 50 % above this curve: see the upper value.",
      "HEC-22 enters the curve with the bottom width in an example, which gives less shear; the "
      "top "
      "width is the safer choice."};
  TypedMethod<BendShearInputs, BendShearResult> method(about, &compute_bend_shear);
  method.choice({"width_basis", "", "which width is given"}, &BendShearInputs::width_basis,
                {{BendBasis::top_width, "top", "top width, as HEC-15 has it"},
                 {BendBasis::bottom_width, "bottom", "bottom width, as HEC-22's example has it"}});
  method.required({"bend_radius", "Rc", "centreline radius of the bend"},
                  &BendShearInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6));
  method.required({"width", "T", "that width"}, &BendShearInputs::width, unit::foot,
                  AllowedRange::positive_to(1e5));
  method.required({"straight_shear", "τd", "greatest shear in a straight reach, γ·d·S"},
                  &BendShearInputs::straight_shear, unit::pound_per_square_foot,
                  AllowedRange::positive_to(200));
  method.output({"radius_over_width", "Rc/T", "radius over width"},
                &BendShearResult::radius_over_width, unit::number);
  method.output({"bend_factor", "Kb", "bend factor on shear"}, &BendShearResult::bend_factor,
                unit::number);
  method.output({"shear", "τb", "greatest shear in the bend"}, &BendShearResult::shear,
                unit::pound_per_square_foot);
  method.output({"shear_upper", "1.5·τb", "half as much again, the upper end of measurements"},
                &BendShearResult::shear_upper, unit::pound_per_square_foot);
  return method;
}

}  // namespace

const Method& bend_shear_method() {
  static const TypedMethod<BendShearInputs, BendShearResult> method = build_bend_shear();
  return method;
}

}  // namespace proofstone
