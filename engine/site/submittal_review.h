#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What a submittal shows: one finding for each test that some limit in force asks for, one for the
/// certified gradation against the band of the class, one that brings them together. Where no set
/// of limits is chosen, the published ones are all shown, and where they disagree it is for the
/// designer to choose.
std::vector<Finding> review_submittal(const Site& site, const Submittal& submittal,
                                      const Wording& wording);

}  // namespace proofstone
