#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace proofstone {

/// About how wide a line of text is, in pixels, at a font size in pixels. Letters are taken as wide
/// as in the widest of the usual screen fonts, so that a label given this room does not overflow
/// it.
double text_width(std::string_view text, double font_size);

/// How much wider a text is in bold, at most.
inline constexpr double bold_width = 1.1;

/// The text in lines of at most `width` pixels, broken at spaces; a word wider than that stands on
/// a line of its own, cut where it must be.
std::vector<std::string> wrapped(std::string_view text, double width, double font_size);

/// The text cut to `width` pixels, with an ellipsis where something is left out.
std::string shortened(std::string_view text, double width, double font_size);

}  // namespace proofstone
