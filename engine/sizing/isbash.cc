#include "engine/sizing/isbash.h"

#include "engine/sizing/bend_velocity.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedIsbash = TypedSizingMethod<IsbashInputs, IsbashResult>;

constexpr double c_low = 1.20;
constexpr double c_high = 0.86;

const char* const sheet = "USACE HDC sheet 712-1 (from memory; confirm)";

Length isbash_size(double V, double C, double specific_gravity) {
  const double delta = specific_gravity - 1;
  const double D50 = V * V / (2 * g_us * C * C * delta);
  return Length::feet(D50);
}

std::variant<IsbashInputs, NotApplicable> isbash_from_zone(const ZoneSetting& zone) {
  IsbashInputs in;
  in.velocity = zone.average_velocity;
  if (zone.bend_side == BendSide::outside) {
    if (!zone.bend_radius) {
      return NotApplicable{
          "On the outside of a bend this equation needs the velocity at the stone, and without the "
          "bend radius it is not known."};
    }
    in.velocity_ratio =
        bend_velocity_ratio(zone.channel_form, *zone.bend_radius, zone.water_top_width);
  }
  in.specific_gravity = zone.rock.specific_gravity;
  in.turbulence = zone.turbulence;
  return in;
}

MethodDescription describe_isbash() {
  MethodDescription about;
  about.id = "isbash";
  about.title = "Isbash equation";
  about.purpose =
      "Size of stone that stays in flowing water, from velocity alone; for low turbulence and for "
      "the high turbulence below stilling basins.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"USACE Hydraulic Design Criteria", "sheet 712-1", SourceStanding::memory},
                   {"NRCS National Engineering Handbook Part 654 (2007)",
                    "Technical Supplement 14C", SourceStanding::memory}};
  about.cautions = {
      "It knows neither depth nor side slope: on a steep bank read it beside a method that does.",
      "The size is that of an equivalent sphere.",
      "On the outside of a bend a zone is given the bank velocity of EM 1110-2-1601, which the "
      "sheet itself does not state."};
  return about;
}

DescribedIsbash build_isbash() {
  DescribedIsbash method(describe_isbash(), &isbash, &isbash_from_zone,
                         [](const IsbashResult& result) { return RequiredSize{50, result.d50}; });
  method.without_steps(&isbash);
  method.required({"velocity", "V", "average velocity, or the velocity at the stone"},
                  &IsbashInputs::velocity, unit::foot_per_second, AllowedRange::positive_to(60));
  method.defaulted({"velocity_ratio", "V_s/V",
                    "velocity at the stone over the velocity given; above 1 outside of a bend"},
                   &IsbashInputs::velocity_ratio, unit::number, AllowedRange::positive_to(5));
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   &IsbashInputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.choice({"turbulence", "C", "how rough the water is"}, &IsbashInputs::turbulence,
                {{Turbulence::low, "low", "ordinary channel flow: C 1.20"},
                 {Turbulence::high, "high", "below stilling basins: C 0.86"}});
  method.output({"coefficient", "C", "Isbash coefficient"}, &IsbashResult::coefficient,
                unit::number);
  method.output({"d50", "D50", "required median size"}, &IsbashResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"d50_low_turbulence", "D50", "with C 1.20"}, &IsbashResult::d50_low_turbulence,
                unit::foot, LengthUse::rock);
  method.output({"d50_high_turbulence", "D50", "with C 0.86"}, &IsbashResult::d50_high_turbulence,
                unit::foot, LengthUse::rock);
  return method;
}

}  // namespace

Expected<IsbashResult> isbash(const IsbashInputs& inputs) {
  const double V = inputs.velocity_ratio.number() * inputs.velocity.feet_per_second();
  const double specific_gravity = inputs.specific_gravity.number();
  const bool low = inputs.turbulence == Turbulence::low;

  IsbashResult result;
  result.coefficient = Dimensionless::number(low ? c_low : c_high);
  result.d50_low_turbulence = isbash_size(V, c_low, specific_gravity);
  result.d50_high_turbulence = isbash_size(V, c_high, specific_gravity);
  result.d50 = low ? result.d50_low_turbulence : result.d50_high_turbulence;
  return result;
}

Expected<IsbashResult> isbash(const IsbashInputs& inputs, Steps& steps) {
  auto computed = isbash(inputs);
  if (!computed) return computed;
  const IsbashResult& result = *computed;
  const bool low = inputs.turbulence == Turbulence::low;
  steps.given("V", "velocity given", measure(inputs.velocity));
  steps.given("V_s/V", "velocity at the stone over it; outside of a bend by its radius and width",
              measure(inputs.velocity_ratio), bend_velocity_source().sentence());
  steps.computed("V_s", "velocity at the stone", "(V_s/V)·V",
                 measure(inputs.velocity_ratio.number() * inputs.velocity));
  steps.given("γs/γw", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.given("C", low ? "coefficient for low turbulence" : "coefficient for high turbulence",
              measure(result.coefficient), sheet);
  steps.computed_rock("D50", "required median size", "V_s²/[2g·C²·(γs−γw)/γw], g = 32.174 ft/s²",
                      result.d50, sheet);
  steps.computed_rock("D50",
                      low ? "note, not used: in high turbulence (C 0.86)"
                          : "note, not used: in low turbulence (C 1.20)",
                      "", low ? result.d50_high_turbulence : result.d50_low_turbulence, sheet);
  return computed;
}

const SizingMethod& isbash_method() {
  static const DescribedIsbash method = build_isbash();
  return method;
}

}  // namespace proofstone
