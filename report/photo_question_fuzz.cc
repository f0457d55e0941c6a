#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <nlohmann/json.hpp>

#include "report/photo_questions.h"

// Any text is answered with cautions, with nodes, or with problems that say what and why.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto answer = nlohmann::json::parse(proofstone::answer_photo_question(text));
  if (answer.contains("problems")) {
    if (answer["problems"].empty()) std::abort();
    return 0;
  }
  if (!answer.contains("cautions") && !answer.contains("nodes")) std::abort();
  return 0;
}
