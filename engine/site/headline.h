#pragma once

#include "engine/site/findings.h"

namespace proofstone {

/// Writes the headline of what `findings` holds: the gravest outcome of the findings that speak for
/// a whole zone or lot, and each of them in a few words.
void write_headline(Findings& findings);

}  // namespace proofstone
