#include "cli/output.h"

#include <cstdio>
#include <nlohmann/json.hpp>

#include "cli/terminal_text.h"
#include "engine/json/problem_json.h"

namespace proofstone {

void print(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stdout); }
void complain(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stderr); }

int refuse(const Problems& problems, ExitCode code) {
  complain(problems_text(problems_json(problems)));
  return code;
}

ExitCode code_of(const Problems& problems) {
  // A document that is not JSON is the document's problem; all else here is about files.
  for (const auto& problem : problems) {
    const bool about_file = problem.code == "no-such-file" || problem.code == "not-a-file" ||
                            problem.code == "not-readable" || problem.code == "not-writable";
    if (about_file) return exit_failed;
  }
  return exit_problems;
}

}  // namespace proofstone
