#pragma once

#include <string_view>

namespace proofstone {

/// Whether `text` is a time such as "2026-05-04T15:10:00Z": RFC 3339 in UTC, to the second. Such
/// texts stand in the order of time when sorted.
bool is_utc_time(std::string_view text);

}  // namespace proofstone
