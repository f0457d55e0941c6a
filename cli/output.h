#pragma once

#include <string>

#include "cli/exit_codes.h"
#include "engine/finding/problem.h"

namespace proofstone {

void print(const std::string& text);
void complain(const std::string& text);

/// Tells problems on the error stream and hands the exit code on.
int refuse(const Problems& problems, ExitCode code);

/// Whether problems are about files that cannot be read or written, or about what stands in them.
ExitCode code_of(const Problems& problems);

}  // namespace proofstone
