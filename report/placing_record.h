#pragma once

#include <string>

#include "engine/site/findings.h"

namespace proofstone {

/// The checks of every zone in the order of work, with what was seen of each and room to sign where
/// nothing was seen yet; empty where there are none.
std::string placing_record_html(const Findings& findings);

}  // namespace proofstone
