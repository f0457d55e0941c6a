#include "engine/hydraulics/composite_roughness_method.h"

#include "engine/hydraulics/section_inputs.h"

namespace proofstone {

namespace {

struct CompositeRoughnessInputs : SectionInputs {
  Length water_level;
};

struct CompositeRoughnessResult {
  Dimensionless horton;
  Dimensionless pavlovskii;
  Dimensionless lotter;
};

Dimensionless whole_roughness(const Section& section, Length level, CompositeRoughness composite) {
  return flow_at_level(section, {}, level, composite).parts.front().roughness;
}

Expected<CompositeRoughnessResult> compute_composite_roughness(
    const CompositeRoughnessInputs& inputs, Steps& steps) {
  const auto section = section_of(inputs);
  if (!section) return section.problems();
  if (!(inputs.water_level > section->lowest())) {
    return Problem{"dry", "The water level does not stand above the lowest ground.", "",
                   "/water_level", "a level above the lowest ground"};
  }
  CompositeRoughnessResult result;
  result.horton = whole_roughness(*section, inputs.water_level, CompositeRoughness::horton);
  result.pavlovskii = whole_roughness(*section, inputs.water_level, CompositeRoughness::pavlovskii);
  result.lotter = whole_roughness(*section, inputs.water_level, CompositeRoughness::lotter);

  const WetGeometry wet = section->wet(inputs.water_level);
  const std::string source = "Chow (1959) eqs. 6-17 to 6-19 (from memory; confirm)";
  steps.given("w", "water level", measure(inputs.water_level));
  steps.computed("A", "wet area", "Σ Δx·(d₁+d₂)/2", measure(wet.area));
  steps.computed("P", "wetted perimeter", "Σ √(Δx²+Δz²)", measure(wet.wetted_perimeter));
  steps.computed("n_H", "Horton: equal velocity in every piece", "(Σ Pᵢ·nᵢ^1.5/P)^⅔",
                 measure(result.horton), source);
  steps.computed("n_P", "Pavlovskii: resisting forces add", "(Σ Pᵢ·nᵢ²/P)^½",
                 measure(result.pavlovskii), source);
  steps.computed("n_L", "Lotter: discharges add", "P·R^(5/3)/Σ(Pᵢ·Rᵢ^(5/3)/nᵢ)",
                 measure(result.lotter), source);
  return result;
}

TypedMethod<CompositeRoughnessInputs, CompositeRoughnessResult> build_composite_roughness() {
  MethodDescription about;
  about.id = "composite-roughness";
  about.title = "Composite roughness";
  about.purpose =
      "One Manning's n for a channel whose bed and banks differ, in three published ways.";
  about.group = MethodGroup::water;
  about.sources = {
      {"Chow, Open-Channel Hydraulics (1959)", "eqs. 6-17 to 6-19", SourceStanding::memory}};
  about.cautions = {
      "Over a flood plain Horton's and Pavlovskii's n halve the flow: divide the section at the "
      "bank tops instead."};
  TypedMethod<CompositeRoughnessInputs, CompositeRoughnessResult> method(
      about, &compute_composite_roughness);
  describe_ground(method);
  method.required({"water_level", "w", "water level"}, &CompositeRoughnessInputs::water_level,
                  unit::foot, AllowedRange::any());
  method.output({"horton", "n_H", "composite roughness after Horton"},
                &CompositeRoughnessResult::horton, unit::number);
  method.output({"pavlovskii", "n_P", "composite roughness after Pavlovskii"},
                &CompositeRoughnessResult::pavlovskii, unit::number);
  method.output({"lotter", "n_L", "composite roughness after Lotter"},
                &CompositeRoughnessResult::lotter, unit::number);
  return method;
}

}  // namespace

const Method& composite_roughness_method() {
  static const TypedMethod<CompositeRoughnessInputs, CompositeRoughnessResult> method =
      build_composite_roughness();
  return method;
}

}  // namespace proofstone
