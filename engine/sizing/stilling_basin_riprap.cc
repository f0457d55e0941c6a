#include "engine/sizing/stilling_basin_riprap.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedStillingBasinRiprap =
    TypedSizingMethod<StillingBasinRiprapInputs, StillingBasinRiprapResult>;

const char* const em25 =
    "USBR Engineering Monograph 25 (Peterka) sec. 10, Fig. 165 (from memory; confirm)";
const char* const fit_source =
    "fit to the curve of EM 25, as NCHRP Report 568 (2006) prints it (from memory; confirm)";

std::variant<StillingBasinRiprapInputs, NotApplicable> stilling_basin_riprap_from_zone(
    const ZoneSetting& zone) {
  if (zone.turbulence != Turbulence::high) {
    return NotApplicable{"The curve is for rock just below stilling basins."};
  }
  StillingBasinRiprapInputs in;
  in.average_velocity = zone.average_velocity;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_stilling_basin_riprap() {
  MethodDescription about;
  about.id = "stilling-basin-riprap";
  about.title = "Rock below a stilling basin";
  about.purpose =
      "Size of stone just below a stilling basin, from the velocity that leaves it; as a curve of "
      "the bottom velocity or as a fit of the average velocity.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"USBR Engineering Monograph 25, Hydraulic Design of Stilling Basins and Energy "
                    "Dissipators (Peterka)",
                    "sec. 10, Fig. 165", SourceStanding::memory},
                   {"NCHRP Report 568 (2006)", "fit to the curve", SourceStanding::memory}};
  about.cautions = {
      "Most stones must be of the size or larger, on a graded bedding, in a layer of at least 1.5 "
      "times the largest stone.",
      "The curve and the fit differ by 12 to 15 %; say which one was used.",
      "The curve has no term for density: rock of about 165 lb/ft³ is meant."};
  return about;
}

DescribedStillingBasinRiprap build_stilling_basin_riprap() {
  DescribedStillingBasinRiprap method(
      describe_stilling_basin_riprap(), &stilling_basin_riprap, &stilling_basin_riprap_from_zone,
      [](const StillingBasinRiprapResult& result) { return RequiredSize{50, result.d50}; });
  method.choice({"form", "", "which statement of the curve"}, &StillingBasinRiprapInputs::form,
                {{StillingBasinForm::curve, "curve", "2.6·√d, of the bottom velocity"},
                 {StillingBasinForm::fit, "fit", "0.0122·V^2.06, of the average velocity"}});
  method.optional({"bottom_velocity", "Vb", "velocity at the bottom"},
                  &StillingBasinRiprapInputs::bottom_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60), "needed by the curve");
  method.optional({"average_velocity", "V", "average velocity"},
                  &StillingBasinRiprapInputs::average_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60), "needed by the fit");
  method.optional({"specific_gravity", "γs/γw", "specific gravity of the rock, for its limit"},
                  &StillingBasinRiprapInputs::specific_gravity, unit::number,
                  AllowedRange::between(1.5, 4), "its limit is not watched");
  method.output({"d50", "D50", "required size"}, &StillingBasinRiprapResult::d50, unit::foot,
                LengthUse::rock);
  method.limit({"Rock of about 165 lb/ft³ or denser: the curve has no term for density", em25},
               [](const StillingBasinRiprapInputs& in) {
                 return !in.specific_gravity || in.specific_gravity->number() > 2.6 - 1e-9;
               });
  return method;
}

Problem missing_velocity(const char* key, const char* sentence) {
  return {"missing-input", sentence, "", std::string("/") + key, "a velocity"};
}

}  // namespace

Expected<StillingBasinRiprapResult> stilling_basin_riprap(const StillingBasinRiprapInputs& inputs,
                                                          Steps& steps) {
  StillingBasinRiprapResult result;
  if (inputs.form == StillingBasinForm::curve) {
    if (!inputs.bottom_velocity) {
      return missing_velocity("bottom_velocity", "The curve needs the velocity at the bottom.");
    }
    const double Vb = inputs.bottom_velocity->feet_per_second();
    const double d = std::pow(Vb / 2.6, 2);
    result.d50 = Length::inches(d);
    steps.given("Vb", "velocity at the bottom", measure(*inputs.bottom_velocity));
    steps.computed_rock("d", "required size, by the curve", "(Vb/2.6)² (in, ft/s)", result.d50,
                        em25);
    return result;
  }
  if (!inputs.average_velocity) {
    return missing_velocity("average_velocity", "The fit needs the average velocity.");
  }
  const double V = inputs.average_velocity->feet_per_second();
  const double D50 = 0.0122 * std::pow(V, 2.06);
  result.d50 = Length::feet(D50);
  steps.given("V", "average velocity", measure(*inputs.average_velocity));
  steps.computed_rock("D50", "required size, by the fit", "0.0122·V^2.06 (ft, ft/s)", result.d50,
                      fit_source);
  return result;
}

const SizingMethod& stilling_basin_riprap_method() {
  static const DescribedStillingBasinRiprap method = build_stilling_basin_riprap();
  return method;
}

}  // namespace proofstone
