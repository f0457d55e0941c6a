#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "engine/quantity/measure.h"

namespace proofstone {

/// Reads one JSON object field by field and remembers everything that is wrong with it, so that a
/// user sees all problems at once. Reading a wrong or absent field returns a harmless value; the
/// caller asks `problems()` before using any.
class FieldReader {
 public:
  /// `pointer` is the JSON pointer of `object` in the state of the site.
  FieldReader(const nlohmann::json& object, std::string pointer, Problems& problems);

  bool is_object() const { return is_object_; }
  bool has(const std::string& field) const;
  const std::string& pointer() const { return pointer_; }

  std::string required_text(const std::string& field);
  std::string optional_text(const std::string& field, std::string otherwise = {});

  template <class Q>
  Q required_quantity(const std::string& field) {
    const auto* value = required(field);
    return value ? read<Q>(field, *value).value_or(Q{}) : Q{};
  }
  /// As required_quantity, and more than zero; `why` is the sentence when it is not.
  template <class Q>
  Q required_positive(const std::string& field, const std::string& why) {
    const auto* text = required(field);
    const auto value = text ? read<Q>(field, *text) : std::nullopt;
    if (value && !(value->si() > 0)) report("not-positive", why, field, "more than 0");
    return value.value_or(Q{});
  }
  template <class Q>
  std::optional<Q> optional_positive(const std::string& field) {
    if (!has(field)) return std::nullopt;
    return required_positive<Q>(field, "This is more than zero.");
  }
  template <class Q>
  std::optional<Q> optional_not_negative(const std::string& field) {
    const auto value = optional_quantity<Q>(field);
    if (value && value->si() < 0) {
      report("negative", "This is never less than zero.", field, "0 or more");
    }
    return value;
  }
  template <class Q>
  std::optional<Q> optional_quantity(const std::string& field) {
    const auto* value = optional(field);
    return value ? read<Q>(field, *value) : std::nullopt;
  }
  template <class Q>
  std::vector<Q> optional_quantities(const std::string& field) {
    std::vector<Q> result;
    const auto* list = optional_list(field);
    if (!list) return result;
    result.reserve(list->size());
    for (std::size_t i = 0; i < list->size(); ++i) {
      const auto& element = (*list)[i];
      // A long list is nearly always good: the place is only named when something is wrong.
      if (element.is_string()) {
        if (auto good = parse_quantity<Q>(element.template get_ref<const std::string&>())) {
          result.push_back(*good);
          continue;
        }
      }
      read<Q>(field + "/" + std::to_string(i), element);
    }
    return result;
  }
  std::optional<int> optional_integer(const std::string& field, int least, int most);

  template <class Enum>
  Enum choice(const std::string& field, const std::vector<std::pair<std::string, Enum>>& words,
              std::optional<Enum> otherwise) {
    const auto* value = otherwise ? optional(field) : required(field);
    if (!value) return otherwise.value_or(words.front().second);
    std::string allowed;
    for (const auto& [word, meaning] : words) {
      if (value->is_string() && value->template get_ref<const std::string&>() == word)
        return meaning;
      allowed += (allowed.empty() ? "\"" : ", \"") + word + "\"";
    }
    report("unknown-word", "This word is not known here.", field, allowed);
    return otherwise.value_or(words.front().second);
  }

  /// The raw value, or nullptr (with a problem if it is required).
  const nlohmann::json* required(const std::string& field);
  const nlohmann::json* optional(const std::string& field);
  const nlohmann::json* optional_list(const std::string& field);

  void report(std::string code, std::string what, const std::string& field, std::string allowed);
  /// Names every field that was never asked for. Call once, when all are read.
  void finish();

 private:
  template <class Q>
  std::optional<Q> read(const std::string& field, const nlohmann::json& value) {
    const auto measure = read_measure(field, value, Q::kind);
    if (!measure) return std::nullopt;
    return measure->template unchecked_as<Q>();
  }
  std::optional<Measure> read_measure(const std::string& field, const nlohmann::json& value,
                                      QuantityKind kind);

  const nlohmann::json& object_;
  std::string pointer_;
  Problems& problems_;
  bool is_object_;
  std::set<std::string> asked_;
};

}  // namespace proofstone
