#pragma once

#include <cmath>

#include "report/svg_canvas.h"

namespace proofstone {

// What all pictures have alike, in pixels.
inline constexpr double font_size = 13;
inline constexpr double line_height = 18;
inline constexpr double mark_size = 18;
inline constexpr double row_gap = 14;
inline constexpr double side_room = 12;
/// Left of a picture, for the words of an axis.
inline constexpr double axis_room = 46;
/// Narrower pictures are for a phone.
inline constexpr double phone = 560;
inline constexpr int most_ticks = 6;

inline constexpr TextStyle quiet_text{font_size, TextAnchor::start, Ink::muted, false, false, {}};

inline constexpr Paint ground_fill{Ink::stone_1, 1, Ink::none, 0, {}, "ground"};
inline constexpr Paint ground_line{Ink::none, 1, Ink::ink, 1.75, {}, "ground-line"};
inline constexpr Paint water_fill{Ink::river, 0.14, Ink::none, 0, {}, "water"};

/// Whether a size can be drawn.
inline bool is_size(Length size) { return std::isfinite(size.si()) && size.si() > 0; }

}  // namespace proofstone
