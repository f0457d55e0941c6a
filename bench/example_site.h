#pragma once

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "engine/json/strict_json.h"
#include "formats/site_files.h"

namespace proofstone {

inline std::string read(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

/// The example site with its files read in.
inline nlohmann::json example_document() {
  const std::string folder = PROOFSTONE_SOURCE_FOLDER "/examples/sorrel-creek/";
  const auto document = parse_strict_json(read(folder + "site.json"));
  if (!document) return {};
  std::vector<SuppliedFile> files;
  for (const auto& name : files_named_in(*document)) files.push_back({name, read(folder + name)});
  const auto whole = with_files(*document, files);
  return whole ? *whole : nlohmann::json();
}

}  // namespace proofstone
