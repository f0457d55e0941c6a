#include "engine/soil/hazen_conductivity.h"

#include "engine/method/published_range.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<HazenConductivityInputs, HazenConductivityResult> build_hazen_conductivity() {
  MethodDescription about;
  about.id = "hazen-conductivity";
  about.title = "Hazen's conductivity";
  about.purpose = "First estimate of how fast water passes a loose clean sand.";
  about.group = MethodGroup::soil;
  about.sources = {{"Carrier, J. Geotech. Geoenv. Eng. 129(11):1054 (2003)",
                    "first page, Hazen's formula", SourceStanding::published}};
  about.cautions = {
      "An estimate within a factor of ten: coefficients between 1 and 1000 are in print. Measure "
      "where it matters."};
  TypedMethod<HazenConductivityInputs, HazenConductivityResult> method(about, &hazen_conductivity);
  method.required({"d10", "D10", "size of which 10 % is smaller"}, &HazenConductivityInputs::d10,
                  unit::millimeter, AllowedRange::positive_to(100), LengthUse::grain);
  method.defaulted({"coefficient", "C", "in cm/s for each cm²"},
                   &HazenConductivityInputs::coefficient, unit::number,
                   AllowedRange::between(1, 1000));
  method.optional({"uniformity", "Cu", "D60/D10"}, &HazenConductivityInputs::uniformity,
                  unit::number, AllowedRange::between(1, 1e5), "not known");
  method.output({"conductivity", "k", "hydraulic conductivity"},
                &HazenConductivityResult::conductivity, unit::meter_per_second);
  method.limit({"D10 between 0.1 and 3 mm", "texts on groundwater (from memory; confirm)"},
               [](const HazenConductivityInputs& in) {
                 return PublishedRange{0.1, 3}.holds(in.d10.millimeters());
               });
  method.limit({"uniformity below 5", "texts on groundwater (from memory; confirm)"},
               [](const HazenConductivityInputs& in) {
                 return !in.uniformity || in.uniformity->number() < 5;
               });
  return method;
}

}  // namespace

Expected<HazenConductivityResult> hazen_conductivity(const HazenConductivityInputs& in,
                                                     Steps& steps) {
  const double d10 = in.d10.in(unit::centimeter);
  const double k = in.coefficient.number() * d10 * d10;  // cm/s
  HazenConductivityResult result;
  result.conductivity = Velocity::meters_per_second(k / 100);
  steps.given_grain("D10", "size of which 10 % is smaller", in.d10);
  steps.computed("k", "hydraulic conductivity", "C·D10², k in cm/s, D10 in cm",
                 measure(result.conductivity));
  return result;
}

const Method& hazen_conductivity_method() {
  static const TypedMethod<HazenConductivityInputs, HazenConductivityResult> method =
      build_hazen_conductivity();
  return method;
}

}  // namespace proofstone
