#pragma once

#include "cli/arguments.h"

namespace proofstone {

/// `proofstone pack SITE --out FILE.zip`: a whole site as one file. A site with problems is not
/// packed. Returns the exit code.
int pack_command(const Arguments& arguments);

/// `proofstone join ONE OTHER --out FILE.zip`: two copies of one site in one, with the changes that
/// cross named. Returns the exit code.
int join_command(const Arguments& arguments);

}  // namespace proofstone
