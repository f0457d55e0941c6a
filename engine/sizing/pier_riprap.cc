#include "engine/sizing/pier_riprap.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedPierRiprap = TypedSizingMethod<PierRiprapInputs, PierRiprapResult>;

const char* const dg11_of_pier_riprap = "FHWA HEC-23 Vol. 2 (2009) DG11 (from memory; confirm)";

double shape_factor(PierNose nose) { return nose == PierNose::round ? 1.5 : 1.7; }

std::variant<PierRiprapInputs, NotApplicable> pier_riprap_from_zone(const ZoneSetting& zone) {
  PierRiprapInputs in;
  in.average_velocity = zone.average_velocity;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_pier_riprap() {
  MethodDescription about;
  about.id = "pier-riprap";
  about.title = "Rock round a bridge pier";
  about.purpose = "Median size of rock that protects an existing bridge pier.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"FHWA HEC-23 Vol. 2, 3rd ed. (FHWA-NHI-09-112, 2009)", "Design Guideline 11",
                    SourceStanding::memory}};
  about.cautions = {
      "Rock is a countermeasure at existing piers; a new pier is designed to stand without it.",
      "Location factor K2: 0.9 near the bank in a straight reach, 1.7 in the main current round a "
      "sharp bend; between them it is a matter of judgement, and 1.7 is taken unless another is "
      "chosen.",
      "The velocity of a zone is taken as the average of the approaching flow; where it is that at "
      "the pier itself, choose local_velocity.",
      "V is the velocity already multiplied by K1 and K2."};
  return about;
}

void describe_pier_riprap_inputs(DescribedPierRiprap& method) {
  method.required({"average_velocity", "V_avg", "average velocity of the approaching flow"},
                  &PierRiprapInputs::average_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.optional({"local_velocity", "V_local", "velocity just upstream of the pier"},
                  &PierRiprapInputs::local_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60), "from the average velocity by K2");
  method.choice({"nose", "K1", "shape of the pier's nose"}, &PierRiprapInputs::nose,
                {{PierNose::round, "round", "round nose: 1.5"},
                 {PierNose::square, "square", "square face: 1.7"}});
  method.defaulted({"location_factor", "K2", "factor for the place of the pier in the channel"},
                   &PierRiprapInputs::location_factor, unit::number, AllowedRange::positive_to(3));
  method.defaulted({"specific_gravity", "Ss", "specific gravity of the rock"},
                   &PierRiprapInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
}

DescribedPierRiprap build_pier_riprap() {
  DescribedPierRiprap method(
      describe_pier_riprap(), &pier_riprap, &pier_riprap_from_zone,
      [](const PierRiprapResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::pier});
  describe_pier_riprap_inputs(method);
  method.output({"design_velocity", "V", "velocity to design for"},
                &PierRiprapResult::design_velocity, unit::foot_per_second);
  method.output({"d50", "D50", "required median size"}, &PierRiprapResult::d50, unit::foot,
                LengthUse::rock);
  method.limit({"Location factor from 0.9 to 1.7", dg11_of_pier_riprap},
               [](const PierRiprapInputs& in) {
                 const double K2 = in.location_factor.number();
                 return in.local_velocity.has_value() || (K2 > 0.9 - 1e-9 && K2 < 1.7 + 1e-9);
               });
  return method;
}

Velocity design_velocity(const PierRiprapInputs& in, Steps& steps) {
  const double K1 = shape_factor(in.nose);
  steps.given("K1", in.nose == PierNose::round ? "round nose" : "square face", measure(K1),
              dg11_of_pier_riprap);
  if (in.local_velocity) {
    const Velocity V = K1 * *in.local_velocity;
    steps.given("V_local", "velocity just upstream of the pier", measure(*in.local_velocity));
    steps.computed("V", "velocity to design for", "K1·V_local", measure(V), dg11_of_pier_riprap);
    return V;
  }
  const Velocity V = K1 * in.location_factor.number() * in.average_velocity;
  steps.given("K2", "place of the pier in the channel", measure(in.location_factor),
              dg11_of_pier_riprap);
  steps.given("V_avg", "average velocity of the approaching flow", measure(in.average_velocity));
  steps.computed("V", "velocity to design for", "K1·K2·V_avg", measure(V), dg11_of_pier_riprap);
  return V;
}

}  // namespace

Expected<PierRiprapResult> pier_riprap(const PierRiprapInputs& inputs, Steps& steps) {
  PierRiprapResult result;
  result.design_velocity = design_velocity(inputs, steps);
  const double V = result.design_velocity.feet_per_second();
  const double Ss = inputs.specific_gravity.number();

  const double D50 = 0.692 * V * V / ((Ss - 1) * 2 * g_us);

  result.d50 = Length::feet(D50);
  steps.given("Ss", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.computed_rock("D50", "required median size", "0.692·V²/[(Ss−1)·2g], g = 32.174 ft/s²",
                      result.d50, dg11_of_pier_riprap);
  return result;
}

const SizingMethod& pier_riprap_method() {
  static const DescribedPierRiprap method = build_pier_riprap();
  return method;
}

}  // namespace proofstone
