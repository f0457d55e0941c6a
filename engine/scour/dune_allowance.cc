#include "engine/scour/dune_allowance.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

constexpr double viscosity = 1e-6;
constexpr double washed_out = 25;

const char* const page_of_dune_allowance =
    "van Rijn, Journal of Hydraulic Engineering 110(12), 1984 (from memory; confirm)";

/// Shields number at which grains of the dimensionless diameter D* begin to move.
double critical_shields(double d_star) {
  if (d_star <= 4) return 0.24 / d_star;
  if (d_star <= 10) return 0.14 * std::pow(d_star, -0.64);
  if (d_star <= 20) return 0.04 * std::pow(d_star, -0.10);
  if (d_star <= 150) return 0.013 * std::pow(d_star, 0.29);
  return 0.055;
}

TypedMethod<DuneInputs, DuneResult> build_dune_allowance() {
  MethodDescription about;
  about.id = "dune-allowance";
  about.title = "Troughs of dunes";
  about.purpose =
      "How far the bed lies below its mean level in the troughs of dunes, in tranquil flow over "
      "sand.";
  about.group = MethodGroup::scour;
  about.sources = {{"van Rijn, Sediment transport, part III: bed forms (1984)",
                    "Journal of Hydraulic Engineering 110(12)", SourceStanding::memory}};
  about.cautions = {"Half the height is taken below the mean bed; single troughs go deeper."};
  TypedMethod<DuneInputs, DuneResult> method(about, &dune_allowance);
  method.required({"velocity", "V", "mean velocity"}, &DuneInputs::velocity, unit::meter_per_second,
                  AllowedRange::positive_to(20));
  method.required({"depth", "d", "depth of flow"}, &DuneInputs::depth, unit::meter,
                  AllowedRange::positive_to(100));
  method.required({"d50", "D50", "median grain size of the bed"}, &DuneInputs::d50, unit::meter,
                  AllowedRange::positive_to(0.1), LengthUse::rock);
  method.required({"d90", "D90", "size that 90 % of the bed is finer than"}, &DuneInputs::d90,
                  unit::meter, AllowedRange::positive_to(0.3), LengthUse::rock);
  method.defaulted({"specific_gravity", "s", "specific gravity of the grains"},
                   &DuneInputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.output({"transport_stage", "T", "by how much the shear exceeds the critical one"},
                &DuneResult::transport_stage, unit::number);
  method.output({"height", "Δ", "height of the dunes"}, &DuneResult::height, unit::meter);
  method.output({"trough", "z_bf", "trough below the mean bed"}, &DuneResult::trough, unit::meter);
  method.limit({"Sand: a median grain of 0.19 to 3.6 mm", page_of_dune_allowance},
               [](const DuneInputs& in) {
                 return in.d50.millimeters() >= 0.19 && in.d50.millimeters() <= 3.6;
               });
  method.limit({"Tranquil flow: V/√(g·d) below 1", "common practice"}, [](const DuneInputs& in) {
    const double V = in.velocity.meters_per_second();
    return V * V < g_si * in.depth.meters();
  });
  return method;
}

}  // namespace

Expected<DuneResult> dune_allowance(const DuneInputs& inputs, Steps& steps) {
  const double V = inputs.velocity.meters_per_second();
  const double d = inputs.depth.meters();
  const double D50 = inputs.d50.meters();
  const double D90 = inputs.d90.meters();
  const double delta = inputs.specific_gravity.number() - 1;
  if (D90 < D50) {
    return Problem{"sizes-out-of-order", "D90 is smaller than D50.", "", "/d90",
                   "at least the median size"};
  }
  if (!(12 * d > 3 * D90)) {
    return Problem{"grain-too-large", "The grains stand out of the water.", "", "/d90",
                   "less than four depths"};
  }
  const double d_star = D50 * std::pow(delta * g_si / (viscosity * viscosity), 1.0 / 3);
  const double u_critical = std::sqrt(critical_shields(d_star) * delta * g_si * D50);
  const double chezy = 18 * std::log10(12 * d / (3 * D90));
  const double u_grain = V * std::sqrt(g_si) / chezy;
  const double T = u_grain * u_grain / (u_critical * u_critical) - 1;
  const bool dunes = T > 0 && T < washed_out;
  const double height =
      dunes ? 0.11 * d * std::pow(D50 / d, 0.3) * (1 - std::exp(-0.5 * T)) * (washed_out - T) : 0;

  DuneResult result;
  result.transport_stage = Dimensionless::number(T);
  result.height = Length::meters(height);
  result.trough = result.height / 2;
  steps.given("V", "mean velocity", measure(inputs.velocity));
  steps.given("d", "depth of flow", measure(inputs.depth));
  steps.given_rock("D50", "median grain size", inputs.d50);
  steps.given_rock("D90", "size that 90 % is finer than", inputs.d90);
  steps.computed("D*", "dimensionless grain size", "D50·(Δ·g/ν²)^⅓, ν = 1·10⁻⁶ m²/s",
                 measure(d_star), page_of_dune_allowance);
  steps.computed("u*cr", "critical shear velocity", "√(θcr·Δ·g·D50)",
                 measure(Velocity::meters_per_second(u_critical)), page_of_dune_allowance);
  steps.computed("C'", "Chézy coefficient of the grains, m^½/s", "18·log₁₀(12·d/(3·D90))",
                 measure(chezy), page_of_dune_allowance);
  steps.computed("u*'", "shear velocity of the grains", "V·√g/C'",
                 measure(Velocity::meters_per_second(u_grain)), page_of_dune_allowance);
  steps.computed("T", "transport stage", "(u*'/u*cr)² − 1", measure(T), page_of_dune_allowance);
  steps.computed("Δ", dunes ? "height of the dunes" : "no dunes: the bed is at rest or washed flat",
                 "0.11·d·(D50/d)^0.3·(1 − e^(−0.5·T))·(25 − T)", measure(result.height),
                 page_of_dune_allowance);
  steps.computed("z_bf", "trough of the dunes below the mean bed", "Δ/2", measure(result.trough));
  return result;
}

const Method& dune_allowance_method() {
  static const TypedMethod<DuneInputs, DuneResult> method = build_dune_allowance();
  return method;
}

}  // namespace proofstone
