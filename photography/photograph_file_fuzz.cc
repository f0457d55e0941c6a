#include "photography/photograph_file.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>

// Any bytes are read, or refused with a sentence that names the file; nothing else may happen.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto photograph = proofstone::read_photograph(bytes, "fuzz.jpg");
  if (!photograph) {
    for (const auto& problem : photograph.problems()) {
      if (problem.code.empty() || problem.what.empty() || problem.file != "fuzz.jpg") std::abort();
    }
    return 0;
  }
  const auto& pixels = photograph->pixels;
  const auto count =
      static_cast<std::size_t>(pixels.width) * static_cast<std::size_t>(pixels.height);
  if (pixels.rgb.size() != 3 * count) std::abort();
  return 0;
}
