#include "engine/sizing/fhwa_revetment.h"

#include <cmath>

namespace proofstone {

namespace {

using Inputs = FhwaRevetmentInputs;
using Result = FhwaRevetmentResult;
using Described = TypedSizingMethod<Inputs, Result>;

const char* const dg4 = "FHWA HEC-23 Vol. 2 (2009) DG4 (from memory; confirm)";

/// The guideline takes over the manual's equation; its own choices are the fitted side-slope curve
/// and the constant ratio of d50 to d30.
UsaceBankAndBedInputs as_usace(const Inputs& in) {
  UsaceBankAndBedInputs usace;
  usace.attack = in.attack;
  usace.channel_form = in.channel_form;
  usace.average_velocity = in.average_velocity;
  usace.local_velocity = in.local_velocity;
  usace.bend_radius = in.bend_radius;
  usace.top_width = in.top_width;
  usace.distance_below_bend = in.distance_below_bend;
  usace.local_depth = in.local_depth;
  usace.bank_angle = in.bank_angle;
  usace.specific_gravity = in.specific_gravity;
  usace.angularity = in.angularity;
  usace.safety_factor = in.safety_factor;
  usace.thickness_coefficient = in.thickness_coefficient;
  usace.side_slope_factor = SideSlopeFactor::published_curve;
  usace.median_from_d30 = MedianFromD30::hec23_constant;
  return usace;
}

std::variant<Inputs, NotApplicable> from_zone(const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The guideline is for revetments in ordinary flow, not for rock just below stilling "
        "basins, drops or gates."};
  }
  Inputs in;
  in.attack = zone.bend_side == BendSide::outside ? WaterAttack::outside_of_bend
                                                  : WaterAttack::straight_or_inside;
  in.channel_form = zone.channel_form;
  in.average_velocity = zone.average_velocity;
  in.bend_radius = zone.bend_radius;
  in.top_width = zone.water_top_width;
  in.local_depth = zone.local_depth;
  in.bank_angle = zone.place == ZonePlace::bank ? zone.bank_angle : Angle{};
  in.specific_gravity = zone.rock.specific_gravity;
  in.angularity = zone.rock.angularity;
  in.channel_slope = zone.energy_slope;
  in.froude_number = zone.froude_number;
  return in;
}

MethodDescription describe() {
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

void describe_inputs(Described& method) {
  method.choice({"attack", "", "how the water meets the rock"}, &Inputs::attack,
                {{WaterAttack::straight_or_inside, "straight-or-inside",
                  "straight reach or inside of a bend"},
                 {WaterAttack::outside_of_bend, "outside-of-bend", "outside of a bend"},
                 {WaterAttack::below_concrete_channel, "below-concrete-channel",
                  "just downstream of a concrete channel"},
                 {WaterAttack::end_of_dike, "end-of-dike", "end of a dike"},
                 {WaterAttack::impinging, "impinging", "flow that runs at the bank"}});
  method.choice({"channel_form", "", "which bend curve: natural or trapezoidal channel"},
                &Inputs::channel_form,
                {{ChannelForm::natural, "natural", "natural channel"},
                 {ChannelForm::trapezoidal, "trapezoidal", "trapezoidal channel"}});
  method.required({"average_velocity", "V_avg",
                   "average velocity of the main channel, at the upstream end of a bend"},
                  &Inputs::average_velocity, unit::foot_per_second, AllowedRange::positive_to(60));
  method.optional({"local_velocity", "V_des", "velocity at the point 20 % up the slope"},
                  &Inputs::local_velocity, unit::foot_per_second, AllowedRange::positive_to(60),
                  "from the average velocity");
  method.optional({"bend_radius", "Rc", "centreline radius of the bend"}, &Inputs::bend_radius,
                  unit::foot, AllowedRange::positive_to(1e6), "only needed outside of a bend");
  method.required({"top_width", "W", "water-surface width of the main channel"}, &Inputs::top_width,
                  unit::foot, AllowedRange::positive_to(1e5));
  method.optional({"distance_below_bend", "x", "from the end of the bend down to the rock"},
                  &Inputs::distance_below_bend, unit::foot, AllowedRange::between(0, 1e6),
                  "in the bend itself");
  method.required({"local_depth", "y", "water depth above the stone"}, &Inputs::local_depth,
                  unit::foot, AllowedRange::positive_to(300));
  method.required({"bank_angle", "θ", "bank angle from horizontal; 0° on a bed"},
                  &Inputs::bank_angle, unit::degree, AllowedRange::between(0, 90));
  method.defaulted({"specific_gravity", "Sg", "specific gravity of the rock"},
                   &Inputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.choice({"angularity", "Cs", "angular rock takes Cs 0.30, rounded rock 0.375"},
                &Inputs::angularity,
                {{Angularity::angular, "angular", "broken faces, sharp edges"},
                 {Angularity::rounded, "rounded", "river cobbles and worn boulders"}});
  method.defaulted({"safety_factor", "Sf", "safety factor on size"}, &Inputs::safety_factor,
                   unit::number, AllowedRange::between(1, 5));
  method.safety_margin("safety_factor", 1);
  method.defaulted({"thickness_coefficient", "CT", "1 for a layer of least thickness"},
                   &Inputs::thickness_coefficient, unit::number, AllowedRange::positive_to(1));
  method.optional({"channel_slope", "S", "slope of the channel"}, &Inputs::channel_slope,
                  unit::rise_per_run, AllowedRange::between(0, 1), "its limit is not watched");
  method.optional({"froude_number", "Fr", "Froude number of the channel"}, &Inputs::froude_number,
                  unit::number, AllowedRange::between(0, 20), "its limit is not watched");
}

void describe_limits(Described& method) {
  method.limit({"Channel slope below 2 %", dg4}, [](const Inputs& in) {
    return !in.channel_slope || in.channel_slope->ratio() < 0.02;
  });
  method.limit({"Safety factor above 1.0", dg4},
               [](const Inputs& in) { return in.safety_factor.number() > 1; });
  method.limit({"Bank not steeper than 1V:1.5H", "WES Streambank Handbook (1997) App. A"},
               [](const Inputs& in) { return std::tan(in.bank_angle.radians()) < 1 / 1.5 + 1e-9; });
  method.limit(
      {"Tranquil flow (Froude number below 1)", "WES Streambank Handbook (1997) App. A"},
      [](const Inputs& in) { return !in.froude_number || in.froude_number->number() < 1; });
}

Described build() {
  Described method(describe(), &fhwa_revetment, &from_zone,
                   [](const Result& result) { return RequiredSize{50, result.d50}; });
  describe_inputs(method);
  method.output({"design_velocity", "V_des", "velocity that attacks the rock"},
                &Result::design_velocity, unit::foot_per_second);
  method.output({"k1", "K1", "side-slope factor"}, &Result::k1, unit::number);
  method.output({"d30", "d30", "size of which 30 % is smaller"}, &Result::d30, unit::foot,
                LengthUse::rock);
  method.output({"d50", "d50", "required median size"}, &Result::d50, unit::foot, LengthUse::rock);
  method.output({"upstream_extent", "L_u", "length to protect above the bend, at least"},
                &Result::upstream_extent, unit::foot);
  method.output({"downstream_extent", "L_d", "length to protect below the bend, at least"},
                &Result::downstream_extent, unit::foot);
  describe_limits(method);
  return method;
}

}  // namespace

Expected<FhwaRevetmentResult> fhwa_revetment(const FhwaRevetmentInputs& inputs, Steps& steps) {
  const auto sized = usace_bank_and_bed(as_usace(inputs), steps);
  if (!sized) return sized.problems();
  Result result;
  result.design_velocity = sized->v_ss;
  result.k1 = sized->k1;
  result.d30 = sized->d30;
  result.d50 = sized->d50;
  result.upstream_extent = 1.0 * inputs.top_width;
  result.downstream_extent = 1.5 * inputs.top_width;
  steps.given("W", "water-surface width of the main channel", measure(inputs.top_width));
  steps.computed("L_u", "length to protect above the bend's limit, at least", "1.0·W",
                 measure(result.upstream_extent), dg4);
  steps.computed("L_d", "length to protect below the bend's limit, at least", "1.5·W",
                 measure(result.downstream_extent), dg4);
  return result;
}

const SizingMethod& fhwa_revetment_method() {
  static const Described method = build();
  return method;
}

}  // namespace proofstone
