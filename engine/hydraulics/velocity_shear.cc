#include "engine/hydraulics/velocity_shear.h"

#include <cmath>

#include "engine/hydraulics/water_weight.h"
#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

struct VelocityShearInputs {
  Velocity velocity;
  Dimensionless roughness;
  Length depth;
  UnitWeight unit_weight = water_unit_weight;
};

struct VelocityShearResult {
  Stress shear;
  Velocity shear_velocity;
};

Stress shear_of(const VelocityShearInputs& in) {
  const double v = in.velocity.meters_per_second();
  const double n = in.roughness.number();
  const double gamma = in.unit_weight.newtons_per_cubic_meter();
  return Stress::pascals(gamma * n * n * v * v / std::pow(in.depth.meters(), 1.0 / 3.0));
}

Expected<VelocityShearResult> compute_velocity_shear(const VelocityShearInputs& inputs,
                                                     Steps& steps) {
  VelocityShearResult result;
  result.shear = shear_of(inputs);
  const double density =
      inputs.unit_weight.newtons_per_cubic_meter() / standard_gravity.meters_per_second_squared();
  result.shear_velocity = Velocity::meters_per_second(std::sqrt(result.shear.pascals() / density));
  steps.given("V", "depth-averaged velocity", measure(inputs.velocity));
  steps.given("n", "Manning's n of the ground", measure(inputs.roughness));
  steps.given("h", "depth", measure(inputs.depth));
  steps.given("γ", "unit weight of water", measure(inputs.unit_weight));
  steps.computed("τ", "shear", "γ·n²·V²/(k²·h^⅓), k = 1 in SI", measure(result.shear),
                 "Manning's equation with h for the hydraulic radius");
  steps.computed("u*", "shear velocity", "√(τ/ρ), ρ = γ/g", measure(result.shear_velocity));
  return result;
}

TypedMethod<VelocityShearInputs, VelocityShearResult> build_velocity_shear() {
  MethodDescription about;
  about.id = "velocity-shear";
  about.title = "Shear of a velocity";
  about.purpose =
      "The shear on the ground under a known depth-averaged velocity, such as one measured, taken "
      "from a slice or raised in a bend.";
  about.group = MethodGroup::water;
  about.sources = {{"Chow, Open-Channel Hydraulics (1959)", "Manning's equation and τ = γ·R·S",
                    SourceStanding::memory}};
  TypedMethod<VelocityShearInputs, VelocityShearResult> method(about, &compute_velocity_shear);
  method.required({"velocity", "V", "depth-averaged velocity"}, &VelocityShearInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60));
  method.required({"roughness", "n", "Manning's n of the ground"}, &VelocityShearInputs::roughness,
                  unit::number, AllowedRange::between(0.005, 0.5));
  method.required({"depth", "h", "depth"}, &VelocityShearInputs::depth, unit::foot,
                  AllowedRange::positive_to(500));
  method.defaulted({"unit_weight", "γ", "unit weight of the water"},
                   &VelocityShearInputs::unit_weight, unit::pound_per_cubic_foot,
                   AllowedRange::between(60, 80));
  method.output({"shear", "τ", "shear on the ground"}, &VelocityShearResult::shear,
                unit::pound_per_square_foot);
  method.output({"shear_velocity", "u*", "shear velocity"}, &VelocityShearResult::shear_velocity,
                unit::foot_per_second);
  return method;
}

}  // namespace

Stress velocity_shear(Velocity velocity, Dimensionless roughness, Length depth) {
  return shear_of({velocity, roughness, depth, water_unit_weight});
}

const Method& velocity_shear_method() {
  static const TypedMethod<VelocityShearInputs, VelocityShearResult> method =
      build_velocity_shear();
  return method;
}

}  // namespace proofstone
