#include "engine/soil/kozeny_carman_conductivity.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<KozenyCarmanInputs, KozenyCarmanResult> build_kozeny_carman_conductivity() {
  MethodDescription about;
  about.id = "kozeny-carman-conductivity";
  about.title = "Kozeny–Carman conductivity, one size";
  about.purpose = "How fast water passes grains of one size, from size and porosity.";
  about.group = MethodGroup::soil;
  about.sources = {{"Kozeny and Carman", "as in texts on groundwater", SourceStanding::memory}};
  about.cautions = {
      "Not for plastic soil, and not for stones above about 10 mm: flow between "
      "them is not laminar."};
  TypedMethod<KozenyCarmanInputs, KozenyCarmanResult> method(about, &kozeny_carman_conductivity);
  method.required({"porosity", "n", "share of the volume between the grains, 0 to 1"},
                  &KozenyCarmanInputs::porosity, unit::number, AllowedRange::between(0.05, 0.9));
  method.required({"grain_size", "d", "size of the grains"}, &KozenyCarmanInputs::grain_size,
                  unit::millimeter, AllowedRange::positive_to(100), LengthUse::grain);
  method.choice({"temperature", "", "of the water"}, &KozenyCarmanInputs::temperature,
                {ChoiceOption<WaterTemperature>{WaterTemperature::ten, "10", "10 °C"},
                 {WaterTemperature::twenty, "20", "20 °C"}});
  method.output({"conductivity", "k", "hydraulic conductivity"}, &KozenyCarmanResult::conductivity,
                unit::meter_per_second);
  method.limit({"grains up to 10 mm", "common practice"},
               [](const KozenyCarmanInputs& in) { return in.grain_size.millimeters() <= 10; });
  return method;
}

}  // namespace

Expected<KozenyCarmanResult> kozeny_carman_conductivity(const KozenyCarmanInputs& in,
                                                        Steps& steps) {
  const double n = in.porosity.number();
  const double d = in.grain_size.meters();
  const double g = standard_gravity.meters_per_second_squared();
  const double viscosity = in.temperature == WaterTemperature::ten ? 1.307e-6 : 1.004e-6;  // m²/s
  const double k = g / viscosity / 180 * n * n * n / ((1 - n) * (1 - n)) * d * d;
  KozenyCarmanResult result;
  result.conductivity = Velocity::meters_per_second(k);
  steps.given("ν", "kinematic viscosity of the water",
              measure(UnitDischarge::square_meters_per_second(viscosity)), "tables of water");
  steps.computed("k", "hydraulic conductivity", "(g/ν)·(1/180)·n³/(1 − n)²·d²",
                 measure(result.conductivity));
  return result;
}

const Method& kozeny_carman_conductivity_method() {
  static const TypedMethod<KozenyCarmanInputs, KozenyCarmanResult> method =
      build_kozeny_carman_conductivity();
  return method;
}

}  // namespace proofstone
