#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "engine/finding/problem.h"

namespace proofstone {

/// Writes an answer to the request "quantities" as a workbook (Office Open XML, .xlsx): the totals,
/// the zones, how each amount was computed, and where it all comes from. Numbers are numbers, with
/// their units beside them; there are no formulas, so that what is read is what the engine said.
/// The file is written beside its place and moved there. Problem "not-writable".
Problems write_quantities_workbook(const std::string& path, const nlohmann::json& answer);

}  // namespace proofstone
