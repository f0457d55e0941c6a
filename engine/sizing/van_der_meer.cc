#include "engine/sizing/van_der_meer.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/rock/size_and_mass.h"
#include "engine/sizing/cotangent.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {
namespace {

using DescribedVanDerMeer = TypedSizingMethod<VanDerMeerInputs, VanDerMeerResult>;

const char* const vdm = "van der Meer 1988 (from memory; confirm)";

double steepness(const VanDerMeerInputs& in) {
  const double Tm = in.mean_period.seconds();
  return 2 * std::numbers::pi * in.wave_height.meters() / (g_si * Tm * Tm);
}

double waves_counted(const VanDerMeerInputs& in) { return std::min(in.waves.number(), 7500.0); }

/// On slopes of 1V:4H and flatter every wave plunges.
bool waves_plunge(double xi, double xi_c, double tan_alpha) {
  return xi < xi_c || 1 / tan_alpha > 4 - 1e-9;
}

/// The period has no place in a zone: the designer's choices for this method must give it.
std::variant<VanDerMeerInputs, NotApplicable> van_der_meer_from_zone(const ZoneSetting& zone) {
  VanDerMeerInputs in;
  if (zone.stated.wave_height) in.wave_height = *zone.stated.wave_height;
  in.slope = zone.bank_angle;
  in.rock = density_of(zone.rock);
  return in;
}

MethodDescription describe_van_der_meer() {
  MethodDescription about;
  about.id = "van-der-meer";
  about.title = "van der Meer formulas";
  about.purpose =
      "Median mass of rock on a slope under waves, from height, mean period, number of waves, "
      "permeability and the damage that is accepted.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"van der Meer 1988, as CIRIA C683 and CEM Part VI give it",
                    "deep-water formulas, plunging and surging; damage levels",
                    SourceStanding::memory}};
  about.cautions = {
      "The period is the mean one, not the peak one; the diameter is that of a cube.",
      "Damage S begins at 2 (slopes to 1V:3H) or 3 (flatter); the filter shows at 8 on 1V:1.5H and "
      "1V:2H, 12 on 1V:3H, 17 on flatter slopes.",
      "The coefficients scatter: 6.2 by 6.5 % and 1.0 by 8 % (one standard deviation)."};
  return about;
}

void describe_van_der_meer_inputs(DescribedVanDerMeer& method) {
  method.required({"wave_height", "Hs", "significant wave height at the toe"},
                  &VanDerMeerInputs::wave_height, unit::meter, AllowedRange::positive_to(20));
  method.required({"mean_period", "Tm", "mean wave period"}, &VanDerMeerInputs::mean_period,
                  unit::second, AllowedRange::positive_to(30));
  method.required({"slope", "α", "angle of the slope"}, &VanDerMeerInputs::slope, unit::degree,
                  AllowedRange::positive_to(60));
  method.defaulted({"permeability", "P",
                    "0.1 on an impermeable core with a thin filter, 0.4, 0.5 on a permeable core, "
                    "0.6 without a core"},
                   &VanDerMeerInputs::permeability, unit::number, AllowedRange::positive_to(1));
  method.defaulted({"damage", "S", "damage accepted"}, &VanDerMeerInputs::damage, unit::number,
                   AllowedRange::positive_to(30));
  method.defaulted({"waves", "N", "number of waves; counted to 7500"}, &VanDerMeerInputs::waves,
                   unit::number, AllowedRange::positive_to(1e6));
  method.defaulted({"rock", "ρr", "density of the rock"}, &VanDerMeerInputs::rock,
                   unit::kilogram_per_cubic_meter, AllowedRange::between(1500, 4000));
  method.defaulted({"water", "ρw", "density of the water"}, &VanDerMeerInputs::water,
                   unit::kilogram_per_cubic_meter, AllowedRange::between(900, 1100));
}

void describe_limits(DescribedVanDerMeer& method) {
  method.limit({"Wave steepness between 0.005 and 0.06", vdm}, [](const VanDerMeerInputs& in) {
    return steepness(in) > 0.005 - 1e-9 && steepness(in) < 0.06 + 1e-9;
  });
  method.limit({"Permeability between 0.1 and 0.6", vdm}, [](const VanDerMeerInputs& in) {
    return in.permeability.number() > 0.1 - 1e-9 && in.permeability.number() < 0.6 + 1e-9;
  });
  method.limit({"Slope between 1V:1.5H and 1V:6H", vdm}, [](const VanDerMeerInputs& in) {
    return cot(in.slope) > 1.5 - 1e-9 && cot(in.slope) < 6 + 1e-9;
  });
  method.limit({"Rock of 2.0 to 3.1 t/m³", vdm}, [](const VanDerMeerInputs& in) {
    const double density = in.rock.kilograms_per_cubic_meter();
    return density > 2000 - 1e-6 && density < 3100 + 1e-6;
  });
  method.limit({"Damage not above failure: 8 to 1V:2H, 12 to 1V:3H, 17 flatter", vdm},
               [](const VanDerMeerInputs& in) {
                 const double m = cot(in.slope);
                 const double failure = m < 2.5 ? 8 : (m < 3.5 ? 12 : 17);
                 return in.damage.number() < failure + 1e-9;
               });
}

DescribedVanDerMeer build_van_der_meer() {
  DescribedVanDerMeer method(describe_van_der_meer(), &van_der_meer, &van_der_meer_from_zone,
                             [](const VanDerMeerResult& result) {
                               RequiredSize required{50, result.d50};
                               required.by_mass = true;
                               return required;
                             },
                             {ZonePlace::shore});
  method.without_steps(&van_der_meer);
  describe_van_der_meer_inputs(method);
  method.output({"steepness", "sm", "wave steepness"}, &VanDerMeerResult::steepness, unit::number);
  method.output({"surf_similarity", "ξm", "surf similarity"}, &VanDerMeerResult::surf_similarity,
                unit::number);
  method.output({"critical_surf_similarity", "ξmc", "surf similarity between the two formulas"},
                &VanDerMeerResult::critical_surf_similarity, unit::number);
  method.output({"stability_number", "Ns", "Hs/(Δ·Dn50)"}, &VanDerMeerResult::stability_number,
                unit::number);
  method.output({"nominal_diameter", "Dn50", "cube of the median mass"},
                &VanDerMeerResult::nominal_diameter, unit::meter, LengthUse::rock);
  method.output({"median_mass", "M50", "required median mass"}, &VanDerMeerResult::median_mass,
                unit::kilogram);
  method.output({"d50", "D50", "sphere of the median mass"}, &VanDerMeerResult::d50, unit::meter,
                LengthUse::rock);
  describe_limits(method);
  return method;
}

void explain(const VanDerMeerInputs& in, const VanDerMeerResult& result, Steps& steps) {
  const bool plunging =
      waves_plunge(result.surf_similarity.number(), result.critical_surf_similarity.number(),
                   std::tan(in.slope.radians()));
  steps.given("Hs", "significant wave height at the toe", measure(in.wave_height));
  steps.given("Tm", "mean wave period", measure(in.mean_period));
  steps.given("cotα", "slope", measure(cot(in.slope)));
  steps.given("P", "permeability", measure(in.permeability));
  steps.given("S", "damage accepted", measure(in.damage));
  steps.computed("N", "number of waves", "at most 7500", measure(waves_counted(in)), vdm);
  steps.computed("sm", "wave steepness", "2π·Hs/(g·Tm²)", measure(result.steepness));
  steps.computed("ξm", "surf similarity", "tanα/√sm", measure(result.surf_similarity));
  steps.computed("ξmc", "surf similarity between the two formulas",
                 "[6.2·P^0.31·√tanα]^(1/(P+0.5))", measure(result.critical_surf_similarity), vdm);
  steps.computed("Ns", plunging ? "plunging waves: Hs/(Δ·Dn50)" : "surging waves: Hs/(Δ·Dn50)",
                 plunging ? "6.2·P^0.18·(S/√N)^0.2·ξm^−0.5" : "1.0·P^−0.13·(S/√N)^0.2·√cotα·ξm^P",
                 measure(result.stability_number), vdm);
  steps.computed_rock("Dn50", "cube of the median mass", "Hs/(Δ·Ns), Δ = ρr/ρw − 1",
                      result.nominal_diameter);
  steps.computed("M50", "required median mass", "ρr·Dn50³", measure(result.median_mass));
  steps.computed_rock("D50", "sphere of the median mass", "(6·M50/(π·ρr))^⅓", result.d50);
}

}  // namespace

Expected<VanDerMeerResult> van_der_meer(const VanDerMeerInputs& inputs) {
  const double Hs = inputs.wave_height.meters();
  const double P = inputs.permeability.number();
  const double S = inputs.damage.number();
  const double N = waves_counted(inputs);
  const double delta = inputs.rock / inputs.water - 1;
  const double tan_alpha = std::tan(inputs.slope.radians());
  const double sm = steepness(inputs);
  const double xi = tan_alpha / std::sqrt(sm);
  const double xi_c = std::pow(6.2 * std::pow(P, 0.31) * std::sqrt(tan_alpha), 1 / (P + 0.5));
  const bool plunging = waves_plunge(xi, xi_c, tan_alpha);
  const double damage = std::pow(S / std::sqrt(N), 0.2);
  const double Ns = plunging
                        ? 6.2 * std::pow(P, 0.18) * damage / std::sqrt(xi)
                        : std::pow(P, -0.13) * damage * std::sqrt(1 / tan_alpha) * std::pow(xi, P);
  const double Dn = Hs / (delta * Ns);

  VanDerMeerResult result;
  result.steepness = Dimensionless::number(sm);
  result.surf_similarity = Dimensionless::number(xi);
  result.critical_surf_similarity = Dimensionless::number(xi_c);
  result.stability_number = Dimensionless::number(Ns);
  result.nominal_diameter = Length::meters(Dn);
  result.median_mass = Mass::kilograms(inputs.rock.kilograms_per_cubic_meter() * Dn * Dn * Dn);
  result.d50 = stone_size(result.median_mass, SizeMeaning::sphere, inputs.rock);
  return result;
}

Expected<VanDerMeerResult> van_der_meer(const VanDerMeerInputs& inputs, Steps& steps) {
  auto result = van_der_meer(inputs);
  if (result) explain(inputs, *result, steps);
  return result;
}

const SizingMethod& van_der_meer_method() {
  static const DescribedVanDerMeer method = build_van_der_meer();
  return method;
}

}  // namespace proofstone
