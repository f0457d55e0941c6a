#pragma once

#include <string>
#include <string_view>

namespace proofstone {

/// A field name as one step of a JSON pointer (RFC 6901): "~" as "~0" and "/" as "~1".
std::string pointer_step(std::string_view field);

}  // namespace proofstone
