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

constexpr std::uintmax_t largest_file = std::uintmax_t{64} << 20;

Problem file_problem(std::string code, std::string what, const std::string& path,
                     std::string allowed) {
  return {std::move(code), std::move(what), path, "", std::move(allowed)};
}

}  // namespace

Expected<std::string> read_text_file(const std::string& path) {
  std::error_code error;
  const auto status = fs::status(path, error);
  if (error || !fs::exists(status)) {
    return file_problem("no-such-file", "This file does not exist.", path, "");
  }
  if (!fs::is_regular_file(status)) {
    return file_problem("not-a-file", "This is not a file.", path, "a file");
  }
  const auto size = fs::file_size(path, error);
  if (error || size > largest_file) {
    return file_problem("too-large", "This file is too large to be part of a site.", path,
                        "at most 64 MB");
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
  std::error_code error;
  const fs::path given(path);
  const fs::path document_path = fs::is_directory(given, error) ? given / "site.json" : given;
  auto document = read_text_file(document_path.string());
  if (!document) return document.problems();
  SiteFolder folder;
  folder.document = std::move(*document);
  folder.files = nlohmann::json::array();
  const auto parsed = parse_strict_json(folder.document);
  if (!parsed) {
    auto problems = parsed.problems();
    for (auto& problem : problems) problem.file = document_path.string();
    return problems;
  }
  Problems problems;
  for (const auto& name : files_named_in(*parsed)) {
    // Only the name is joined: with_files refuses names that lead out of the folder.
    const auto beside = document_path.parent_path() / fs::path(name).filename();
    auto text = read_text_file(beside.string());
    if (!text) {
      for (const auto& problem : text.problems()) problems.push_back(problem);
      continue;
    }
    if (const auto readable = file_text(*text, name); !readable) {
      for (const auto& problem : readable.problems()) problems.push_back(problem);
      continue;
    }
    folder.files.push_back({{"name", name}, {"text", std::move(*text)}});
  }
  if (!problems.empty()) return problems;
  return folder;
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
