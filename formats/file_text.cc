#include "formats/file_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/finding/quoted_text.h"

namespace proofstone {

namespace {

bool starts_with(std::string_view text, std::string_view start) {
  return text.substr(0, start.size()) == start;
}

Problem not_text(const std::string& code, const std::string& what, const std::string& file,
                 const std::string& where = {}) {
  return {code, what, file, where, "a text file saved as CSV in UTF-8"};
}

bool is_control(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return (byte < 0x20 && c != '\t') || byte == 0x7F;
}

Problem wide_encoding(const std::string& file) {
  return not_text("wrong-encoding", "The file is written in UTF-16 or UTF-32, not in UTF-8.", file);
}

/// Every second byte of the first bytes is NUL: Latin text in UTF-16 without a mark.
bool looks_like_utf16(std::string_view bytes) {
  const std::size_t pairs = std::min<std::size_t>(bytes.size() / 2, 16);
  if (pairs < 2) return false;
  for (const std::size_t offset : {std::size_t{0}, std::size_t{1}}) {
    bool all = true;
    for (std::size_t i = 0; i < pairs; ++i) all = all && bytes[2 * i + offset] == '\0';
    if (all) return true;
  }
  return false;
}

}  // namespace

Problem table_file_too_large(const std::string& file, std::size_t bytes) {
  const double megabytes = static_cast<double>(bytes) / (1024.0 * 1024.0);
  return {"too-large", fmt::format("The file holds {:.1f} MB, too much for a table.", megabytes),
          file, "", "a file of at most 16 MB"};
}

Expected<std::string_view> file_text(std::string_view bytes, const std::string& file) {
  if (bytes.size() > largest_table_file) return table_file_too_large(file, bytes.size());
  if (bytes.empty()) {
    return Problem{"empty-file", "The file is empty.", file, "", "a header row and rows below it"};
  }
  if (starts_with(bytes, "\xFF\xFE") || starts_with(bytes, "\xFE\xFF")) return wide_encoding(file);
  if (starts_with(bytes, "PK\x03\x04")) {
    return not_text("not-text", "The file is a spreadsheet or another packed file, not a CSV file.",
                    file);
  }
  if (bytes.find('\0') != std::string_view::npos) {
    if (looks_like_utf16(bytes)) return wide_encoding(file);
    return not_text("not-text", "The file is not text: it holds zero bytes.", file);
  }
  if (starts_with(bytes, "\xEF\xBB\xBF")) bytes.remove_prefix(3);

  int line = 1;
  for (std::size_t at = 0; at < bytes.size(); ++line) {
    const std::size_t end = std::min(bytes.find_first_of("\r\n", at), bytes.size());
    const auto content = bytes.substr(at, end - at);
    const std::string where = fmt::format("row {}", line);
    if (!is_utf8(content)) {
      return not_text("wrong-encoding", "The file is not written in UTF-8.", file, where);
    }
    if (std::any_of(content.begin(), content.end(), is_control)) {
      return not_text("not-text", "The file holds a control character.", file, where);
    }
    at = end + (bytes.substr(end, 2) == "\r\n" ? 2 : 1);
  }
  return bytes;
}

}  // namespace proofstone
