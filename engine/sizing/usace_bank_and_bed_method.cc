#include <cmath>

#include "engine/sizing/usace_bank_and_bed.h"

namespace proofstone {

namespace {

using Inputs = UsaceBankAndBedInputs;
using Result = UsaceBankAndBedResult;
using Described = TypedSizingMethod<Inputs, Result>;

constexpr double steepest_bank_slope = 1 / 1.5;

std::variant<Inputs, NotApplicable> from_zone(const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The equation is for low turbulence; it is not for rock just below stilling basins, drops "
        "or gates."};
  }
  Inputs in;
  const bool outside = zone.bend_side == BendSide::outside;
  in.attack = outside ? WaterAttack::outside_of_bend : WaterAttack::straight_or_inside;
  in.channel_form = zone.channel_form;
  in.average_velocity = zone.average_velocity;
  in.bend_radius = zone.bend_radius;
  in.top_width = zone.water_top_width;
  in.local_depth = zone.local_depth;
  in.bank_angle = zone.place == ZonePlace::bank ? zone.bank_angle : Angle{};
  in.specific_gravity = zone.rock.specific_gravity;
  in.angularity = zone.rock.angularity;
  if (zone.rock.angle_of_repose) in.angle_of_repose = *zone.rock.angle_of_repose;
  in.channel_slope = zone.energy_slope;
  in.froude_number = zone.froude_number;
  return in;
}

MethodDescription describe() {
  MethodDescription about;
  about.id = "usace-bank-and-bed";
  about.title = "USACE bank and bed equation";
  about.purpose =
      "Size of rock on banks and beds of natural and trapezoidal channels in ordinary flow, from "
      "local velocity and depth; for straight reaches, bends and impinging flow.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"USACE EM 1110-2-1601, Hydraulic Design of Flood Control Channels (1991, Change 1 1994)",
       "eq. 3-3 and para. 3-7", SourceStanding::memory},
      {"WES Streambank Handbook (Biedenharn, Elliott, Watson 1997)",
       "App. A, Examples 1 and 2 (reproduced)", SourceStanding::published},
      {"FHWA HEC-23 Vol. 2 (2009)", "Design Guideline 4: fits of the bend and side-slope curves",
       SourceStanding::memory}};
  about.cautions = {("Do not take bend velocities from the subsections of a one-dimensional "
                     "water-surface profile."),
                    "The bend velocity rises quickly where R/W is below about 3.",
                    ("Raise the safety factor for debris, ice, vandalism, poor velocity data or "
                     "poor control of placing; it is no cover for guessed inputs."),
                    ("Below a bend give distance_below_bend: the bend velocity is held for one "
                     "channel width, then fades. Cv is kept as in the bend, which the manual "
                     "leaves open. A reach counts as straight 5 to 10 widths below."),
                    "Braided flow: take the stage at or just above the tops of the bars."};
  return about;
}

void describe_inputs(Described& method) {
  method.choice(
      {"attack", "", "how the water meets the rock"}, &Inputs::attack,
      {{WaterAttack::straight_or_inside, "straight-or-inside",
        "straight reach or inside of a bend"},
       {WaterAttack::outside_of_bend, "outside-of-bend", "outside of a bend"},
       {WaterAttack::below_concrete_channel, "below-concrete-channel",
        "just downstream of a concrete channel"},
       {WaterAttack::end_of_dike, "end-of-dike", "end of a dike"},
       {WaterAttack::impinging, "impinging", "braided or oblique flow that runs at the bank"}});
  method.choice({"channel_form", "", "which bend curve: natural or trapezoidal channel"},
                &Inputs::channel_form,
                {{ChannelForm::natural, "natural", "natural channel"},
                 {ChannelForm::trapezoidal, "trapezoidal", "trapezoidal channel"}});
  method.required({"average_velocity", "V_AVG",
                   "average velocity of the main channel, at the upstream end of a bend"},
                  &Inputs::average_velocity, unit::foot_per_second, AllowedRange::positive_to(60));
  method.optional({"local_velocity", "V_SS",
                   "depth-averaged velocity at the rock, on a bank 20 % up the slope"},
                  &Inputs::local_velocity, unit::foot_per_second, AllowedRange::positive_to(60),
                  "from the average velocity");
  method.optional({"bend_radius", "R", "centreline radius of the bend"}, &Inputs::bend_radius,
                  unit::foot, AllowedRange::positive_to(1e6), "only needed outside of a bend");
  method.optional({"top_width", "W", "water-surface width of the main channel"}, &Inputs::top_width,
                  unit::foot, AllowedRange::positive_to(1e5), "only needed outside of a bend");
  method.optional({"distance_below_bend", "x",
                   "from the end of the bend down to the rock; the bend velocity fades by 0.1 of "
                   "the average for each width after the first"},
                  &Inputs::distance_below_bend, unit::foot, AllowedRange::between(0, 1e6),
                  "in the bend itself");
  method.required({"local_depth", "d",
                   "water depth at the rock; on a bank 20 % of the slope length up from the toe"},
                  &Inputs::local_depth, unit::foot, AllowedRange::positive_to(300));
  method.required({"bank_angle", "θ", "bank angle from horizontal; 0° on a bed"},
                  &Inputs::bank_angle, unit::degree, AllowedRange::between(0, 90));
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   &Inputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.choice({"angularity", "Cs", "angular rock takes Cs 0.30, rounded rock 0.375"},
                &Inputs::angularity,
                {{Angularity::angular, "angular", "broken faces, sharp edges"},
                 {Angularity::rounded, "rounded", "river cobbles and worn boulders"}});
  method.defaulted({"safety_factor", "Sf", "safety factor on size"}, &Inputs::safety_factor,
                   unit::number, AllowedRange::between(1, 5));
  method.safety_margin("safety_factor", 1);
  method.defaulted({"thickness_coefficient", "CT",
                    "1 for a layer of least thickness; smaller for thicker layers, by Plate B-40"},
                   &Inputs::thickness_coefficient, unit::number, AllowedRange::positive_to(1));
  method.choice({"side_slope_factor", "K1", "which side-slope factor"}, &Inputs::side_slope_factor,
                {{SideSlopeFactor::published_curve, "published-curve",
                  "Plate B-39, which returns the manual's own examples"},
                 {SideSlopeFactor::analytic, "analytic",
                  "eq. 3-4 with the angle of repose; gives larger rock"}});
  method.optional({"side_slope_factor_value", "K1", "side-slope factor read by hand"},
                  &Inputs::side_slope_factor_value, unit::number, AllowedRange::positive_to(1),
                  "by side_slope_factor");
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock, for the analytic K1"},
                   &Inputs::angle_of_repose, unit::degree, AllowedRange::between(20, 60));
  method.choice({"median_from_d30", "", "how D50 follows from D30"}, &Inputs::median_from_d30,
                {{MedianFromD30::size_ratio, "size-ratio", "D30·(D85/D15)^⅓"},
                 {MedianFromD30::rock_manual, "rock-manual", "D30·(D85/D15)^0.32"},
                 {MedianFromD30::hec23_constant, "hec23-constant", "1.20·D30"}});
  method.defaulted({"size_ratio", "D85/D15", "how widely the sizes of the rock are spread"},
                   &Inputs::size_ratio, unit::number, AllowedRange::between(1, 20));
  method.optional({"channel_slope", "S", "slope of the channel"}, &Inputs::channel_slope,
                  unit::rise_per_run, AllowedRange::between(0, 1), "its limit is not watched");
  method.optional({"froude_number", "Fr", "Froude number of the channel"}, &Inputs::froude_number,
                  unit::number, AllowedRange::between(0, 20), "its limit is not watched");
}

void describe_limits(Described& method) {
  method.limit(
      {"Channel slope below 2 %", "WES Streambank Handbook (1997) App. A, p. A-3"},
      [](const Inputs& in) { return !in.channel_slope || in.channel_slope->ratio() < 0.02; });
  method.limit({"Bank not steeper than 1V:1.5H", "WES Streambank Handbook (1997) App. A"},
               [](const Inputs& in) {
                 return std::tan(in.bank_angle.radians()) < steepest_bank_slope + 1e-9;
               });
  method.limit(
      {"Tranquil flow (Froude number below 1)", "WES Streambank Handbook (1997) App. A"},
      [](const Inputs& in) { return !in.froude_number || in.froude_number->number() < 1; });
  method.limit({"Safety factor at least 1.1", "EM 1110-2-1601 para. 3-7 (from memory)"},
               [](const Inputs& in) { return in.safety_factor.number() > 1.1 - 1e-9; });
  method.limit(
      {"D85/D15 of the rock from 1.7 to 5.2, as tested", "EM 1110-2-1601 para. 3-7 (from memory)"},
      [](const Inputs& in) {
        const double ratio = in.size_ratio.number();
        return ratio > 1.7 - 1e-9 && ratio < 5.2 + 1e-9;
      });
}

Described build() {
  Described method(describe(), &usace_bank_and_bed, &from_zone,
                   [](const Result& result) { return RequiredSize{30, result.d30}; });
  method.without_steps(&usace_bank_and_bed);
  describe_inputs(method);
  method.output({"v_ss", "V_SS", "velocity that attacks the rock"}, &Result::v_ss,
                unit::foot_per_second);
  method.output({"cv", "Cv", "coefficient for the vertical distribution of velocity"}, &Result::cv,
                unit::number);
  method.output({"k1", "K1", "side-slope factor"}, &Result::k1, unit::number);
  method.output({"d30", "D30", "required size, 30 % smaller by mass"}, &Result::d30, unit::foot,
                LengthUse::rock);
  method.output({"d50", "D50", "median size that goes with it"}, &Result::d50, unit::foot,
                LengthUse::rock);
  describe_limits(method);
  return method;
}

}  // namespace

const SizingMethod& usace_bank_and_bed_method() {
  static const Described method = build();
  return method;
}

}  // namespace proofstone
