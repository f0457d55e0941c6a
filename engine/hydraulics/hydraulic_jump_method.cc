#include "engine/hydraulics/hydraulic_jump_method.h"

#include <cmath>

#include "engine/hydraulics/hydraulic_jump.h"
#include "engine/hydraulics/prismatic_channel.h"
#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

struct HydraulicJumpInputs : TrapezoidalChannel {
  Discharge discharge;
  Length depth_before;
};

struct HydraulicJumpResult {
  Length depth_after;
  Length energy_lost;
  Dimensionless froude_before;
  Dimensionless froude_after;
  Velocity velocity_before;
  Velocity velocity_after;
  Volume specific_force;
};

double froude_before(const HydraulicJumpInputs& in) {
  const double y = in.depth_before.meters();
  const double b = in.bottom_width.meters();
  const double z = in.side_slope.number();
  const double area = (b + z * y) * y;
  const double width = b + 2 * z * y;
  const double g = standard_gravity.meters_per_second_squared();
  return in.discharge.si() / area / std::sqrt(g * area / width);
}

Expected<HydraulicJumpResult> compute_hydraulic_jump(const HydraulicJumpInputs& in, Steps& steps) {
  // The roughness is of no account in a jump.
  const TrapezoidalChannel channel{in.bottom_width, in.side_slope, Dimensionless::number(0.03)};
  const auto section =
      trapezoidal_section(channel, Length::meters(0), 100 * in.depth_before + Length::meters(10));
  if (!section) return section.problems();
  const auto jump = hydraulic_jump(*section, in.discharge, in.depth_before);
  if (!jump) return jump.problems();
  HydraulicJumpResult result;
  result.depth_after = jump->after.wet.deepest;
  result.energy_lost = jump->energy_lost;
  result.froude_before = jump->before.froude_number;
  result.froude_after = jump->after.froude_number;
  result.velocity_before = jump->before.mean_velocity();
  result.velocity_after = jump->after.mean_velocity();
  result.specific_force = Volume::cubic_meters(jump->specific_force_si);

  steps.given("Q", "discharge", measure(in.discharge));
  steps.given("y1", "depth before the jump", measure(in.depth_before));
  steps.computed("V1", "velocity before the jump", "Q/A1", measure(result.velocity_before));
  steps.computed("F1", "Froude number before the jump", "V1/√(g·A1/T1), g = 9.80665 m/s²",
                 measure(result.froude_before));
  steps.computed("M", "specific force", "Q²/(g·A1) + A1·z̄1", measure(result.specific_force));
  steps.computed("y2", "depth after the jump", "Q²/(g·A2) + A2·z̄2 = M", measure(result.depth_after),
                 "bracketed root finding");
  steps.computed("ΔE", "energy lost", "(y1 + V1²/2g) − (y2 + V2²/2g)", measure(result.energy_lost));
  return result;
}

TypedMethod<HydraulicJumpInputs, HydraulicJumpResult> build_hydraulic_jump() {
  MethodDescription about;
  about.id = "hydraulic-jump";
  about.title = "Hydraulic jump in a trapezoidal channel";
  about.purpose =
      "The depth into which rapid flow jumps, by equal specific force, and the energy lost.";
  about.group = MethodGroup::water;
  about.sources = {
      {"Chow, Open-Channel Hydraulics (1959)", "chs. 3 and 15", SourceStanding::memory},
      {"Henderson, Open Channel Flow (1966)", "ch. 3", SourceStanding::memory}};
  about.cautions = {
      "Rock must suit the rapid flow before the jump too, and the whole stretch along which the "
      "jump "
      "may travel with the tailwater.",
      "Slope of the bed and friction in the jump are left out: for slopes below about 0.05."};
  TypedMethod<HydraulicJumpInputs, HydraulicJumpResult> method(about, &compute_hydraulic_jump);
  method.required({"bottom_width", "b", "width of the bed"},
                  static_cast<Length HydraulicJumpInputs::*>(&TrapezoidalChannel::bottom_width),
                  unit::foot, AllowedRange::positive_to(10'000));
  method.required(
      {"side_slope", "z", "horizontal run of the sides for 1 up; 0 for walls"},
      static_cast<Dimensionless HydraulicJumpInputs::*>(&TrapezoidalChannel::side_slope),
      unit::number, AllowedRange::between(0, 20));
  method.required({"discharge", "Q", "discharge"}, &HydraulicJumpInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e8));
  method.required({"depth_before", "y1", "depth before the jump"},
                  &HydraulicJumpInputs::depth_before, unit::foot, AllowedRange::positive_to(50));
  method.output({"depth_after", "y2", "depth after the jump"}, &HydraulicJumpResult::depth_after,
                unit::foot);
  method.output({"energy_lost", "ΔE", "energy lost in the jump"}, &HydraulicJumpResult::energy_lost,
                unit::foot);
  method.output({"froude_before", "F1", "Froude number before the jump"},
                &HydraulicJumpResult::froude_before, unit::number);
  method.output({"froude_after", "F2", "Froude number after the jump"},
                &HydraulicJumpResult::froude_after, unit::number);
  method.output({"velocity_before", "V1", "velocity before the jump"},
                &HydraulicJumpResult::velocity_before, unit::foot_per_second);
  method.output({"velocity_after", "V2", "velocity after the jump"},
                &HydraulicJumpResult::velocity_after, unit::foot_per_second);
  method.output({"specific_force", "M", "specific force"}, &HydraulicJumpResult::specific_force,
                unit::cubic_foot);
  method.limit({"F1 above 1.7: below it the jump is a train of waves without a roller",
                "USBR classification of jumps (from memory; confirm)"},
               [](const HydraulicJumpInputs& in) { return froude_before(in) > 1.7; });
  return method;
}

}  // namespace

const Method& hydraulic_jump_method() {
  static const TypedMethod<HydraulicJumpInputs, HydraulicJumpResult> method =
      build_hydraulic_jump();
  return method;
}

}  // namespace proofstone
