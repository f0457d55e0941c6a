#include "engine/sizing/tractive_force.h"

#include <cmath>

#include "engine/hydraulics/water_weight.h"
#include "engine/sizing/side_slope_factor.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedTractiveForce = TypedSizingMethod<TractiveForceInputs, TractiveForceResult>;

constexpr double least_printed_z = 1.5;
constexpr double largest_printed_z = 3;

const char* const lane = "Lane (1955), tractive force in canals (from memory; confirm)";
const char* const ts14c = "NRCS NEH 654 TS14C (2007), far western states (from memory; confirm)";

struct PrintedSideFactor {
  double z;
  double k;
};
constexpr PrintedSideFactor printed_side_factors[] = {
    {1.5, 0.52}, {1.75, 0.63}, {2, 0.72}, {2.5, 0.80}, {3, 0.87}};

bool is_lane(const TractiveForceInputs& in) { return in.form == TractiveForm::lane; }
bool on_bank(const TractiveForceInputs& in) { return in.bank_angle > Angle{}; }

std::optional<double> r_over_w(const TractiveForceInputs& in) {
  if (!in.bend_radius || !in.top_width) return std::nullopt;
  return *in.bend_radius / *in.top_width;
}

std::variant<TractiveForceInputs, NotApplicable> tractive_force_from_zone(const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The shear of this method is that of even flow down a channel; it does not hold just below "
        "stilling basins, drops or gates."};
  }
  TractiveForceInputs in;
  const bool bank = zone.place == ZonePlace::bank;
  in.depth = bank ? zone.toe_depth : zone.local_depth;
  in.slope = zone.energy_slope;
  if (bank) in.bank_angle = zone.bank_angle;
  in.angle_of_repose = angle_of_repose_of(zone.rock);
  if (zone.bend_side != BendSide::straight) in.bend_radius = zone.bend_radius;
  in.top_width = zone.water_top_width;
  return in;
}

MethodDescription describe_tractive_force() {
  MethodDescription about;
  about.id = "tractive-force";
  about.title = "Tractive force method";
  about.purpose =
      "Size of which 75 % is smaller that stays under the shear of the water, for channels in "
      "coarse material without cohesion.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"Lane, Design of stable channels, Trans. ASCE 120 (1955)",
       "allowable tractive force 0.4·D75", SourceStanding::memory},
      {"NRCS National Engineering Handbook Part 654 (2007)",
       "Technical Supplement 14C, Fig. 8: far western states", SourceStanding::memory}};
  about.cautions = {
      "Neither form has a term for the density of the rock: rock of ordinary density is meant.",
      "Made for channels in their own coarse material; the far-western form asks for 1.4 times "
      "what Lane's does on a straight bed.",
      "Lane's form has no factor for bends."};
  return about;
}

DescribedTractiveForce build_tractive_force() {
  DescribedTractiveForce method(
      describe_tractive_force(), &tractive_force, &tractive_force_from_zone,
      [](const TractiveForceResult& result) { return RequiredSize{75, result.d75}; });
  method.choice({"form", "", "which published form"}, &TractiveForceInputs::form,
                {{TractiveForm::lane, "lane", "allowable shear 0.4·D75"},
                 {TractiveForm::far_western, "far-western", "3.5/(C·K)·γw·d·S"}});
  method.required({"depth", "d", "water depth; on a bank at its toe"}, &TractiveForceInputs::depth,
                  unit::foot, AllowedRange::positive_to(300));
  method.required({"slope", "S", "slope of the channel"}, &TractiveForceInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.required({"bank_angle", "θ", "bank angle from horizontal; 0° on a bed"},
                  &TractiveForceInputs::bank_angle, unit::degree, AllowedRange::between(0, 90));
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock, for Lane's K"},
                   &TractiveForceInputs::angle_of_repose, unit::degree,
                   AllowedRange::between(20, 60));
  method.optional({"bend_radius", "R", "centreline radius of the bend"},
                  &TractiveForceInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6),
                  "a straight reach");
  method.optional({"top_width", "W", "water-surface width"}, &TractiveForceInputs::top_width,
                  unit::foot, AllowedRange::positive_to(1e5), "only needed in a bend");
  method.output({"bed_shear", "τ", "shear on the bed"}, &TractiveForceResult::bed_shear,
                unit::pound_per_square_foot);
  method.output({"shear", "τs", "shear on the rock"}, &TractiveForceResult::shear,
                unit::pound_per_square_foot);
  method.output({"k", "K", "side-slope factor"}, &TractiveForceResult::k, unit::number);
  method.output({"bend", "C", "bend factor"}, &TractiveForceResult::bend, unit::number);
  method.output({"d75", "D75", "required size, 75 % smaller"}, &TractiveForceResult::d75,
                unit::foot, LengthUse::rock);
  method.limit({"Bank from 1V:1.5H to 1V:3H, or a bed, in the far-western form", ts14c},
               [](const TractiveForceInputs& in) {
                 if (is_lane(in) || !on_bank(in)) return true;
                 const double z = 1 / std::tan(in.bank_angle.radians());
                 return z > least_printed_z - 1e-9 && z < largest_printed_z + 1e-9;
               });
  method.limit({"Bend with R/W of at least 4 in the far-western form", ts14c},
               [](const TractiveForceInputs& in) {
                 const auto ratio = r_over_w(in);
                 return is_lane(in) || !ratio || *ratio > 4 - 1e-9;
               });
  method.limit({"Straight reach in Lane's form", lane},
               [](const TractiveForceInputs& in) { return !is_lane(in) || !in.bend_radius; });
  method.for_comparison_until_chosen(
      {"form"},
      "it was made for channels in their own coarse material, and its two published forms differ. "
      "Choose form for the zone to let it govern.");
  return method;
}

Expected<double> side_factor(const TractiveForceInputs& in) {
  if (!on_bank(in)) return 1.0;
  if (!is_lane(in)) return far_western_side_factor(in.bank_angle).number();
  const auto k = side_slope_factor_analytic(in.bank_angle, in.angle_of_repose);
  if (k) return *k;
  return Problem{"bank-too-steep",
                 "The bank is as steep as the rock's angle of repose or steeper; loose rock does "
                 "not stay on it.",
                 "", "/bank_angle", "a bank flatter than angle_of_repose"};
}

}  // namespace

Dimensionless far_western_bend_factor(std::optional<double> r_over_w) {
  if (!r_over_w || *r_over_w > 12) return Dimensionless::number(1.0);
  if (*r_over_w > 9) return Dimensionless::number(0.90);
  return Dimensionless::number(*r_over_w > 6 ? 0.75 : 0.60);
}

Dimensionless far_western_side_factor(Angle bank) {
  if (!(bank > Angle{})) return Dimensionless::number(1);
  const double z = 1 / std::tan(bank.radians());
  if (z > largest_printed_z) {
    return Dimensionless::number(side_slope_factor_analytic(bank, Angle::degrees(40)).value_or(1));
  }
  PrintedSideFactor low = printed_side_factors[0];
  for (const PrintedSideFactor& high : printed_side_factors) {
    if (z <= high.z) {
      const double share = high.z > low.z ? (z - low.z) / (high.z - low.z) : 1;
      return Dimensionless::number(low.k + std::fmax(share, 0) * (high.k - low.k));
    }
    low = high;
  }
  return Dimensionless::number(low.k);
}

Expected<TractiveForceResult> tractive_force(const TractiveForceInputs& inputs, Steps& steps) {
  if (inputs.bend_radius && !inputs.top_width) {
    return Problem{"missing-input", "In a bend the top width is needed.", "", "/top_width",
                   "a length"};
  }
  const auto side = side_factor(inputs);
  if (!side) return side.problems();
  const double K = *side;
  const double d = inputs.depth.feet();
  const double S = inputs.slope.ratio();
  const double tau = gamma_w * d * S;

  TractiveForceResult result;
  result.k = Dimensionless::number(K);
  result.bed_shear = Stress::pounds_per_square_foot(tau);
  steps.given("d", "water depth", measure(inputs.depth));
  steps.given("S", "slope of the channel", measure(inputs.slope));
  steps.computed("τ", "shear on the bed", "γw·d·S, γw = 62.4 lb/ft³", measure(result.bed_shear));
  steps.given("θ", "bank angle from horizontal", measure(inputs.bank_angle));
  if (is_lane(inputs)) {
    const double tau_s = on_bank(inputs) ? 0.75 * tau : tau;
    const double D75 = tau_s / (0.4 * K);
    result.shear = Stress::pounds_per_square_foot(tau_s);
    result.bend = Dimensionless::number(1);
    result.d75 = Length::inches(D75);
    steps.computed("τs", "shear on the rock", on_bank(inputs) ? "0.75·τ on a bank" : "τ",
                   measure(result.shear), lane);
    steps.computed("K", "side-slope factor", "√(1 − sin²θ/sin²φ), 1 on a bed", measure(result.k),
                   lane);
    steps.computed_rock("D75", "required size, 75 % smaller", "τs/(0.4·K) (in, lb/ft²)", result.d75,
                        lane);
    return result;
  }
  result.bend = far_western_bend_factor(r_over_w(inputs));
  const double C = result.bend.number();
  const double D75 = 3.5 / (C * K) * gamma_w * d * S;
  result.shear = result.bed_shear;
  result.d75 = Length::inches(D75);
  steps.computed("K", "side-slope factor", "by the printed table, 1 on a bed", measure(result.k),
                 ts14c);
  steps.computed("C", "bend factor", "by R/W in the printed table, 1 on a straight reach",
                 measure(result.bend), ts14c);
  steps.computed_rock("D75", "required size, 75 % smaller", "3.5/(C·K)·γw·d·S (in, lb/ft³, ft)",
                      result.d75, ts14c);
  return result;
}

const SizingMethod& tractive_force_method() {
  static const DescribedTractiveForce method = build_tractive_force();
  return method;
}

}  // namespace proofstone
