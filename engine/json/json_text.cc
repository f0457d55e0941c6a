#include "engine/json/json_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <iterator>

#include "engine/finding/quoted_text.h"

namespace proofstone {
namespace {

constexpr std::string_view replacement_character = "\xEF\xBF\xBD";

/// Whether a byte stands in a JSON string as it is.
bool is_plain(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte >= 0x20 && byte < 0x80 && c != '"' && c != '\\';
}

/// The highest bit of each of eight bytes in which one of them is zero; of bytes above a zero one,
/// perhaps others too.
constexpr std::uint64_t each_byte = 0x0101010101010101;
constexpr std::uint64_t highest_bits = 0x80 * each_byte;
std::uint64_t zero_among(std::uint64_t bytes) {
  return (bytes - each_byte) & ~bytes & highest_bits;
}

/// How many bytes at the beginning are plain. Nearly all that is said is, so that it is looked at
/// eight bytes at a time.
std::size_t plain_bytes(std::string_view text) {
  std::size_t at = 0;
  for (std::uint64_t eight = 0; at + sizeof eight <= text.size(); at += sizeof eight) {
    std::memcpy(&eight, text.data() + at, sizeof eight);
    const std::uint64_t below_space = (eight - 0x20 * each_byte) & ~eight & highest_bits;
    const std::uint64_t other = (eight & highest_bits) | below_space |
                                zero_among(eight ^ ('"' * each_byte)) |
                                zero_among(eight ^ ('\\' * each_byte));
    if (other != 0) break;
  }
  while (at < text.size() && is_plain(text[at])) ++at;
  return at;
}

/// The escape of a character below the space, or of a quotation mark or backslash.
void append_escape(std::string& text, char c) {
  switch (c) {
    case '"':
      text += "\\\"";
      return;
    case '\\':
      text += "\\\\";
      return;
    case '\n':
      text += "\\n";
      return;
    default:
      fmt::format_to(std::back_inserter(text), "\\u{:04x}", static_cast<unsigned char>(c));
  }
}

void append_string(std::string& text, std::string_view what) {
  text += '"';
  while (!what.empty()) {
    const std::size_t plain = plain_bytes(what);
    text += what.substr(0, plain);
    what.remove_prefix(plain);
    if (what.empty()) break;
    const std::size_t length = utf8_character_length(what);
    if (length == 0) {
      text += replacement_character;
    } else if (length == 1) {
      append_escape(text, what.front());
    } else {
      text += what.substr(0, length);
    }
    what.remove_prefix(std::max<std::size_t>(length, 1));
  }
  text += '"';
}

}  // namespace

JsonText& JsonText::key(std::string_view name) {
  separate();
  text_ += '"';
  text_ += name;
  text_ += "\":";
  needs_comma_ = false;
  return *this;
}

JsonText& JsonText::value(std::string_view text) {
  separate();
  append_string(text_, text);
  return *this;
}

JsonText& JsonText::value(double number) {
  separate();
  if (std::isfinite(number)) {
    fmt::format_to(std::back_inserter(text_), "{}", number);
  } else {
    text_ += "null";
  }
  return *this;
}

JsonText& JsonText::value(int number) {
  separate();
  fmt::format_to(std::back_inserter(text_), "{}", number);
  return *this;
}

JsonText& JsonText::value(bool truth) {
  separate();
  text_ += truth ? "true" : "false";
  return *this;
}

JsonText& JsonText::value(const std::vector<std::string>& texts) {
  begin_array();
  for (const auto& text : texts) value(text);
  return end_array();
}

JsonText& JsonText::begin(char bracket) {
  separate();
  text_ += bracket;
  needs_comma_ = false;
  return *this;
}

JsonText& JsonText::end(char bracket) {
  text_ += bracket;
  needs_comma_ = true;
  return *this;
}

void JsonText::separate() {
  if (needs_comma_) text_ += ',';
  needs_comma_ = true;
}

}  // namespace proofstone
