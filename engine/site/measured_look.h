#pragma once

#include "engine/site/site.h"

namespace proofstone {

/// What share of the rock is smaller than a size by mass, by the conversion of the look's own kind.
/// Mass ranges become sizes of the intermediate axis at the density of the lot's source; they are
/// weighed and never mixed with numbers of stones. Precondition: gives_curve(look).
Expected<MeasuredGradation> measured_look(const Site& site, const Look& look);

}  // namespace proofstone
