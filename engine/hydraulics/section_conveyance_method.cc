#include "engine/hydraulics/section_conveyance_method.h"

#include <cmath>

#include "engine/hydraulics/section_inputs.h"

namespace proofstone {

namespace {

struct SectionConveyanceInputs : SectionInputs {
  Length water_level;
  Slope slope;
};

struct SectionConveyanceResult {
  Area area;
  Length wetted_perimeter;
  Length top_width;
  Length hydraulic_radius;
  Volume first_moment;
  Discharge conveyance;
  Discharge discharge;
  Velocity velocity;
  Dimensionless energy_coefficient;
  Dimensionless momentum_coefficient;
};

/// β = Σ(Kᵢ²/Aᵢ)/(K²/A).
double momentum_coefficient(const SectionFlow& flow) {
  double squares = 0;
  for (const FlowPart& part : flow.parts) {
    if (part.area.si() > 0) squares += part.conveyance_si * part.conveyance_si / part.area.si();
  }
  return squares * flow.wet.area.si() / (flow.conveyance_si * flow.conveyance_si);
}

Expected<SectionConveyanceResult> compute_section_conveyance(const SectionConveyanceInputs& inputs,
                                                             Steps& steps) {
  const auto section = section_of(inputs);
  if (!section) return section.problems();
  if (!(inputs.water_level > section->lowest())) {
    return Problem{"dry", "The water level does not stand above the lowest ground.", "",
                   "/water_level", "a level above the lowest ground"};
  }
  if (inputs.water_level > section->lower_end()) {
    return Problem{"overtopped", "The water level stands above the lower end of the section.", "",
                   "/water_level", "a level below the lower of the two end points"};
  }
  SectionFlow flow =
      flow_at_level(*section, inputs.divisions, inputs.water_level, inputs.composite);
  const double discharge = flow.conveyance_si * std::sqrt(inputs.slope.ratio());
  flow = carrying(std::move(flow), Discharge::cubic_meters_per_second(discharge));

  SectionConveyanceResult result;
  result.area = flow.wet.area;
  result.wetted_perimeter = flow.wet.wetted_perimeter;
  result.top_width = flow.wet.top_width;
  result.hydraulic_radius = flow.hydraulic_radius();
  result.first_moment = Volume::cubic_meters(flow.wet.first_moment_si);
  result.conveyance = Discharge::cubic_meters_per_second(flow.conveyance_si);
  result.discharge = flow.discharge;
  result.velocity = flow.mean_velocity();
  result.energy_coefficient = flow.energy_coefficient;
  result.momentum_coefficient = Dimensionless::number(momentum_coefficient(flow));

  steps.given("w", "water level", measure(inputs.water_level));
  steps.given("S", "slope of the energy line", measure(inputs.slope));
  steps.computed("Q", "discharge", "ΣK·√S", measure(result.discharge));
  explain_flow(flow, steps);
  steps.computed("Az̄", "first moment of the wet area about the water surface",
                 "Σ Δx·(d₁²+d₁d₂+d₂²)/6", measure(result.first_moment));
  steps.computed("β", "momentum coefficient", "Σ(Kᵢ²/Aᵢ)/(K²/A)",
                 measure(result.momentum_coefficient));
  return result;
}

TypedMethod<SectionConveyanceInputs, SectionConveyanceResult> build_section_conveyance() {
  MethodDescription about;
  about.id = "section-conveyance";
  about.title = "Conveyance of a surveyed section";
  about.purpose =
      "Area, wetted perimeter, conveyance and discharge of a section at a given water level and "
      "slope, divided at the bank tops, with the energy and momentum coefficients.";
  about.group = MethodGroup::water;
  about.sources = {
      {"Chow, Open-Channel Hydraulics (1959)", "chs. 2, 5 and 6", SourceStanding::memory}};
  about.cautions = {
      "Low ground behind higher ground is taken to carry water; look whether it is connected."};
  TypedMethod<SectionConveyanceInputs, SectionConveyanceResult> method(about,
                                                                       &compute_section_conveyance);
  describe_ground(method);
  method.required({"water_level", "w", "water level"}, &SectionConveyanceInputs::water_level,
                  unit::foot, AllowedRange::any());
  method.required({"slope", "S", "slope of the energy line"}, &SectionConveyanceInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  describe_division(method);
  method.output({"area", "A", "wet area"}, &SectionConveyanceResult::area, unit::square_foot);
  method.output({"wetted_perimeter", "P", "wetted perimeter"},
                &SectionConveyanceResult::wetted_perimeter, unit::foot);
  method.output({"top_width", "T", "top width"}, &SectionConveyanceResult::top_width, unit::foot);
  method.output({"hydraulic_radius", "R", "hydraulic radius of the whole section"},
                &SectionConveyanceResult::hydraulic_radius, unit::foot);
  method.output({"first_moment", "Az̄", "first moment of the wet area about the water surface"},
                &SectionConveyanceResult::first_moment, unit::cubic_foot);
  method.output({"conveyance", "K", "conveyance; it has the unit of a discharge"},
                &SectionConveyanceResult::conveyance, unit::cubic_foot_per_second);
  method.output({"discharge", "Q", "discharge"}, &SectionConveyanceResult::discharge,
                unit::cubic_foot_per_second);
  method.output({"velocity", "V", "mean velocity"}, &SectionConveyanceResult::velocity,
                unit::foot_per_second);
  method.output({"energy_coefficient", "α", "energy coefficient"},
                &SectionConveyanceResult::energy_coefficient, unit::number);
  method.output({"momentum_coefficient", "β", "momentum coefficient"},
                &SectionConveyanceResult::momentum_coefficient, unit::number);
  return method;
}

}  // namespace

const Method& section_conveyance_method() {
  static const TypedMethod<SectionConveyanceInputs, SectionConveyanceResult> method =
      build_section_conveyance();
  return method;
}

}  // namespace proofstone
