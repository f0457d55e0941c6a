#pragma once

#include <string>

#include "engine/quantity/measure.h"
#include "engine/specification/specification.h"

namespace proofstone {

/// What quarry and contractor must deliver as one page of HTML to read, print and hand on: for each
/// class its sizes, masses and limits; tests of the source; how often, how lots are accepted, how
/// rock is placed; cautions. Complete in itself, like the report.
std::string specification_html(const Specification& specification, UnitSystem units);

}  // namespace proofstone
