#include "engine/soil/exit_gradient.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

using Inputs = ExitGradientInputs;
using Result = ExitGradientResult;

constexpr double pi = 3.14159265358979323846;

TypedMethod<Inputs, Result> build() {
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
  TypedMethod<Inputs, Result> method(about, &exit_gradient);
  method.required({"head", "H", "difference of the water levels"}, &Inputs::head, unit::meter,
                  AllowedRange::positive_to(100));
  method.required({"cutoff_depth", "d", "depth of the cutoff at the downstream end"},
                  &Inputs::cutoff_depth, unit::meter, AllowedRange::positive_to(100));
  method.defaulted({"floor_width", "b", "width of the floor along the flow"}, &Inputs::floor_width,
                   unit::meter, AllowedRange::between(0, 1000));
  method.optional({"critical_gradient", "i_c", "critical gradient of the soil"},
                  &Inputs::critical_gradient, unit::number, AllowedRange::positive_to(3),
                  "no factor of safety");
  method.output({"gradient", "i_e", "exit gradient"}, &Result::gradient, unit::number);
  method.output({"safety_factor", "FS", "critical over exit gradient; 0 without the former"},
                &Result::safety_factor, unit::number);
  return method;
}

}  // namespace

Expected<Result> exit_gradient(const Inputs& in, Steps& steps) {
  const double alpha = in.floor_width / in.cutoff_depth;
  const double lambda = (1 + std::sqrt(1 + alpha * alpha)) / 2;
  const double gradient = in.head / in.cutoff_depth / (pi * std::sqrt(lambda));
  Result result;
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
  static const TypedMethod<Inputs, Result> method = build();
  return method;
}

}  // namespace proofstone
