#include "engine/hydraulics/lateral_distribution_method.h"

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/lateral_distribution.h"
#include "engine/hydraulics/section_inputs.h"

namespace proofstone {

namespace {

struct LateralDistributionInputs : SectionInputs {
  Length water_level;
  Slope slope;
  Length station;
  Dimensionless eddy_viscosity = Dimensionless::number(0.07);
  std::vector<Dimensionless> friction_factors;
  std::vector<Dimensionless> secondary_flow;
  Acceleration gravity = standard_gravity;
  Density density = Density::kilograms_per_cubic_meter(1000);
  Dimensionless cells = Dimensionless::number(1000);
};

struct LateralDistributionResult {
  Velocity velocity;
  Stress shear;
  Length depth;
  UnitDischarge unit_discharge;
  Dimensionless froude_number;
  Velocity fastest;
  Stress greatest_shear;
  Discharge discharge;
  Dimensionless force_ratio;
};

std::vector<double> numbers(const std::vector<Dimensionless>& values, std::size_t points) {
  std::vector<double> plain;
  if (values.size() == 1) return std::vector<double>(points, values.front().number());
  for (const Dimensionless value : values) plain.push_back(value.number());
  return plain;
}

void explain(const LateralDistributionInputs& inputs, const LateralCell& here,
             const LateralDistributionResult& result, Steps& steps) {
  const std::string source = lateral_distribution_source().sentence();
  steps.given("w", "water level", measure(inputs.water_level));
  steps.given("S", "slope of the energy line", measure(inputs.slope));
  steps.given("λ", "eddy viscosity over depth and shear velocity", measure(inputs.eddy_viscosity));
  steps.given("y", "station asked for", measure(inputs.station));
  steps.computed("f", "friction factor there", "as given, or 8·g·n²/H^⅓ in SI",
                 measure(Dimensionless::number(here.friction_factor)));
  steps.computed("U", "depth-averaged velocity there",
                 "ρgHS − ρ(f/8)U²√(1+1/s²) + d/dy[ρλH²√(f/8)·U·dU/dy] = Γ",
                 measure(result.velocity), source);
  steps.computed("τ", "shear on the ground", "ρ·(f/8)·U²", measure(result.shear));
  steps.computed("q", "discharge for each unit of width", "U·H", measure(result.unit_discharge));
  steps.computed("Q", "discharge of the section", "Σ U·H·Δy", measure(result.discharge));
  steps.computed("F/W", "force of the ground over the weight's pull", "Σρ(f/8)U²√(1+1/s²)Δy/(ρgAS)",
                 measure(result.force_ratio));
}

Expected<LateralDistributionResult> compute_lateral_distribution(
    const LateralDistributionInputs& inputs, Steps& steps) {
  const auto section = section_of(inputs);
  if (!section) return section.problems();
  LateralWater water;
  water.water_level = inputs.water_level;
  water.energy_slope = inputs.slope;
  water.eddy_viscosity = inputs.eddy_viscosity.number();
  water.friction_factors = numbers(inputs.friction_factors, section->points().size());
  water.secondary_flow = numbers(inputs.secondary_flow, section->points().size());
  water.gravity_si = inputs.gravity.meters_per_second_squared();
  water.density_si = inputs.density.kilograms_per_cubic_meter();
  water.cells = static_cast<int>(inputs.cells.number());
  const auto across = lateral_distribution(*section, water);
  if (!across) return located_under(across.problems(), "/");
  const auto here = across->at(inputs.station);
  if (!here) {
    return Problem{"dry", "No water stands at this station.", "", "/station",
                   "a station under water"};
  }
  LateralDistributionResult result;
  result.velocity = here->velocity;
  result.shear = here->shear;
  result.depth = here->depth;
  const double u = here->velocity.meters_per_second();
  const double depth = here->depth.meters();
  result.unit_discharge = UnitDischarge::square_meters_per_second(u * depth);
  result.froude_number = Dimensionless::number(u / std::sqrt(water.gravity_si * depth));
  for (const LateralCell& cell : across->cells) {
    result.fastest = std::max(result.fastest, cell.velocity);
    result.greatest_shear = std::max(result.greatest_shear, cell.shear);
  }
  result.discharge = across->discharge;
  result.force_ratio = Dimensionless::number(across->boundary_force_si / across->weight_force_si);
  explain(inputs, *here, result, steps);
  return result;
}

void describe_lateral_distribution_inputs(
    TypedMethod<LateralDistributionInputs, LateralDistributionResult>& method) {
  describe_ground(method);
  method.required({"water_level", "w", "water level"}, &LateralDistributionInputs::water_level,
                  unit::foot, AllowedRange::any());
  method.required({"slope", "S", "slope of the energy line"}, &LateralDistributionInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.required({"station", "y", "station of the place"}, &LateralDistributionInputs::station,
                  unit::foot, AllowedRange::any());
  method.defaulted({"eddy_viscosity", "λ",
                    "eddy viscosity over depth and shear velocity: about 0.07 in wide channels, up "
                    "to 0.24 in narrow ones"},
                   &LateralDistributionInputs::eddy_viscosity, unit::number,
                   AllowedRange::between(0.001, 5));
  method.optional_list(
      {"friction_factors", "f", "Darcy friction factor of each piece of ground, or one for all"},
      &LateralDistributionInputs::friction_factors, unit::number, AllowedRange::between(0.001, 10),
      "from roughness and depth");
  method.optional_list({"secondary_flow", "Γ/ρgHS",
                        "secondary flow of each piece of ground as a share of ρ·g·H·S, H the "
                        "greatest depth; or one for all"},
                       &LateralDistributionInputs::secondary_flow, unit::number,
                       AllowedRange::between(-1, 1), "none");
  method.defaulted({"gravity", "g", "gravity"}, &LateralDistributionInputs::gravity,
                   unit::meter_per_second_squared, AllowedRange::between(9.7, 9.9));
  method.defaulted({"density", "ρ", "density of the water"}, &LateralDistributionInputs::density,
                   unit::kilogram_per_cubic_meter, AllowedRange::between(900, 1300));
  method.defaulted({"cells", "", "about how many cells the wet width is cut into"},
                   &LateralDistributionInputs::cells, unit::number,
                   AllowedRange::between(10, 100'000));
}

TypedMethod<LateralDistributionInputs, LateralDistributionResult> build_lateral_distribution() {
  MethodDescription about;
  about.id = "lateral-distribution";
  about.title = "Lateral distribution of velocity and shear";
  about.purpose =
      "Depth-averaged velocity and bed shear at a place of a section in uniform flow, with "
      "exchange "
      "of momentum between fast and slow water and a secondary flow: the equation of Shiono and "
      "Knight, solved by finite volumes.";
  about.group = MethodGroup::water;
  about.sources = {lateral_distribution_source()};
  about.cautions = {
      "For straight uniform reaches. The eddy viscosity and the secondary flow are calibrated "
      "values: see how much the answer moves between reasonable ones."};
  TypedMethod<LateralDistributionInputs, LateralDistributionResult> method(
      about, &compute_lateral_distribution);
  describe_lateral_distribution_inputs(method);
  method.output({"velocity", "U", "depth-averaged velocity at the station"},
                &LateralDistributionResult::velocity, unit::foot_per_second);
  method.output({"shear", "τ", "shear on the ground there"}, &LateralDistributionResult::shear,
                unit::pound_per_square_foot);
  method.output({"depth", "H", "depth there"}, &LateralDistributionResult::depth, unit::foot);
  method.output({"unit_discharge", "q", "discharge for each unit of width there"},
                &LateralDistributionResult::unit_discharge, unit::square_foot_per_second);
  method.output({"froude_number", "Fr", "Froude number there"},
                &LateralDistributionResult::froude_number, unit::number);
  method.output({"fastest", "U_max", "greatest depth-averaged velocity"},
                &LateralDistributionResult::fastest, unit::foot_per_second);
  method.output({"greatest_shear", "τ_max", "greatest shear on the ground"},
                &LateralDistributionResult::greatest_shear, unit::pound_per_square_foot);
  method.output({"discharge", "Q", "discharge of the section at this level and slope"},
                &LateralDistributionResult::discharge, unit::cubic_foot_per_second);
  method.output({"force_ratio", "F/W",
                 "force of ground and walls over the pull of the water's weight; 1 where there is "
                 "no secondary flow"},
                &LateralDistributionResult::force_ratio, unit::number);
  return method;
}

}  // namespace

const Method& lateral_distribution_method() {
  static const TypedMethod<LateralDistributionInputs, LateralDistributionResult> method =
      build_lateral_distribution();
  return method;
}

}  // namespace proofstone
