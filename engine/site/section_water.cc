#include "engine/site/section_water.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/hydraulics/extended_section.h"

namespace proofstone {
namespace {

/// Uniform flow between walls at the ends of the survey, which are marked as added.
Expected<SectionFlow> above_the_survey(const SiteSection& section, const FlowCase& flow_case,
                                       Steps& steps) {
  const Length ground = section.survey.highest() - section.survey.lowest();
  const Length least = Length::meters(1);
  for (const double times : {2.0, 8.0, 32.0}) {
    const Length top = section.survey.highest() + times * std::max(ground, least);
    const auto extended = extended_to(section.survey, top);
    if (!extended) return extended.problems();
    Steps tried;
    auto flow = normal_flow(*extended, divisions_of(section), flow_case.discharge,
                            section.energy_slope, section.composite_roughness, tried);
    if (flow) {
      flow->wet.end_wall_added = true;
      steps.append(tried);
      return flow;
    }
  }
  return Problem{"overtopped", "Walls at the ends of the survey do not hold the water either.", "",
                 "section", "a smaller discharge"};
}

Expected<SectionWater> uniform_water(const SiteSection& section, UniformFlows& uniform,
                                     const FlowCase& flow_case, Finding& finding) {
  finding.sources.push_back(
      {"Chow, Open-Channel Hydraulics, 1959", "chapters 5 and 6", SourceStanding::memory});
  finding.cautions.push_back(
      "Uniform flow at the stated energy slope: no backwater, no drawdown. Where a bridge, a "
      "confluence or a weir acts, use a computed profile.");
  Steps steps;
  auto flow = uniform.at(flow_case.discharge, section.energy_slope, steps);
  if (!flow && flow.problems().front().code == "overtopped") {
    auto extended = above_the_survey(section, flow_case, steps);
    if (extended) {
      finding.reasons.push_back(flow.problems().front().sentence());
      flow = std::move(extended);
    }
  }
  if (!flow) return flow.problems();
  finding.steps.append(steps);
  return SectionWater{std::move(*flow), section.energy_slope};
}

Expected<SectionWater> profile_water(const SiteSection& section, const ReachWater& reach,
                                     Finding& finding, const Wording& wording) {
  finding.sources.push_back(
      {"Chow, Open-Channel Hydraulics, 1959", "chapters 9 to 11", SourceStanding::memory});
  const ProfileSection* at = reach.at(section.id);
  if (at == nullptr) {
    return Problem{"no-profile",
                   fmt::format("The profile through {} could not be computed.", reach.reach->name),
                   "", "", "see the finding on the profile"};
  }
  finding.steps.given("Q", "discharge", measure(reach.profile->discharge));
  finding.steps.computed("w",
                         fmt::format("water level of the profile through {}", reach.reach->name),
                         "energy balanced from section to section", measure(at->flow.water_level),
                         "standard step method");
  explain_flow(at->flow, finding.steps);
  finding.steps.computed("Sf", "slope of the energy line at the section", "(Q/K)²",
                         measure(at->friction_slope));
  for (const ProfileNote note : at->notes) {
    finding.cautions.emplace_back(profile_note_sentence(note));
  }
  if (const ProfileJump* jump = reach.jump_beside(section.id)) {
    finding.cautions.push_back(fmt::format(
        "A hydraulic jump stands beside this section, from {} to {}: the rock must suit both, and "
        "the jump's travel.",
        wording.ground(jump->level_before), wording.ground(jump->level_after)));
  }
  return SectionWater{at->flow, at->friction_slope};
}

}  // namespace

std::vector<Length> divisions_of(const SiteSection& section) {
  std::vector<Length> divisions;
  const auto& points = section.survey.points();
  for (const Length station : {section.left_bank, section.right_bank}) {
    if (station > points.front().station && station < points.back().station) {
      divisions.push_back(station);
    }
  }
  return divisions;
}

const FlowPart* main_channel(const SectionFlow& flow, const SiteSection& section) {
  const Length middle = 0.5 * (section.left_bank + section.right_bank);
  for (const auto& part : flow.parts) {
    if (part.left <= middle && middle <= part.right) return &part;
  }
  return nullptr;
}

UniformFlows uniform_flows_of(const SiteSection& section) {
  return {section.survey, divisions_of(section), section.composite_roughness};
}

Expected<SectionWater> water_of_section(const SiteSection& section, UniformFlows& uniform,
                                        const FlowCase& flow_case, const ReachWater* reach,
                                        Finding& finding, const Wording& wording) {
  return reach == nullptr ? uniform_water(section, uniform, flow_case, finding)
                          : profile_water(section, *reach, finding, wording);
}

bool level_is_assumed(const ReachWater* reach, const SiteSection& section) {
  const ProfileSection* at = reach == nullptr ? nullptr : reach->at(section.id);
  return at != nullptr && at->has(ProfileNote::critical_assumed);
}

}  // namespace proofstone
