#pragma once

#include "engine/hydraulics/section.h"

namespace proofstone {

/// The ground of a section between two stations, left before right.
struct SectionStretch {
  Length left;
  Length right;
};

/// The section with Manning's n of the ground in a stretch replaced; points are put in where the
/// stretch begins and ends between surveyed ones. What of the stretch lies outside the section is
/// passed over. Problems: those of Section::make.
Expected<Section> with_roughness(const Section& section, const SectionStretch& stretch,
                                 Dimensionless roughness);

}  // namespace proofstone
