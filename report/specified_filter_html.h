#pragma once

#include <string>

#include "engine/site/wording.h"
#include "engine/specification/specified_filter.h"

namespace proofstone {

/// The sections of the specification sheet on beddings and geotextiles; empty where there are none.
std::string specified_filters_html(const SpecifiedFilters& filters, const Wording& wording);

}  // namespace proofstone
