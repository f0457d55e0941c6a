#pragma once

#include <string>

namespace proofstone {

/// The style sheet of the HTML report.
std::string html_style();

}  // namespace proofstone
