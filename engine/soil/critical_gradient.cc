#include "engine/soil/critical_gradient.h"

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<CriticalGradientInputs, CriticalGradientResult> build_critical_gradient() {
  MethodDescription about;
  about.id = "critical-gradient";
  about.title = "Critical upward gradient";
  about.purpose = "The seepage gradient that lifts a soil which does not cohere.";
  about.group = MethodGroup::soil;
  about.sources = {{"Terzaghi", "submerged weight over the weight of water, as in texts",
                    SourceStanding::memory},
                   {"trade", "factor of 3 for structures; 1.5 to 5 are in print",
                    SourceStanding::common_practice}};
  TypedMethod<CriticalGradientInputs, CriticalGradientResult> method(about, &critical_gradient);
  method.defaulted({"specific_gravity", "Gs", "specific gravity of the grains"},
                   &CriticalGradientInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.required({"porosity", "n", "share of the volume between the grains, 0 to 1"},
                  &CriticalGradientInputs::porosity, unit::number,
                  AllowedRange::between(0.05, 0.9));
  method.defaulted({"safety_factor", "FS", "factor of safety"},
                   &CriticalGradientInputs::safety_factor, unit::number,
                   AllowedRange::between(1, 10));
  method.output({"critical", "i_c", "critical gradient"}, &CriticalGradientResult::critical,
                unit::number);
  method.output({"allowed", "i_c/FS", "gradient allowed"}, &CriticalGradientResult::allowed,
                unit::number);
  return method;
}

}  // namespace

Expected<CriticalGradientResult> critical_gradient(const CriticalGradientInputs& in, Steps& steps) {
  const double critical = (in.specific_gravity.number() - 1) * (1 - in.porosity.number());
  CriticalGradientResult result;
  result.critical = Dimensionless::number(critical);
  result.allowed = Dimensionless::number(critical / in.safety_factor.number());
  steps.computed("i_c", "critical gradient", "(Gs − 1)(1 − n)", measure(result.critical));
  steps.computed("i", "gradient allowed", "i_c/FS", measure(result.allowed));
  return result;
}

const Method& critical_gradient_method() {
  static const TypedMethod<CriticalGradientInputs, CriticalGradientResult> method =
      build_critical_gradient();
  return method;
}

}  // namespace proofstone
