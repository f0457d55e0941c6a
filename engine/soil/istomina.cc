#include "engine/soil/istomina.h"

#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

TypedMethod<IstominaInputs, IstominaResult> build_istomina() {
  MethodDescription about;
  about.id = "istomina";
  about.title = "Internal stability, Istomina";
  about.purpose = "A first judgement of internal stability by uniformity alone.";
  about.group = MethodGroup::soil;
  about.sources = {{"Istomina (1957)", "limits of 10 and 20", SourceStanding::memory}};
  TypedMethod<IstominaInputs, IstominaResult> method(about, &istomina);
  describe_gradation(method);
  method.output({"uniformity", "Cu", "D60/D10"}, &IstominaResult::uniformity, unit::number);
  method.output({"margin", "", "10/Cu: 1 and more safe, below 0.5 unstable"},
                &IstominaResult::margin, unit::number);
  method.limit({"soils without fines", "Istomina (1957) (from memory; confirm)"},
               [](const IstominaInputs& in) {
                 const auto curve = gradation_from(in);
                 return !curve || known_percent(curve->points(), sieve::no_200).value_or(0) < 5;
               });
  return method;
}

}  // namespace

Expected<IstominaResult> istomina(const IstominaInputs& in, Steps& steps) {
  const auto made = gradation_from(in);
  if (!made) return made.problems();
  const auto cu = uniformity(made->points());
  if (!cu) {
    return Problem{"curve-does-not-reach", "The curve does not reach D10 and D60.", "", "/smaller",
                   "percents smaller from 10 to 60 %"};
  }
  steps.computed("Cu", "uniformity", "D60/D10", measure(*cu));
  return IstominaResult{Dimensionless::number(*cu), Dimensionless::number(10 / *cu)};
}

const Method& istomina_method() {
  static const TypedMethod<IstominaInputs, IstominaResult> method = build_istomina();
  return method;
}

}  // namespace proofstone
