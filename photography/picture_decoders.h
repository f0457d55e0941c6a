#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/vision/outline_network.h"
#include "photography/camera_notes.h"

namespace proofstone {

constexpr double most_megapixels = 60;

/// What a decoder made of a file: pixels, or why there are none.
struct DecodedFile {
  std::optional<PhotoPixels> pixels;
  std::string why_not;  ///< "it is cut off"
  CameraNotes notes;
};

/// By libjpeg.
DecodedFile decode_jpeg(std::string_view bytes);

/// By libpng; what is transparent becomes white.
DecodedFile decode_png(std::string_view bytes);

/// By libheif, upright already; none where this program was built without it.
DecodedFile decode_heif(std::string_view bytes);

/// Why a picture of this size is not read; empty if it is.
std::string why_too_large(double width, double height);

}  // namespace proofstone
