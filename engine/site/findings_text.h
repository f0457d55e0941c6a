#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "engine/json/json_text.h"
#include "engine/site/findings.h"

namespace proofstone {

/// The findings document (schema/findings.schema.json). Numbers stand in SI and, rounded as text,
/// in the unit system of the findings.
void write_findings(JsonText& into, const Findings& findings);
std::string findings_text(const Findings& findings);

/// One finding as the findings document holds it.
nlohmann::json finding_json(const Finding& finding, UnitSystem units);

/// A measure as JSON: si, kind, value, unit, text.
nlohmann::json measure_json(const Measure& measure, UnitSystem units, LengthUse use);

/// Steps as JSON, each with its value as measure_json writes it.
nlohmann::json steps_json(const Steps& steps, UnitSystem units);

}  // namespace proofstone
