#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "engine/finding/problem.h"

namespace proofstone {

/// The largest table file that is read: 16 MB.
inline constexpr std::size_t largest_table_file = std::size_t{16} << 20;

/// The problem of a table file of `bytes` bytes, more than `largest_table_file`. Whoever opens
/// files asks for the size first and reports this instead of reading a gigabyte.
Problem table_file_too_large(const std::string& file, std::size_t bytes);

/// The text of a file without its byte order mark, as a view into `bytes`. Refused by name: too
/// large, empty, UTF-16 or UTF-32, a spreadsheet or another binary file, invalid UTF-8, control
/// characters.
Expected<std::string_view> file_text(std::string_view bytes, const std::string& file);

}  // namespace proofstone
