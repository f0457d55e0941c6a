#pragma once

#include "engine/evidence/observation.h"
#include "engine/json/field_reader.h"

namespace proofstone {

/// Who, when, where with the position of the device, instrument, photos and note, as fields of
/// `reader` itself; who and when are required where `signed_off`.
Observation read_observation(FieldReader& reader, Problems& problems, bool signed_off = false);

/// Photos as SHA-256 of their files.
std::vector<std::string> read_photos(FieldReader& reader);

}  // namespace proofstone
