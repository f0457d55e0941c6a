#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace proofstone {

/// Bytes of the well-formed UTF-8 character (RFC 3629) at the start of `text`, or 0 when there is
/// none. `text` is not empty.
std::size_t utf8_character_length(std::string_view text);

/// Whether a text is well-formed UTF-8 (RFC 3629: no overlong forms, no surrogates).
bool is_utf8(std::string_view text);

/// What somebody wrote, fit to be shown in a message: in quotation marks, cut after 40 characters,
/// with control characters and bytes that are not UTF-8 shown as "?".
std::string in_quotes(std::string_view text);

}  // namespace proofstone
