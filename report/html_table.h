#pragma once

#include <string>
#include <vector>

namespace proofstone {

/// A table of texts, which are escaped; every cell carries the name of its column, so that a narrow
/// screen can show a row as a list. Precondition: no row is longer than `columns`.
std::string html_table(const std::vector<const char*>& columns,
                       const std::vector<std::vector<std::string>>& rows);

/// A list of sentences, which are escaped.
std::string html_list(const std::vector<std::string>& lines);

}  // namespace proofstone
