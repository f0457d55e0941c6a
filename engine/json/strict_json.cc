#include "engine/json/strict_json.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

namespace proofstone {
namespace {

constexpr std::size_t largest_document = std::size_t{64} << 20;
constexpr int deepest_level = 64;

std::string line_and_column(std::string_view text, std::size_t byte) {
  std::size_t line = 1;
  std::size_t column = 1;
  for (std::size_t i = 0; i < byte && i < text.size(); ++i) {
    if (text[i] == '\n') {
      ++line;
      column = 1;
    } else {
      ++column;
    }
  }
  return fmt::format("line {}, column {}", line, column);
}

// Counted before parsing, so that a hostile document is refused before it is built.
bool deeper_than(std::string_view text, int limit) {
  int depth = 0;
  bool in_string = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (in_string) {
      if (c == '\\') ++i;
      if (c == '"') in_string = false;
    } else if (c == '"') {
      in_string = true;
    } else if (c == '{' || c == '[') {
      if (++depth > limit) return true;
    } else if (c == '}' || c == ']') {
      --depth;
    }
  }
  return false;
}

/// Watches the parser's events for a key that appears twice in one object.
class RepeatedKeys {
 public:
  void on(nlohmann::json::parse_event_t event, const nlohmann::json& parsed) {
    using Event = nlohmann::json::parse_event_t;
    if (event == Event::object_start) {
      open_.emplace_back();
    } else if (event == Event::object_end) {
      open_.pop_back();
    } else if (event == Event::key) {
      const auto& key = parsed.get_ref<const std::string&>();
      if (!open_.back().insert(key).second && repeated_.empty()) repeated_ = key;
    }
  }
  const std::string& first() const { return repeated_; }

 private:
  std::vector<std::set<std::string>> open_;
  std::string repeated_;
};

Problem problem(std::string code, std::string what, std::string where, std::string allowed) {
  return {std::move(code), std::move(what), "", std::move(where), std::move(allowed)};
}

}  // namespace

Expected<nlohmann::json> parse_strict_json(std::string_view text) {
  if (text.size() > largest_document) {
    return problem("too-large", "The document is larger than 64 MB.", "",
                   "a document of at most 64 MB; keep photographs in files beside it");
  }
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) {
    return problem("empty", "The document is empty.", "", "a site document in JSON");
  }
  if (text.find('\0') != std::string_view::npos) {
    return problem("not-text", "The document holds binary data, not JSON text.", "",
                   "JSON text in UTF-8");
  }
  if (deeper_than(text, deepest_level)) {
    return problem("too-deep", "The document is nested too deeply.", "", "at most 64 levels");
  }
  RepeatedKeys keys;
  try {
    auto parsed = nlohmann::json::parse(
        text.begin(), text.end(),
        [&keys](int, nlohmann::json::parse_event_t event, nlohmann::json& value) {
          keys.on(event, value);
          return true;
        });
    if (!keys.first().empty()) {
      return problem("repeated-field",
                     fmt::format("The field \"{}\" stands twice in one object.", keys.first()), "",
                     "each field once");
    }
    return parsed;
  } catch (const nlohmann::json::parse_error& error) {
    const std::size_t byte = error.byte > 0 ? error.byte - 1 : 0;
    return problem("not-json",
                   "The document is not valid JSON: it breaks off or holds a wrong sign here.",
                   line_and_column(text, byte), "JSON text in UTF-8 (RFC 8259)");
  } catch (const nlohmann::json::exception&) {
    return problem("not-json", "The document holds a number that is out of range.", "",
                   "finite numbers");
  }
}

}  // namespace proofstone
