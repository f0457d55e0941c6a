#include "engine/outfall/outlet_fletcher_grace.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedOutletFletcherGrace =
    TypedSizingMethod<OutletFletcherGraceInputs, OutletFletcherGraceResult>;

const char* const hec14_of_outlet_fletcher_grace =
    "FHWA HEC-14 3rd ed. (2006) App. D, eq. D.5 (Fletcher and Grace) (from memory; confirm)";

std::variant<OutletFletcherGraceInputs, NotApplicable> outlet_fletcher_grace_from_zone(
    const ZoneSetting& zone) {
  OutletFletcherGraceInputs in;
  take_conduit_water(zone, in);
  return in;
}

MethodDescription describe_outlet_fletcher_grace() {
  MethodDescription about;
  about.id = "outlet-fletcher-grace";
  about.title = "Fletcher and Grace outlet rock";
  about.purpose =
      "Median size of rock below a pipe from discharge, diameter and tailwater in the earlier "
      "print "
      "of the equation; for comparison with the culvert apron.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"FHWA HEC-14 3rd ed. (2006)", "App. D, eq. D.5", SourceStanding::memory}};
  about.cautions = {
      "In SI the unit factor 0.55 divides the discharge; prints that multiply by it give far too "
      "small a size."};
  return about;
}

DescribedOutletFletcherGrace build_outlet_fletcher_grace() {
  DescribedOutletFletcherGrace method(
      describe_outlet_fletcher_grace(), &outlet_fletcher_grace, &outlet_fletcher_grace_from_zone,
      [](const OutletFletcherGraceResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::outfall});
  method.for_comparison("it is the earlier print of the culvert apron equation.");
  method.required({"diameter", "D", "diameter of the pipe"}, &OutletFletcherGraceInputs::diameter,
                  unit::foot, AllowedRange::positive_to(50));
  describe_conduit_water(method);
  method.output({"tailwater_used", "TW", "tailwater used"},
                &OutletFletcherGraceResult::tailwater_used, unit::foot);
  method.output({"d50", "D50", "required median size"}, &OutletFletcherGraceResult::d50, unit::foot,
                LengthUse::rock);
  return method;
}

}  // namespace

Expected<OutletFletcherGraceResult> outlet_fletcher_grace(const OutletFletcherGraceInputs& inputs,
                                                          Steps& steps) {
  steps.given("Q", "discharge", measure(inputs.discharge));
  const auto diameter =
      effective_height(inputs.diameter, inputs, hec14_of_outlet_fletcher_grace, steps);
  if (!diameter) return diameter.problems();

  OutletFletcherGraceResult result;
  result.tailwater_used =
      tailwater_of(inputs.diameter, inputs, hec14_of_outlet_fletcher_grace, steps);
  const double Q = inputs.discharge.cubic_feet_per_second();
  const double D = diameter->feet();
  const double TW = result.tailwater_used.feet();

  const double D50 = 0.020 * D * std::pow(Q / std::pow(D, 2.5), 4.0 / 3.0) * (D / TW);

  result.d50 = Length::feet(D50);
  steps.computed_rock("D50", "required median size", "0.020·D·(Q/D^2.5)^(4/3)·(D/TW) (ft, ft³/s)",
                      result.d50, hec14_of_outlet_fletcher_grace);
  return result;
}

const SizingMethod& outlet_fletcher_grace_method() {
  static const DescribedOutletFletcherGrace method = build_outlet_fletcher_grace();
  return method;
}

}  // namespace proofstone
