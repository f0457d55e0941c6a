#include "engine/sizing/pilarczyk.h"
#include "engine/sizing/side_slope_factor.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedPilarczyk = TypedSizingMethod<PilarczykInputs, PilarczykResult>;

const char* const rock_manual_of_pilarczyk_method = "CIRIA C683 (2007) (from memory; confirm)";

std::variant<PilarczykInputs, NotApplicable> pilarczyk_from_zone(const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{
        "For turbulence such as below stilling basins the manual leaves the turbulence factor open "
        "(above 2); it must be measured or modelled."};
  }
  PilarczykInputs in;
  in.velocity = zone.average_velocity;
  in.depth = zone.local_depth;
  in.specific_gravity = zone.rock.specific_gravity;
  in.turbulence_factor = Dimensionless::number(zone.bend_side == BendSide::outside ? 1.5 : 1.0);
  if (zone.place == ZonePlace::bank) in.bank_angle = zone.bank_angle;
  in.bed_angle = angle_of(zone.energy_slope);
  in.angle_of_repose = angle_of_repose_of(zone.rock);
  return in;
}

MethodDescription describe_pilarczyk() {
  MethodDescription about;
  about.id = "pilarczyk";
  about.title = "Pilarczyk's stability formula";
  about.purpose =
      "Size of loose rock, gabions and mattresses under current, with the velocity profile, "
      "turbulence and slopes stated one by one; the practice of the Low Countries.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"CIRIA C683, The Rock Manual, 2nd ed. (2007)", "eq. 5.219 (Pilarczyk 1995)",
                    SourceStanding::memory}};
  about.cautions = {
      "It holds no safety factor: put it on the velocity or the turbulence.",
      "Turbulence factor k_t²: 1.0 in ordinary river flow, 1.5 in outer bends and uneven flow, 2.0 "
      "in sharp outer bends, more where turbulence is special.",
      "The size is a cube's; the median size by sieve is 1/0.84 times larger.",
      "Edges of the protection need twice what its middle does."};
  return about;
}

void describe_pilarczyk_inputs(DescribedPilarczyk& method) {
  method.required({"velocity", "U", "depth-averaged velocity"}, &PilarczykInputs::velocity,
                  unit::meter_per_second, AllowedRange::positive_to(20));
  method.required({"depth", "h", "water depth"}, &PilarczykInputs::depth, unit::meter,
                  AllowedRange::positive_to(100));
  method.defaulted({"specific_gravity", "Δ+1", "specific gravity of the rock"},
                   &PilarczykInputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.choice(
      {"protection", "φ_sc", "kind of protection"}, &PilarczykInputs::protection,
      {{ProtectionKind::exposed_edge, "exposed-edge", "edge of loose rock: 1.5"},
       {ProtectionKind::gabion_edge, "gabion-edge", "edge of gabions: 1.0"},
       {ProtectionKind::continuous, "continuous", "continuous, at least two stones thick: 0.75"},
       {ProtectionKind::interlocked, "interlocked", "interlocked blocks: 0.5"}});
  method.choice({"armour", "ψ_cr", "what resists"}, &PilarczykInputs::armour,
                {{ArmourKind::rock, "rock", "loose rock: 0.035"},
                 {ArmourKind::gabion, "gabion", "box gabion or mattress: 0.070"}});
  method.choice({"profile", "k_h", "velocity profile"}, &PilarczykInputs::profile,
                {{VelocityProfile::developed, "developed", "logarithmic, fully developed"},
                 {VelocityProfile::not_developed, "not-developed", "not fully developed"}});
  method.defaulted({"roughness_stones", "ks/Dn50", "roughness of the bed in stones"},
                   &PilarczykInputs::roughness_stones, unit::number, AllowedRange::between(1, 3));
  method.defaulted({"turbulence_factor", "k_t²", "turbulence factor"},
                   &PilarczykInputs::turbulence_factor, unit::number, AllowedRange::between(1, 6));
  method.defaulted({"bank_angle", "α", "bank angle from horizontal; 0° on a bed"},
                   &PilarczykInputs::bank_angle, unit::degree, AllowedRange::between(0, 90));
  method.defaulted({"bed_angle", "β", "slope of the bed in the direction of flow"},
                   &PilarczykInputs::bed_angle, unit::degree, AllowedRange::between(0, 60));
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock"},
                   &PilarczykInputs::angle_of_repose, unit::degree, AllowedRange::between(20, 60));
}

DescribedPilarczyk build_pilarczyk() {
  DescribedPilarczyk method(
      describe_pilarczyk(), &pilarczyk, &pilarczyk_from_zone,
      [](const PilarczykResult& result) { return RequiredSize{50, result.d50}; });
  method.without_steps(&pilarczyk);
  describe_pilarczyk_inputs(method);
  method.output({"depth_factor", "k_h", "depth factor"}, &PilarczykResult::depth_factor,
                unit::number);
  method.output({"slope_factor", "k_sl", "slope factor"}, &PilarczykResult::slope_factor,
                unit::number);
  method.output({"dn50", "Dn50", "required size, side of a cube of the median mass"},
                &PilarczykResult::dn50, unit::meter, LengthUse::rock);
  method.output({"d50", "D50", "required median size by sieve"}, &PilarczykResult::d50, unit::meter,
                LengthUse::rock);
  method.limit(
      {"Turbulence factor up to 2; more is a special case", rock_manual_of_pilarczyk_method},
      [](const PilarczykInputs& in) { return in.turbulence_factor.number() < 2 + 1e-9; });
  method.for_comparison_until_chosen(
      {"turbulence_factor", "protection", "profile"},
      "turbulence, kind of protection and velocity profile are not known of the zone; the table's "
      "values for a bend or a straight reach, continuous rock and a profile not fully developed "
      "stand in for them. Choose turbulence_factor, protection and profile for the zone to let it "
      "govern.");
  return method;
}

}  // namespace

const SizingMethod& pilarczyk_method() {
  static const DescribedPilarczyk method = build_pilarczyk();
  return method;
}

}  // namespace proofstone
