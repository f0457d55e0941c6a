#pragma once

#include <string>
#include <string_view>

namespace proofstone {

/// SHA-256 of bytes (FIPS 180-4, 6.2) as 64 hexadecimal digits: the name of a photo in a document.
std::string photo_digest(std::string_view bytes);

}  // namespace proofstone
