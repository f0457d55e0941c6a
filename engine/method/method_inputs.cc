#include "engine/method/method_inputs.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/finding/json_pointer.h"
#include "engine/finding/quoted_text.h"

namespace proofstone::method_inputs {
namespace {

/// "velocity (V)"
std::string input_name(const InputDescription& input) {
  return input.symbol.empty() || input.symbol == input.key ? input.key
                                                           : input.key + " (" + input.symbol + ")";
}

std::string choice_keys(const InputDescription& input) {
  std::string keys;
  for (const auto& choice : input.choices) keys += (keys.empty() ? "" : ", ") + choice.key;
  return keys;
}

std::string what_to_write(const InputDescription& input) {
  switch (input.form) {
    case InputForm::choice:
      return choice_keys(input);
    case InputForm::quantity_list:
      return "a list of quantities in " + allowed_units(input.kind);
    case InputForm::quantity:
      break;
  }
  return "a " + std::string(kind_name(input.kind)) + " in " + allowed_units(input.kind);
}

std::string pointer_to(const std::string& key) { return "/" + pointer_step(key); }

Problem missing_input(const InputDescription& input) {
  return {"missing-input",
          input_name(input) + " is missing: " + input.meaning + ".",
          {},
          pointer_to(input.key),
          what_to_write(input)};
}

Problem nobody_gave(const InputDescription& input) {
  auto problem = missing_input(input);
  problem.what = input_name(input) +
                 " is neither known from the zone nor stated for this method: " + input.meaning +
                 ".";
  return problem;
}

Problem outside_allowed(const InputDescription& input, double value) {
  const auto given = std::isfinite(value)
                         ? exact_text({value * input.unit.si_factor, input.kind}, input.unit)
                         : std::string("not a finite number");
  return {"outside-allowed",
          input_name(input) + " cannot be " + given + ".",
          {},
          pointer_to(input.key),
          input.allowed.sentence(input.unit)};
}

Expected<Measure> read_measure(const InputDescription& input, const nlohmann::json& text) {
  const bool bare_number_serves =
      input.kind == QuantityKind::dimensionless || input.kind == QuantityKind::slope;
  if (text.is_number() && bare_number_serves) return Measure{text.get<double>(), input.kind};
  if (!text.is_string()) {
    return Problem{"not-a-quantity",
                   input_name(input) + " must be text with a number and its unit.",
                   {},
                   pointer_to(input.key),
                   what_to_write(input)};
  }
  auto measure = parse_measure(text.get_ref<const std::string&>(), input.kind);
  if (!measure) return located_under(measure.problems(), pointer_to(input.key));
  return measure;
}

/// The number of the option that is chosen.
Expected<std::size_t> read_choice(const InputDescription& input, const nlohmann::json& text) {
  const auto refuse = [&](const std::string& what) {
    return Problem{"unknown-choice", what, {}, pointer_to(input.key), choice_keys(input)};
  };
  if (!text.is_string()) return refuse(input_name(input) + " must be one of some words.");
  const auto& word = text.get_ref<const std::string&>();
  const auto known =
      std::find_if(input.choices.begin(), input.choices.end(),
                   [&](const ChoiceDescription& choice) { return choice.key == word; });
  if (known == input.choices.end()) {
    return refuse(in_quotes(word) + " is no choice for " + input_name(input) + ".");
  }
  return static_cast<std::size_t>(known - input.choices.begin());
}

Problems unknown_inputs(const MethodDescription& about, const nlohmann::json& inputs) {
  if (!inputs.is_object()) {
    return {{"not-an-object",
             "The inputs must be an object of names and values.",
             {},
             {},
             "for example {\"velocity\": \"8 ft/s\"}"}};
  }
  std::string keys;
  for (const auto& input : about.inputs) keys += (keys.empty() ? "" : ", ") + input.key;
  Problems problems;
  for (const auto& entry : inputs.items()) {
    const bool known =
        std::any_of(about.inputs.begin(), about.inputs.end(),
                    [&](const InputDescription& input) { return input.key == entry.key(); });
    if (!known) {
      problems.push_back({"unknown-field",
                          in_quotes(entry.key()) + " is not an input of " + about.title + ".",
                          {},
                          pointer_to(entry.key()),
                          keys});
    }
  }
  return problems;
}

/// Reads every element of a list; a Problem names the number of the element.
Problems read_list(const InputDescription& input, const nlohmann::json& list,
                   const MemberSlot& slot, void* inputs) {
  if (!list.is_array()) {
    return {{"not-a-list", "This input must be a list.", "", pointer_to(input.key),
             "a JSON array of quantities"}};
  }
  Problems problems;
  std::vector<double> values;
  values.reserve(list.size());
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto value = read_measure(input, list[i]);
    if (value) {
      values.push_back(value->si);
      continue;
    }
    for (auto problem : value.problems()) {
      problem.where += "/" + std::to_string(i);
      problems.push_back(std::move(problem));
    }
  }
  slot.set_values(inputs, values);
  return problems;
}

Problems read_one(const InputDescription& input, const nlohmann::json& text, const MemberSlot& slot,
                  void* inputs) {
  switch (input.form) {
    case InputForm::quantity: {
      const auto value = read_measure(input, text);
      if (!value) return value.problems();
      slot.set(inputs, value->si);
      return {};
    }
    case InputForm::quantity_list:
      return read_list(input, text, slot, inputs);
    case InputForm::choice:
      break;
  }
  const auto option = read_choice(input, text);
  if (!option) return option.problems();
  slot.choose(inputs, *option);
  return {};
}

}  // namespace

InputDescription& describe(MethodDescription& about, const Naming& name, InputForm form,
                           QuantityKind kind, const Unit& unit, AllowedRange allowed,
                           LengthUse use) {
  InputDescription input;
  input.key = name.key;
  input.symbol = name.symbol;
  input.meaning = name.meaning;
  input.form = form;
  input.kind = kind;
  input.unit = unit;
  input.length_use = use;
  input.allowed = allowed;
  about.inputs.push_back(std::move(input));
  return about.inputs.back();
}

void describe_output(MethodDescription& about, const Naming& name, QuantityKind kind,
                     const Unit& unit, LengthUse use) {
  about.outputs.push_back({std::string(name.key), std::string(name.symbol),
                           std::string(name.meaning), kind, unit, use});
}

void describe_default(InputDescription& input, Measure start) {
  input.required = false;
  input.default_text = exact_text(start, input.unit);
}

void describe_option(InputDescription& input, std::string_view key, std::string_view meaning) {
  input.choices.push_back({std::string(key), std::string(meaning)});
}

void describe_limit(MethodDescription& about, std::string_view sentence, std::string_view source) {
  about.limits.push_back({std::string(sentence), std::string(source)});
}

Problems read(const MethodDescription& about, const MemberSlots& slots, const nlohmann::json& texts,
              bool complete, void* inputs) {
  Problems problems = unknown_inputs(about, texts);
  if (!problems.empty()) return problems;
  for (std::size_t i = 0; i < about.inputs.size(); ++i) {
    const auto& input = about.inputs[i];
    const auto found = texts.find(input.key);
    if (found == texts.end()) {
      if (complete && input.required) problems.push_back(missing_input(input));
      continue;
    }
    for (auto& problem : read_one(input, *found, *slots[i], inputs)) {
      problems.push_back(std::move(problem));
    }
  }
  return problems;
}

std::optional<double> outside(const MethodDescription& about, const MemberSlots& slots,
                              std::size_t index, const void* inputs) {
  const auto& input = about.inputs[index];
  if (input.form == InputForm::quantity_list) {
    for (const double si : slots[index]->values(inputs)) {
      const double value = si / input.unit.si_factor;
      if (!input.allowed.holds(value)) return value;
    }
    return std::nullopt;
  }
  const auto si = slots[index]->value(inputs);
  if (!si) return std::nullopt;
  const double value = *si / input.unit.si_factor;
  if (input.allowed.holds(value)) return std::nullopt;
  return value;
}

Problems not_allowed(const MethodDescription& about, const MemberSlots& slots, const void* inputs) {
  Problems problems;
  for (std::size_t i = 0; i < about.inputs.size(); ++i) {
    if (const auto value = outside(about, slots, i, inputs)) {
      problems.push_back(outside_allowed(about.inputs[i], *value));
    }
  }
  return problems;
}

Problems not_given(const MethodDescription& about, const MemberSlots& slots, const void* inputs,
                   const void* start) {
  Problems problems;
  for (std::size_t i = 0; i < about.inputs.size(); ++i) {
    if (!about.inputs[i].required) continue;
    const auto value = outside(about, slots, i, inputs);
    if (value && value == outside(about, slots, i, start)) {
      problems.push_back(nobody_gave(about.inputs[i]));
    }
  }
  return problems;
}

Expected<std::size_t> quantity_called(const MethodDescription& about, const std::string& key) {
  std::string keys;
  for (std::size_t i = 0; i < about.inputs.size(); ++i) {
    const auto& input = about.inputs[i];
    if (input.form != InputForm::quantity) continue;
    if (input.key == key) return i;
    keys += (keys.empty() ? "" : ", ") + input.key;
  }
  return Problem{"cannot-vary",
                 in_quotes(key) + " is not a quantity that " + about.title + " reads.",
                 {},
                 pointer_to(key),
                 keys};
}

Problem unknown_output(const MethodDescription& about, const std::string& key) {
  std::string keys;
  for (const auto& output : about.outputs) keys += (keys.empty() ? "" : ", ") + output.key;
  return {"unknown-output", about.title + " has no output " + in_quotes(key) + ".", {}, {}, keys};
}

}  // namespace proofstone::method_inputs
