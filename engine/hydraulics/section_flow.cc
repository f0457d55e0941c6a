#include "engine/hydraulics/section_flow.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/hydraulics/divided_section.h"
#include "engine/hydraulics/level_scan.h"
#include "engine/hydraulics/section_problem.h"
#include "engine/hydraulics/uniform_flows.h"

namespace proofstone {

Velocity SectionFlow::mean_velocity() const {
  if (!(wet.area.si() > 0)) return {};
  return Velocity::meters_per_second(discharge.si() / wet.area.si());
}

Length SectionFlow::hydraulic_radius() const {
  if (!(wet.area.si() > 0)) return {};
  return Length::meters(wet.area.si() / wet.wetted_perimeter.si());
}

Length SectionFlow::specific_energy() const {
  const double v = mean_velocity().meters_per_second();
  return wet.deepest + Length::meters(energy_coefficient.number() * v * v / (2 * g_si));
}

std::string_view composite_roughness_name(CompositeRoughness composite) {
  switch (composite) {
    case CompositeRoughness::horton:
      return "horton";
    case CompositeRoughness::pavlovskii:
      return "pavlovskii";
    case CompositeRoughness::lotter:
      return "lotter";
  }
  return "";
}

SectionFlow flow_at_level(const Section& section, const std::vector<Length>& divisions,
                          Length water_level, CompositeRoughness composite) {
  return DividedSection(section, divisions, composite).flow(water_level);
}

SectionFlow carrying(SectionFlow flow, Discharge discharge) {
  flow.discharge = discharge;
  if (!(flow.conveyance_si > 0)) return flow;
  for (FlowPart& part : flow.parts) {
    part.discharge = discharge * (part.conveyance_si / flow.conveyance_si);
    if (part.area.si() > 0) {
      part.velocity = Velocity::meters_per_second(part.discharge.si() / part.area.si());
    }
  }
  const double hydraulic_depth = flow.wet.area.si() / flow.wet.top_width.si();
  flow.froude_number =
      Dimensionless::number(flow.mean_velocity().meters_per_second() /
                            std::sqrt(g_si * hydraulic_depth / flow.energy_coefficient.number()));
  return flow;
}

Expected<SectionFlow> normal_flow(const Section& section, const std::vector<Length>& divisions,
                                  Discharge discharge, Slope slope, CompositeRoughness composite,
                                  Steps& steps) {
  return UniformFlows(section, divisions, composite).at(discharge, slope, steps);
}

Expected<std::vector<SectionFlow>> critical_flows(const Section& section,
                                                  const std::vector<Length>& divisions,
                                                  Discharge discharge,
                                                  CompositeRoughness composite) {
  const Problems problems = discharge_problems(section, divisions, discharge);
  if (!problems.empty()) return problems;

  const DividedSection divided(section, divisions, composite);
  const auto levels = turning_levels(
      section, [&](double level) { return divided.energy_growth(level, discharge.si()) >= 0; });
  if (levels.empty()) {
    return overtopped(section, discharge, "its specific energy is still falling at every level");
  }
  std::vector<SectionFlow> flows;
  flows.reserve(levels.size());
  for (const double level : levels) {
    flows.push_back(
        carrying(flow_at_level(section, divisions, Length::meters(level), composite), discharge));
  }
  std::sort(flows.begin(), flows.end(), [](const SectionFlow& a, const SectionFlow& b) {
    return a.specific_energy() < b.specific_energy();
  });
  return flows;
}

void explain_flow(const SectionFlow& flow, Steps& steps) {
  const std::string manning = "Manning's equation, k = 1 in SI";
  steps.computed("d", "greatest depth", "w − lowest ground", measure(flow.wet.deepest));
  const bool divided = flow.parts.size() > 1;
  for (std::size_t i = 0; i < flow.parts.size(); ++i) {
    const FlowPart& part = flow.parts[i];
    if (!(part.area.si() > 0)) continue;
    const std::string mark = divided ? fmt::format("{}", i + 1) : std::string();
    const std::string of = divided ? fmt::format(" of part {}", i + 1) : std::string();
    steps.computed("A" + mark, "wet area" + of, "Σ Δx·(d₁+d₂)/2", measure(part.area));
    steps.computed("P" + mark, "wetted perimeter" + of, "Σ √(Δx²+Δz²)",
                   measure(part.wetted_perimeter));
    steps.computed("n" + mark, "roughness" + of, "", measure(part.roughness));
    steps.computed("K" + mark, "conveyance" + of, "A·(A/P)^⅔/n",
                   measure(Discharge::cubic_meters_per_second(part.conveyance_si)), manning);
    if (divided && part.discharge.si() > 0) {
      steps.computed("V" + mark, "mean velocity" + of, "Q·(K/ΣK)/A", measure(part.velocity));
    }
  }
  steps.computed("A", "wet area", divided ? "Σ Aᵢ" : "", measure(flow.wet.area));
  steps.computed("T", "top width", "Σ Δx", measure(flow.wet.top_width));
  if (divided) {
    steps.computed("α", "energy coefficient", "Σ(Kᵢ³/Aᵢ²)/(K³/A²)",
                   measure(flow.energy_coefficient));
  }
  if (!(flow.discharge.si() > 0)) return;
  steps.computed("V", "mean velocity", "Q/A", measure(flow.mean_velocity()));
  steps.computed("Fr", "Froude number", "V/√(g·(A/T)/α), g = 9.80665 m/s²",
                 measure(flow.froude_number));
}

}  // namespace proofstone
