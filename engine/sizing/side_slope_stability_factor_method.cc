#include "engine/hydraulics/water_weight.h"
#include "engine/sizing/hec15_curves.h"
#include "engine/sizing/side_slope_factor.h"
#include "engine/sizing/side_slope_stability_factor.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedSideSlopeStabilityFactor =
    TypedSizingMethod<SideSlopeStabilityFactorInputs, SideSlopeStabilityFactorResult>;

std::variant<SideSlopeStabilityFactorInputs, NotApplicable> side_slope_stability_factor_from_zone(
    const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The shear it takes is that of even flow down a channel; just below stilling basins, drops "
        "or gates it is not known."};
  }
  SideSlopeStabilityFactorInputs in;
  const bool bank = zone.place == ZonePlace::bank;
  const Length depth = bank ? zone.toe_depth : zone.local_depth;
  double bend = 1;
  if (zone.bend_side == BendSide::outside) {
    if (!zone.bend_radius) {
      return NotApplicable{
          "On the outside of a bend the shear rises, and without the bend radius it is not known."};
    }
    bend = hec15::bend_factor(*zone.bend_radius / zone.water_top_width);
  }
  // γ·y·S at the toe, raised in a bend as HEC-15 does.
  in.shear =
      Stress::pounds_per_square_foot(bend * gamma_w * depth.feet() * zone.energy_slope.ratio());
  if (bank) in.bank_angle = zone.bank_angle;
  in.bed_angle = angle_of(zone.energy_slope);
  in.angle_of_repose = angle_of_repose_of(zone.rock);
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_side_slope_stability_factor() {
  MethodDescription about;
  about.id = "side-slope-stability-factor";
  about.title = "Stability factor on a side slope";
  about.purpose =
      "How far a stone on a bank or bed is from moving, or the size that reaches a stability "
      "factor: by shear or by the velocity at the stone, also where the water runs obliquely down "
      "or up the slope.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA HDS-6, River Engineering for Highway Encroachments (FHWA-NHI-01-004, 2001)",
       "eqs. 6.3 to 6.16 and problems of secs. 6.10 and 6.12 (reproduced)",
       SourceStanding::published},
      {"Julien, Erosion and Sedimentation (1995)", "stability on a bank and bed that both slope",
       SourceStanding::memory},
      {"FHWA HEC-15, 3rd ed. (2005)", "shear in bends, where a zone lies outside of one",
       SourceStanding::memory}};
  about.cautions = {
      "Where still water already leaves little more than the factor asked for (tanφ/tanθ), the "
      "size "
      "grows without bound: flatten the bank instead.",
      "Water that heads down the slope lowers the factor; a positive flow angle means down.",
      "The factor divides the moments that hold the stone; it is not the safety factor of another "
      "method, and the two are not put on top of each other.",
      "The coefficient 0.30 of the velocity form is rounded up from 21/8.52²."};
  return about;
}

DescribedSideSlopeStabilityFactor build_side_slope_stability_factor() {
  DescribedSideSlopeStabilityFactor method(
      describe_side_slope_stability_factor(), &side_slope_stability_factor,
      &side_slope_stability_factor_from_zone,
      [](const SideSlopeStabilityFactorResult& result) { return RequiredSize{50, result.d50}; });
  method.choice({"form", "", "which derivation"}, &SideSlopeStabilityFactorInputs::form,
                {{StabilityForm::stevens_simons, "stevens-simons", "HDS-6: a level bed"},
                 {StabilityForm::julien, "julien", "with the slope of the bed"}});
  method.optional({"shear", "τ0", "shear on the slope"}, &SideSlopeStabilityFactorInputs::shear,
                  unit::pound_per_square_foot, AllowedRange::positive_to(200), "from a velocity");
  method.optional({"reference_velocity", "Vr", "velocity one D50 above the bed"},
                  &SideSlopeStabilityFactorInputs::reference_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60), "from shear; a velocity goes before a shear");
  method.optional({"mean_velocity", "V", "depth-averaged velocity"},
                  &SideSlopeStabilityFactorInputs::mean_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60), "from shear; a velocity goes before a shear");
  method.optional({"depth", "y", "water depth"}, &SideSlopeStabilityFactorInputs::depth, unit::foot,
                  AllowedRange::positive_to(300), "only needed with mean_velocity");
  method.required({"bank_angle", "θ", "bank angle from horizontal; 0° on a bed"},
                  &SideSlopeStabilityFactorInputs::bank_angle, unit::degree,
                  AllowedRange::between(0, 60));
  method.defaulted({"flow_angle", "λ",
                    "angle of the flow in the slope from horizontal, positive down the slope"},
                   &SideSlopeStabilityFactorInputs::flow_angle, unit::degree,
                   AllowedRange::between(-90, 90));
  method.defaulted({"bed_angle", "θ0", "slope of the bed downstream, for Julien's form"},
                   &SideSlopeStabilityFactorInputs::bed_angle, unit::degree,
                   AllowedRange::between(0, 20));
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock"},
                   &SideSlopeStabilityFactorInputs::angle_of_repose, unit::degree,
                   AllowedRange::between(20, 60));
  method.defaulted({"specific_gravity", "Ss", "specific gravity of the rock"},
                   &SideSlopeStabilityFactorInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"stability_factor", "SF", "stability factor to be reached"},
                   &SideSlopeStabilityFactorInputs::stability_factor, unit::number,
                   AllowedRange::between(1, 5));
  method.safety_margin("stability_factor", 1);
  method.optional({"trial_size", "D", "a size whose own factor is asked for"},
                  &SideSlopeStabilityFactorInputs::trial_size, unit::foot,
                  AllowedRange::positive_to(30), "the size required is taken", LengthUse::rock);
  method.output({"stability_number", "η",
                 "stability number of the size tried, else of that "
                 "required"},
                &SideSlopeStabilityFactorResult::stability_number, unit::number);
  method.output({"drag_angle", "β", "angle of the stone's path from the line of steepest fall"},
                &SideSlopeStabilityFactorResult::drag_angle, unit::degree);
  method.output({"side_stability_number", "η'", "stability number on the slope"},
                &SideSlopeStabilityFactorResult::side_stability_number, unit::number);
  method.output({"stability_factor", "SF",
                 "stability factor of the size tried, else of that "
                 "required"},
                &SideSlopeStabilityFactorResult::stability_factor, unit::number);
  method.output({"required_number", "η", "largest stability number that reaches the factor"},
                &SideSlopeStabilityFactorResult::required_number, unit::number);
  method.output({"d50", "D50", "required median size"}, &SideSlopeStabilityFactorResult::d50,
                unit::foot, LengthUse::rock);
  method.for_comparison_until_chosen(
      {"stability_factor", "flow_angle"},
      "the factor to be reached and the angle at which the water runs on the slope are not known "
      "of the zone; 1.5, as in the examples of HDS-6, and level flow stand in for them. Choose "
      "stability_factor and flow_angle for the zone to let it govern.");
  return method;
}

}  // namespace

const SizingMethod& side_slope_stability_factor_method() {
  static const DescribedSideSlopeStabilityFactor method = build_side_slope_stability_factor();
  return method;
}

}  // namespace proofstone
