#include "engine/soil/carrier_conductivity.h"

#include <cmath>

namespace proofstone {
namespace {

TypedMethod<CarrierConductivityInputs, CarrierConductivityResult> build_carrier_conductivity() {
  MethodDescription about;
  about.id = "carrier-conductivity";
  about.title = "Conductivity from a whole curve, Carrier's form";
  about.purpose =
      "How fast water passes a sand or gravel, from its gradation, void ratio and grain shape.";
  about.group = MethodGroup::soil;
  about.sources = {{"Carrier, J. Geotech. Geoenv. Eng. 129(11):1054 (2003)",
                    "Kozeny–Carman form; abstract read, formula recalled", SourceStanding::memory}};
  about.cautions = {
      "What is smaller than the finest sieve is left out unless its smallest grain "
      "is given: with 5 % of fines that alone may change the answer by 2.4 times."};
  TypedMethod<CarrierConductivityInputs, CarrierConductivityResult> method(about,
                                                                           &carrier_conductivity);
  describe_gradation(method);
  method.required({"void_ratio", "e", "volume of voids over volume of grains"},
                  &CarrierConductivityInputs::void_ratio, unit::number,
                  AllowedRange::between(0.05, 5));
  method.choice({"shape", "", "shape of the grains, for the shape factor"},
                &CarrierConductivityInputs::shape,
                {ChoiceOption<GrainShape>{GrainShape::rounded, "rounded", "6.6"},
                 {GrainShape::medium, "medium", "7.5"},
                 {GrainShape::angular, "angular", "8.4"},
                 {GrainShape::spheres, "spheres", "6.0"}});
  method.optional({"smallest_grain", "d_0", "smallest grain below the finest sieve"},
                  &CarrierConductivityInputs::smallest_grain, unit::millimeter,
                  AllowedRange::positive_to(10),
                  "what is smaller than the finest sieve is left out", LengthUse::grain);
  method.output({"effective_size", "D_eff", "effective size"},
                &CarrierConductivityResult::effective_size, unit::millimeter, LengthUse::grain);
  method.output({"conductivity", "k", "hydraulic conductivity"},
                &CarrierConductivityResult::conductivity, unit::meter_per_second);
  return method;
}

double shape_factor(GrainShape shape) {
  switch (shape) {
    case GrainShape::rounded:
      return 6.6;
    case GrainShape::medium:
      return 7.5;
    case GrainShape::angular:
      return 8.4;
    case GrainShape::spheres:
      return 6.0;
  }
  return 7.5;
}

/// f/(D_l^0.404·D_s^0.595) of one part between two sieves; sizes in cm, f in percent.
double part(Length larger, Length smaller, double percent) {
  return percent / (std::pow(larger.in(unit::centimeter), 0.404) *
                    std::pow(smaller.in(unit::centimeter), 0.595));
}

}  // namespace

Expected<CarrierConductivityResult> carrier_conductivity(const CarrierConductivityInputs& in,
                                                         Steps& steps) {
  const auto curve = gradation_from(in);
  if (!curve) return curve.problems();
  const auto& points = curve->points();
  const auto& finest = points.front();
  if (in.smallest_grain && *in.smallest_grain >= finest.size) {
    return Problem{"out-of-order", "The smallest grain is not below the finest sieve.", "",
                   "/smallest_grain", "less than the smallest size"};
  }
  double sum = 0;
  for (std::size_t i = 1; i < points.size(); ++i) {
    sum += part(points[i].size, points[i - 1].size,
                points[i].percent_smaller - points[i - 1].percent_smaller);
  }
  if (in.smallest_grain) sum += part(finest.size, *in.smallest_grain, finest.percent_smaller);
  if (!(sum > 0)) {
    return Problem{"nothing-between", "Nothing lies between the sieves.", "", "/smaller",
                   "percents that rise with size"};
  }
  const double e = in.void_ratio.number();
  const double effective = 100 / sum;  // cm
  const double factor = shape_factor(in.shape);
  const double k = 1.99e4 * effective * effective / (factor * factor) * e * e * e / (1 + e);
  CarrierConductivityResult result;
  result.effective_size = Length::of(effective, unit::centimeter);
  result.conductivity = Velocity::meters_per_second(k / 100);
  steps.computed("Σ", "parts between sieves", "Σ f/(D_l^0.404·D_s^0.595), sizes in cm",
                 measure(sum));
  steps.computed_grain("D_eff", "effective size", "100/Σ, in cm", result.effective_size);
  steps.given("SF", "shape factor", measure(factor));
  steps.computed("k", "hydraulic conductivity", "1.99e4·D_eff²/SF²·e³/(1 + e), in cm/s at 20 °C",
                 measure(result.conductivity));
  return result;
}

const Method& carrier_conductivity_method() {
  static const TypedMethod<CarrierConductivityInputs, CarrierConductivityResult> method =
      build_carrier_conductivity();
  return method;
}

}  // namespace proofstone
