#pragma once

#include "cli/arguments.h"

namespace proofstone {

/// `proofstone outline PHOTO… [--out FILE] [--json]`: the stones on photographs, as the pictures of
/// a photo look. Returns the exit code; nothing is written unless every photograph could be used.
int outline_command(const Arguments& arguments);

}  // namespace proofstone
