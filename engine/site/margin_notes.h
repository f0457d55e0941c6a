#pragma once

#include "engine/site/density_scatter.h"
#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// What the scatter of the density tests does to the size needed, and the margin if all the rock
/// were as light as the lightest.
void note_density(Finding& finding, const RockSource& source, const MeasuredMargin& measured,
                  const DensityScatter& scatter);

/// Where the method lets a thicker layer carry smaller stones: what its coefficient would have to
/// be, and how thick the layer lies. The size needed is proportional to the coefficient.
void note_thickness(Finding& finding, const Site& site, const Zone& zone,
                    const MeasuredMargin& measured, const Wording& wording);

}  // namespace proofstone
