#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>

#include "archive/packed_site.h"
#include "engine/finding/problem.h"

namespace proofstone {

/// A site as it lies on disk: the text of the document and the files it names.
struct SiteFolder {
  std::string document;
  nlohmann::json files;  ///< [{name, text}], as the request interface takes them
};

/// Reads `path`: a folder with a site.json, the document itself, or a whole site as a ZIP. The
/// files that the document names are taken from the same folder. Problems name the file that could
/// not be read.
Expected<SiteFolder> read_site_folder(const std::string& path);

/// The same with the photos, which a folder holds under photos/, by the hashes of their bytes.
Expected<PackedSite> read_whole_site(const std::string& path);

/// Reads one file whole, or says why not: absent, not a file, larger than `largest` bytes.
Expected<std::string> read_text_file(const std::string& path,
                                     std::uintmax_t largest = std::uintmax_t{64} << 20);

/// Writes a file whole beside its place and moves it there, so that a failure leaves no half file.
/// Returns problems, none on success.
Problems write_text_file(const std::string& path, const std::string& text);

}  // namespace proofstone
