#include "engine/chute/overtopping_khan_ahmad.h"

#include <cmath>

#include "engine/method/published_range.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedOvertoppingKhanAhmad =
    TypedSizingMethod<OvertoppingKhanAhmadInputs, OvertoppingKhanAhmadResult>;

const char* const paper_of_overtopping_khan_ahmad = "Khan and Ahmad (2011) (from memory; confirm)";
const char* const paper_abstract = "Khan and Ahmad (2011), abstract";

std::variant<OvertoppingKhanAhmadInputs, NotApplicable> overtopping_khan_ahmad_from_zone(
    const ZoneSetting& zone) {
  OvertoppingKhanAhmadInputs in;
  take_chute_flow(zone, in);
  return in;
}

MethodDescription describe_overtopping_khan_ahmad() {
  MethodDescription about;
  about.id = "overtopping-khan-ahmad";
  about.title = "Khan and Ahmad overtopping equation";
  about.purpose =
      "Median size of rock on an overtopped slope of 1 to 40 %, in which a thicker layer of "
      "rock asks for larger stones.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Khan and Ahmad (2011)", "size equation", SourceStanding::memory},
                   {"Khan and Ahmad (2011)", "abstract: range and scatter of the tests",
                    SourceStanding::published}};
  about.cautions = {
      "A fit to tests within about ±20 %, without a safety factor.",
      "The size belongs to the layer thickness in it: change one and the other changes."};
  return about;
}

bool khan_ahmad_tested_size(const OvertoppingKhanAhmadInputs& in) {
  Steps unread;
  const auto result = overtopping_khan_ahmad(in, unread);
  return result && PublishedRange{15, 278}.holds(result->d50.millimeters());
}

DescribedOvertoppingKhanAhmad build_overtopping_khan_ahmad() {
  DescribedOvertoppingKhanAhmad method(
      describe_overtopping_khan_ahmad(), &overtopping_khan_ahmad, &overtopping_khan_ahmad_from_zone,
      [](const OvertoppingKhanAhmadResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::chute});
  method.for_comparison_until_chosen(
      {"uniformity", "layer_thickness"},
      "the size hangs on how uniform the rock is and how thick its layer, which are defaults.");
  describe_chute_flow(method);
  method.required({"slope", "S", "slope of the face"}, &OvertoppingKhanAhmadInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(2));
  method.defaulted({"uniformity", "Cu", "D60/D10"}, &OvertoppingKhanAhmadInputs::uniformity,
                   unit::number, AllowedRange::between(1, 20));
  method.optional({"layer_thickness", "t", "layer thickness, when it is fixed"},
                  &OvertoppingKhanAhmadInputs::layer_thickness, unit::foot,
                  AllowedRange::positive_to(100), "thickness_in_sizes times D50");
  method.defaulted({"thickness_in_sizes", "t/D50", "layer thickness where it is not fixed"},
                   &OvertoppingKhanAhmadInputs::thickness_in_sizes, unit::number,
                   AllowedRange::between(1, 10));
  method.output({"layer_thickness", "t", "layer thickness the size belongs to"},
                &OvertoppingKhanAhmadResult::layer_thickness, unit::foot);
  method.output({"d50", "D50", "required median size"}, &OvertoppingKhanAhmadResult::d50,
                unit::meter, LengthUse::rock);
  method.limit({"Slope tested: 1 to 40 %", paper_abstract},
               [](const OvertoppingKhanAhmadInputs& in) {
                 return PublishedRange{0.01, 0.40}.holds(in.slope.ratio());
               });
  method.limit({"Median size tested: 15 to 278 mm", paper_abstract}, khan_ahmad_tested_size);
  return method;
}

}  // namespace

Expected<OvertoppingKhanAhmadResult> overtopping_khan_ahmad(
    const OvertoppingKhanAhmadInputs& inputs, Steps& steps) {
  const auto unit_discharge = unit_discharge_of(inputs, steps);
  if (!unit_discharge) return unit_discharge.problems();
  const double q = unit_discharge->square_meters_per_second();
  const double S = inputs.slope.ratio();
  const double Cu = inputs.uniformity.number();
  const double water_and_rock = 0.66 * std::pow(S, 0.22) * std::pow(Cu, -0.45) * std::pow(q, 0.22);
  steps.given("S", "slope of the face", measure(inputs.slope));
  steps.given("Cu", "D60/D10", measure(inputs.uniformity));

  OvertoppingKhanAhmadResult result;
  if (inputs.layer_thickness) {
    const double t = inputs.layer_thickness->meters();
    result.layer_thickness = *inputs.layer_thickness;
    result.d50 = Length::meters(water_and_rock * std::pow(t, 0.58));
    steps.given("t", "layer thickness", measure(result.layer_thickness));
    steps.computed_rock("D50", "required median size",
                        "0.66·t^0.58·S^0.22·Cu^−0.45·q^0.22 (m, m²/s)", result.d50,
                        paper_of_overtopping_khan_ahmad);
    return result;
  }
  const double layers = inputs.thickness_in_sizes.number();
  result.d50 = Length::meters(std::pow(water_and_rock * std::pow(layers, 0.58), 1 / 0.42));
  result.layer_thickness = layers * result.d50;
  steps.given("t/D50", "layer thickness in median sizes", measure(inputs.thickness_in_sizes));
  steps.computed_rock("D50", "required median size",
                      "[0.66·(t/D50)^0.58·S^0.22·Cu^−0.45·q^0.22]^(1/0.42) (m, m²/s)", result.d50,
                      paper_of_overtopping_khan_ahmad);
  steps.computed("t", "layer thickness", "(t/D50)·D50", measure(result.layer_thickness));
  return result;
}

const SizingMethod& overtopping_khan_ahmad_method() {
  static const DescribedOvertoppingKhanAhmad method = build_overtopping_khan_ahmad();
  return method;
}

}  // namespace proofstone
