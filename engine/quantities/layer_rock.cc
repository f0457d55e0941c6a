#include "engine/quantities/layer_rock.h"

namespace proofstone {

namespace {

TypedMethod<LayerRockInputs, LayerRockResult> build_layer_rock() {
  MethodDescription about;
  about.id = "layer-rock";
  about.title = "Rock of a layer";
  about.purpose = "Volume and mass of the rock that a layer takes, voids and all.";
  about.group = MethodGroup::quantities;
  about.sources = {
      {"geometry and mass balance", "A·T, Gs·(1 − n)·62.4 lb/ft³", SourceStanding::computed},
      {"trade", "voids of placed rock 0.35 to 0.40", SourceStanding::common_practice}};
  about.cautions = {
      "Voids depend on how the layer is placed and on where its top and bottom are measured: weigh "
      "a measured part of the layer before rock is paid by volume.",
      "What sinks into soft ground, is lost in water or stays in the stockpile is not counted; "
      "order spare rock for it."};
  TypedMethod<LayerRockInputs, LayerRockResult> method(about, &layer_rock);
  method.required({"area", "A", "area of the layer, along the slope"}, &LayerRockInputs::area,
                  unit::square_foot, AllowedRange::positive_to(1e9));
  method.required({"thickness", "T", "thickness of the layer, square to the slope"},
                  &LayerRockInputs::thickness, unit::foot, AllowedRange::positive_to(30));
  describe_bulk_density(method);
  method.output({"volume", "V", "volume that the rock fills"}, &LayerRockResult::volume,
                unit::cubic_yard);
  method.output({"bulk_density", "ρ_b", "mass of placed rock for each volume it fills"},
                &LayerRockResult::bulk_density, unit::pound_mass_per_cubic_foot);
  method.output({"mass", "M", "mass of the rock"}, &LayerRockResult::mass, unit::short_ton);
  return method;
}

}  // namespace

Expected<LayerRockResult> layer_rock(const LayerRockInputs& inputs, Steps& steps) {
  LayerRockResult result;
  result.volume = Volume::cubic_feet(inputs.area.square_feet() * inputs.thickness.feet());
  steps.given("A", "area of the layer, along the slope", measure(inputs.area));
  steps.given("T", "thickness of the layer, square to the slope", measure(inputs.thickness));
  steps.computed("V", "volume that the rock fills", "A·T", measure(result.volume));
  result.bulk_density = bulk_density_of(inputs);
  result.mass = placed_mass(result.volume, inputs, steps);
  return result;
}

const Method& layer_rock_method() {
  static const TypedMethod<LayerRockInputs, LayerRockResult> method = build_layer_rock();
  return method;
}

}  // namespace proofstone
