#include "engine/scour/clear_water_contraction_scour.h"

#include <algorithm>
#include <cmath>

#include "engine/method/typed_method.h"
#include "engine/scour/competent_velocity.h"

namespace proofstone {

namespace {

const char* const page_of_clear_water_contraction_scour =
    "FHWA HEC-18 (2012) eq. 6.4 (from memory; confirm)";

bool bed_at_rest(const ClearWaterContractionInputs& in) {
  return !in.approach_velocity || !in.approach_depth ||
         *in.approach_velocity <= critical_velocity(*in.approach_depth, in.bed_grain);
}

TypedMethod<ClearWaterContractionInputs, ClearWaterContractionResult>
build_clear_water_contraction_scour() {
  MethodDescription about;
  about.id = "clear-water-contraction-scour";
  about.title = "Contraction scour, clear water";
  about.purpose =
      "Scour where works or a bridge narrow a channel whose flow does not move the bed upstream.";
  about.group = MethodGroup::scour;
  about.sources = {{"FHWA HEC-18, Evaluating Scour at Bridges (2012)", "eqs. 6.1 and 6.4, Laursen",
                    SourceStanding::memory}};
  about.cautions = {"The bed is taken as one grain size all the way down: look at the borings."};
  TypedMethod<ClearWaterContractionInputs, ClearWaterContractionResult> method(
      about, &clear_water_contraction_scour);
  method.required({"contracted_discharge", "Q", "discharge through the contraction"},
                  &ClearWaterContractionInputs::contracted_discharge, unit::cubic_meter_per_second,
                  AllowedRange::positive_to(1e6));
  method.required({"contracted_width", "W", "bottom width in the contraction, less piers"},
                  &ClearWaterContractionInputs::contracted_width, unit::meter,
                  AllowedRange::positive_to(1e5));
  method.required({"existing_depth", "y0", "depth in the contraction before scour"},
                  &ClearWaterContractionInputs::existing_depth, unit::meter,
                  AllowedRange::positive_to(100));
  method.required({"bed_grain", "D50", "median grain size of the bed"},
                  &ClearWaterContractionInputs::bed_grain, unit::meter,
                  AllowedRange::positive_to(2), LengthUse::rock);
  method.optional({"approach_depth", "y1", "depth upstream"},
                  &ClearWaterContractionInputs::approach_depth, unit::meter,
                  AllowedRange::positive_to(100), "the critical velocity is not computed");
  method.optional({"approach_velocity", "V1", "mean velocity upstream"},
                  &ClearWaterContractionInputs::approach_velocity, unit::meter_per_second,
                  AllowedRange::positive_to(20), "not compared with the critical velocity");
  method.output({"depth", "y2", "mean depth in the contraction after scour"},
                &ClearWaterContractionResult::depth, unit::meter);
  method.output({"scour", "d_s", "contraction scour"}, &ClearWaterContractionResult::scour,
                unit::meter);
  method.limit({"Approach velocity of at most the critical velocity: faster water brings bed "
                "material, and the live-bed equation holds",
                page_of_clear_water_contraction_scour},
               &bed_at_rest);
  method.limit(
      {"Grains of at least 0.2 mm: smaller ones cohere", page_of_clear_water_contraction_scour},
      [](const ClearWaterContractionInputs& in) { return in.bed_grain.millimeters() >= 0.2; });
  return method;
}

}  // namespace

Expected<ClearWaterContractionResult> clear_water_contraction_scour(
    const ClearWaterContractionInputs& inputs, Steps& steps) {
  const double Q = inputs.contracted_discharge.cubic_meters_per_second();
  const double W = inputs.contracted_width.meters();
  const double Dm = 1.25 * inputs.bed_grain.meters();
  const double y2 = std::pow(0.025 * Q * Q / (std::pow(Dm, 2.0 / 3) * W * W), 3.0 / 7);

  ClearWaterContractionResult result;
  result.depth = Length::meters(y2);
  result.scour = std::max(Length::meters(0), result.depth - inputs.existing_depth);
  steps.given("Q", "discharge through the contraction", measure(inputs.contracted_discharge));
  steps.given("W", "bottom width in the contraction", measure(inputs.contracted_width));
  steps.given_rock("D50", "median grain size of the bed", inputs.bed_grain);
  steps.computed_rock("Dm", "smallest grain that stays", "1.25·D50", Length::meters(Dm),
                      page_of_clear_water_contraction_scour);
  if (inputs.approach_depth) {
    const Velocity Vc = critical_velocity(*inputs.approach_depth, inputs.bed_grain);
    steps.given("y1", "depth upstream", measure(*inputs.approach_depth));
    steps.computed("Vc", "critical velocity upstream", "11.17·y1^⅙·D50^⅓ (ft, ft/s)", measure(Vc),
                   critical_velocity_source());
  }
  steps.computed("y2", "mean depth after scour", "[0.025·Q²/(Dm^⅔·W²)]^(3/7) (m, m³/s)",
                 measure(result.depth), page_of_clear_water_contraction_scour);
  steps.given("y0", "depth before scour", measure(inputs.existing_depth));
  steps.computed("d_s", "contraction scour", "max(0, y2 − y0)", measure(result.scour),
                 page_of_clear_water_contraction_scour);
  return result;
}

const Method& clear_water_contraction_scour_method() {
  static const TypedMethod<ClearWaterContractionInputs, ClearWaterContractionResult> method =
      build_clear_water_contraction_scour();
  return method;
}

}  // namespace proofstone
