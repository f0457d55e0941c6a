#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"

namespace proofstone {

/// One finding for each zone of whose placing something was taken down at a check that its design
/// does not ask for: the design was changed since, or a name is wrong. What was taken down stays.
std::vector<Finding> unasked_check_findings(const Site& site);

}  // namespace proofstone
