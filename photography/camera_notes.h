#pragma once

#include <optional>
#include <string_view>

namespace proofstone {

/// What a camera notes in a JPEG file (Exif 2.3, JEITA CP-3451C, 4.6) that measuring needs.
struct CameraNotes {
  /// 1 as stored; 2 to 8 mirrored or turned, as Exif numbers it (tag 274).
  int orientation = 1;
  /// Of a camera with a 36 × 24 mm picture, in millimetres (tag 41989).
  std::optional<double> focal_length;
};

/// Reads notes from the bytes after "Exif" and two zeros. What cannot be read is left as unknown: a
/// photograph is no worse for it.
CameraNotes read_camera_notes(std::string_view bytes);

}  // namespace proofstone
