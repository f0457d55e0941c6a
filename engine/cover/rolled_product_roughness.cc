#include "engine/cover/rolled_product_roughness.h"

#include <cmath>

#include "engine/method/published_range.h"

namespace proofstone {

namespace {

using DescribedRolledProductRoughness =
    TypedMethod<RolledProductRoughnessInputs, RolledProductRoughnessResult>;

const char* const hec15_of_rolled_product_roughness =
    "FHWA HEC-15 3rd ed. (2005) ch. 5 (from memory; confirm)";

MethodDescription describe_rolled_product_roughness() {
  MethodDescription about;
  about.id = "rolled-product-roughness";
  about.title = "Roughness of a blanket or mat";
  about.purpose = "Manning's n of a rolled erosion control product at a shear, from its tests.";
  about.group = MethodGroup::cover;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005), FHWA-NHI-05-114", "ch. 5", SourceStanding::memory}};
  return about;
}

void describe_rolled_product_roughness_inputs(DescribedRolledProductRoughness& method) {
  method.required({"roughness_lower", "n_lower", "n at half the middle shear"},
                  &RolledProductRoughnessInputs::roughness_lower, unit::number,
                  AllowedRange::between(0.005, 0.5));
  method.required({"roughness_middle", "n_mid", "n at the middle shear"},
                  &RolledProductRoughnessInputs::roughness_middle, unit::number,
                  AllowedRange::between(0.005, 0.5));
  method.required({"roughness_upper", "n_upper", "n at twice the middle shear"},
                  &RolledProductRoughnessInputs::roughness_upper, unit::number,
                  AllowedRange::between(0.005, 0.5));
  method.required({"middle_shear", "τ_mid", "middle shear of the tests"},
                  &RolledProductRoughnessInputs::middle_shear, unit::pascal,
                  AllowedRange::positive_to(2000));
  method.required({"shear", "τo", "mean shear of the flow"}, &RolledProductRoughnessInputs::shear,
                  unit::pascal, AllowedRange::positive_to(5000));
}

DescribedRolledProductRoughness build_rolled_product_roughness() {
  DescribedRolledProductRoughness method(describe_rolled_product_roughness(),
                                         &rolled_product_roughness);
  describe_rolled_product_roughness_inputs(method);
  method.output({"a", "a", "coefficient, N/m²"}, &RolledProductRoughnessResult::a, unit::number);
  method.output({"b", "b", "exponent"}, &RolledProductRoughnessResult::b, unit::number);
  method.output({"roughness", "n", "roughness at that shear"},
                &RolledProductRoughnessResult::roughness, unit::number);
  method.limit({"Shear between half and twice the middle shear of the tests",
                hec15_of_rolled_product_roughness},
               [](const RolledProductRoughnessInputs& in) {
                 return PublishedRange{0.5, 2}.holds(in.shear / in.middle_shear);
               });
  return method;
}

}  // namespace

Expected<RolledProductRoughnessResult> rolled_product_roughness(
    const RolledProductRoughnessInputs& inputs, Steps& steps) {
  const double lower = inputs.roughness_lower.number();
  const double middle = inputs.roughness_middle.number();
  const double upper = inputs.roughness_upper.number();
  if (!(lower >= middle && middle >= upper)) {
    return Problem{"not-falling", "The tested roughness must not grow with the shear.", "",
                   "/roughness_middle", "n_lower ≥ n_mid ≥ n_upper"};
  }
  const double tau = inputs.shear.pascals();
  const double tau_mid = inputs.middle_shear.pascals();

  const double b = -std::sqrt(std::log(lower / middle) * std::log(middle / upper)) / 0.693;
  const double a = middle / std::pow(tau_mid, b);
  const double n = a * std::pow(tau, b);

  RolledProductRoughnessResult result;
  result.a = Dimensionless::number(a);
  result.b = Dimensionless::number(b);
  result.roughness = Dimensionless::number(n);
  steps.given("n_lower", "n at half the middle shear", measure(inputs.roughness_lower));
  steps.given("n_mid", "n at the middle shear", measure(inputs.roughness_middle));
  steps.given("n_upper", "n at twice the middle shear", measure(inputs.roughness_upper));
  steps.given("τ_mid", "middle shear of the tests", measure(inputs.middle_shear));
  steps.computed("b", "exponent", "−√[ln(n_lower/n_mid)·ln(n_mid/n_upper)]/0.693",
                 measure(result.b), hec15_of_rolled_product_roughness);
  steps.computed("a", "coefficient", "n_mid/τ_mid^b (N/m²)", measure(result.a),
                 hec15_of_rolled_product_roughness);
  steps.given("τo", "mean shear of the flow", measure(inputs.shear));
  steps.computed("n", "roughness at that shear", "a·τo^b", measure(result.roughness),
                 hec15_of_rolled_product_roughness);
  return result;
}

const Method& rolled_product_roughness_method() {
  static const DescribedRolledProductRoughness method = build_rolled_product_roughness();
  return method;
}

}  // namespace proofstone
