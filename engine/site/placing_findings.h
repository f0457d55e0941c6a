#pragma once

#include "engine/site/findings.h"
#include "engine/site/zone_placing.h"

namespace proofstone {

/// The list of checks of a zone with its hold points, and, once its placing has begun, one finding
/// for each check.
std::vector<Finding> placing_findings(const ZonePlacing& placing, const Wording& wording);

/// The same as a record shows it.
PlacingRecord placing_record(const ZonePlacing& placing, const Wording& wording);

/// One finding for each nonconformance of the document: where it stands and what it blocks.
std::vector<Finding> nonconformance_findings(const Site& site);

}  // namespace proofstone
