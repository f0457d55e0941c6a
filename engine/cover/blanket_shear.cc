#include "engine/cover/blanket_shear.h"

#include "engine/cover/shear_through_product.h"

namespace proofstone {

namespace {

const char* const hec15_of_blanket_shear =
    "FHWA HEC-15 3rd ed. (2005) ch. 5 (from memory; confirm)";

MethodDescription describe_blanket_shear() {
  MethodDescription about;
  about.id = "blanket-shear";
  about.title = "Shear of a blanket: by its seed bed and by the table";
  about.purpose =
      "How much shear a blanket and the soil under it bear by the HEC-15 formula, beside the shear "
      "tabulated for its type.";
  about.group = MethodGroup::cover;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005), FHWA-NHI-05-114", "ch. 5", SourceStanding::memory},
      {"Minnesota stormwater manual", "soil loss of at most 0.5 in (12.7 mm) in a flow of 30 min",
       SourceStanding::published}};
  about.cautions = {
      "The two figures lie far apart and answer different questions: the table says when the "
      "blanket loses half an inch of soil, the formula when the seed bed begins to go.",
      "Anchors, overlaps and contact with the soil decide in the field."};
  return about;
}

TypedMethod<BlanketShearInputs, BlanketShearResult> build_blanket_shear() {
  TypedMethod<BlanketShearInputs, BlanketShearResult> method(describe_blanket_shear(),
                                                             &blanket_shear);
  method.required({"tested_shear", "τl", "applied shear with 12.5 mm of soil loss in the test"},
                  &BlanketShearInputs::tested_shear, unit::pound_per_square_foot,
                  AllowedRange::positive_to(40));
  method.required({"soil_shear", "τp,soil", "permissible shear of the soil"},
                  &BlanketShearInputs::soil_shear, unit::pound_per_square_foot,
                  AllowedRange::positive_to(5));
  method.optional({"tabulated_shear", "τ_tab", "permissible shear tabulated for the type"},
                  &BlanketShearInputs::tabulated_shear, unit::pound_per_square_foot,
                  AllowedRange::positive_to(40), "the tested shear");
  method.optional({"applied_shear", "τd", "shear of the flow"}, &BlanketShearInputs::applied_shear,
                  unit::pound_per_square_foot, AllowedRange::between(0, 100),
                  "only the permissible shear");
  using Option = ChoiceOption<BlanketFactor>;
  method.choice({"factor", "α", "units of the published factor"}, &BlanketShearInputs::factor,
                {Option{BlanketFactor::si, "si", "6.5 N/m²"},
                 Option{BlanketFactor::us, "us", "0.14 lb/ft²"}});
  method.output({"permissible_shear", "τp", "permissible shear of blanket and seed bed"},
                &BlanketShearResult::permissible_shear, unit::pound_per_square_foot);
  method.output({"tabulated_shear", "τ_tab", "permissible shear of the table"},
                &BlanketShearResult::tabulated_shear, unit::pound_per_square_foot);
  method.output({"share", "τp/τ_tab", "the formula over the table"}, &BlanketShearResult::share,
                unit::number);
  method.output({"effective_shear", "τe", "shear that reaches the soil at τd"},
                &BlanketShearResult::effective_shear, unit::pound_per_square_foot);
  method.limit({"Shear of the flow at most that of blanket and seed bed", hec15_of_blanket_shear},
               [](const BlanketShearInputs& in) {
                 Steps unread;
                 const auto result = blanket_shear(in, unread);
                 return result &&
                        (!in.applied_shear || *in.applied_shear <= result->permissible_shear);
               });
  return method;
}

}  // namespace

Expected<BlanketShearResult> blanket_shear(const BlanketShearInputs& inputs, Steps& steps) {
  const bool si = inputs.factor == BlanketFactor::si;
  const ShearThroughProduct product{
      inputs.tested_shear, si ? Stress::pascals(6.5) : Stress::pounds_per_square_foot(0.14)};

  BlanketShearResult result;
  result.permissible_shear = product.permissible(inputs.soil_shear);
  result.tabulated_shear = inputs.tabulated_shear.value_or(inputs.tested_shear);
  result.share = Dimensionless::number(result.permissible_shear / result.tabulated_shear);
  steps.given("τl", "applied shear with 12.5 mm of soil loss in the test",
              measure(inputs.tested_shear));
  steps.given("τp,soil", "permissible shear of the soil", measure(inputs.soil_shear));
  steps.computed(
      "τp", "permissible shear of blanket and seed bed",
      si ? "(τl/α)·(τp,soil + α/4.3), α = 6.5 N/m²" : "(τl/α)·(τp,soil + α/4.3), α = 0.14 lb/ft²",
      measure(result.permissible_shear), hec15_of_blanket_shear);
  steps.given("τ_tab", "permissible shear of the table", measure(result.tabulated_shear));
  steps.computed("τp/τ_tab", "the formula over the table", "", measure(result.share));
  if (inputs.applied_shear) {
    result.effective_shear = product.effective(*inputs.applied_shear);
    steps.given("τd", "shear of the flow", measure(*inputs.applied_shear));
    steps.computed("τe", "shear that reaches the soil", "(τd − τl/4.3)·(α/τl), not below 0",
                   measure(result.effective_shear), hec15_of_blanket_shear);
  }
  return result;
}

const Method& blanket_shear_method() {
  static const TypedMethod<BlanketShearInputs, BlanketShearResult> method = build_blanket_shear();
  return method;
}

}  // namespace proofstone
