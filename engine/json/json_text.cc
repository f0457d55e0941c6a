#include "engine/json/json_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>

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

char* put(char* at, std::string_view text) { return std::copy(text.begin(), text.end(), at); }

/// "\u00b7": of half a character beyond 16 bits, or of a whole one.
char* put_escape(char* at, std::uint32_t unit) {
  constexpr std::string_view digits = "0123456789abcdef";
  at = put(at, "\\u");
  for (int shift = 12; shift >= 0; shift -= 4) *at++ = digits[(unit >> shift) & 0xF];
  return at;
}

/// The number of a character of several bytes in UTF-8.
std::uint32_t code_point(std::string_view character) {
  auto code = static_cast<std::uint32_t>(static_cast<unsigned char>(character.front()));
  code &= 0x7FU >> character.size();
  for (const char c : character.substr(1))
    code = code << 6 | (static_cast<std::uint32_t>(c) & 0x3F);
  return code;
}

char* put_code_point(char* at, std::uint32_t code) {
  if (code < 0x10000) return put_escape(at, code);
  const std::uint32_t beyond = code - 0x10000;
  return put_escape(put_escape(at, 0xD800 | beyond >> 10), 0xDC00 | (beyond & 0x3FF));
}

/// A character below the space, or a quotation mark or backslash.
char* put_special(char* at, char c) {
  switch (c) {
    case '"':
      return put(at, "\\\"");
    case '\\':
      return put(at, "\\\\");
    case '\n':
      return put(at, "\\n");
    default:
      return put_escape(at, static_cast<unsigned char>(c));
  }
}

constexpr std::size_t longest_escape = 6;  ///< of one byte
constexpr std::size_t longest_number = 32;

}  // namespace

char* JsonText::room_for(std::size_t bytes) {
  if (space_.size() - size_ < bytes) space_.resize(2 * space_.size() + bytes);
  return space_.data() + size_;
}

char* JsonText::separated(char* at) {
  if (needs_comma_) *at++ = ',';
  needs_comma_ = true;
  return at;
}

char* JsonText::character(char* at, std::string_view what, std::size_t length) const {
  if (length == 1) return put_special(at, what.front());
  const std::string_view letter = length == 0 ? replacement_character : what.substr(0, length);
  return letters_ == Letters::escaped ? put_code_point(at, code_point(letter)) : put(at, letter);
}

char* JsonText::string(char* at, std::string_view what) const {
  *at++ = '"';
  while (true) {
    const std::size_t plain = plain_bytes(what);
    at = put(at, what.substr(0, plain));
    what.remove_prefix(plain);
    if (what.empty()) break;
    const std::size_t length = utf8_character_length(what);
    at = character(at, what, length);
    what.remove_prefix(std::max<std::size_t>(length, 1));
  }
  *at++ = '"';
  return at;
}

JsonText& JsonText::key(std::string_view name) {
  char* at = separated(room_for(name.size() + 4));
  *at++ = '"';
  at = put(at, name);
  wrote_to(put(at, "\":"));
  needs_comma_ = false;
  return *this;
}

JsonText& JsonText::value(std::string_view text) {
  wrote_to(string(separated(room_for(longest_escape * text.size() + 3)), text));
  return *this;
}

JsonText& JsonText::value(double number) {
  char* at = separated(room_for(longest_number));
  wrote_to(std::isfinite(number) ? fmt::format_to(at, "{}", number) : put(at, "null"));
  return *this;
}

JsonText& JsonText::value(int number) {
  wrote_to(fmt::format_to(separated(room_for(longest_number)), "{}", number));
  return *this;
}

JsonText& JsonText::value(bool truth) {
  wrote_to(put(separated(room_for(longest_number)), truth ? "true" : "false"));
  return *this;
}

JsonText& JsonText::value(const std::vector<std::string>& texts) {
  begin_array();
  for (const auto& text : texts) value(text);
  return end_array();
}

std::string JsonText::take() {
  space_.resize(size_);
  size_ = 0;
  return std::move(space_);
}

JsonText& JsonText::begin(char bracket) {
  char* at = separated(room_for(2));
  *at++ = bracket;
  wrote_to(at);
  needs_comma_ = false;
  return *this;
}

JsonText& JsonText::end(char bracket) {
  char* at = room_for(1);
  *at++ = bracket;
  wrote_to(at);
  needs_comma_ = true;
  return *this;
}

}  // namespace proofstone
