#include "engine/scour/live_bed_contraction_scour.h"

#include <algorithm>
#include <cmath>

#include "engine/method/typed_method.h"
#include "engine/scour/competent_velocity.h"

namespace proofstone {

namespace {

const char* const page_of_live_bed_contraction_scour =
    "FHWA HEC-18 (2012) eq. 6.2 (from memory; confirm)";

/// How the bed material travels decides the exponent of the width.
double exponent_for(double shear_over_fall) {
  if (shear_over_fall < 0.5) return 0.59;
  return shear_over_fall <= 2 ? 0.64 : 0.69;
}

bool bed_moves(const LiveBedContractionInputs& in) {
  return !in.approach_velocity ||
         *in.approach_velocity >= critical_velocity(in.approach_depth, in.bed_grain);
}

TypedMethod<LiveBedContractionInputs, LiveBedContractionResult> build_live_bed_contraction_scour() {
  MethodDescription about;
  about.id = "live-bed-contraction-scour";
  about.title = "Contraction scour, live bed";
  about.purpose =
      "Scour where works or a bridge narrow a channel whose flow already moves the bed upstream.";
  about.group = MethodGroup::scour;
  about.sources = {{"FHWA HEC-18, Evaluating Scour at Bridges (2012)", "eqs. 6.1 and 6.2, Laursen",
                    SourceStanding::memory}};
  about.cautions = {
      "The discharges are those of the channels that move bed material, without the flood plains.",
      "Where the bed is coarse, an armour may hold it: compare with the clear-water equation; the "
      "smaller scour may be taken by the responsible engineer."};
  TypedMethod<LiveBedContractionInputs, LiveBedContractionResult> method(
      about, &live_bed_contraction_scour);
  method.required({"approach_depth", "y1", "depth in the channel upstream"},
                  &LiveBedContractionInputs::approach_depth, unit::foot,
                  AllowedRange::positive_to(200));
  method.required({"approach_discharge", "Q1", "discharge of the channel upstream"},
                  &LiveBedContractionInputs::approach_discharge, unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e7));
  method.required({"contracted_discharge", "Q2", "discharge of the contracted channel"},
                  &LiveBedContractionInputs::contracted_discharge, unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e7));
  method.required({"approach_width", "W1", "bottom width upstream"},
                  &LiveBedContractionInputs::approach_width, unit::foot,
                  AllowedRange::positive_to(1e5));
  method.required({"contracted_width", "W2", "bottom width in the contraction, less piers"},
                  &LiveBedContractionInputs::contracted_width, unit::foot,
                  AllowedRange::positive_to(1e5));
  method.required({"existing_depth", "y0", "depth in the contraction before scour"},
                  &LiveBedContractionInputs::existing_depth, unit::foot,
                  AllowedRange::positive_to(200));
  method.required({"bed_grain", "D50", "median grain size of the bed"},
                  &LiveBedContractionInputs::bed_grain, unit::foot, AllowedRange::positive_to(5),
                  LengthUse::rock);
  method.required({"fall_velocity", "ω", "fall velocity of the median grain"},
                  &LiveBedContractionInputs::fall_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(20));
  method.required({"energy_slope", "S1", "slope of the energy line upstream"},
                  &LiveBedContractionInputs::energy_slope, unit::rise_per_run,
                  AllowedRange::positive_to(1));
  method.optional({"approach_velocity", "V1", "mean velocity upstream"},
                  &LiveBedContractionInputs::approach_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60), "not compared with the critical velocity");
  method.output({"shear_ratio", "V*/ω", "shear velocity over fall velocity"},
                &LiveBedContractionResult::shear_ratio, unit::number);
  method.output({"exponent", "k1", "exponent of the width"}, &LiveBedContractionResult::exponent,
                unit::number);
  method.output({"critical_velocity", "Vc", "velocity at which the bed upstream begins to move"},
                &LiveBedContractionResult::critical_velocity, unit::foot_per_second);
  method.output({"depth", "y2", "mean depth in the contraction after scour"},
                &LiveBedContractionResult::depth, unit::foot);
  method.output({"scour", "d_s", "contraction scour"}, &LiveBedContractionResult::scour,
                unit::foot);
  method.limit({"Approach velocity of at least the critical velocity: slower water brings no bed "
                "material, and the clear-water equation holds",
                page_of_live_bed_contraction_scour},
               &bed_moves);
  return method;
}

}  // namespace

Expected<LiveBedContractionResult> live_bed_contraction_scour(
    const LiveBedContractionInputs& inputs, Steps& steps) {
  const double y1 = inputs.approach_depth.feet();
  const double V_star = std::sqrt(g_us * y1 * inputs.energy_slope.ratio());
  const double ratio = V_star / inputs.fall_velocity.feet_per_second();
  const double k1 = exponent_for(ratio);
  const double discharges = inputs.contracted_discharge / inputs.approach_discharge;
  const double widths = inputs.approach_width / inputs.contracted_width;

  LiveBedContractionResult result;
  result.shear_ratio = Dimensionless::number(ratio);
  result.exponent = Dimensionless::number(k1);
  result.critical_velocity = critical_velocity(inputs.approach_depth, inputs.bed_grain);
  const double y2 = y1 * std::pow(discharges, 6.0 / 7) * std::pow(widths, k1);
  result.depth = Length::feet(y2);
  result.scour = std::max(Length::feet(0), result.depth - inputs.existing_depth);

  steps.given("y1", "depth upstream", measure(inputs.approach_depth));
  steps.given("S1", "slope of the energy line upstream", measure(inputs.energy_slope));
  steps.given("ω", "fall velocity of the median grain", measure(inputs.fall_velocity));
  steps.computed("V*", "shear velocity upstream", "√(g·y1·S1)",
                 measure(Velocity::feet_per_second(V_star)), page_of_live_bed_contraction_scour);
  steps.computed("k1", "exponent of the width", "0.59 where V*/ω < 0.5, 0.64 up to 2, 0.69 above",
                 measure(result.exponent), page_of_live_bed_contraction_scour);
  steps.computed("Q2/Q1", "ratio of the discharges", "", measure(discharges));
  steps.computed("W1/W2", "ratio of the bottom widths", "", measure(widths));
  steps.computed("Vc", "critical velocity upstream", "11.17·y1^⅙·D50^⅓ (ft, ft/s)",
                 measure(result.critical_velocity), critical_velocity_source());
  steps.computed("y2", "mean depth after scour", "y1·(Q2/Q1)^(6/7)·(W1/W2)^k1",
                 measure(result.depth), page_of_live_bed_contraction_scour);
  steps.given("y0", "depth before scour", measure(inputs.existing_depth));
  steps.computed("d_s", "contraction scour", "max(0, y2 − y0)", measure(result.scour),
                 page_of_live_bed_contraction_scour);
  return result;
}

const Method& live_bed_contraction_scour_method() {
  static const TypedMethod<LiveBedContractionInputs, LiveBedContractionResult> method =
      build_live_bed_contraction_scour();
  return method;
}

}  // namespace proofstone
