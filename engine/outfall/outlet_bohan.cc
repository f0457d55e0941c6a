#include "engine/outfall/outlet_bohan.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedOutletBohan = TypedSizingMethod<OutletBohanInputs, OutletBohanResult>;

const char* const hec14_of_outlet_bohan =
    "FHWA HEC-14 3rd ed. (2006) App. D, eq. D.4 (Bohan) (from memory; confirm)";

bool is_low(const OutletBohanInputs& in) {
  return !in.tailwater || *in.tailwater / in.diameter < 0.5;
}

std::variant<OutletBohanInputs, NotApplicable> outlet_bohan_from_zone(const ZoneSetting& zone) {
  OutletBohanInputs in;
  if (zone.stated.velocity) in.velocity = *zone.stated.velocity;
  in.tailwater = zone.stated.tailwater_depth;
  return in;
}

MethodDescription describe_outlet_bohan() {
  MethodDescription about;
  about.id = "outlet-bohan";
  about.title = "Bohan outlet rock";
  about.purpose =
      "Median size of rock below a pipe from the Froude number at the outlet, by low or high "
      "tailwater; for comparison.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA HEC-14 3rd ed. (2006)", "App. D: definition of Fro", SourceStanding::published},
      {"FHWA HEC-14 3rd ed. (2006)", "App. D, eq. D.4", SourceStanding::memory}};
  about.cautions = {
      "The form jumps where the tailwater passes half the diameter: try both sides of it.",
      "It does not know the density of the rock."};
  return about;
}

DescribedOutletBohan build_outlet_bohan() {
  DescribedOutletBohan method(
      describe_outlet_bohan(), &outlet_bohan, &outlet_bohan_from_zone,
      [](const OutletBohanResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::outfall});
  method.for_comparison(
      "it does not know the density of the rock, and jumps at half a diameter of tailwater.");
  method.required({"velocity", "Vo", "velocity at the outlet"}, &OutletBohanInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60));
  method.required({"diameter", "D", "diameter of the pipe"}, &OutletBohanInputs::diameter,
                  unit::foot, AllowedRange::positive_to(50));
  method.optional({"tailwater", "TW", "depth of the water below the outlet"},
                  &OutletBohanInputs::tailwater, unit::foot, AllowedRange::between(0, 1000),
                  "unknown: low");
  method.output({"froude_number", "Fro", "Froude number at the outlet, by the diameter"},
                &OutletBohanResult::froude_number, unit::number);
  method.output({"d50", "D50", "required median size"}, &OutletBohanResult::d50, unit::foot,
                LengthUse::rock);
  return method;
}

}  // namespace

Expected<OutletBohanResult> outlet_bohan(const OutletBohanInputs& inputs, Steps& steps) {
  const double D = inputs.diameter.feet();
  const double Fro = inputs.velocity.feet_per_second() / std::sqrt(g_us * D);
  const bool low = is_low(inputs);
  const double D50 = low ? 0.25 * D * Fro : D * (0.25 * Fro - 0.15);
  if (!(D50 > 0)) {
    return Problem{"no-size",
                   "At a Froude number of 0.6 or less the high-tailwater form gives no size.", "",
                   "/velocity", "a Froude number Vo/√(g·D) above 0.6"};
  }

  OutletBohanResult result;
  result.froude_number = Dimensionless::number(Fro);
  result.d50 = Length::feet(D50);
  steps.given("Vo", "velocity at the outlet", measure(inputs.velocity));
  steps.given("D", "diameter of the pipe", measure(inputs.diameter));
  if (inputs.tailwater) steps.given("TW", "tailwater", measure(*inputs.tailwater));
  steps.computed("Fro", "Froude number at the outlet", "Vo/√(g·D)", measure(result.froude_number),
                 hec14_of_outlet_bohan);
  steps.computed_rock(
      "D50", low ? "tailwater below half the diameter, or unknown" : "tailwater above it",
      low ? "0.25·D·Fro" : "D·(0.25·Fro − 0.15)", result.d50, hec14_of_outlet_bohan);
  return result;
}

const SizingMethod& outlet_bohan_method() {
  static const DescribedOutletBohan method = build_outlet_bohan();
  return method;
}

}  // namespace proofstone
