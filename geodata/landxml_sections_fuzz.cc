#include "geodata/landxml_sections.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>

// Any bytes are read, or refused with a sentence and a code; nothing else may happen.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto survey = proofstone::read_landxml_sections(bytes, "fuzz.xml", "");
  if (!survey) {
    for (const auto& problem : survey.problems()) {
      if (problem.code.empty() || problem.what.empty() || problem.file != "fuzz.xml") std::abort();
    }
  }
  return 0;
}
