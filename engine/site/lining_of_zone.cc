#include "engine/site/lining_of_zone.h"

#include <iterator>

#include "engine/site/zone_cover_findings.h"
#include "engine/site/zone_kind_findings.h"

namespace proofstone {

std::vector<Finding> lining_findings(const Site& site, const Zone& zone,
                                     const std::vector<ZoneWater>& waters, const Wording& wording) {
  const SiteSection* section = zone.section.empty() ? nullptr : &site.sections.at(zone.section);
  auto findings = kind_findings(zone, section, waters, wording);
  auto cover = cover_findings(zone, section, waters, wording);
  std::move(cover.begin(), cover.end(), std::back_inserter(findings));
  return findings;
}

}  // namespace proofstone
