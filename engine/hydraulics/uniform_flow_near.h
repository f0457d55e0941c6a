#pragma once

#include "engine/hydraulics/section_flow.h"

namespace proofstone {

/// What uniform flow is sought for.
struct UniformFlowCase {
  Discharge discharge;
  Slope slope;
  CompositeRoughness composite = CompositeRoughness::horton;
};

/// Uniform flow whose level lies next to a level that is known already, by widening a bracket
/// around that: for many trials of one section with slightly other roughness, where normal_flow,
/// which looks at every level, would take its time. Where conveyance falls for a while as water
/// spreads, it stays on the branch it began on as long as that carries the discharge.
///
/// Problem "overtopped": the section does not carry the discharge below its lower end.
Expected<SectionFlow> uniform_flow_near(const Section& section,
                                        const std::vector<Length>& divisions,
                                        const UniformFlowCase& sought, Length near);

}  // namespace proofstone
