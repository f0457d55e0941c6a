#pragma once

#include <vector>

#include "engine/json/field_reader.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// The pictures of a photo look, as fields of the look itself.
PhotoSet read_photo_set(FieldReader& look, Problems& problems);

/// What the site found when it measured rock both ways: `photo_calibrations` of the evidence.
std::vector<PhotoCalibration> read_photo_calibrations(FieldReader& evidence, Problems& problems);

}  // namespace proofstone
