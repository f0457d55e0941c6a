#include "engine/outfall/outlet_velocity.h"
#include "engine/sizing/typed_sizing_method.h"

#include <algorithm>

namespace proofstone {

namespace {

using DescribedOutletVelocity = TypedSizingMethod<OutletVelocityInputs, OutletVelocityResult>;

const char* const berry = "FHWA HEC-14 3rd ed. (2006) App. D, eq. D.2 (Berry)";
const char* const searcy =
    "FHWA HEC-14 3rd ed. (2006) App. D, eq. D.3 (Searcy) (from memory; confirm)";

std::variant<OutletVelocityInputs, NotApplicable> outlet_velocity_from_zone(
    const ZoneSetting& zone) {
  OutletVelocityInputs in;
  if (zone.stated.velocity) in.velocity = *zone.stated.velocity;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_outlet_velocity() {
  MethodDescription about;
  about.id = "outlet-velocity";
  about.title = "Outlet rock from velocity";
  about.purpose =
      "Median size of rock below an outlet by two forms that use the velocity alone; for "
      "comparison "
      "with the forms that know the tailwater.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA HEC-14 3rd ed. (2006)", "App. D, eq. D.2: constant", SourceStanding::published},
      {"FHWA HEC-14 3rd ed. (2006)", "App. D, eq. D.3", SourceStanding::memory}};
  about.cautions = {"Neither form knows the depth or the tailwater."};
  return about;
}

DescribedOutletVelocity build_outlet_velocity() {
  DescribedOutletVelocity method(
      describe_outlet_velocity(), &outlet_velocity, &outlet_velocity_from_zone,
      [](const OutletVelocityResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::outfall});
  method.for_comparison("it knows neither depth nor tailwater.");
  method.required({"velocity", "V", "velocity at the outlet"}, &OutletVelocityInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60));
  method.defaulted({"specific_gravity", "S", "specific gravity of the rock"},
                   &OutletVelocityInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.output({"d50_berry", "D50", "by Berry"}, &OutletVelocityResult::d50_berry, unit::foot,
                LengthUse::rock);
  method.output({"d50_searcy", "D50", "by Searcy"}, &OutletVelocityResult::d50_searcy, unit::foot,
                LengthUse::rock);
  method.output({"d50", "D50", "the larger of both"}, &OutletVelocityResult::d50, unit::foot,
                LengthUse::rock);
  return method;
}

}  // namespace

Expected<OutletVelocityResult> outlet_velocity(const OutletVelocityInputs& inputs, Steps& steps) {
  const double V = inputs.velocity.feet_per_second();
  const double S = inputs.specific_gravity.number();

  OutletVelocityResult result;
  result.d50_berry = Length::feet(0.0126 * V * V);
  result.d50_searcy = Length::feet(0.692 / (S - 1) * V * V / (2 * g_us));
  result.d50 = std::max(result.d50_berry, result.d50_searcy);
  steps.given("V", "velocity at the outlet", measure(inputs.velocity));
  steps.given("S", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.computed_rock("D50", "by Berry", "0.0126·V² (ft, ft/s)", result.d50_berry, berry);
  steps.computed_rock("D50", "by Searcy", "0.692/(S − 1)·V²/2g, g = 32.174 ft/s²",
                      result.d50_searcy, searcy);
  steps.computed_rock("D50", "the larger of both", "", result.d50);
  return result;
}

const SizingMethod& outlet_velocity_method() {
  static const DescribedOutletVelocity method = build_outlet_velocity();
  return method;
}

}  // namespace proofstone
