#include "engine/hydraulics/critical_depth_method.h"

#include <algorithm>

#include "engine/hydraulics/section_inputs.h"

namespace proofstone {

namespace {

struct CriticalDepthInputs : SectionInputs {
  Discharge discharge;
};

struct CriticalDepthResult {
  Length depth;
  Length specific_energy;
  Length water_level;
  Area area;
  Length top_width;
  Velocity velocity;
  Dimensionless froude_number;
  Dimensionless levels_found;
  Length shallowest_depth;
  Length deepest_depth;
};

void explain(const std::vector<SectionFlow>& flows, Steps& steps) {
  for (const SectionFlow& flow : flows) {
    steps.computed("w", "level of least specific energy, α changing with the level",
                   "dE/dw = 0, E = d + α·V²/2g", measure(flow.water_level),
                   "bracketed root finding");
    steps.computed("E", "specific energy there", "d + α·V²/2g", measure(flow.specific_energy()));
    explain_flow(flow, steps);
  }
}

Expected<CriticalDepthResult> compute_critical_depth(const CriticalDepthInputs& inputs,
                                                     Steps& steps) {
  const auto section = section_of(inputs);
  if (!section) return section.problems();
  const auto flows = critical_flows(*section, inputs.divisions, inputs.discharge, inputs.composite);
  if (!flows) return flows.problems();
  steps.given("Q", "discharge", measure(inputs.discharge));
  explain(*flows, steps);
  const SectionFlow& flow = flows->front();
  const auto by_depth = [](const SectionFlow& a, const SectionFlow& b) {
    return a.wet.deepest < b.wet.deepest;
  };
  CriticalDepthResult result;
  result.depth = flow.wet.deepest;
  result.specific_energy = flow.specific_energy();
  result.water_level = flow.water_level;
  result.area = flow.wet.area;
  result.top_width = flow.wet.top_width;
  result.velocity = flow.mean_velocity();
  result.froude_number = flow.froude_number;
  result.levels_found = Dimensionless::number(static_cast<double>(flows->size()));
  result.shallowest_depth = std::min_element(flows->begin(), flows->end(), by_depth)->wet.deepest;
  result.deepest_depth = std::max_element(flows->begin(), flows->end(), by_depth)->wet.deepest;
  return result;
}

TypedMethod<CriticalDepthInputs, CriticalDepthResult> build_critical_depth() {
  MethodDescription about;
  about.id = "critical-depth";
  about.title = "Critical depth in a surveyed section";
  about.purpose =
      "The depth of least specific energy for a discharge: below it the flow is rapid, above it "
      "tranquil. A section with flood plains may have several; all are found.";
  about.group = MethodGroup::water;
  about.sources = {{"Chow, Open-Channel Hydraulics (1959)", "chs. 3 and 4", SourceStanding::memory},
                   {"FHWA HDS 6, River Engineering for Highway Encroachments (2001)",
                    "p. 2.89 (reproduced)", SourceStanding::published}};
  about.cautions = {
      "Where several critical depths are found, neither the plain nor the α Froude number is 1 at "
      "all of them: read the flow regime from the specific energy."};
  TypedMethod<CriticalDepthInputs, CriticalDepthResult> method(about, &compute_critical_depth);
  describe_ground(method);
  method.required({"discharge", "Q", "discharge"}, &CriticalDepthInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e8));
  describe_division(method);
  method.output({"depth", "y_c", "critical depth, of the least energy when there are several"},
                &CriticalDepthResult::depth, unit::foot);
  method.output({"specific_energy", "E", "specific energy there"},
                &CriticalDepthResult::specific_energy, unit::foot);
  method.output({"water_level", "w", "water level there"}, &CriticalDepthResult::water_level,
                unit::foot);
  method.output({"area", "A", "wet area there"}, &CriticalDepthResult::area, unit::square_foot);
  method.output({"top_width", "T", "top width there"}, &CriticalDepthResult::top_width, unit::foot);
  method.output({"velocity", "V", "mean velocity there"}, &CriticalDepthResult::velocity,
                unit::foot_per_second);
  method.output({"froude_number", "Fr", "Froude number there, with α"},
                &CriticalDepthResult::froude_number, unit::number);
  method.output({"levels_found", "", "how many critical depths there are"},
                &CriticalDepthResult::levels_found, unit::number);
  method.output({"shallowest_depth", "", "the shallowest of them"},
                &CriticalDepthResult::shallowest_depth, unit::foot);
  method.output({"deepest_depth", "", "the deepest of them"}, &CriticalDepthResult::deepest_depth,
                unit::foot);
  return method;
}

}  // namespace

const Method& critical_depth_method() {
  static const TypedMethod<CriticalDepthInputs, CriticalDepthResult> method =
      build_critical_depth();
  return method;
}

}  // namespace proofstone
