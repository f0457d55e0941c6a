#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace proofstone {

/// Whether `text` is a time such as "2026-05-04T15:10:00Z": RFC 3339 in UTC, to the second. Such
/// texts stand in the order of time when sorted.
bool is_utc_time(std::string_view text);

/// Whether `text` is a day of the calendar such as "2026-05-28".
bool is_day(std::string_view text);

/// Minutes that a clock is ahead of UTC: 120 for "+02:00", -360 for "-06:00"; as RFC 3339 writes
/// it, at most 14 hours. Nothing where it is not so written.
std::optional<int> clock_offset(std::string_view text);

/// What a clock so many minutes ahead of UTC shows at a time that `is_utc_time` takes:
/// "2026-05-04 09:10".
std::string clock_time(std::string_view utc_time, int minutes_ahead);

}  // namespace proofstone
