#include "engine/toe/launchable_toe.h"

namespace proofstone {

namespace {

const char* const shape_source = "USACE EM 1110-2-1601 (1994), ch. 3 (from memory; confirm)";

MethodDescription describe_launchable_toe() {
  MethodDescription about;
  about.id = "launchable-toe";
  about.title = "Launchable toe";
  about.purpose =
      "Rock to store at the toe of a bank so that it slides down and covers the slope as the bed "
      "scours; used where the scour is deep or digging under water is not practical.";
  about.group = MethodGroup::toe;
  about.sources = {{"USACE EM 1110-2-1601 (1994)", "Table 3-2, launched volumes; shape of the toe",
                    SourceStanding::memory},
                   {"USACE WES Streambank Handbook (1997)", "§6.3, when to let a toe launch",
                    SourceStanding::published}};
  about.cautions = {
      "The volumes hold for beds that do not cohere: clay scours in steps and launches unevenly.",
      "After a flood that launched it, survey the toe and fill it up again.",
      "Stand clear: a loaded toe can slide without warning."};
  return about;
}

TypedMethod<LaunchableToeInputs, LaunchableToeResult> build_launchable_toe() {
  TypedMethod<LaunchableToeInputs, LaunchableToeResult> method(describe_launchable_toe(),
                                                               &launchable_toe);
  method.required({"layer_thickness", "T", "thickness of the bank's layer"},
                  &LaunchableToeInputs::layer_thickness, unit::foot, AllowedRange::positive_to(30));
  method.required({"launch_height", "h", "from the toe as built down to the scoured bed"},
                  &LaunchableToeInputs::launch_height, unit::foot, AllowedRange::positive_to(100));
  method.choice({"placement", "", "where the rock is placed"}, &LaunchableToeInputs::placement,
                {ChoiceOption<ToePlacement>{ToePlacement::dry, "dry", "above water"},
                 {ToePlacement::under_water, "under-water", "through water"}});
  method.defaulted({"launch_slope", "1/z", "slope the launched rock takes"},
                   &LaunchableToeInputs::launch_slope, unit::rise_per_run,
                   AllowedRange::between(0.2, 1));
  method.defaulted({"toe_multiple", "m", "height of the stored toe in layer thicknesses"},
                   &LaunchableToeInputs::toe_multiple, unit::number, AllowedRange::between(1, 10));
  describe_placed_rock(method);
  method.output({"increase", "f", "increase over the launched volume"},
                &LaunchableToeResult::increase, unit::number);
  method.output({"in_place", "A_0", "launched rock for each unit of length"},
                &LaunchableToeResult::in_place, unit::square_foot);
  describe_quantity(method);
  method.output({"toe_thickness", "t_t", "height of the stored toe"},
                &LaunchableToeResult::toe_thickness, unit::foot);
  method.output({"toe_width", "b_t", "width of the stored toe"}, &LaunchableToeResult::toe_width,
                unit::foot);
  method.limit(
      {"A launched slope of 1V:2H, for which the volumes are stated", launched_rock_source()},
      [](const LaunchableToeInputs& in) {
        return in.launch_slope.ratio() >= 0.499 && in.launch_slope.ratio() <= 0.501;
      });
  method.limit({"A stored toe of 2.5 to 4 layer thicknesses launches evenly", shape_source},
               [](const LaunchableToeInputs& in) {
                 return in.toe_multiple.number() >= 2.5 && in.toe_multiple.number() <= 4;
               });
  return method;
}

}  // namespace

Expected<LaunchableToeResult> launchable_toe(const LaunchableToeInputs& inputs, Steps& steps) {
  const auto rock = launched_rock(inputs.layer_thickness, inputs.launch_height, inputs.launch_slope,
                                  inputs.placement, steps);
  const auto quantity = quantity_of(rock.cross_section, inputs, steps);
  LaunchableToeResult result;
  result.increase = rock.increase;
  result.in_place = rock.in_place;
  result.cross_section = rock.cross_section;
  result.volume = quantity.volume;
  result.mass = quantity.mass;
  result.toe_thickness = inputs.toe_multiple.number() * inputs.layer_thickness;
  result.toe_width = Length::feet(rock.cross_section.square_feet() / result.toe_thickness.feet());
  steps.given("m", "height of the stored toe in layer thicknesses, usually 2.5 to 4",
              measure(inputs.toe_multiple), shape_source);
  steps.computed("t_t", "height of the stored toe", "m·T", measure(result.toe_thickness));
  steps.computed("b_t", "width of the stored toe", "A/t_t", measure(result.toe_width));
  return result;
}

const Method& launchable_toe_method() {
  static const TypedMethod<LaunchableToeInputs, LaunchableToeResult> method =
      build_launchable_toe();
  return method;
}

}  // namespace proofstone
