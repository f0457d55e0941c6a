#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/zone_slope.h"

namespace proofstone {

/// The ground that the cover of a bank or bed zone lies on.
struct CoveredSlope {
  Length from;                  ///< elevation from which it goes up
  Length top;                   ///< elevation at which it ends
  Angle angle;                  ///< from horizontal; zero on a bed
  Length length;                ///< along the ground, from its lower edge to its top; 0 on a bed
  std::optional<Length> along;  ///< along the stream
};

/// Nothing where the zone is no bank or bed of a section, or the level it begins at is not known.
std::optional<CoveredSlope> covered_slope(const Zone& zone, const SiteSection* section,
                                          const std::vector<ZoneWater>& waters);

/// A finding on the cover of a zone, called "cover.<zone>.<part>".
Finding begin_cover_finding(const Zone& zone, const std::string& part, const std::string& title);

/// The shear of one frequent flow at the lower edge of a cover.
struct ShearAtEdge {
  const ZoneWater* water = nullptr;
  Length depth;  ///< over the lower edge; not above 0 where the flow does not reach it
  Stress shear;
  Dimensionless bend_factor = Dimensionless::number(1);
};

/// Of every frequent flow whose water is known at the zone, by FHWA HEC-15 ch. 3 as the method
/// cover-line has it.
std::vector<ShearAtEdge> shear_at_edge(const CoveredSlope& slope,
                                       const std::vector<ZoneWater>& waters);

/// Puts a worse outcome over a better one, and its sentence behind what is said.
void worsen(Finding& finding, Outcome outcome, const std::string& sentence,
            const std::string& next);

}  // namespace proofstone
