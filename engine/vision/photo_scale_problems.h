#pragma once

#include <string>

#include "engine/finding/problem.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// What is wrong with the camera and the marks of scale of a photo, before any scale is worked out.
/// Internal to photo_scale.
Problems problems_of_camera_and_marks(const Photo& photo, const std::string& where);

}  // namespace proofstone
