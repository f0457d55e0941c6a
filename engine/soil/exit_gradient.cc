#include "engine/soil/exit_gradient.h"

#include <cmath>
#include <numbers>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<ExitGradientInputs, ExitGradientResult> build_exit_gradient() {
  MethodDescription about;
  about.id = "exit-gradient";
  about.title = "Khosla's exit gradient";
  about.purpose =
      "Gradient with which seepage leaves the ground behind a floor with a cutoff at its end, or "
      "behind a single sheet pile.";
  about.group = MethodGroup::soil;
  about.sources = {
      {"Khosla; Harr, Groundwater and Seepage", "exit gradient", SourceStanding::memory}};
  about.cautions = {"Holds for deep uniform ground; layers of clay below a sand turn it round."};
  TypedMethod<ExitGradientInputs, ExitGradientResult> method(about, &exit_gradient);
  method.required({"head", "H", "difference of the water levels"}, &ExitGradientInputs::head,
                  unit::meter, AllowedRange::positive_to(100));
  method.required({"cutoff_depth", "d", "depth of the cutoff at the downstream end"},
                  &ExitGradientInputs::cutoff_depth, unit::meter, AllowedRange::positive_to(100));
  method.defaulted({"floor_width", "b", "width of the floor along the flow"},
                   &ExitGradientInputs::floor_width, unit::meter, AllowedRange::between(0, 1000));
  method.optional({"critical_gradient", "i_c", "critical gradient of the soil"},
                  &ExitGradientInputs::critical_gradient, unit::number,
                  AllowedRange::positive_to(3), "no factor of safety");
  method.output({"gradient", "i_e", "exit gradient"}, &ExitGradientResult::gradient, unit::number);
  method.output({"safety_factor", "FS", "critical over exit gradient; 0 without the former"},
                &ExitGradientResult::safety_factor, unit::number);
  return method;
}

}  // namespace

Expected<ExitGradientResult> exit_gradient(const ExitGradientInputs& in, Steps& steps) {
  const double alpha = in.floor_width / in.cutoff_depth;
  const double lambda = (1 + std::sqrt(1 + alpha * alpha)) / 2;
  const double gradient = in.head / in.cutoff_depth / (std::numbers::pi * std::sqrt(lambda));
  ExitGradientResult result;
  result.gradient = Dimensionless::number(gradient);
  result.safety_factor = Dimensionless::number(0);
  steps.computed("α", "floor over cutoff", "b/d", measure(alpha));
  steps.computed("λ", "", "(1 + √(1 + α²))/2", measure(lambda));
  steps.computed("i_e", "exit gradient", "(H/d)/(π√λ)", measure(gradient));
  if (in.critical_gradient) {
    result.safety_factor = Dimensionless::number(in.critical_gradient->number() / gradient);
    steps.computed("FS", "factor of safety", "i_c/i_e", measure(result.safety_factor));
  }
  return result;
}

const Method& exit_gradient_method() {
  static const TypedMethod<ExitGradientInputs, ExitGradientResult> method = build_exit_gradient();
  return method;
}

}  // namespace proofstone
