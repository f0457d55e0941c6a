#include "engine/toe/peaked_stone_toe.h"

namespace proofstone {

namespace {

TypedMethod<PeakedStoneToeInputs, PeakedStoneToeResult> build_peaked_stone_toe() {
  MethodDescription about;
  about.id = "peaked-stone-toe";
  about.title = "Peaked stone toe";
  about.purpose =
      "Rock of a ridge along the foot of a bank, as mass for each unit of length; the bank behind "
      "it is left to find its slope or is shaped and planted.";
  about.group = MethodGroup::toe;
  about.sources = {
      {"USACE WES Streambank Handbook (1997)",
       "§7.1.4.5, 1 to 2 tons/ft; §10.4, 5 ft high about 2.1 tons/ft", SourceStanding::published},
      {"trade", "sides at the slope on which dumped rock rests, 1V:1.5H",
       SourceStanding::common_practice}};
  about.cautions = {
      "Tie it into the bank every one or two channel widths, and at the downstream end.",
      "It holds no rock for launching beyond its own: check it against the depth of scour."};
  TypedMethod<PeakedStoneToeInputs, PeakedStoneToeResult> method(about, &peaked_stone_toe);
  method.required({"height", "h", "height of the ridge above the bed"},
                  &PeakedStoneToeInputs::height, unit::foot, AllowedRange::positive_to(50));
  method.defaulted({"side_slope", "1/z", "slope of its sides"}, &PeakedStoneToeInputs::side_slope,
                   unit::rise_per_run, AllowedRange::between(0.2, 1.5));
  describe_placed_rock(method);
  describe_quantity(method);
  method.output({"base_width", "b", "width of its base"}, &PeakedStoneToeResult::base_width,
                unit::foot);
  return method;
}

}  // namespace

Expected<PeakedStoneToeResult> peaked_stone_toe(const PeakedStoneToeInputs& inputs, Steps& steps) {
  const double h = inputs.height.feet();
  const double z = 1 / inputs.side_slope.ratio();
  PeakedStoneToeResult result;
  result.cross_section = Area::square_feet(z * h * h);
  result.base_width = Length::feet(2 * z * h);
  steps.given("h", "height of the ridge", measure(inputs.height));
  steps.given("1/z", "slope of its sides", measure(inputs.side_slope));
  steps.computed("A", "rock for each unit of length", "z·h²", measure(result.cross_section));
  steps.computed("b", "width of its base", "2·z·h", measure(result.base_width));
  const auto quantity = quantity_of(result.cross_section, inputs, steps);
  result.volume = quantity.volume;
  result.mass = quantity.mass;
  return result;
}

const Method& peaked_stone_toe_method() {
  static const TypedMethod<PeakedStoneToeInputs, PeakedStoneToeResult> method =
      build_peaked_stone_toe();
  return method;
}

}  // namespace proofstone
