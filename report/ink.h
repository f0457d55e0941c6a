#pragma once

#include <string_view>

namespace proofstone {

/// The colours of pictures and reports: stone greys, one river blue, one warning ochre. Pictures
/// name them as CSS custom properties, so that the page around decides between light, dark and
/// print.
enum class Ink { none, ink, muted, line, paper, stone_1, stone_2, stone_3, river, ochre };

/// The value of a `fill` or `stroke`: "var(--river, #1d5c87)". What follows the comma is used where
/// a picture stands alone.
std::string_view ink_value(Ink ink);

/// Declarations of the custom properties for a page, "--ink: #23272a; …".
std::string_view light_inks();
std::string_view dark_inks();

}  // namespace proofstone
