#pragma once

#include "engine/hydraulics/centreline.h"
#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// The bend of a centreline that a zone feels.
struct ZoneBend {
  PlanBend bend;
  BendSide side = BendSide::outside;
  Length below;  ///< how far the zone begins below the bend's end; 0 where it lies in the bend
};

/// The sharpest bend that a bank zone lies in, or else the nearest above it that it can still feel:
/// the raised velocity of the outer bank dies away below a bend by 0.1 for each width. Nothing on a
/// straight reach. `width` is that of the water in the main channel.
Expected<std::optional<ZoneBend>> bend_of_zone(const SiteCentreline& centreline, const Zone& zone,
                                               Length width);

/// Puts the bend of the zone's centreline into the setting of its water, unless the zone states one
/// itself; the finding says where it came from, and where the two differ.
void take_bend_from_plan(ZoneSetting& setting, const Site& site, const Zone& zone, Finding& finding,
                         const Wording& wording);

}  // namespace proofstone
