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

}  // namespace proofstone
