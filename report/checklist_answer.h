#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "engine/finding/problem.h"
#include "engine/quantity/measure.h"
#include "engine/site/site.h"

namespace proofstone {

/// What a screen needs to walk along a zone while it is built: the checks that the design of the
/// zone asks for, in the order of work, each with what is asked, how it is measured, what is taken
/// down of it (`takes`: "result", "lengths", "thicknesses" or "loads"), where it stands and what to
/// do next. A Problem when there is no such zone.
Expected<nlohmann::json> checklist_answer(const Site& site, const std::string& zone,
                                          UnitSystem units);

}  // namespace proofstone
