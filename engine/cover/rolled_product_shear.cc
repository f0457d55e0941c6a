#include "engine/cover/rolled_product_shear.h"

#include "engine/cover/shear_through_product.h"

namespace proofstone {

namespace {

const char* const hec15_of_rolled_product_shear =
    "FHWA HEC-15 3rd ed. (2005) ch. 5 (from memory; confirm)";

constexpr Stress alpha = Stress::pascals(6.5);

MethodDescription describe_rolled_product_shear() {
  MethodDescription about;
  about.id = "rolled-product-shear";
  about.title = "Blanket or mat on bare soil";
  about.purpose =
      "How much shear a rolled erosion control product and the soil under it bear together, from "
      "the product's test.";
  about.group = MethodGroup::cover;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005), FHWA-NHI-05-114", "ch. 5", SourceStanding::memory}};
  about.cautions = {
      "The published unit factors of the SI and US forms differ by 2.3 %; the SI one is used.",
      "The tested shear must come from a test of that product by the test the manual names, not "
      "from a claim without soil loss.",
      "Anchors, overlaps and contact with the soil decide in the field."};
  return about;
}

TypedMethod<RolledProductShearInputs, RolledProductShearResult> build_rolled_product_shear() {
  TypedMethod<RolledProductShearInputs, RolledProductShearResult> method(
      describe_rolled_product_shear(), &rolled_product_shear);
  method.required({"tested_shear", "τl", "applied shear with 12.5 mm of soil loss in the test"},
                  &RolledProductShearInputs::tested_shear, unit::pascal,
                  AllowedRange::positive_to(2000));
  method.optional({"applied_shear", "τd", "shear of the flow"},
                  &RolledProductShearInputs::applied_shear, unit::pascal,
                  AllowedRange::between(0, 5000), "only the permissible shear");
  describe_cover_soil(method);
  method.output({"soil_shear", "τp,soil", "permissible shear of the soil"},
                &RolledProductShearResult::soil_shear, unit::pascal);
  method.output({"permissible_shear", "τp", "permissible shear of product and soil"},
                &RolledProductShearResult::permissible_shear, unit::pascal);
  method.output({"effective_shear", "τe", "shear that reaches the soil at τd"},
                &RolledProductShearResult::effective_shear, unit::pascal);
  method.limit({"Permissible shear at least the shear of the flow", hec15_of_rolled_product_shear},
               [](const RolledProductShearInputs& in) {
                 Steps unread;
                 const auto result = rolled_product_shear(in, unread);
                 return result &&
                        (!in.applied_shear || *in.applied_shear <= result->permissible_shear);
               });
  return method;
}

}  // namespace

Expected<RolledProductShearResult> rolled_product_shear(const RolledProductShearInputs& inputs,
                                                        Steps& steps) {
  const auto soil = bare_soil_shear(inputs, steps);
  if (!soil) return soil.problems();
  const ShearThroughProduct product{inputs.tested_shear, alpha};

  RolledProductShearResult result;
  result.soil_shear = soil->permissible_shear;
  result.permissible_shear = product.permissible(soil->permissible_shear);
  steps.given("τl", "applied shear with 12.5 mm of soil loss in the test",
              measure(inputs.tested_shear));
  steps.computed("τp", "permissible shear of product and soil",
                 "(τl/α)·(τp,soil + α/4.3), α = 6.5 N/m²", measure(result.permissible_shear),
                 hec15_of_rolled_product_shear);
  if (inputs.applied_shear) {
    result.effective_shear = product.effective(*inputs.applied_shear);
    steps.given("τd", "shear of the flow", measure(*inputs.applied_shear));
    steps.computed("τe", "shear that reaches the soil", "(τd − τl/4.3)·(α/τl), not below 0",
                   measure(result.effective_shear), hec15_of_rolled_product_shear);
  }
  return result;
}

const Method& rolled_product_shear_method() {
  static const TypedMethod<RolledProductShearInputs, RolledProductShearResult> method =
      build_rolled_product_shear();
  return method;
}

}  // namespace proofstone
