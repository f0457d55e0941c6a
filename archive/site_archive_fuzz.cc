#include <cstddef>
#include <cstdint>
#include <cstdlib>

#include "archive/packed_site.h"

// Any bytes are a site, or refused with a sentence that names the archive; and what was a site is
// one again after it is packed anew.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace proofstone;
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto site = site_in_archive(bytes, "fuzz.zip", PackedPhotos::unpacked);
  if (!site) {
    for (const auto& problem : site.problems()) {
      if (problem.code.empty() || problem.what.empty() || !problem.file.starts_with("fuzz.zip")) {
        std::abort();
      }
    }
    return 0;
  }
  const auto packed = archive_of(*site);
  if (!packed) return 0;  // no memory, or a name that no archive can hold
  const auto again = site_in_archive(*packed, "again.zip", PackedPhotos::unpacked);
  if (!again || again->document != site->document || again->files.size() != site->files.size() ||
      again->photos.size() != site->photos.size()) {
    std::abort();
  }
  return 0;
}
