#include "engine/hydraulics/uniform_flows.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "engine/hydraulics/level_scan.h"
#include "engine/hydraulics/section_problem.h"

namespace proofstone {

UniformFlows::UniformFlows(const Section& section, std::vector<Length> divisions,
                           CompositeRoughness composite)
    : section_(section),
      divisions_(std::move(divisions)),
      divided_(section_, divisions_, composite) {}

std::vector<double> UniformFlows::levels_that_carry(double wanted) {
  if (conveyances_.empty()) {
    for (const double level : scan_levels(section_, section_.lower_end().meters())) {
      conveyances_.push_back({level, divided_.conveyance(level)});
    }
  }
  std::vector<LevelSeen> seen;
  seen.reserve(conveyances_.size());
  for (const ValueAtLevel& at : conveyances_) seen.push_back({at.level, at.value >= wanted});
  return turning_levels(section_.lowest().meters(), seen,
                        [&](double level) { return divided_.conveyance(level) >= wanted; });
}

Expected<SectionFlow> UniformFlows::at(Discharge discharge, Slope slope, Steps& steps) {
  Problems problems = discharge_problems(section_, divisions_, discharge);
  if (!(slope.ratio() > 0) || !std::isfinite(slope.ratio())) {
    problems.push_back({"slope-not-positive",
                        "The slope is not a positive number; without a fall there is no uniform "
                        "flow.",
                        "", "slope", "a slope above 0"});
  }
  if (!problems.empty()) return problems;

  const double wanted = discharge.si() / std::sqrt(slope.ratio());
  const auto levels = levels_that_carry(wanted);
  if (levels.empty()) {
    const double holds =
        divided_.conveyance(section_.lower_end().meters()) * std::sqrt(slope.ratio());
    return overtopped(
        section_, discharge,
        fmt::format("at this slope it carries {}",
                    in_both_systems(measure(Discharge::cubic_meters_per_second(holds)))));
  }
  SectionFlow flow = carrying(divided_.flow(Length::meters(levels.front())), discharge);
  for (std::size_t i = 1; i < levels.size(); ++i) {
    flow.further_levels.push_back(Length::meters(levels[i]));
  }

  steps.given("Q", "discharge", measure(discharge));
  steps.given("S", "slope of the energy line, equal to the bed's in uniform flow", measure(slope));
  steps.computed("w", "lowest water level that carries the discharge", "K(w)·√S = Q",
                 measure(flow.water_level), "bracketed root finding");
  for (const Length level : flow.further_levels) {
    steps.computed("w'", "a higher level that would carry it too; conveyance falls between them",
                   "K(w')·√S = Q", measure(level), "bracketed root finding");
  }
  explain_flow(flow, steps);
  return flow;
}

}  // namespace proofstone
