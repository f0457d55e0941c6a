#pragma once

#include "engine/hydraulics/energy_step.h"

namespace proofstone {

/// The level a boundary asks for at its section. Problems under "boundary".
Expected<SectionState> boundary_level(const Station& station, const Boundary& boundary,
                                      double discharge);

}  // namespace proofstone
