#include "report/text_width.h"

#include <algorithm>

#include "engine/finding/quoted_text.h"

namespace proofstone {

namespace {

/// Advance of an ASCII character in thousandths of the font size, after DejaVu Sans, the widest of
/// the fonts that pictures ask for.
int ascii_advance(char c) {
  if (c >= '0' && c <= '9') return 636;
  if (std::string_view("ijlI'|").find(c) != std::string_view::npos) return 300;
  if (std::string_view(" ,.:;!/\\ftr()[]-\"`").find(c) != std::string_view::npos) return 400;
  if (std::string_view("mwMW%@").find(c) != std::string_view::npos) return 970;
  if (std::string_view("+<>=~#").find(c) != std::string_view::npos) return 838;
  if (c >= 'A' && c <= 'Z') return 720;
  return 620;
}

std::string_view first_character(std::string_view text) {
  return text.substr(0, std::max<std::size_t>(1, utf8_character_length(text)));
}

double advance(std::string_view character, double font_size) {
  int thousandths = 1050;  // ideographs, emoji
  if (character.size() == 1) {
    thousandths = ascii_advance(character.front());
  } else if (character.size() == 2) {
    thousandths = 720;  // accented letters, Greek, Cyrillic, superscripts
  } else if (character < "\u3000") {
    thousandths = 838;  // dashes, arrows, mathematical signs
  }
  return font_size * thousandths / 1000;
}

/// How many bytes of whole characters fit into `width`; at least one character.
std::size_t fitting_bytes(std::string_view text, double width, double font_size) {
  std::size_t bytes = 0;
  double used = 0;
  while (bytes < text.size()) {
    const auto character = first_character(text.substr(bytes));
    used += advance(character, font_size);
    if (used > width && bytes > 0) break;
    bytes += character.size();
  }
  return bytes;
}

}  // namespace

double text_width(std::string_view text, double font_size) {
  double width = 0;
  while (!text.empty()) {
    const auto character = first_character(text);
    width += advance(character, font_size);
    text.remove_prefix(character.size());
  }
  return width;
}

std::vector<std::string> wrapped(std::string_view text, double width, double font_size) {
  std::vector<std::string> lines;
  std::string line;
  const auto end_line = [&] {
    if (!line.empty()) lines.push_back(std::move(line));
    line.clear();
  };
  while (!text.empty()) {
    const auto space = text.find(' ');
    std::string_view word = text.substr(0, space);
    text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
    if (word.empty()) continue;
    if (!line.empty() && text_width(line + " " + std::string(word), font_size) > width) end_line();
    while (line.empty() && text_width(word, font_size) > width) {
      const auto bytes = fitting_bytes(word, width, font_size);
      if (bytes == word.size()) break;
      lines.emplace_back(word.substr(0, bytes));
      word.remove_prefix(bytes);
    }
    if (!line.empty()) line += ' ';
    line += word;
  }
  end_line();
  return lines;
}

std::string shortened(std::string_view text, double width, double font_size) {
  if (text_width(text, font_size) <= width) return std::string(text);
  constexpr std::string_view ellipsis = "…";
  const double room = width - text_width(ellipsis, font_size);
  return std::string(text.substr(0, fitting_bytes(text, room, font_size))) + std::string(ellipsis);
}

}  // namespace proofstone
