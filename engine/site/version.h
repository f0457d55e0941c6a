#pragma once

#include <string_view>

namespace proofstone {

/// Version of the engine; findings carry it.
inline constexpr std::string_view engine_version = "0.1.0";

}  // namespace proofstone
