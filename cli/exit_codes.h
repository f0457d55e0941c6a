#pragma once

namespace proofstone {

/// What the command line tells a script. A stable contract, listed by `proofstone help`.
enum ExitCode {
  exit_done = 0,              ///< done; with --gate: the headline outcome is "meets"
  exit_failed = 1,            ///< a file could not be read or written, or a check did not pass
  exit_usage = 2,             ///< the command line itself is wrong
  exit_problems = 3,          ///< the document or an input has problems
  exit_falls_short = 4,       ///< with --gate only
  exit_not_yet_known = 5,     ///< with --gate only
  exit_ask_the_designer = 6,  ///< with --gate only
};

}  // namespace proofstone
