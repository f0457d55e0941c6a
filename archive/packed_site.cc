#include "archive/packed_site.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <utility>

#include "engine/json/strict_json.h"

namespace proofstone {
namespace {

constexpr std::string_view document_name = "site.json";

std::size_t levels_above(const PackedFile& file) {
  return static_cast<std::size_t>(std::count(file.name.begin(), file.name.end(), '/'));
}

bool is_document(const PackedFile& file) {
  return file.name == document_name || file.name.ends_with("/site.json");
}

Expected<const PackedFile*> document_among(const std::vector<PackedFile>& files,
                                           const std::string& archive) {
  const PackedFile* found = nullptr;
  const PackedFile* as_near = nullptr;
  for (const auto& file : files) {
    if (!is_document(file)) continue;
    if (found == nullptr || levels_above(file) < levels_above(*found)) {
      found = &file;
      as_near = nullptr;
    } else if (levels_above(file) == levels_above(*found)) {
      as_near = &file;
    }
  }
  if (found == nullptr) {
    return Problem{"no-site", "There is no site in this archive.", archive, "",
                   "a site.json, and beside it the files that it names"};
  }
  if (as_near != nullptr) {
    return Problem{"several-sites",
                   fmt::format("There is more than one site in this archive: {} and {}.",
                               found->name, as_near->name),
                   archive, "", "one site.json nearest the top"};
  }
  return found;
}

}  // namespace

Expected<PackedSite> site_in_archive(std::string_view bytes, const std::string& file,
                                     PackedPhotos photos) {
  auto unpacked = read_zip(bytes, file, photos);
  if (!unpacked) return unpacked.problems();
  const auto found = document_among(*unpacked, file);
  if (!found) return found.problems();
  const std::string path = (*found)->name;
  const auto folder = path.substr(0, path.size() - document_name.size());
  PackedSite site;
  site.document = (*found)->bytes;
  const auto parsed = parse_strict_json(site.document);
  if (!parsed) {
    auto problems = parsed.problems();
    for (auto& problem : problems) problem.file = file + "/" + path;
    return problems;
  }
  const auto named = files_named_in(*parsed);
  for (auto& one : *unpacked) {
    if (!one.name.starts_with(folder)) continue;
    auto name = one.name.substr(folder.size());
    if (std::find(named.begin(), named.end(), name) != named.end()) {
      site.files.push_back({std::move(name), std::move(one.bytes)});
    } else if (!photo_hash_in(name).empty()) {
      site.photos.push_back({std::move(name), std::move(one.bytes)});
    }
  }
  return site;
}

Expected<std::string> archive_of(PackedSite site) {
  std::sort(site.files.begin(), site.files.end(),
            [](const auto& a, const auto& b) { return a.name < b.name; });
  std::sort(site.photos.begin(), site.photos.end(),
            [](const auto& a, const auto& b) { return a.name < b.name; });
  std::vector<PackedFile> files;
  files.push_back({std::string(document_name), std::move(site.document)});
  std::move(site.photos.begin(), site.photos.end(), std::back_inserter(files));
  for (auto& [name, text] : site.files) files.push_back({std::move(name), std::move(text)});
  return write_zip(files);
}

}  // namespace proofstone
