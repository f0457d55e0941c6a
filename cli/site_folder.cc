#include "cli/site_folder.h"

#include <fmt/format.h>

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <system_error>

#include "engine/json/strict_json.h"
#include "formats/file_text.h"
#include "formats/site_files.h"

namespace proofstone {
namespace {

namespace fs = std::filesystem;

Problem file_problem(const std::string& code, const std::string& what, const std::string& path,
                     const std::string& allowed) {
  return {code, what, path, "", allowed};
}

/// Whether a path is that of a packed site: by how its file begins, or else by its name.
bool is_archive(const fs::path& path) {
  std::error_code error;
  if (!fs::is_regular_file(path, error)) return false;
  if (path.extension() == ".zip") return true;
  std::string head(4, '\0');
  std::ifstream stream(path, std::ios::binary);
  stream.read(head.data(), static_cast<std::streamsize>(head.size()));
  return looks_like_zip(head);
}

Expected<PackedSite> read_archive(const std::string& path, PackedPhotos photos) {
  const auto bytes = read_text_file(path, largest_archive);
  if (!bytes) return bytes.problems();
  return site_in_archive(*bytes, path, photos);
}

/// A document and the files that it names beside it; no photos.
Expected<PackedSite> read_folder(const fs::path& document_path) {
  auto document = read_text_file(document_path.string());
  if (!document) return document.problems();
  const auto parsed = parse_strict_json(*document);
  if (!parsed) {
    auto problems = parsed.problems();
    for (auto& problem : problems) problem.file = document_path.string();
    return problems;
  }
  PackedSite site;
  site.document = std::move(*document);
  Problems problems;
  for (const auto& name : files_named_in(*parsed)) {
    // Only the name is joined: with_files refuses names that lead out of the folder.
    const auto beside = document_path.parent_path() / fs::path(name).filename();
    auto text = read_text_file(beside.string());
    if (!text) {
      for (const auto& problem : text.problems()) problems.push_back(problem);
      continue;
    }
    site.files.push_back({name, std::move(*text)});
  }
  if (!problems.empty()) return problems;
  return site;
}

Problems read_photos(const fs::path& folder, PackedSite& site) {
  std::error_code error;
  std::uint64_t bytes = 0;
  for (const auto& entry : fs::directory_iterator(folder / "photos", error)) {
    const auto name = "photos/" + entry.path().filename().string();
    if (photo_hash_in(name).empty()) continue;
    auto photo = read_text_file(entry.path().string());
    if (!photo) return photo.problems();
    bytes += photo->size();
    if (bytes > largest_packed_photos || site.photos.size() == most_packed_files) {
      return {file_problem("too-large", "The photos of this site are too many for one archive.",
                           (folder / "photos").string(),
                           fmt::format("at most {} MB of photos", largest_packed_photos >> 20))};
    }
    site.photos.push_back({name, std::move(*photo)});
  }
  return {};
}

/// The path of the document that is meant by a path of the command line.
fs::path document_at(const std::string& path) {
  std::error_code error;
  const fs::path given(path);
  return fs::is_directory(given, error) ? given / "site.json" : given;
}

}  // namespace

Expected<std::string> read_text_file(const std::string& path, std::uintmax_t largest) {
  std::error_code error;
  const auto status = fs::status(path, error);
  if (error || !fs::exists(status)) {
    return file_problem("no-such-file", "This file does not exist.", path, "");
  }
  if (!fs::is_regular_file(status)) {
    return file_problem("not-a-file", "This is not a file.", path, "a file");
  }
  const auto size = fs::file_size(path, error);
  if (error || size > largest) {
    return file_problem("too-large", "This file is too large to be part of a site.", path,
                        fmt::format("at most {} MB", largest >> 20));
  }
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  if (!stream || stream.bad()) {
    // An empty stream sets failbit on operator<<; that is no error.
    if (size != 0) return file_problem("not-readable", "This file could not be read.", path, "");
  }
  return text.str();
}

Expected<SiteFolder> read_site_folder(const std::string& path) {
  auto site = is_archive(path) ? read_archive(path, PackedPhotos::named_only)
                               : read_folder(document_at(path));
  if (!site) return site.problems();
  SiteFolder folder;
  folder.document = std::move(site->document);
  folder.files = nlohmann::json::array();
  Problems problems;
  for (auto& [name, text] : site->files) {
    if (const auto readable = file_text(text, name); !readable) {
      for (const auto& problem : readable.problems()) problems.push_back(problem);
      continue;
    }
    folder.files.push_back({{"name", name}, {"text", std::move(text)}});
  }
  if (!problems.empty()) return problems;
  return folder;
}

Expected<PackedSite> read_whole_site(const std::string& path) {
  if (is_archive(path)) return read_archive(path, PackedPhotos::unpacked);
  const auto document = document_at(path);
  auto site = read_folder(document);
  if (!site) return site;
  if (auto problems = read_photos(document.parent_path(), *site); !problems.empty()) {
    return problems;
  }
  return site;
}

Problems write_text_file(const std::string& path, const std::string& text) {
  const std::string beside = path + ".part";
  {
    std::ofstream stream(beside, std::ios::binary | std::ios::trunc);
    stream << text;
    stream.flush();
    if (!stream) {
      std::error_code ignored;
      fs::remove(beside, ignored);
      return {file_problem("not-writable", "This file could not be written.", path,
                           "a path in a folder that exists and can be written")};
    }
  }
  std::error_code error;
  fs::rename(beside, path, error);
  if (error) {
    std::error_code ignored;
    fs::remove(beside, ignored);
    return {file_problem("not-writable", "This file could not be put in its place.", path, "")};
  }
  return {};
}

}  // namespace proofstone
