#pragma once

#include "cli/arguments.h"

namespace proofstone {

/// `proofstone board NUMBER --out FILE.svg [--edge "65 mm"]`: a marker board to print. Returns the
/// exit code.
int board_command(const Arguments& arguments);

}  // namespace proofstone
