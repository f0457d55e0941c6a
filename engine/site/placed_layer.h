#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// One finding for each survey of a zone's layer: its mean thickness with a lower bound against the
/// thickness of the zone, and its thinnest point against the least thickness where one is stated.
std::vector<Finding> placed_layer_findings(const Site& site, const Zone& zone,
                                           const Wording& wording);

}  // namespace proofstone
