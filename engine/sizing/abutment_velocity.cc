#include "engine/sizing/abutment_velocity.h"

namespace proofstone {

namespace {

using DescribedAbutmentVelocity = TypedMethod<AbutmentVelocityInputs, AbutmentVelocityResult>;

constexpr double far_setback = 5;

const char* const dg14_of_abutment_velocity =
    "FHWA HEC-23 Vol. 2 (2009) DG14 (from memory; confirm)";

/// One side of the opening as this rule sees it.
struct Overbank {
  double ratio = 0;      ///< setback over channel depth
  double discharge = 0;  // ft³/s
  double area = 0;       // ft²
  bool is_far() const { return ratio > far_setback; }
};

Overbank overbank(Length setback, Discharge discharge, Area area, Length channel_depth) {
  return {setback / channel_depth, discharge.cubic_feet_per_second(), area.square_feet()};
}

struct Carried {
  double discharge;
  double area;
  const char* formula;
};

Carried carried_by(const AbutmentVelocityInputs& in, const Overbank& here, const Overbank& there) {
  const double Q = in.channel_discharge.cubic_feet_per_second();
  const double A = in.channel_area.square_feet();
  if (here.is_far())
    return {here.discharge, here.area, "Q/A of this abutment's overbank (SBR > 5)"};
  if (there.is_far()) {
    return {Q + here.discharge, A + here.area,
            "Q/A from this abutment to the far edge of the main channel (SBR ≤ 5 here, > 5 there)"};
  }
  return {Q + here.discharge + there.discharge, A + here.area + there.area,
          "Q/A of the whole opening (SBR ≤ 5 at both abutments)"};
}

void describe_abutment_velocity_inputs(DescribedAbutmentVelocity& method) {
  method.choice({"abutment", "", "the abutment whose velocity is asked for"},
                &AbutmentVelocityInputs::abutment,
                {{AbutmentSide::left, "left", "left, looking downstream"},
                 {AbutmentSide::right, "right", "right, looking downstream"}});
  method.required({"channel_depth", "y_c", "average depth of the main channel"},
                  &AbutmentVelocityInputs::channel_depth, unit::foot,
                  AllowedRange::positive_to(300));
  method.required({"channel_discharge", "Q_c", "discharge of the main channel"},
                  &AbutmentVelocityInputs::channel_discharge, unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e8));
  method.required({"channel_area", "A_c", "flow area of the main channel"},
                  &AbutmentVelocityInputs::channel_area, unit::square_foot,
                  AllowedRange::positive_to(1e7));
  method.required({"left_setback", "", "left abutment from the edge of the main channel"},
                  &AbutmentVelocityInputs::left_setback, unit::foot, AllowedRange::between(0, 1e5));
  method.defaulted({"left_discharge", "Q_l", "discharge of the left overbank in the opening"},
                   &AbutmentVelocityInputs::left_discharge, unit::cubic_foot_per_second,
                   AllowedRange::between(0, 1e8));
  method.defaulted({"left_area", "A_l", "flow area of the left overbank in the opening"},
                   &AbutmentVelocityInputs::left_area, unit::square_foot,
                   AllowedRange::between(0, 1e7));
  method.required({"right_setback", "", "right abutment from the edge of the main channel"},
                  &AbutmentVelocityInputs::right_setback, unit::foot,
                  AllowedRange::between(0, 1e5));
  method.defaulted({"right_discharge", "Q_r", "discharge of the right overbank in the opening"},
                   &AbutmentVelocityInputs::right_discharge, unit::cubic_foot_per_second,
                   AllowedRange::between(0, 1e8));
  method.defaulted({"right_area", "A_r", "flow area of the right overbank in the opening"},
                   &AbutmentVelocityInputs::right_area, unit::square_foot,
                   AllowedRange::between(0, 1e7));
}

DescribedAbutmentVelocity build_abutment_velocity() {
  MethodDescription about;
  about.id = "abutment-velocity";
  about.title = "Velocity at a bridge abutment";
  about.purpose =
      "Characteristic average velocity in the contracted section at an abutment, by how far the "
      "abutments stand back from the main channel.";
  about.group = MethodGroup::water;
  about.sources = {{"FHWA HEC-23 Vol. 2, 3rd ed. (FHWA-NHI-09-112, 2009)",
                    "Design Guideline 14, setback ratio", SourceStanding::memory}};
  about.cautions = {"Leave flow over the road out of every discharge.",
                    "The guideline leaves a setback ratio of exactly 5 open; here it counts as a "
                    "near abutment."};
  DescribedAbutmentVelocity method(std::move(about), &abutment_velocity);
  describe_abutment_velocity_inputs(method);
  method.output({"left_ratio", "SBR", "setback ratio of the left abutment"},
                &AbutmentVelocityResult::left_ratio, unit::number);
  method.output({"right_ratio", "SBR", "setback ratio of the right abutment"},
                &AbutmentVelocityResult::right_ratio, unit::number);
  method.output({"velocity", "V", "characteristic average velocity at the abutment"},
                &AbutmentVelocityResult::velocity, unit::foot_per_second);
  return method;
}

}  // namespace

Expected<AbutmentVelocityResult> abutment_velocity(const AbutmentVelocityInputs& inputs,
                                                   Steps& steps) {
  const auto left =
      overbank(inputs.left_setback, inputs.left_discharge, inputs.left_area, inputs.channel_depth);
  const auto right = overbank(inputs.right_setback, inputs.right_discharge, inputs.right_area,
                              inputs.channel_depth);
  const bool at_left = inputs.abutment == AbutmentSide::left;
  const Carried carried =
      at_left ? carried_by(inputs, left, right) : carried_by(inputs, right, left);
  if (!(carried.discharge > 0 && carried.area > 0)) {
    return Problem{"missing-input",
                   "This abutment stands back over 5 depths, and its overbank carries no water.",
                   "", at_left ? "/left_discharge" : "/right_discharge",
                   "discharge and area of that overbank"};
  }
  AbutmentVelocityResult result;
  result.left_ratio = Dimensionless::number(left.ratio);
  result.right_ratio = Dimensionless::number(right.ratio);
  result.velocity = Velocity::feet_per_second(carried.discharge / carried.area);
  steps.given("y_c", "average depth of the main channel", measure(inputs.channel_depth));
  steps.computed("SBR_l", "setback ratio of the left abutment", "setback/y_c",
                 measure(result.left_ratio), dg14_of_abutment_velocity);
  steps.computed("SBR_r", "setback ratio of the right abutment", "setback/y_c",
                 measure(result.right_ratio), dg14_of_abutment_velocity);
  steps.given("Q", "discharge that counts",
              measure(Discharge::cubic_feet_per_second(carried.discharge)));
  steps.given("A", "flow area that counts", measure(Area::square_feet(carried.area)));
  steps.computed("V", "characteristic average velocity", carried.formula, measure(result.velocity),
                 dg14_of_abutment_velocity);
  return result;
}

const Method& abutment_velocity_method() {
  static const DescribedAbutmentVelocity method = build_abutment_velocity();
  return method;
}

}  // namespace proofstone
