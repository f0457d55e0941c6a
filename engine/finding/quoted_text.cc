#include "engine/finding/quoted_text.h"

#include <algorithm>

namespace proofstone {
namespace {

constexpr int longest_quotation = 40;

bool is_control(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte < 0x20 || byte == 0x7F;
}

}  // namespace

std::size_t utf8_character_length(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) return 1;
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || text.size() < length) return 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0) != 0x80) return 0;
  }
  const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
  const bool surrogate = lead == 0xED && byte(1) > 0x9F;
  const bool beyond_unicode = lead == 0xF4 && byte(1) > 0x8F;
  return overlong || surrogate || beyond_unicode ? 0 : length;
}

bool is_utf8(std::string_view text) {
  while (true) {
    // Most texts are plain ASCII to the end.
    const auto other = std::find_if(text.begin(), text.end(),
                                    [](char c) { return static_cast<unsigned char>(c) >= 0x80; });
    text.remove_prefix(static_cast<std::size_t>(other - text.begin()));
    if (text.empty()) return true;
    const std::size_t length = utf8_character_length(text);
    if (length == 0) return false;
    text.remove_prefix(length);
  }
}

std::string in_quotes(std::string_view text) {
  std::string shown = "“";
  for (int characters = 0; !text.empty(); ++characters) {
    if (characters == longest_quotation) {
      shown += "…";
      break;
    }
    const std::size_t length = utf8_character_length(text);
    if (length == 0 || is_control(text.front())) {
      shown += '?';
      text.remove_prefix(1);
    } else {
      shown += text.substr(0, length);
      text.remove_prefix(length);
    }
  }
  return shown + "”";
}

}  // namespace proofstone
