#pragma once

#include "engine/hydraulics/section.h"

namespace proofstone {

/// The section with vertical walls at its ends up to `level`, where they end below it: what the
/// water leans against where it stands above the survey. The walls have the roughness of the ground
/// beside them. Whoever uses it says so. Problems: those of Section::make.
Expected<Section> extended_to(const Section& section, Length level);

}  // namespace proofstone
