#pragma once

#include <string>

namespace proofstone {

/// Text inside a Markdown table cell: "|" escaped, no line ends.
std::string markdown_cell(const std::string& text);

}  // namespace proofstone
