#include "engine/sizing/typed_sizing_method.h"
#include "engine/sizing/usace_bank_and_bed.h"

namespace proofstone {

namespace {

using DescribedUsaceBankAndBed = TypedSizingMethod<UsaceBankAndBedInputs, UsaceBankAndBedResult>;

std::variant<UsaceBankAndBedInputs, NotApplicable> usace_bank_and_bed_from_zone(
    const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The equation is for low turbulence; it is not for rock just below stilling basins, drops "
        "or gates."};
  }
  UsaceBankAndBedInputs in;
  take_bank_and_bed_flow(zone, in);
  if (zone.rock.angle_of_repose) in.angle_of_repose = *zone.rock.angle_of_repose;
  return in;
}

MethodDescription describe_usace_bank_and_bed() {
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

void describe_usace_bank_and_bed_inputs(DescribedUsaceBankAndBed& method) {
  describe_bank_and_bed_flow(method);
  method.choice({"side_slope_factor", "K1", "which side-slope factor"},
                &UsaceBankAndBedInputs::side_slope_factor,
                {{SideSlopeFactor::published_curve, "published-curve",
                  "Plate B-39, which returns the manual's own examples"},
                 {SideSlopeFactor::analytic, "analytic",
                  "eq. 3-4 with the angle of repose; gives larger rock"}});
  method.optional({"side_slope_factor_value", "K1", "side-slope factor read by hand"},
                  &UsaceBankAndBedInputs::side_slope_factor_value, unit::number,
                  AllowedRange::positive_to(1), "by side_slope_factor");
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock, for the analytic K1"},
                   &UsaceBankAndBedInputs::angle_of_repose, unit::degree,
                   AllowedRange::between(20, 60));
  method.choice({"median_from_d30", "", "how D50 follows from D30"},
                &UsaceBankAndBedInputs::median_from_d30,
                {{MedianFromD30::size_ratio, "size-ratio", "D30·(D85/D15)^⅓"},
                 {MedianFromD30::rock_manual, "rock-manual", "D30·(D85/D15)^0.32"},
                 {MedianFromD30::hec23_constant, "hec23-constant", "1.20·D30"}});
  method.defaulted({"size_ratio", "D85/D15", "how widely the sizes of the rock are spread"},
                   &UsaceBankAndBedInputs::size_ratio, unit::number, AllowedRange::between(1, 20));
}

void describe_limits(DescribedUsaceBankAndBed& method) {
  method.limit(
      {"Safety factor at least 1.1", "EM 1110-2-1601 para. 3-7 (from memory)"},
      [](const UsaceBankAndBedInputs& in) { return in.safety_factor.number() > 1.1 - 1e-9; });
  method.limit(
      {"D85/D15 of the rock from 1.7 to 5.2, as tested", "EM 1110-2-1601 para. 3-7 (from memory)"},
      [](const UsaceBankAndBedInputs& in) {
        const double ratio = in.size_ratio.number();
        return ratio > 1.7 - 1e-9 && ratio < 5.2 + 1e-9;
      });
}

DescribedUsaceBankAndBed build_usace_bank_and_bed() {
  DescribedUsaceBankAndBed method(
      describe_usace_bank_and_bed(), &usace_bank_and_bed, &usace_bank_and_bed_from_zone,
      [](const UsaceBankAndBedResult& result) { return RequiredSize{30, result.d30}; });
  method.without_steps(&usace_bank_and_bed);
  describe_usace_bank_and_bed_inputs(method);
  method.output({"v_ss", "V_SS", "velocity that attacks the rock"}, &UsaceBankAndBedResult::v_ss,
                unit::foot_per_second);
  method.output({"cv", "Cv", "coefficient for the vertical distribution of velocity"},
                &UsaceBankAndBedResult::cv, unit::number);
  method.output({"k1", "K1", "side-slope factor"}, &UsaceBankAndBedResult::k1, unit::number);
  method.output({"d30", "D30", "required size, 30 % smaller by mass"}, &UsaceBankAndBedResult::d30,
                unit::foot, LengthUse::rock);
  method.output({"d50", "D50", "median size that goes with it"}, &UsaceBankAndBedResult::d50,
                unit::foot, LengthUse::rock);
  describe_limits(method);
  return method;
}

}  // namespace

const SizingMethod& usace_bank_and_bed_method() {
  static const DescribedUsaceBankAndBed method = build_usace_bank_and_bed();
  return method;
}

}  // namespace proofstone
