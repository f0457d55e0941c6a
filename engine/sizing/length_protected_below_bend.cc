#include "engine/sizing/length_protected_below_bend.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

enum class Factor { hec22, hec15 };

struct LengthProtectedBelowBendInputs {
  Factor factor = Factor::hec22;
  Length hydraulic_radius;
  Dimensionless roughness;
};

struct LengthProtectedBelowBendResult {
  Length length;
};

double factor_of(Factor factor) { return factor == Factor::hec22 ? 0.604 : 0.60; }

Length reach(const LengthProtectedBelowBendInputs& in) {
  return Length::feet(factor_of(in.factor) * std::pow(in.hydraulic_radius.feet(), 7.0 / 6.0) /
                      in.roughness.number());
}

Expected<LengthProtectedBelowBendResult> compute_length_protected_below_bend(
    const LengthProtectedBelowBendInputs& inputs, Steps& steps) {
  const LengthProtectedBelowBendResult result{reach(inputs)};
  const bool hec22 = inputs.factor == Factor::hec22;
  steps.given("R", "hydraulic radius", measure(inputs.hydraulic_radius));
  steps.given("n_b", "Manning's n in the bend", measure(inputs.roughness));
  steps.computed(
      "L_p", "length to protect below the bend",
      hec22 ? "0.604·R^(7/6)/n_b, ft" : "0.60·R^(7/6)/n_b, ft", measure(result.length),
      hec22 ? "FHWA HEC-22 eq. 5-16" : "FHWA HEC-15 3rd ed. (2005) (from memory; confirm)");
  return result;
}

TypedMethod<LengthProtectedBelowBendInputs, LengthProtectedBelowBendResult>
build_length_protected_below_bend() {
  MethodDescription about;
  about.id = "length-protected-below-bend";
  about.title = "Length to protect below a bend";
  about.purpose = "How far downstream of its end a bend raises the shear on the lining.";
  about.group = MethodGroup::water;
  about.sources = {{"FHWA HEC-22", "eq. 5-16", SourceStanding::published},
                   {"FHWA HEC-15 3rd ed. (2005)", "ch. 3", SourceStanding::memory}};
  about.cautions = {
      "Made for roadside channels; on rivers compare the decay of the bank velocity."};
  TypedMethod<LengthProtectedBelowBendInputs, LengthProtectedBelowBendResult> method(
      about, &compute_length_protected_below_bend);
  method.choice({"factor", "", "whose factor"}, &LengthProtectedBelowBendInputs::factor,
                {{Factor::hec22, "hec-22", "0.604 in feet, 0.736 in metres"},
                 {Factor::hec15, "hec-15", "0.60 in feet, rounded"}});
  method.required({"hydraulic_radius", "R", "hydraulic radius"},
                  &LengthProtectedBelowBendInputs::hydraulic_radius, unit::foot,
                  AllowedRange::positive_to(500));
  method.required({"roughness", "n_b", "Manning's n in the bend"},
                  &LengthProtectedBelowBendInputs::roughness, unit::number,
                  AllowedRange::between(0.005, 0.5));
  method.output({"length", "L_p", "length to protect below the bend"},
                &LengthProtectedBelowBendResult::length, unit::foot);
  return method;
}

}  // namespace

Length length_protected_below_bend(Length hydraulic_radius, Dimensionless roughness_in_bend) {
  return reach({Factor::hec22, hydraulic_radius, roughness_in_bend});
}

const Method& length_protected_below_bend_method() {
  static const TypedMethod<LengthProtectedBelowBendInputs, LengthProtectedBelowBendResult> method =
      build_length_protected_below_bend();
  return method;
}

}  // namespace proofstone
