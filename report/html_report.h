#pragma once

#include <string>

#include "report/paper.h"

namespace proofstone {

/// A paper as one page of HTML to read, print and file: headline, what was done and seen, every
/// finding at a glance, the pictures, and each finding with its working, sources, limits and
/// cautions. The page is complete in itself (no script, nothing loaded), follows the reader's light
/// or dark screen, and prints in black on white on A4 and on Letter with the working unfolded.
std::string html_report(const Paper& paper);

}  // namespace proofstone
