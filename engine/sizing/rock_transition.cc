#include "engine/sizing/rock_transition.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

constexpr Length overlap_downstream = Length::feet(10);
constexpr Length overlap_upstream = Length::feet(5);
constexpr double layers_of_overlap = 3;
constexpr double taper_run = 3;
constexpr double velocity_rise = 1.2;

const char* const manual =
    "Urban Storm Drainage Criteria Manual, Major Drainage: transitions protected 5 ft above and 10 "
    "ft below";
const char* const practice_of_rock_transition = "common practice";

TypedMethod<RockTransitionInputs, RockTransitionResult> build_rock_transition() {
  MethodDescription about;
  about.id = "rock-transition";
  about.title = "Transition between two kinds of rock";
  about.purpose =
      "How far the larger of two neighbouring rocks runs on into the reach of the smaller, and "
      "over what length the thickness changes.";
  about.group = MethodGroup::layer;
  about.sources = {
      {"Urban Storm Drainage Criteria Manual, Major Drainage",
       "transitions: greatest velocity raised by 20 %, rock 5 ft above and 10 ft below",
       SourceStanding::published},
      {"trade", "overlap of three layers at least, underside at 1V:3H",
       SourceStanding::common_practice}};
  about.cautions = {
      "Change the rock where the water is steady, never on the outside of a bend or just below a "
      "structure.",
      "Where one rock is much larger than its neighbour, see that the smaller cannot be washed out "
      "through the larger: the rules of filters hold between them as well.",
      "Beside concrete or sheet piling the water is rougher: size for the raised velocity."};
  TypedMethod<RockTransitionInputs, RockTransitionResult> method(about, &rock_transition);
  method.required({"upstream_d50", "D50,u", "median size of the upstream rock"},
                  &RockTransitionInputs::upstream_d50, unit::foot, AllowedRange::positive_to(30),
                  LengthUse::rock);
  method.required({"downstream_d50", "D50,d", "median size of the downstream rock"},
                  &RockTransitionInputs::downstream_d50, unit::foot, AllowedRange::positive_to(30),
                  LengthUse::rock);
  method.required({"upstream_thickness", "Tu", "thickness of the upstream layer"},
                  &RockTransitionInputs::upstream_thickness, unit::foot,
                  AllowedRange::positive_to(50));
  method.required({"downstream_thickness", "Td", "thickness of the downstream layer"},
                  &RockTransitionInputs::downstream_thickness, unit::foot,
                  AllowedRange::positive_to(50));
  method.optional({"velocity", "V", "greatest velocity at the transition"},
                  &RockTransitionInputs::velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60), "no design velocity");
  method.output({"overlap", "Lo", "of the larger rock into the reach of the smaller"},
                &RockTransitionResult::overlap, unit::foot);
  method.output({"taper", "Lt", "length over which the thickness changes"},
                &RockTransitionResult::taper, unit::foot);
  method.output({"size_ratio", "", "larger over smaller median size"},
                &RockTransitionResult::size_ratio, unit::number);
  method.output({"design_velocity", "1.2·V", "velocity to size for; 0 where none is given"},
                &RockTransitionResult::design_velocity, unit::foot_per_second);
  return method;
}

}  // namespace

Expected<RockTransitionResult> rock_transition(const RockTransitionInputs& inputs, Steps& steps) {
  const Length up = inputs.upstream_d50;
  const Length down = inputs.downstream_d50;
  const Length thicker = std::max(inputs.upstream_thickness, inputs.downstream_thickness);
  const Length thinner = std::min(inputs.upstream_thickness, inputs.downstream_thickness);
  RockTransitionResult result;
  result.larger_upstream = !(down > up);
  const Length published = result.larger_upstream ? overlap_downstream : overlap_upstream;
  result.overlap = std::max(published, layers_of_overlap * thicker);
  result.taper = taper_run * (thicker - thinner);
  result.size_ratio = Dimensionless::number(std::max(up, down) / std::min(up, down));
  if (inputs.velocity) result.design_velocity = velocity_rise * *inputs.velocity;

  steps.given_rock("D50,u", "median size of the upstream rock", up);
  steps.given_rock("D50,d", "median size of the downstream rock", down);
  steps.computed("", "larger over smaller median size", "", measure(result.size_ratio));
  steps.given("Tu", "thickness of the upstream layer", measure(inputs.upstream_thickness));
  steps.given("Td", "thickness of the downstream layer", measure(inputs.downstream_thickness));
  steps.computed(
      "Lo",
      result.larger_upstream ? "the larger rock runs on downstream"
                             : "the larger rock begins upstream",
      result.larger_upstream ? "max(10 ft, 3·T of the thicker)" : "max(5 ft, 3·T of the thicker)",
      measure(result.overlap), manual);
  steps.computed("Lt", "length over which the thickness changes", "3·|Tu − Td|",
                 measure(result.taper), practice_of_rock_transition);
  if (inputs.velocity) {
    steps.given("V", "greatest velocity at the transition", measure(*inputs.velocity));
    steps.computed("1.2·V", "velocity to size the transition's rock for", "1.2·V",
                   measure(result.design_velocity), manual);
  }
  return result;
}

const Method& rock_transition_method() {
  static const TypedMethod<RockTransitionInputs, RockTransitionResult> method =
      build_rock_transition();
  return method;
}

}  // namespace proofstone
