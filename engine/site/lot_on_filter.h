#pragma once

#include <optional>

#include "engine/site/findings.h"
#include "engine/site/lot_evidence.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// The rock of a lot as it was measured on what lies below it in a zone, with its limits of
/// confidence: it meets (falls short) when the coarsest and the finest rock that the looks leave
/// possible do so too, else it is not yet known. Absent where the rock is filled, and where neither
/// soil, filter nor curve is known.
std::optional<Finding> lot_on_filter(const Site& site, const Zone& zone,
                                     const LotEvidence& evidence, const Wording& wording);

}  // namespace proofstone
