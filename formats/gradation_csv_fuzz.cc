#include "formats/gradation_csv.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>

// Any bytes are read, or refused with a sentence and a code; nothing else may happen.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto table = proofstone::read_gradation_csv(bytes, "fuzz.csv");
  if (table) {
    if (table->points.size() < 2 || table->points.size() != table->units.size()) std::abort();
    return 0;
  }
  for (const auto& problem : table.problems()) {
    if (problem.code.empty() || problem.what.empty() || problem.file != "fuzz.csv") std::abort();
  }
  return 0;
}
