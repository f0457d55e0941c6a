#pragma once

#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/method/method.h"

namespace proofstone {

/// What an input is called, for the binding functions of TypedMethod.
struct Naming {
  std::string key;
  std::string symbol;
  std::string meaning;
};

/// One word of a choice and the enumerator it stands for.
template <class Enum>
struct ChoiceOption {
  Enum value;
  std::string key;
  std::string meaning;
};

/// Problems that reading an object of inputs shares; see typed_method.cc.
namespace method_reading {
Problem missing_input(const InputDescription& input);
Problem not_given(const InputDescription& input);
Problem outside_allowed(const InputDescription& input, double value);
Expected<Measure> read_measure(const InputDescription& input, const nlohmann::json& text);
Expected<std::string> read_choice(const InputDescription& input, const nlohmann::json& text);
Problems unknown_inputs(const MethodDescription& about, const nlohmann::json& inputs);
}  // namespace method_reading

/// Ties a typed function `Expected<Result> f(const Inputs&, Steps&)` to the description that lists,
/// documents, commands and checks read. Build it once, in the method's own file:
///
///   TypedMethod<Inputs, Result> method(about, &compute);
///   method.required({"velocity", "V", "…"}, &Inputs::velocity, unit::foot_per_second,
///                   AllowedRange::positive_to(60));
///   method.output({"d50", "D50", "…"}, &Result::d50, unit::foot, LengthUse::rock);
///   method.limit({"Froude number below 0.8", "…"}, [](const Inputs& in) { … });
///
/// Defaults are those of the Inputs struct itself.
template <class Inputs, class Result, class Base = Method>
class TypedMethod : public Base {
 public:
  using Function = Expected<Result> (*)(const Inputs&, Steps&);

  TypedMethod(MethodDescription about, Function function)
      : about_(std::move(about)), function_(function) {}

  /// An input that must be given.
  template <class Q>
  void required(Naming name, Q Inputs::* member, const Unit& unit, AllowedRange allowed,
                LengthUse use = LengthUse::ground) {
    bind_quantity(std::move(name), member, unit, allowed, use, true);
  }
  /// An input whose default stands in the Inputs struct.
  template <class Q>
  void defaulted(Naming name, Q Inputs::* member, const Unit& unit, AllowedRange allowed,
                 LengthUse use = LengthUse::ground) {
    bind_quantity(std::move(name), member, unit, allowed, use, false);
    about_.inputs.back().default_text = exact_text(Measure::of(Inputs{}.*member), unit);
  }
  /// An input that may be absent, which has a meaning of its own (`absent_means`).
  template <class Q>
  void optional(Naming name, std::optional<Q> Inputs::* member, const Unit& unit,
                AllowedRange allowed, std::string absent_means, LengthUse use = LengthUse::ground) {
    auto& input = describe(std::move(name), InputForm::quantity, Q::kind, unit, allowed, use);
    input.required = false;
    input.default_text = std::move(absent_means);
    readers_.push_back(
        [member](const InputDescription& about, const nlohmann::json& text, Inputs& into) {
          auto value = method_reading::read_measure(about, text);
          if (!value) return value.problems();
          into.*member = value->template unchecked_as<Q>();
          return Problems{};
        });
    checkers_.push_back([member, unit, allowed](const Inputs& in) -> std::optional<double> {
      if (!(in.*member) || allowed.holds((in.*member)->in(unit))) return std::nullopt;
      return (in.*member)->in(unit);
    });
  }
  /// A list of quantities, such as the stations of a section.
  template <class Q>
  void required_list(Naming name, std::vector<Q> Inputs::* member, const Unit& unit,
                     AllowedRange allowed, LengthUse use = LengthUse::ground) {
    bind_list(std::move(name), member, unit, allowed, use, true);
  }
  /// A list that may be absent, which leaves it empty and has a meaning of its own.
  template <class Q>
  void optional_list(Naming name, std::vector<Q> Inputs::* member, const Unit& unit,
                     AllowedRange allowed, std::string absent_means,
                     LengthUse use = LengthUse::ground) {
    bind_list(std::move(name), member, unit, allowed, use, false);
    about_.inputs.back().default_text = std::move(absent_means);
  }
  /// One of some words; the default is that of the Inputs struct.
  template <class Enum>
  void choice(Naming name, Enum Inputs::* member, const std::vector<ChoiceOption<Enum>>& options) {
    auto& input = describe(std::move(name), InputForm::choice, QuantityKind::dimensionless,
                           unit::number, {}, LengthUse::ground);
    input.required = false;
    for (const auto& option : options) {
      input.choices.push_back({option.key, option.meaning});
      if (option.value == Inputs{}.*member) input.default_text = option.key;
    }
    readers_.push_back(
        [member, options](const InputDescription& about, const nlohmann::json& text, Inputs& into) {
          auto word = method_reading::read_choice(about, text);
          if (!word) return word.problems();
          for (const auto& option : options) {
            if (option.key == *word) into.*member = option.value;
          }
          return Problems{};
        });
    checkers_.push_back([](const Inputs&) -> std::optional<double> { return std::nullopt; });
  }
  template <class Q>
  void output(Naming name, Q Result::* member, const Unit& unit,
              LengthUse use = LengthUse::ground) {
    about_.outputs.push_back(
        {name.key, std::move(name.symbol), std::move(name.meaning), Q::kind, unit, use});
    outputs_.push_back([key = name.key, member](const Result& result) {
      return OutputValue{key, Measure::of(result.*member)};
    });
  }
  /// A published limit of validity; `kept` says whether these inputs stand inside it.
  void limit(LimitDescription limit, std::function<bool(const Inputs&)> kept) {
    about_.limits.push_back(std::move(limit));
    limits_.push_back(std::move(kept));
  }

  const MethodDescription& description() const override { return about_; }

  Expected<Evaluation> evaluate(const nlohmann::json& inputs) const override {
    auto read_inputs = read(inputs, Inputs{}, true);
    if (!read_inputs) return read_inputs.problems();
    return run(*read_inputs);
  }

  /// Reads inputs over `start`. With `complete`, a required input that is absent is a Problem;
  /// without, `start` stands in for it (a designer's choices over what a zone gives).
  Expected<Inputs> read(const nlohmann::json& inputs, Inputs start, bool complete) const {
    Problems problems = method_reading::unknown_inputs(about_, inputs);
    if (!problems.empty()) return problems;
    for (std::size_t i = 0; i < about_.inputs.size(); ++i) {
      const auto& input = about_.inputs[i];
      const auto found = inputs.find(input.key);
      if (found == inputs.end()) {
        if (complete && input.required) problems.push_back(method_reading::missing_input(input));
        continue;
      }
      for (auto& problem : readers_[i](input, *found, start))
        problems.push_back(std::move(problem));
    }
    if (!problems.empty()) return problems;
    return start;
  }

  /// The required inputs that still stand at a starting value that is not allowed: nobody gave
  /// them.
  Problems not_given(const Inputs& inputs) const {
    Problems problems;
    for (std::size_t i = 0; i < checkers_.size(); ++i) {
      if (!about_.inputs[i].required) continue;
      const auto value = checkers_[i](inputs);
      if (value && value == checkers_[i](Inputs{})) {
        problems.push_back(method_reading::not_given(about_.inputs[i]));
      }
    }
    return problems;
  }

  /// Checks the hard limits of every input, runs the function and notes the published limits that
  /// are not kept.
  Expected<Evaluation> run(const Inputs& inputs) const {
    Evaluation evaluation;
    auto result = run_typed(inputs, evaluation);
    if (!result) return result.problems();
    return evaluation;
  }

  /// As `run`, and hands back the typed result too.
  Expected<Result> run_typed(const Inputs& inputs, Evaluation& evaluation) const {
    Problems problems;
    for (std::size_t i = 0; i < checkers_.size(); ++i) {
      if (const auto value = checkers_[i](inputs)) {
        problems.push_back(method_reading::outside_allowed(about_.inputs[i], *value));
      }
    }
    if (!problems.empty()) return problems;
    auto result = function_(inputs, evaluation.steps);
    if (!result) return result.problems();
    for (const auto& output : outputs_) evaluation.outputs.push_back(output(*result));
    for (std::size_t i = 0; i < limits_.size(); ++i) {
      if (!limits_[i](inputs)) evaluation.limits_not_kept.push_back(about_.limits[i]);
    }
    return result;
  }

 private:
  InputDescription& describe(Naming name, InputForm form, QuantityKind kind, const Unit& unit,
                             AllowedRange allowed, LengthUse use) {
    InputDescription input;
    input.key = std::move(name.key);
    input.symbol = std::move(name.symbol);
    input.meaning = std::move(name.meaning);
    input.form = form;
    input.kind = kind;
    input.unit = unit;
    input.length_use = use;
    input.allowed = allowed;
    about_.inputs.push_back(std::move(input));
    return about_.inputs.back();
  }

  template <class Q>
  void bind_quantity(Naming name, Q Inputs::* member, const Unit& unit, AllowedRange allowed,
                     LengthUse use, bool is_required) {
    auto& input = describe(std::move(name), InputForm::quantity, Q::kind, unit, allowed, use);
    input.required = is_required;
    readers_.push_back(
        [member](const InputDescription& about, const nlohmann::json& text, Inputs& into) {
          auto value = method_reading::read_measure(about, text);
          if (!value) return value.problems();
          into.*member = value->template unchecked_as<Q>();
          return Problems{};
        });
    checkers_.push_back([member, unit, allowed](const Inputs& in) -> std::optional<double> {
      const double value = (in.*member).in(unit);
      if (allowed.holds(value)) return std::nullopt;
      return value;
    });
  }

  template <class Q>
  void bind_list(Naming name, std::vector<Q> Inputs::* member, const Unit& unit,
                 AllowedRange allowed, LengthUse use, bool is_required) {
    describe(std::move(name), InputForm::quantity_list, Q::kind, unit, allowed, use).required =
        is_required;
    readers_.push_back(
        [member](const InputDescription& about, const nlohmann::json& list, Inputs& into) {
          Problems problems;
          if (!list.is_array()) {
            return Problems{{"not-a-list", "This input must be a list.", "", "/" + about.key,
                             "a JSON array of quantities"}};
          }
          (into.*member).clear();
          for (std::size_t i = 0; i < list.size(); ++i) {
            auto value = method_reading::read_measure(about, list[i]);
            if (!value) {
              for (auto problem : value.problems()) {
                problem.where += "/" + std::to_string(i);
                problems.push_back(std::move(problem));
              }
              continue;
            }
            (into.*member).push_back(value->template unchecked_as<Q>());
          }
          return problems;
        });
    checkers_.push_back([member, unit, allowed](const Inputs& in) -> std::optional<double> {
      for (const Q& value : in.*member) {
        if (!allowed.holds(value.in(unit))) return value.in(unit);
      }
      return std::nullopt;
    });
  }

  MethodDescription about_;
  Function function_;
  using Reader = std::function<Problems(const InputDescription&, const nlohmann::json&, Inputs&)>;
  std::vector<Reader> readers_;
  std::vector<std::function<std::optional<double>(const Inputs&)>> checkers_;
  std::vector<std::function<OutputValue(const Result&)>> outputs_;
  std::vector<std::function<bool(const Inputs&)>> limits_;
};

}  // namespace proofstone
