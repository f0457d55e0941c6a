#include "engine/sizing/fhwa_shear_lining.h"
#include "engine/sizing/side_slope_factor.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedFhwaShearLining = TypedSizingMethod<FhwaShearLiningInputs, FhwaShearLiningResult>;

std::variant<FhwaShearLiningInputs, NotApplicable> fhwa_shear_lining_from_zone(
    const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "The shear of this procedure is that of even flow down a channel; it does not hold just "
        "below stilling basins, drops or gates."};
  }
  FhwaShearLiningInputs in;
  const bool bank = zone.place == ZonePlace::bank;
  in.depth = bank ? zone.toe_depth : zone.local_depth;
  in.slope = zone.energy_slope;
  if (bank) in.bank_angle = zone.bank_angle;
  if (zone.bend_side == BendSide::outside) in.bend_radius = zone.bend_radius;
  in.top_width = zone.water_top_width;
  in.specific_gravity = zone.rock.specific_gravity;
  in.angle_of_repose = angle_of_repose_of(zone.rock);
  return in;
}

MethodDescription describe_fhwa_shear_lining() {
  MethodDescription about;
  about.id = "fhwa-shear-lining";
  about.title = "FHWA shear-based rock lining";
  about.purpose =
      "Size of rock that lines a channel of regular section, from the shear of the water on its "
      "bottom and sides; for roadside channels and ditches, mild and steep.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA HEC-15, Design of Roadside Channels with Flexible Linings, 3rd ed. "
       "(FHWA-NHI-05-114, 2005)",
       "chs. 3 and 6, App. D", SourceStanding::memory},
      {"FHWA HEC-22, Urban Drainage Design Manual, 3rd ed. (2009)",
       "sec. 5, Examples 5-1 and 5-2 (shear and bends, reproduced)", SourceStanding::published},
      {"Chow (1959), as quoted by Witheridge (2009)",
       "angle of repose of stones of 100 to 500 mm: very angular 41°, slightly angular 40°, "
       "rounded 37° to 38°",
       SourceStanding::published}};
  about.cautions = {
      "Written for roadside channels of regular section. On a natural river read it beside a "
      "velocity-based method.",
      "Depth is an input: rock of another size changes the roughness and the depth, so repeat the "
      "water level with the rock chosen.",
      "Bend tests of Colorado State University for Reclamation (2012) found 15 to 50 % more bend "
      "shear than Kb gives.",
      "On slopes over 10 % the whole channel takes the size of its sides: give the side slope also "
      "for the bed."};
  return about;
}

void describe_fhwa_shear_lining_inputs(DescribedFhwaShearLining& method) {
  method.required({"depth", "d", "greatest depth of the water beside the rock"},
                  &FhwaShearLiningInputs::depth, unit::foot, AllowedRange::positive_to(300));
  method.required({"slope", "S", "slope of the channel or of the energy line"},
                  &FhwaShearLiningInputs::slope, unit::rise_per_run, AllowedRange::positive_to(1));
  method.required({"bank_angle", "θ", "side slope from horizontal; 0° on a bed"},
                  &FhwaShearLiningInputs::bank_angle, unit::degree, AllowedRange::between(0, 90));
  method.optional({"bend_radius", "Rc", "centreline radius of the bend"},
                  &FhwaShearLiningInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6),
                  "straight reach");
  method.optional({"top_width", "T", "water-surface width"}, &FhwaShearLiningInputs::top_width,
                  unit::foot, AllowedRange::positive_to(1e5), "only needed in a bend");
  method.optional({"bottom_width", "B", "bottom width"}, &FhwaShearLiningInputs::bottom_width,
                  unit::foot, AllowedRange::positive_to(1e5), "only needed in a bend read by Rc/B");
  method.choice({"bend_basis", "", "what the bend radius is divided by"},
                &FhwaShearLiningInputs::bend_basis,
                {{BendBasis::top_width, "top-width", "Rc/T, HEC-15 3rd ed.; the safe side"},
                 {BendBasis::bottom_width, "bottom-width", "Rc/B, as HEC-22 enters the curve"}});
  method.defaulted({"specific_gravity", "SG", "specific gravity of the rock"},
                   &FhwaShearLiningInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock"},
                   &FhwaShearLiningInputs::angle_of_repose, unit::degree,
                   AllowedRange::between(20, 60));
  method.optional({"trial_size", "D50", "a size to try"}, &FhwaShearLiningInputs::trial_size,
                  unit::foot, AllowedRange::positive_to(30), "the size found for this place",
                  LengthUse::rock);
}

void describe_fhwa_shear_lining_outputs(DescribedFhwaShearLining& method) {
  method.output({"shear_bottom", "τb", "greatest shear on the bottom"},
                &FhwaShearLiningResult::shear_bottom, unit::pound_per_square_foot);
  method.output({"shear_side", "τs", "greatest shear on the side"},
                &FhwaShearLiningResult::shear_side, unit::pound_per_square_foot);
  method.output({"shear_permissible", "τp", "permissible shear at the size tried"},
                &FhwaShearLiningResult::shear_permissible, unit::pound_per_square_foot);
  method.output({"bend_factor", "Kb", "bend factor on shear"}, &FhwaShearLiningResult::bend_factor,
                unit::number);
  method.output({"side_shear", "K1", "side shear over bottom shear"},
                &FhwaShearLiningResult::side_shear, unit::number);
  method.output({"side_stability", "K2", "stability on the side over that on the bottom"},
                &FhwaShearLiningResult::side_stability, unit::number);
  method.output({"particle_reynolds", "Re", "particle Reynolds number at the size tried"},
                &FhwaShearLiningResult::particle_reynolds, unit::number);
  method.output({"shields", "F*", "Shields parameter at the size tried"},
                &FhwaShearLiningResult::shields, unit::number);
  method.output({"safety_factor", "SF", "safety factor at the size tried"},
                &FhwaShearLiningResult::safety_factor, unit::number);
  method.output({"steep_factor", "Δ",
                 "steep-slope factor at the size tried; 0 where no balance "
                 "exists"},
                &FhwaShearLiningResult::steep_factor, unit::number);
  method.output({"required_at_trial", "D50", "size asked for at the size tried"},
                &FhwaShearLiningResult::required_at_trial, unit::foot, LengthUse::rock);
  method.output({"d50_bottom", "D50", "size for the bottom"}, &FhwaShearLiningResult::d50_bottom,
                unit::foot, LengthUse::rock);
  method.output({"d50_side", "D50", "size for the side"}, &FhwaShearLiningResult::d50_side,
                unit::foot, LengthUse::rock);
  method.output({"d50", "D50", "size for this place"}, &FhwaShearLiningResult::d50, unit::foot,
                LengthUse::rock);
}

void describe_limits(DescribedFhwaShearLining& method) {
  method.limit({"Rock from 15 to 550 mm (0.6 to 22 in)", "FHWA HEC-15 3rd ed. ch. 6"},
               [](const FhwaShearLiningInputs& in) {
                 const auto result = fhwa_shear_lining(in);
                 return result && result->d50.millimeters() >= 15 &&
                        result->d50.millimeters() <= 550;
               });
  method.limit(
      {"Every size above the one found is enough too; on a steep side the steep form can refuse "
       "larger rock again, because it asks more safety of it",
       "computed from FHWA HEC-15 3rd ed. eq. 6.11"},
      [](const FhwaShearLiningInputs& in) {
        Steps unread;
        const auto result = fhwa_shear_lining(in, unread);
        return result && !result->fails_again_at;
      });
}

DescribedFhwaShearLining build_fhwa_shear_lining() {
  DescribedFhwaShearLining method(
      describe_fhwa_shear_lining(), &fhwa_shear_lining, &fhwa_shear_lining_from_zone,
      [](const FhwaShearLiningResult& result) { return RequiredSize{50, result.d50}; });
  method.without_steps(&fhwa_shear_lining);
  describe_fhwa_shear_lining_inputs(method);
  describe_fhwa_shear_lining_outputs(method);
  describe_limits(method);
  return method;
}

}  // namespace

const SizingMethod& fhwa_shear_lining_method() {
  static const DescribedFhwaShearLining method = build_fhwa_shear_lining();
  return method;
}

}  // namespace proofstone
