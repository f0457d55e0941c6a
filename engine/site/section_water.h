#pragma once

#include <vector>

#include "engine/hydraulics/uniform_flows.h"
#include "engine/site/findings.h"
#include "engine/site/reach_water.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// The water of a section, by a profile or as uniform flow.
struct SectionWater {
  SectionFlow flow;
  Slope energy_slope;
};

/// The bank stations that lie inside the survey: there the section is divided.
std::vector<Length> divisions_of(const SiteSection& section);

/// The part of the flow between the bank stations; nullptr where there is none.
const FlowPart* main_channel(const SectionFlow& flow, const SiteSection& section);

/// The uniform flows of a section, divided at its banks, which must outlive them.
UniformFlows uniform_flows_of(const SiteSection& section);

/// The water of a flow case: from the profile of `reach`, or uniform flow where that is nullptr.
/// Steps, sources and cautions go into the finding. Problems: those of normal_flow; "no-profile".
Expected<SectionWater> water_of_section(const SiteSection& section, UniformFlows& uniform,
                                        const FlowCase& flow_case, const ReachWater* reach,
                                        Finding& finding, const Wording& wording);

/// Whether the profile put critical flow at the section because nothing else would balance.
bool level_is_assumed(const ReachWater* reach, const SiteSection& section);

}  // namespace proofstone
