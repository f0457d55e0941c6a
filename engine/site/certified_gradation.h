#pragma once

#include "engine/rock/rock_class.h"
#include "engine/site/findings.h"
#include "engine/site/submittal.h"
#include "engine/site/wording.h"

namespace proofstone {

/// A certified gradation against the band of a class, condition by condition, the certificate taken
/// as exact: it says what was tested, not how surely.
Finding certificate_finding(const RockClass& rock_class, const Submittal& submittal,
                            const Wording& wording);

}  // namespace proofstone
