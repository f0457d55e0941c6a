#include "engine/method/typed_method.h"

#include <algorithm>
#include <cmath>

#include "engine/finding/json_pointer.h"
#include "engine/finding/quoted_text.h"

namespace proofstone::method_reading {
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

}  // namespace

Problem missing_input(const InputDescription& input) {
  return {"missing-input",
          input_name(input) + " is missing: " + input.meaning + ".",
          {},
          pointer_to(input.key),
          what_to_write(input)};
}

Problem not_given(const InputDescription& input) {
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

Expected<std::string> read_choice(const InputDescription& input, const nlohmann::json& text) {
  const auto refuse = [&](std::string what) {
    return Problem{
        "unknown-choice", std::move(what), {}, pointer_to(input.key), choice_keys(input)};
  };
  if (!text.is_string()) return refuse(input_name(input) + " must be one of some words.");
  const auto& word = text.get_ref<const std::string&>();
  const bool known =
      std::any_of(input.choices.begin(), input.choices.end(),
                  [&](const ChoiceDescription& choice) { return choice.key == word; });
  if (!known) return refuse(in_quotes(word) + " is no choice for " + input_name(input) + ".");
  return word;
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

Problem cannot_vary(const MethodDescription& about, const std::string& key) {
  std::string keys;
  for (const auto& input : about.inputs) {
    if (input.form == InputForm::quantity) keys += (keys.empty() ? "" : ", ") + input.key;
  }
  return {"cannot-vary",
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

}  // namespace proofstone::method_reading
