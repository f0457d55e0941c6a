#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <nlohmann/json.hpp>

#include "report/outline_answers.h"

// Any text is answered with outlines of three corners or more, or with problems that say what and
// why; nothing else may happen.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto answer = nlohmann::json::parse(proofstone::answer_outline_edit(text));
  if (answer.contains("problems")) {
    if (answer["problems"].empty()) std::abort();
    for (const auto& problem : answer["problems"]) {
      if (problem["code"].empty() || problem["what"].empty()) std::abort();
    }
    return 0;
  }
  if (answer["outlines"].empty()) std::abort();
  for (const auto& outline : answer["outlines"]) {
    if (outline.size() < 3) std::abort();
  }
  return 0;
}
