#pragma once

#include <cstdint>
#include <optional>

namespace proofstone {

/// The square marks of the board that gives a photo its scale: the first 24 of the open family
/// tag36h11 (AprilTag, University of Michigan). Eight by eight modules: a dark rim one module wide
/// round six by six that tell the number; any two, however turned, differ in 11 modules or more.
inline constexpr int marker_modules = 8;
inline constexpr int marker_inner_modules = 6;
inline constexpr int known_markers = 24;

/// The six by six inner modules row by row, the first in the highest of 36 bits; 1 is light.
using MarkerBits = std::uint64_t;

/// Inner modules of a marker. Precondition: 0 <= number < known_markers.
MarkerBits marker_bits(int number);

/// Whether a module of a marker is dark; columns and rows count from 0 at its upper left corner.
bool marker_module_is_dark(int number, int column, int row);

/// A marker that was read.
struct ReadMarker {
  int number = 0;
  int quarter_turns = 0;  ///< clockwise, by which the marker stands turned on the picture
};

/// The marker whose modules these are, in any of four turns, two modules of 36 misread at most.
std::optional<ReadMarker> read_marker(MarkerBits seen);

}  // namespace proofstone
