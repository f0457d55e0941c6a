#pragma once

#include <string>

#include "engine/json/field_reader.h"

namespace proofstone {

/// The field `position` of something seen: where the device was that took it down, WGS 84, as
/// {"latitude": "39.73921°", "longitude": "-104.99025°", "accuracy": "6 m",
/// "when": "2026-05-04T15:10:00Z"}. It is never required and enters no calculation: what comes back
/// are its words, "39.73921° N, 104.99025° W (within 6 m)", with the accuracy as it was written and
/// with the time of the fix where that is not `seen_when`; nothing where there is no position.
/// Five decimals are about a metre. Problems: a latitude beyond 90°, a longitude beyond 180°,
/// either without the other or written as a slope, an accuracy that is no distance on earth.
std::string read_position(FieldReader& parent, const std::string& seen_when, Problems& problems);

/// Two pieces of words with a semicolon between them; one alone where the other is empty.
std::string beside(const std::string& one, const std::string& other);

}  // namespace proofstone
