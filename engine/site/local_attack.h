#pragma once

#include "engine/hydraulics/slice_flow.h"
#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"
#include "engine/site/zone_water.h"

namespace proofstone {

/// Adds to the finding of a zone's water what the water does at the zone's own place: slice
/// velocity, unit discharge, shear and Froude number, and in a bend the velocity and shear at the
/// outer bank and the rise of the water there. Where the zone states its velocity, nothing is
/// added.
void add_local_attack(ZoneWater& water, const Zone& zone, const SiteSection& section,
                      const Wording& wording);

/// The water of a section slice by slice, from left to right; each part of the flow shares its own
/// discharge. Empty where nothing flows.
std::vector<FlowSlice> slices_across(const SiteSection& section, const SectionFlow& flow,
                                     Slope energy_slope);

/// How far the water stands higher than its mean level along the zone: the superelevation at the
/// outer bank of a bend, else zero.
Length rise_at_zone(const ZoneSetting& setting);

}  // namespace proofstone
