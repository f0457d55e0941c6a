#include "engine/json/field_reader.h"

#include <fmt/format.h>

#include "engine/finding/json_pointer.h"

namespace proofstone {
FieldReader::FieldReader(const nlohmann::json& object, std::string pointer, Problems& problems)
    : object_(object),
      pointer_(std::move(pointer)),
      problems_(problems),
      is_object_(object.is_object()) {
  if (!is_object_) {
    problems_.push_back(
        {"not-an-object", "An object with named fields belongs here.", "", pointer_, "{ … }"});
  }
}

bool FieldReader::has(const std::string& field) const {
  return is_object_ && object_.contains(field);
}

const nlohmann::json* FieldReader::required(const std::string& field) {
  const auto* value = optional(field);
  if (!value && is_object_) {
    report("missing-field", fmt::format("The field \"{}\" is missing.", field), field, "");
  }
  return value;
}

const nlohmann::json* FieldReader::optional(const std::string& field) {
  asked_.insert(field);
  if (!is_object_) return nullptr;
  const auto found = object_.find(field);
  return found == object_.end() ? nullptr : &*found;
}

const nlohmann::json* FieldReader::optional_list(const std::string& field) {
  const auto* value = optional(field);
  if (!value) return nullptr;
  if (!value->is_array()) {
    report("not-a-list", "A list belongs here.", field, "[ … ]");
    return nullptr;
  }
  return value;
}

std::string FieldReader::required_text(const std::string& field) {
  const auto* value = required(field);
  if (!value) return {};
  if (!value->is_string() || value->get_ref<const std::string&>().empty()) {
    report("not-a-text", "A text belongs here.", field, "a text that is not empty");
    return {};
  }
  return value->get<std::string>();
}

std::string FieldReader::optional_text(const std::string& field, std::string otherwise) {
  if (!has(field)) {
    asked_.insert(field);
    return otherwise;
  }
  return required_text(field);
}

std::optional<int> FieldReader::optional_integer(const std::string& field, int least, int most) {
  const auto* value = optional(field);
  if (!value) return std::nullopt;
  const auto allowed = fmt::format("a whole number from {} to {}", least, most);
  if (!value->is_number_integer() || value->get<double>() < least || value->get<double>() > most) {
    report("not-a-whole-number", "A whole number belongs here.", field, allowed);
    return std::nullopt;
  }
  return value->get<int>();
}

std::optional<Measure> FieldReader::read_measure(const std::string& field,
                                                 const nlohmann::json& value, QuantityKind kind) {
  if (!value.is_string()) {
    report("missing-unit", fmt::format("A {} is written as a text with its unit.", kind_name(kind)),
           field, fmt::format("a text such as \"12 ft\"; units: {}", allowed_units(kind)));
    return std::nullopt;
  }
  const auto parsed = parse_measure(value.get_ref<const std::string&>(), kind);
  if (!parsed) {
    for (const auto& problem : parsed.problems()) {
      report(problem.code, problem.what, field, problem.allowed);
    }
    return std::nullopt;
  }
  return *parsed;
}

void FieldReader::report(std::string code, std::string what, const std::string& field,
                         std::string allowed) {
  Problem problem;
  problem.code = std::move(code);
  problem.what = std::move(what);
  problem.where = pointer_ + "/" + field;
  problem.allowed = std::move(allowed);
  problems_.push_back(std::move(problem));
}

void FieldReader::finish() {
  if (!is_object_) return;
  for (const auto& [field, value] : object_.items()) {
    if (asked_.contains(field)) continue;
    std::string allowed;
    for (const auto& known : asked_) allowed += (allowed.empty() ? "" : ", ") + known;
    report("unknown-field", fmt::format("The field \"{}\" is not known here.", field),
           pointer_step(field), allowed);
  }
}

}  // namespace proofstone
