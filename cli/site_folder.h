#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "engine/finding/problem.h"

namespace proofstone {

/// A site as it lies on disk: the text of the document and the files it names.
struct SiteFolder {
  std::string document;
  nlohmann::json files;  ///< [{name, text}], as the request interface takes them
};

/// Reads `path`: a folder with a site.json, or the document itself; the files the document names
/// are taken from the same folder. Problems name the file that could not be read.
Expected<SiteFolder> read_site_folder(const std::string& path);

/// Reads one file whole, or says why not: absent, not a file, larger than 64 MB.
Expected<std::string> read_text_file(const std::string& path);

/// Writes a file whole beside its place and moves it there, so that a failure leaves no half file.
/// Returns problems, none on success.
Problems write_text_file(const std::string& path, const std::string& text);

}  // namespace proofstone
