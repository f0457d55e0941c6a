#include "engine/toe/thickened_toe.h"

namespace proofstone {

namespace {

constexpr Slope launched_slope = Slope::ratio(0.5);

TypedMethod<ThickenedToeInputs, ThickenedToeResult> build_thickened_toe() {
  MethodDescription about;
  about.id = "thickened-toe";
  about.title = "Thickened toe";
  about.purpose =
      "How much thicker a layer must be at bed level to hold the rock that follows the bed down.";
  about.group = MethodGroup::toe;
  about.sources = {
      {"USACE EM 1110-2-1601 (1994)", "Table 3-2, launched volumes", SourceStanding::memory},
      {"trade", "the same volume, as extra thickness at bed level",
       SourceStanding::common_practice}};
  about.cautions = {
      "Thin and wide, it launches late and unevenly: a thickness of 2.5 to 4 layers is usual.",
      "After a flood that launched it, survey the toe and fill it up again."};
  TypedMethod<ThickenedToeInputs, ThickenedToeResult> method(about, &thickened_toe);
  method.required({"layer_thickness", "T", "thickness of the bank's layer"},
                  &ThickenedToeInputs::layer_thickness, unit::foot, AllowedRange::positive_to(30));
  method.required({"launch_height", "h", "from the toe as built down to the scoured bed"},
                  &ThickenedToeInputs::launch_height, unit::foot, AllowedRange::positive_to(100));
  method.required({"width", "b_t", "width of the thicker part, along the bed"},
                  &ThickenedToeInputs::width, unit::foot, AllowedRange::positive_to(300));
  method.choice({"placement", "", "where the rock is placed"}, &ThickenedToeInputs::placement,
                {ChoiceOption<ToePlacement>{ToePlacement::dry, "dry", "above water"},
                 {ToePlacement::under_water, "under-water", "through water"}});
  describe_placed_rock(method);
  describe_quantity(method);
  method.output({"extra_thickness", "Δt", "thickness beyond the layer's"},
                &ThickenedToeResult::extra_thickness, unit::foot);
  method.output({"toe_thickness", "t_t", "thickness of the toe"},
                &ThickenedToeResult::toe_thickness, unit::foot);
  return method;
}

}  // namespace

Expected<ThickenedToeResult> thickened_toe(const ThickenedToeInputs& inputs, Steps& steps) {
  const auto rock = launched_rock(inputs.layer_thickness, inputs.launch_height, launched_slope,
                                  inputs.placement, steps);
  const auto quantity = quantity_of(rock.cross_section, inputs, steps);
  ThickenedToeResult result;
  result.cross_section = rock.cross_section;
  result.volume = quantity.volume;
  result.mass = quantity.mass;
  result.extra_thickness = Length::feet(rock.cross_section.square_feet() / inputs.width.feet());
  result.toe_thickness = inputs.layer_thickness + result.extra_thickness;
  steps.given("b_t", "width of the thicker part", measure(inputs.width));
  steps.computed("Δt", "thickness beyond the layer's", "A/b_t", measure(result.extra_thickness));
  steps.computed("t_t", "thickness of the toe", "T + Δt", measure(result.toe_thickness));
  return result;
}

const Method& thickened_toe_method() {
  static const TypedMethod<ThickenedToeInputs, ThickenedToeResult> method = build_thickened_toe();
  return method;
}

}  // namespace proofstone
