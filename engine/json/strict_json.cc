#include "engine/json/strict_json.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace proofstone {
namespace {

constexpr std::size_t largest_document = std::size_t{64} << 20;
constexpr std::size_t deepest_level = 64;

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

Problem problem(const std::string& code, const std::string& what, const std::string& where,
                const std::string& allowed) {
  return {code, what, "", where, allowed};
}

/// Builds the document from the parser's events and stops at the first one that a document may not
/// have: too deep a level, so that a hostile document is refused before it is built, or a key that
/// stands twice in one object.
class DocumentBuilder : public nlohmann::json_sax<nlohmann::json> {
 public:
  explicit DocumentBuilder(std::string_view text) : text_(text) {}

  bool null() override { return place(nullptr) != nullptr; }
  bool boolean(bool value) override { return place(value) != nullptr; }
  bool number_integer(number_integer_t value) override { return place(value) != nullptr; }
  bool number_unsigned(number_unsigned_t value) override { return place(value) != nullptr; }
  bool number_float(number_float_t value, const string_t&) override {
    return place(value) != nullptr;
  }
  bool string(string_t& value) override { return place(value) != nullptr; }
  bool binary(binary_t&) override { return false; }
  bool start_object(std::size_t) override { return open(nlohmann::json::object()); }
  bool start_array(std::size_t) override { return open(nlohmann::json::array()); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool key(string_t& key) override {
    const auto [member, fresh] = open_.back()->emplace(key, nullptr);
    if (!fresh) {
      problem_ = problem("repeated-field",
                         fmt::format("The field \"{}\" stands twice in one object.", key),
                         pointer_to_open(), "each field once");
    }
    member_ = &*member;
    return fresh;
  }

  bool parse_error(std::size_t position, const std::string&,
                   const nlohmann::json::exception& error) override {
    const auto* wrong_text = dynamic_cast<const nlohmann::json::parse_error*>(&error);
    problem_ =
        wrong_text != nullptr
            ? problem("not-json",
                      "The document is not valid JSON: it breaks off or holds a wrong sign "
                      "here.",
                      line_and_column(text_, position > 0 ? position - 1 : 0),
                      "JSON text in UTF-8 (RFC 8259)")
            : problem("not-json", "The document holds a number that is out of range.",
                      line_and_column(text_, position > 0 ? position - 1 : 0), "finite numbers");
    return false;
  }

  nlohmann::json& document() { return document_; }
  const Problem& what_was_wrong() const { return problem_; }

 private:
  template <class Value>
  nlohmann::json* place(Value&& value) {
    if (open_.empty()) {
      document_ = std::forward<Value>(value);
      return &document_;
    }
    auto& into = *open_.back();
    if (into.is_array()) return &into.emplace_back(std::forward<Value>(value));
    *member_ = std::forward<Value>(value);
    return member_;
  }
  bool open(nlohmann::json container) {
    if (open_.size() == deepest_level) {
      problem_ = problem("too-deep", "The document is nested too deeply.", "", "at most 64 levels");
      return false;
    }
    open_.push_back(place(std::move(container)));
    return true;
  }
  bool close() {
    open_.pop_back();
    return true;
  }
  std::string pointer_to_open() const {
    nlohmann::json::json_pointer pointer;
    for (std::size_t i = 0; i + 1 < open_.size(); ++i) {
      const auto& outer = *open_[i];
      if (outer.is_array()) {
        pointer /= outer.size() - 1;
        continue;
      }
      for (const auto& [key, value] : outer.items()) {
        if (&value == open_[i + 1]) pointer /= key;
      }
    }
    return pointer.to_string();
  }

  std::string_view text_;
  nlohmann::json document_;
  std::vector<nlohmann::json*> open_;
  nlohmann::json* member_ = nullptr;
  Problem problem_;
};

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
  DocumentBuilder builder(text);
  if (!nlohmann::json::sax_parse(text.begin(), text.end(), &builder)) {
    return builder.what_was_wrong();
  }
  return std::move(builder.document());
}

void let_go(nlohmann::json& value) {
  if (auto* object = value.get_ptr<nlohmann::json::object_t*>()) {
    for (auto& member : *object) let_go(member.second);
  } else if (auto* list = value.get_ptr<nlohmann::json::array_t*>()) {
    for (auto& element : *list) {
      if (element.is_structured()) let_go(element);
    }
    list->clear();
  }
}

}  // namespace proofstone
