#pragma once

#include <string>

#include "engine/site/findings.h"

namespace proofstone {

/// The findings as one page of HTML to read, print and file: headline, every finding at a glance,
/// the pictures, and each finding with its working, sources, limits and cautions. The page is
/// complete in itself (no script, nothing loaded), follows the reader's light or dark screen, and
/// prints in black on white on A4 and on Letter with the working unfolded.
std::string html_report(const Findings& findings);

}  // namespace proofstone
