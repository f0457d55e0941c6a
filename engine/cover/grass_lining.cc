#include "engine/cover/grass_lining.h"

#include <cmath>

#include "engine/hydraulics/bracketed_root.h"

namespace proofstone {

namespace {

constexpr double gamma_in_grass_lining = 9810;  // N/m³, as the manual has it

const char* const hec15_of_grass_lining = "FHWA HEC-15 3rd ed. (2005) ch. 4 (from memory; confirm)";

double density_stiffness(const GrassLiningInputs& in) {
  if (in.stiffness) return in.stiffness->number();
  switch (in.condition) {
    case GrassCondition::excellent:
      return 580;
    case GrassCondition::very_good:
      return 290;
    case GrassCondition::good:
      return 106;
    case GrassCondition::fair:
      return 24;
    case GrassCondition::poor:
      return 8.6;
  }
  return 8.6;
}

double cover_factor(GrassGrowth growth, GrassCondition condition) {
  constexpr double factors[3][5] = {{0.98, 0.95, 0.90, 0.84, 0.75},
                                    {0.55, 0.53, 0.50, 0.47, 0.41},
                                    {0.82, 0.79, 0.75, 0.70, 0.62}};
  return factors[static_cast<int>(growth)][static_cast<int>(condition)];
}

/// Trapezoid of bottom width B and sides Z:1 at depth d, with grass of coefficient Cn.
struct GrassFlow {
  double area;
  double radius;
  double shear;
  double roughness;
  double discharge;
};
GrassFlow flow_at(double d, double Cn, const GrassLiningInputs& in) {
  const double B = in.bottom_width.meters();
  const double Z = in.side_slope.number();
  const double S = in.slope.ratio();
  GrassFlow flow{};
  flow.area = d * (B + Z * d);
  flow.radius = flow.area / (B + 2 * d * std::sqrt(1 + Z * Z));
  flow.shear = gamma_in_grass_lining * flow.radius * S;
  flow.roughness = Cn * std::pow(flow.shear, -0.4);
  flow.discharge = 1 / flow.roughness * flow.area * std::pow(flow.radius, 2.0 / 3.0) * std::sqrt(S);
  return flow;
}

void take_flow(double d, double Cn, const GrassLiningInputs& in, GrassLiningResult& result) {
  const GrassFlow flow = flow_at(d, Cn, in);
  result.roughness_coefficient = Dimensionless::number(Cn);
  result.depth = Length::meters(d);
  result.hydraulic_radius = Length::meters(flow.radius);
  result.mean_shear = Stress::pascals(flow.shear);
  result.roughness = Dimensionless::number(flow.roughness);
  result.velocity = Velocity::meters_per_second(in.discharge.cubic_meters_per_second() / flow.area);
  result.greatest_shear = Stress::pascals(gamma_in_grass_lining * d * in.slope.ratio());
}

void take_shear(const BareSoilShearResult& soil, const GrassLiningInputs& in,
                GrassLiningResult& result) {
  const double Cf = cover_factor(in.growth, in.condition);
  const double grain = soil.roughness.number() / result.roughness.number();
  result.cover = Dimensionless::number(Cf);
  result.effective_shear = (1 - Cf) * grain * grain * result.greatest_shear;
  result.permissible_shear = 1 / ((1 - Cf) * grain * grain) * soil.permissible_shear;
  result.margin = Dimensionless::number(result.permissible_shear / result.greatest_shear);
}

void explain(const GrassLiningInputs& in, const GrassLiningResult& result, Steps& steps) {
  steps.given("Q", "discharge", measure(in.discharge));
  steps.given("B", "bottom width", measure(in.bottom_width));
  steps.given("Z", "side slope", measure(in.side_slope));
  steps.given("S", "slope of the channel", measure(in.slope));
  steps.given("h", "stem height", measure(in.stem_height));
  steps.given("Cs", "density and stiffness of the grass",
              measure(Dimensionless::number(density_stiffness(in))), hec15_of_grass_lining);
  steps.computed("Cn", "roughness coefficient of the grass", "0.35·Cs^0.10·h^0.528 (m)",
                 measure(result.roughness_coefficient), hec15_of_grass_lining);
  steps.computed("d", "depth that carries Q", "Q = A·R^⅔·S^½/n, n = Cn·τo^−0.4, τo = γ·R·S",
                 measure(result.depth), hec15_of_grass_lining);
  steps.computed("R", "hydraulic radius", "A/P", measure(result.hydraulic_radius));
  steps.computed("τo", "mean shear", "γ·R·S, γ = 9810 N/m³", measure(result.mean_shear),
                 hec15_of_grass_lining);
  steps.computed("n", "roughness", "Cn·τo^−0.4 (N/m²)", measure(result.roughness),
                 hec15_of_grass_lining);
  steps.computed("V", "velocity", "Q/A", measure(result.velocity));
  steps.computed("τd", "greatest shear", "γ·d·S", measure(result.greatest_shear),
                 hec15_of_grass_lining);
  steps.given("Cf", "cover factor by growth and condition", measure(result.cover),
              hec15_of_grass_lining);
  steps.computed("τe", "shear that reaches the soil", "τd·(1 − Cf)·(ns/n)²",
                 measure(result.effective_shear), hec15_of_grass_lining);
  steps.computed("τp", "permissible shear of grass and soil", "τp,soil/(1 − Cf)·(n/ns)²",
                 measure(result.permissible_shear), hec15_of_grass_lining);
  steps.computed("τp/τd", "margin", "", measure(result.margin));
}

}  // namespace

Expected<GrassLiningResult> grass_lining(const GrassLiningInputs& inputs, Steps& steps) {
  const auto soil = bare_soil_shear(inputs, steps);
  if (!soil) return soil.problems();
  const double Cn = 0.35 * std::pow(density_stiffness(inputs), 0.10) *
                    std::pow(inputs.stem_height.meters(), 0.528);
  const double Q = inputs.discharge.cubic_meters_per_second();
  constexpr double deepest = 100;
  const auto carries = [&](double d) { return flow_at(d, Cn, inputs).discharge >= Q; };
  if (!carries(deepest)) {
    return Problem{"no-depth", "No depth up to 100 m carries this discharge.", "", "/discharge",
                   "a smaller discharge, or a wider or steeper channel"};
  }

  GrassLiningResult result;
  take_flow(turning_point(0, deepest, carries), Cn, inputs, result);
  take_shear(*soil, inputs, result);
  explain(inputs, result, steps);
  return result;
}

}  // namespace proofstone
