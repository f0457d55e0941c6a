#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/vision/outline_network.h"

namespace proofstone {

/// A photograph out of a file.
struct Photograph {
  PhotoPixels pixels;  ///< upright, as the camera was held
  /// Of a camera with a 36 × 24 mm picture, in millimetres, where the file tells it.
  std::optional<double> focal_length;
};

/// Reads a photograph from the bytes of a JPEG, PNG or (where built with libheif) HEIC file; where
/// it was taken is not looked at.
/// Problems name the file: no photograph, a kind that is not read, cut off, damaged, more than 60
/// megapixels.
Expected<Photograph> read_photograph(std::string_view bytes, const std::string& file);

}  // namespace proofstone
