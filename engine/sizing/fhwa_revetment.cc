#include "engine/sizing/fhwa_revetment.h"

#include "engine/sizing/typed_sizing_method.h"
#include "engine/sizing/usace_bank_and_bed.h"

namespace proofstone {

namespace {

using DescribedFhwaRevetment = TypedSizingMethod<FhwaRevetmentInputs, FhwaRevetmentResult>;

const char* const dg4 = "FHWA HEC-23 Vol. 2 (2009) DG4 (from memory; confirm)";

/// The guideline takes over the manual's equation; its own choices are the fitted side-slope curve
/// and the constant ratio of d50 to d30.
UsaceBankAndBedInputs as_usace(const FhwaRevetmentInputs& in) {
  UsaceBankAndBedInputs usace;
  static_cast<BankAndBedFlow&>(usace) = in;
  usace.side_slope_factor = SideSlopeFactor::published_curve;
  usace.median_from_d30 = MedianFromD30::hec23_constant;
  return usace;
}

std::variant<FhwaRevetmentInputs, NotApplicable> fhwa_revetment_from_zone(const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The guideline is for revetments in ordinary flow, not for rock just below stilling "
        "basins, drops or gates."};
  }
  FhwaRevetmentInputs in;
  take_bank_and_bed_flow(zone, in);
  return in;
}

MethodDescription describe_fhwa_revetment() {
  MethodDescription about;
  about.id = "fhwa-revetment";
  about.title = "FHWA revetment guideline";
  about.purpose =
      "Median size of rock on revetments along channels and bends, and the length to protect; the "
      "USACE equation in the form FHWA gives it.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"FHWA HEC-23 Vol. 2, 3rd ed. (FHWA-NHI-09-112, 2009)", "Design Guideline 4",
                    SourceStanding::memory},
                   {"FHWA HEC-11 (1989)", "sec. 3.6.1: 1.0 W upstream, 1.5 W downstream",
                    SourceStanding::memory}};
  about.cautions = {
      "Choose the class whose median size is not smaller than d50.",
      ("Protect up to the design water level and at least 2 ft more; add waves, superelevation and "
       "ice."),
      "Carry the toe to the depth of scour, or lay enough rock at it to fall into the scour.",
      "Adjust the protected length by what erosion shows in the field; tie the ends into the bank.",
      ("The layer is not thinner than d100 and 1.5·d50, nor than 12 in; half as much again under "
       "water; 6 to 12 in more where debris, ice or waves strike.")};
  return about;
}

DescribedFhwaRevetment build_fhwa_revetment() {
  DescribedFhwaRevetment method(
      describe_fhwa_revetment(), &fhwa_revetment, &fhwa_revetment_from_zone,
      [](const FhwaRevetmentResult& result) { return RequiredSize{50, result.d50}; });
  method.without_steps(&fhwa_revetment);
  describe_bank_and_bed_flow(method);
  method.output({"design_velocity", "V_des", "velocity that attacks the rock"},
                &FhwaRevetmentResult::design_velocity, unit::foot_per_second);
  method.output({"k1", "K1", "side-slope factor"}, &FhwaRevetmentResult::k1, unit::number);
  method.output({"d30", "d30", "size of which 30 % is smaller"}, &FhwaRevetmentResult::d30,
                unit::foot, LengthUse::rock);
  method.output({"d50", "d50", "required median size"}, &FhwaRevetmentResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"upstream_extent", "L_u", "length to protect above the bend, at least"},
                &FhwaRevetmentResult::upstream_extent, unit::foot);
  method.output({"downstream_extent", "L_d", "length to protect below the bend, at least"},
                &FhwaRevetmentResult::downstream_extent, unit::foot);
  method.limit({"Safety factor above 1.0", dg4},
               [](const FhwaRevetmentInputs& in) { return in.safety_factor.number() > 1; });
  return method;
}

}  // namespace

Expected<FhwaRevetmentResult> fhwa_revetment(const FhwaRevetmentInputs& inputs) {
  if (!inputs.top_width) {
    return Problem{"missing-input", "The lengths to protect are multiples of the water's width.",
                   "", "/top_width", "a length"};
  }
  const auto sized = usace_bank_and_bed(as_usace(inputs));
  if (!sized) return sized.problems();
  FhwaRevetmentResult result;
  result.design_velocity = sized->v_ss;
  result.k1 = sized->k1;
  result.d30 = sized->d30;
  result.d50 = sized->d50;
  result.upstream_extent = 1.0 * *inputs.top_width;
  result.downstream_extent = 1.5 * *inputs.top_width;
  return result;
}

Expected<FhwaRevetmentResult> fhwa_revetment(const FhwaRevetmentInputs& inputs, Steps& steps) {
  auto result = fhwa_revetment(inputs);
  if (!result) return result;
  const auto sized = usace_bank_and_bed(as_usace(inputs), steps);
  if (!sized) return sized.problems();
  steps.given("W", "water-surface width of the main channel", measure(*inputs.top_width));
  steps.computed("L_u", "length to protect above the bend's limit, at least", "1.0·W",
                 measure(result->upstream_extent), dg4);
  steps.computed("L_d", "length to protect below the bend's limit, at least", "1.5·W",
                 measure(result->downstream_extent), dg4);
  return result;
}

const SizingMethod& fhwa_revetment_method() {
  static const DescribedFhwaRevetment method = build_fhwa_revetment();
  return method;
}

}  // namespace proofstone
