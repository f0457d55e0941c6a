#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "engine/site/site.h"

// Any bytes are a site, or are refused with a sentence and a code; nothing else may happen.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto site = proofstone::read_site(bytes);
  if (!site) {
    for (const auto& problem : site.problems()) {
      if (problem.code.empty() || problem.what.empty()) std::abort();
    }
  }
  return 0;
}
