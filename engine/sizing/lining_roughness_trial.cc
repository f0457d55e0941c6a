#include "engine/sizing/lining_roughness_trial.h"

namespace proofstone {

namespace {

MethodDescription describe_lining_roughness_trial() {
  MethodDescription about;
  about.id = "lining-roughness-trial";
  about.title = "Water over a rock lining of one size";
  about.purpose =
      "Depth and velocity in a trapezoidal channel lined with rock of one size, and the size which "
      "that water asks for: one trial by hand.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"USACE WES Streambank Handbook (1997)",
                    "App. A, eq. A.2; Example 2, Tables A.2 and A.3", SourceStanding::published},
                   {"USACE EM 1110-2-1601 (1994)", "eqs. 3-2 and 3-3, App. H Problem 2",
                    SourceStanding::memory}};
  about.cautions = {
      "K 0.036 is the average; use 0.034 for velocity and rock size, 0.038 for level and "
      "freeboard.",
      "Uniform flow is an assumption; where a profile calculation gives the depth, use that."};
  return about;
}

TypedMethod<LiningTrialInputs, LiningTrialResult> build_lining_roughness_trial() {
  TypedMethod<LiningTrialInputs, LiningTrialResult> method(describe_lining_roughness_trial(),
                                                           &lining_roughness_trial);
  describe_rock_lined_channel(method);
  method.optional({"d90", "D90", "of the class, smallest allowed"}, &LiningTrialInputs::d90,
                  unit::foot, AllowedRange::positive_to(50), "not needed when n is stated",
                  LengthUse::rock);
  method.optional({"roughness", "n", "Manning's n as stated, before that of the D90"},
                  &LiningTrialInputs::roughness, unit::number, AllowedRange::between(0.005, 0.5),
                  "K·D90^⅙");
  method.defaulted({"coefficient", "K", "of the roughness of rock"},
                   &LiningTrialInputs::coefficient, unit::number,
                   AllowedRange::between(0.02, 0.06));
  method.output({"roughness", "n", "Manning's n"}, &LiningTrialResult::roughness, unit::number);
  method.output({"depth", "y", "depth of uniform flow"}, &LiningTrialResult::depth, unit::foot);
  method.output({"top_width", "W", "top width"}, &LiningTrialResult::top_width, unit::foot);
  method.output({"velocity", "V", "mean velocity"}, &LiningTrialResult::velocity,
                unit::foot_per_second);
  method.output({"local_depth", "d", "local depth at the rock"}, &LiningTrialResult::local_depth,
                unit::foot);
  method.output({"attacking_velocity", "V_SS", "velocity at the rock"},
                &LiningTrialResult::attacking_velocity, unit::foot_per_second);
  method.output({"required_d30", "D30", "size that this water asks for"},
                &LiningTrialResult::required_d30, unit::foot, LengthUse::rock);
  return method;
}

}  // namespace

Expected<LiningTrialResult> lining_roughness_trial(const LiningTrialInputs& inputs, Steps& steps) {
  if (!inputs.d90 && !inputs.roughness) {
    return Problem{"missing-input", "Neither the rock's D90 nor Manning's n is known.", "", "/d90",
                   "a length, or roughness"};
  }
  if (inputs.roughness) steps.given("n", "Manning's n, stated", measure(*inputs.roughness));
  const auto n =
      inputs.roughness ? *inputs.roughness : roughness_of(*inputs.d90, inputs.coefficient, steps);
  const auto trial = trial_at(inputs, n, steps);
  if (!trial) return trial.problems();
  return LiningTrialResult{trial->roughness,     trial->flow.depth,  trial->flow.top_width,
                           trial->flow.velocity, trial->local_depth, trial->attacking_velocity,
                           trial->required_d30};
}

const Method& lining_roughness_trial_method() {
  static const TypedMethod<LiningTrialInputs, LiningTrialResult> method =
      build_lining_roughness_trial();
  return method;
}

}  // namespace proofstone
