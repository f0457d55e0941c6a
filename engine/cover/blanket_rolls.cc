#include "engine/cover/blanket_rolls.h"

#include <algorithm>
#include <cmath>

#include "engine/quantity/rounding.h"

namespace proofstone {

namespace {

const char* const practice_of_blanket_rolls = "common practice";

MethodDescription describe_blanket_rolls() {
  MethodDescription about;
  about.id = "blanket-rolls";
  about.title = "Rolls of a blanket on a bank";
  about.purpose =
      "Length of the slope, what a roll covers within its overlaps, and how many rolls a bank "
      "takes.";
  about.group = MethodGroup::cover;
  about.sources = {{"computed", "geometry of strips with overlaps", SourceStanding::computed},
                   {practice_of_blanket_rolls, "overlap of 12 in at ends and 4 to 6 in at sides",
                    SourceStanding::common_practice}};
  about.cautions = {
      "On a stream bank the upstream piece laps over the downstream one and the upper strip over "
      "the lower (common practice).",
      "Laid loose and in full contact: a stretched blanket bridges and soil goes under it."};
  return about;
}

TypedMethod<BlanketRollsInputs, BlanketRollsResult> build_blanket_rolls() {
  TypedMethod<BlanketRollsInputs, BlanketRollsResult> method(describe_blanket_rolls(),
                                                             &blanket_rolls);
  method.required({"height", "h", "height of the covered slope"}, &BlanketRollsInputs::height,
                  unit::foot, AllowedRange::positive_to(500));
  method.required({"side_slope", "z", "horizontal for 1 vertical"}, &BlanketRollsInputs::side_slope,
                  unit::number, AllowedRange::between(0.25, 50));
  method.required({"length", "L", "length along the stream"}, &BlanketRollsInputs::length,
                  unit::foot, AllowedRange::positive_to(1e6));
  method.defaulted({"in_trenches", "e", "more that the trenches take up, down the slope"},
                   &BlanketRollsInputs::in_trenches, unit::foot, AllowedRange::between(0, 20));
  method.required({"roll_width", "W", "width of a roll"}, &BlanketRollsInputs::roll_width,
                  unit::foot, AllowedRange::positive_to(40));
  method.required({"roll_length", "R", "length of a roll"}, &BlanketRollsInputs::roll_length,
                  unit::foot, AllowedRange::positive_to(2000));
  method.defaulted({"side_overlap", "o_s", "overlap at the sides"},
                   &BlanketRollsInputs::side_overlap, unit::inch, AllowedRange::between(0, 120));
  method.defaulted({"end_overlap", "o_e", "overlap at the ends"}, &BlanketRollsInputs::end_overlap,
                   unit::inch, AllowedRange::between(0, 120));
  using Option = ChoiceOption<RollDirection>;
  method.choice({"direction", "", "which way the rolls run"}, &BlanketRollsInputs::direction,
                {Option{RollDirection::along_stream, "along-stream", "with the water"},
                 Option{RollDirection::down_slope, "down-slope", "from top to toe"}});
  method.output({"slope_length", "ℓ", "length of the slope"}, &BlanketRollsResult::slope_length,
                unit::foot);
  method.output({"roll_area", "A_r", "area of a roll"}, &BlanketRollsResult::roll_area,
                unit::square_foot);
  method.output({"roll_covers", "A_c", "area a roll covers within its overlaps"},
                &BlanketRollsResult::roll_covers, unit::square_foot);
  method.output({"area", "A", "area to cover, with the trenches"}, &BlanketRollsResult::area,
                unit::square_foot);
  method.output({"strips", "n", "strips side by side"}, &BlanketRollsResult::strips, unit::number);
  method.output({"rolls", "N", "rolls"}, &BlanketRollsResult::rolls, unit::number);
  method.limit({"Overlap of at least 12 in at ends and 4 in at sides", practice_of_blanket_rolls},
               [](const BlanketRollsInputs& in) {
                 return in.end_overlap.inches() > 12 - 1e-9 && in.side_overlap.inches() > 4 - 1e-9;
               });
  return method;
}

void explain(const BlanketRollsInputs& in, const BlanketRollsResult& result, Steps& steps) {
  steps.given("h", "height of the covered slope", measure(in.height));
  steps.given("z", "horizontal for 1 vertical", measure(in.side_slope));
  steps.computed("ℓ", "length of the slope", "h·√(1 + z²)", measure(result.slope_length));
  steps.given("L", "length along the stream", measure(in.length));
  steps.given("e", "more that the trenches take up", measure(in.in_trenches));
  steps.computed("A", "area to cover, with the trenches", "(ℓ + e)·L", measure(result.area));
  steps.given("W", "width of a roll", measure(in.roll_width));
  steps.given("R", "length of a roll", measure(in.roll_length));
  steps.computed("A_r", "area of a roll", "W·R", measure(result.roll_area));
  steps.given("o_s", "overlap at the sides", measure(in.side_overlap));
  steps.given("o_e", "overlap at the ends", measure(in.end_overlap));
  steps.computed("A_c", "area a roll covers within its overlaps", "(W − o_s)·(R − o_e)",
                 measure(result.roll_covers));
  steps.computed("n", "strips side by side", "(across − o_s)/(W − o_s), rounded up",
                 measure(result.strips));
  steps.computed("N", "rolls", "n·(along − o_e)/(R − o_e), rounded up", measure(result.rolls));
}

}  // namespace

Expected<BlanketRollsResult> blanket_rolls(const BlanketRollsInputs& inputs, Steps& steps) {
  const double W = (inputs.roll_width - inputs.side_overlap).meters();
  const double R = (inputs.roll_length - inputs.end_overlap).meters();
  if (!(W > 0) || !(R > 0)) {
    return Problem{"overlap-too-wide", "The overlaps leave nothing of the roll.", "",
                   W > 0 ? "/end_overlap" : "/side_overlap", "less than the roll"};
  }
  const double z = inputs.side_slope.number();
  BlanketRollsResult result;
  result.slope_length = inputs.height * std::sqrt(1 + z * z);
  const double down = (result.slope_length + inputs.in_trenches).meters();
  const double along = inputs.length.meters();
  result.area = Area::square_meters(down * along);
  result.roll_area = Area::square_meters(inputs.roll_width.meters() * inputs.roll_length.meters());
  result.roll_covers = Area::square_meters(W * R);
  const bool with_water = inputs.direction == RollDirection::along_stream;
  const double across = (with_water ? down : along) - inputs.side_overlap.meters();
  const double lengthwise = (with_water ? along : down) - inputs.end_overlap.meters();
  const double strips = std::max(1.0, rounded_up(across / W));
  result.strips = Dimensionless::number(strips);
  result.rolls = Dimensionless::number(std::max(1.0, rounded_up(strips * lengthwise / R)));
  explain(inputs, result, steps);
  return result;
}

const Method& blanket_rolls_method() {
  static const TypedMethod<BlanketRollsInputs, BlanketRollsResult> method = build_blanket_rolls();
  return method;
}

}  // namespace proofstone
