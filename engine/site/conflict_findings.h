#pragma once

#include "engine/site/findings.h"
#include "engine/site/revision_conflict.h"
#include "engine/site/site.h"

namespace proofstone {

/// Conflicts as a site holds them; `state` is the fold, which knows what things are called.
std::vector<SiteConflict> in_words(const std::vector<RevisionConflict>& conflicts,
                                   const nlohmann::json& state);

/// One finding for each conflict of the record that nobody has settled: what stands, what does not.
std::vector<Finding> conflict_findings(const Site& site);

}  // namespace proofstone
