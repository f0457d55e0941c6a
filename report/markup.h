#pragma once

#include <string>
#include <string_view>

namespace proofstone {

/// A text fit to stand between the tags, or in a quoted attribute, of SVG and HTML. Markup
/// characters are escaped; bytes that are not UTF-8, control characters (but for the line break)
/// and the marks that turn the direction of writing round are shown as U+FFFD, so that a name can
/// neither break the page nor read as something it is not.
std::string escaped(std::string_view text);

/// A text fit to be an id: ASCII letters, digits and hyphens; anything else becomes a hyphen.
std::string id_from(std::string_view text);

}  // namespace proofstone
