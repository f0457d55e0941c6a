#include "engine/sizing/bend_velocity_method.h"

#include <algorithm>

#include "engine/method/typed_method.h"
#include "engine/sizing/bend_velocity.h"
#include "engine/sizing/setting_words.h"

namespace proofstone {

namespace {

struct BendVelocityInputs {
  ChannelForm channel_form = ChannelForm::natural;
  Length bend_radius;
  Length top_width;
  Velocity average_velocity;
  Length distance_below;
};

struct BendVelocityResult {
  Dimensionless ratio_in_bend;
  Dimensionless ratio;
  Velocity velocity;
  Length ends;
};

Expected<BendVelocityResult> compute_bend_velocity(const BendVelocityInputs& inputs, Steps& steps) {
  BendVelocityResult result;
  result.ratio_in_bend =
      bend_velocity_ratio(inputs.channel_form, inputs.bend_radius, inputs.top_width);
  result.ratio = bend_ratio_below(result.ratio_in_bend, inputs.distance_below, inputs.top_width);
  result.velocity = inputs.average_velocity * result.ratio.number();
  result.ends = bend_effect_ends(result.ratio_in_bend, inputs.top_width);
  steps.given("R", "centreline radius of the bend", measure(inputs.bend_radius));
  steps.given("W", "water-surface width of the main channel", measure(inputs.top_width));
  steps.given("V_avg", "mean velocity above the bend", measure(inputs.average_velocity));
  steps.given("x", "distance below the end of the bend", measure(inputs.distance_below));
  steps.computed("r₀", "bank velocity over mean velocity in the bend",
                 bend_velocity_formula(inputs.channel_form), measure(result.ratio_in_bend),
                 bend_velocity_source().sentence());
  steps.computed("r", "the same at the place", "r₀ for one width, then −0.1 a width down to 1",
                 measure(result.ratio), bend_decay_source().sentence());
  steps.computed("V_SS", "velocity at the outer bank", "r·V_avg", measure(result.velocity));
  steps.computed("x₁", "distance at which the bend is no longer felt", "W + (r₀ − 1)·10·W",
                 measure(result.ends));
  return result;
}

TypedMethod<BendVelocityInputs, BendVelocityResult> build_bend_velocity() {
  MethodDescription about;
  about.id = "bend-velocity";
  about.title = "Velocity at the outer bank of a bend";
  about.purpose =
      "Depth-averaged velocity 20 % up the slope of the outer bank in a bend, and how it dies away "
      "below the bend.";
  about.group = MethodGroup::water;
  about.sources = {bend_velocity_source(), bend_decay_source()};
  about.cautions = {
      "The trapezoidal fit leaves the bend angle and the aspect ratio of the plate out and lies on "
      "the upper side of the manual's own example by about 9 %.",
      "The bend velocity rises quickly where R/W is below about 3."};
  TypedMethod<BendVelocityInputs, BendVelocityResult> method(about, &compute_bend_velocity);
  method.choice({"channel_form", "", "form of the channel"}, &BendVelocityInputs::channel_form,
                channel_form_options());
  method.required({"bend_radius", "R", "centreline radius of the bend"},
                  &BendVelocityInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6));
  method.required({"top_width", "W", "water-surface width of the main channel"},
                  &BendVelocityInputs::top_width, unit::foot, AllowedRange::positive_to(1e5));
  method.required({"average_velocity", "V_avg", "mean velocity of the main channel above the bend"},
                  &BendVelocityInputs::average_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.defaulted({"distance_below", "x", "distance below the downstream tangent point"},
                   &BendVelocityInputs::distance_below, unit::foot, AllowedRange::between(0, 1e6));
  method.output({"ratio_in_bend", "r₀", "velocity ratio in the bend"},
                &BendVelocityResult::ratio_in_bend, unit::number);
  method.output({"ratio", "r", "velocity ratio at the place"}, &BendVelocityResult::ratio,
                unit::number);
  method.output({"velocity", "V_SS", "velocity at the outer bank"}, &BendVelocityResult::velocity,
                unit::foot_per_second);
  method.output({"ends", "x₁", "distance below the bend at which the ratio is 1 again"},
                &BendVelocityResult::ends, unit::foot);
  return method;
}

}  // namespace

const Method& bend_velocity_method() {
  static const TypedMethod<BendVelocityInputs, BendVelocityResult> method = build_bend_velocity();
  return method;
}

}  // namespace proofstone
