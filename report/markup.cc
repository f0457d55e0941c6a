#include "report/markup.h"

#include <algorithm>
#include <array>

#include "engine/finding/quoted_text.h"

namespace proofstone {

namespace {

constexpr std::string_view replacement = "\uFFFD";

bool is_one_of_between(std::string_view character, std::string_view first, std::string_view last) {
  // UTF-8 sorts as its code points do.
  return character.size() == first.size() && character >= first && character <= last;
}

bool may_not_be_shown(std::string_view character) {
  const auto byte = static_cast<unsigned char>(character.front());
  if (character.size() == 1) return (byte < 0x20 && character != "\n") || byte == 0x7F;
  return is_one_of_between(character, "\xC2\x80", "\xC2\x9F") ||  // C1 controls
         is_one_of_between(character, "\u200E", "\u200F") ||      // direction marks
         is_one_of_between(character, "\u2028", "\u202E") ||      // separators, embeddings
         is_one_of_between(character, "\u2066", "\u2069") ||      // isolates
         is_one_of_between(character, "\uFFFE", "\uFFFF");
}

std::string_view entity(char c) {
  switch (c) {
    case '&':
      return "&amp;";
    case '<':
      return "&lt;";
    case '>':
      return "&gt;";
    case '"':
      return "&quot;";
    case '\'':
      return "&#39;";
    default:
      return {};
  }
}

}  // namespace

std::string escaped(std::string_view text) {
  std::string result;
  result.reserve(text.size());
  while (!text.empty()) {
    const std::size_t length = utf8_character_length(text);
    const auto character = text.substr(0, std::max<std::size_t>(length, 1));
    text.remove_prefix(character.size());
    if (length == 0 || may_not_be_shown(character)) {
      result += replacement;
    } else if (const auto name = entity(character.front()); !name.empty()) {
      result += name;
    } else {
      result += character;
    }
  }
  return result;
}

std::string id_from(std::string_view text) {
  std::string id;
  for (const char c : text) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    id += plain ? c : '-';
  }
  return id;
}

}  // namespace proofstone
