#pragma once

// For tests of SVG and HTML alone.

#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace proofstone::testing_markup {

/// What is wrong with the nesting of tags and the quoting of attributes; empty when nothing is.
/// Script and style contents are skipped as text that must not hold "</".
inline std::string nesting_problem(std::string_view text) {
  static const std::set<std::string, std::less<>> without_end{"meta", "br", "!DOCTYPE"};
  std::vector<std::string> open;
  for (std::size_t at = 0; at < text.size();) {
    const auto tag = text.find('<', at);
    const auto between = text.substr(at, tag == std::string_view::npos ? tag : tag - at);
    if (between.find('>') != std::string_view::npos && (open.empty() || open.back() != "style")) {
      return "a bare > in: " + std::string(between);
    }
    for (auto amp = between.find('&'); amp != std::string_view::npos;
         amp = between.find('&', amp + 1)) {
      const auto end = between.find(';', amp);
      if (end == std::string_view::npos || end - amp > 6)
        return "a bare & in: " + std::string(between);
    }
    if (tag == std::string_view::npos) break;
    const auto end = text.find('>', tag);
    if (end == std::string_view::npos) return "a tag that never ends";
    const auto inside = text.substr(tag + 1, end - tag - 1);
    if (inside.find('<') != std::string_view::npos) return "a < in the tag " + std::string(inside);
    if (std::count(inside.begin(), inside.end(), '"') % 2 != 0) {
      return "an open quote in the tag " + std::string(inside);
    }
    at = end + 1;
    if (inside.substr(0, 1) == "/") {
      const std::string name(inside.substr(1));
      if (open.empty() || open.back() != name) return "a stray </" + name + ">";
      open.pop_back();
      continue;
    }
    const std::string name(inside.substr(0, inside.find_first_of(" /\n")));
    if (inside.back() != '/' && without_end.find(name) == without_end.end()) open.push_back(name);
  }
  return open.empty() ? "" : "never closed: " + open.back();
}

/// Words that only a number which is not one can leave behind, and ids used twice.
inline std::string content_problem(std::string_view text) {
  for (const std::string_view word : {"nan\"", "NaN", "inf\"", "inf ", "nan ", "e+", "-nan"}) {
    if (text.find(word) != std::string_view::npos) return "holds " + std::string(word);
  }
  std::set<std::string> ids;
  constexpr std::string_view id = " id=\"";
  for (auto at = text.find(id); at != std::string_view::npos; at = text.find(id, at + 1)) {
    const auto start = at + id.size();
    const std::string value(text.substr(start, text.find('"', start) - start));
    if (!ids.insert(value).second) return "uses the id " + value + " twice";
  }
  return "";
}

}  // namespace proofstone::testing_markup
