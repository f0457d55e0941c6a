#include "engine/outfall/scs_outlet_apron.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedScsOutletApron = TypedSizingMethod<ScsOutletApronInputs, ScsOutletApronResult>;

const char* const quoted = "SCS practice as quoted in an engineering forum; not an SCS document";
const char* const epa = "EPA construction-site practice (from memory; confirm)";

std::variant<ScsOutletApronInputs, NotApplicable> scs_outlet_apron_from_zone(
    const ZoneSetting& zone) {
  ScsOutletApronInputs in;
  if (zone.stated.discharge) in.discharge = *zone.stated.discharge;
  in.tailwater = zone.stated.tailwater_depth;
  return in;
}

MethodDescription describe_scs_outlet_apron() {
  MethodDescription about;
  about.id = "scs-outlet-apron";
  about.title = "Outlet apron in the form quoted as SCS practice";
  about.purpose =
      "Rock size, length and width of an apron below a pipe, by short forms that many local "
      "manuals carry on.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"SCS practice as quoted in an engineering forum", "apron and size forms",
       SourceStanding::published},
      {"EPA construction-site practice", "size form 0.02·(Q/Do)^(4/3)/TW", SourceStanding::memory}};
  about.cautions = {"The quotation is second hand: look the form up in the criteria that apply.",
                    "The apron must be level and the channel below it stable by itself."};
  return about;
}

DescribedScsOutletApron build_scs_outlet_apron() {
  DescribedScsOutletApron method(
      describe_scs_outlet_apron(), &scs_outlet_apron, &scs_outlet_apron_from_zone,
      [](const ScsOutletApronResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::outfall});
  method.for_comparison("it is quoted second hand.");
  method.required({"discharge", "Q", "discharge of the pipe"}, &ScsOutletApronInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e5));
  method.required({"diameter", "Do", "diameter of the pipe"}, &ScsOutletApronInputs::diameter,
                  unit::foot, AllowedRange::positive_to(50));
  method.optional({"tailwater", "TW", "depth of the water below the outlet, above its invert"},
                  &ScsOutletApronInputs::tailwater, unit::foot, AllowedRange::positive_to(1000),
                  "unknown: 0.2·Do");
  method.choice(
      {"form", "", "which size form"}, &ScsOutletApronInputs::form,
      {{ScsSizeForm::scs, "scs", "0.016·q^1.33/TW"}, {ScsSizeForm::epa, "epa", "0.02·q^(4/3)/TW"}});
  method.output({"unit_discharge", "q", "discharge for each unit of conduit width"},
                &ScsOutletApronResult::unit_discharge, unit::square_foot_per_second);
  method.output({"tailwater_used", "TW", "tailwater used"}, &ScsOutletApronResult::tailwater_used,
                unit::foot);
  method.output({"d50", "D50", "required median size"}, &ScsOutletApronResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"apron_length", "La", "length of the apron"}, &ScsOutletApronResult::apron_length,
                unit::foot);
  method.output({"end_width", "W", "width at its end"}, &ScsOutletApronResult::end_width,
                unit::foot);
  return method;
}

}  // namespace

Expected<ScsOutletApronResult> scs_outlet_apron(const ScsOutletApronInputs& inputs, Steps& steps) {
  const double Do = inputs.diameter.feet();
  const double q = inputs.discharge.cubic_feet_per_second() / Do;
  const double TW = inputs.tailwater ? inputs.tailwater->feet() : 0.2 * Do;
  const bool low = TW < 0.5 * Do;
  const double La = low ? 1.8 * q / std::sqrt(Do) + 7 * Do : 3 * q / std::sqrt(Do);
  const double W = 3 * Do + (low ? 1.0 : 0.4) * La;
  const bool scs = inputs.form == ScsSizeForm::scs;
  const double D50 = scs ? 0.016 * std::pow(q, 1.33) / TW : 0.02 * std::pow(q, 4.0 / 3.0) / TW;

  ScsOutletApronResult result;
  result.unit_discharge = UnitDischarge::square_feet_per_second(q);
  result.tailwater_used = Length::feet(TW);
  result.d50 = Length::feet(D50);
  result.apron_length = Length::feet(La);
  result.end_width = Length::feet(W);
  steps.given("Q", "discharge", measure(inputs.discharge));
  steps.given("Do", "diameter of the pipe", measure(inputs.diameter));
  steps.computed("q", "discharge for each unit of conduit width", "Q/Do",
                 measure(result.unit_discharge));
  steps.computed("TW", "tailwater", inputs.tailwater ? "as given" : "0.2·Do, because it is unknown",
                 measure(result.tailwater_used), quoted);
  steps.computed_rock("D50", "required median size",
                      scs ? "0.016·q^1.33/TW (ft, ft²/s)" : "0.02·q^(4/3)/TW (ft, ft²/s)",
                      result.d50, scs ? quoted : epa);
  steps.computed("La", low ? "length, tailwater below 0.5·Do" : "length, tailwater 0.5·Do or more",
                 low ? "1.8·q/Do^½ + 7·Do (ft, ft²/s)" : "3·q/Do^½ (ft, ft²/s)",
                 measure(result.apron_length), quoted);
  steps.computed("W", "width at its end", low ? "3·Do + La" : "3·Do + 0.4·La",
                 measure(result.end_width), quoted);
  return result;
}

const SizingMethod& scs_outlet_apron_method() {
  static const DescribedScsOutletApron method = build_scs_outlet_apron();
  return method;
}

}  // namespace proofstone
