#pragma once

#include <functional>
#include <memory>
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
Problem cannot_vary(const MethodDescription& about, const std::string& key);
Problem unknown_output(const MethodDescription& about, const std::string& key);
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
  /// The same computation without its steps.
  using Arithmetic = Expected<Result> (*)(const Inputs&);
  using ValueOf = std::function<double(const Result&)>;

  TypedMethod(MethodDescription about, Function function)
      : about_(std::move(about)), function_(function) {}

  /// Names the computation without its steps, which simulation calls in the place of the function.
  void without_steps(Arithmetic arithmetic) { arithmetic_ = arithmetic; }

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
    handles_.push_back({[member](Inputs& in, double si) { in.*member = Q::from_si(si); },
                        [member](const Inputs& in) -> std::optional<double> {
                          if (!(in.*member)) return std::nullopt;
                          return (in.*member)->si();
                        }});
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
    handles_.push_back({});
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
    values_.push_back([member](const Result& result) { return (result.*member).si(); });
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

  Expected<std::unique_ptr<VariedOutput>> vary(const nlohmann::json& inputs,
                                               const std::vector<std::string>& varied,
                                               const std::string& output) const override {
    auto start = read(inputs, Inputs{}, true);
    if (!start) return start.problems();
    for (std::size_t i = 0; i < about_.outputs.size(); ++i) {
      if (about_.outputs[i].key == output) return vary_from(std::move(*start), varied, values_[i]);
    }
    return method_reading::unknown_output(about_, output);
  }

  /// As `vary`, from typed inputs and for any value of the result.
  Expected<std::unique_ptr<VariedOutput>> vary_from(Inputs start,
                                                    const std::vector<std::string>& varied,
                                                    ValueOf value) const {
    Problems problems;
    std::vector<VariedInput> inputs;
    std::vector<std::size_t> places;
    for (const auto& key : varied) {
      const auto place = place_of(key);
      if (place == about_.inputs.size() || !handles_[place].set) {
        problems.push_back(method_reading::cannot_vary(about_, key));
        continue;
      }
      inputs.push_back({about_.inputs[place], handles_[place].get(start)});
      places.push_back(place);
    }
    if (!problems.empty()) return problems;
    return std::unique_ptr<VariedOutput>(std::make_unique<Varied>(
        *this, std::move(start), std::move(inputs), std::move(places), std::move(value)));
  }

 private:
  /// How one input is set and read; empty for choices and lists.
  struct Handle {
    std::function<void(Inputs&, double)> set;
    std::function<std::optional<double>(const Inputs&)> get;
  };

  class Varied : public VariedOutput {
   public:
    Varied(const TypedMethod& method, Inputs start, std::vector<VariedInput> inputs,
           std::vector<std::size_t> places, ValueOf value)
        : VariedOutput(std::move(inputs)),
          method_(method),
          start_(std::move(start)),
          places_(std::move(places)),
          value_(std::move(value)) {}

    std::optional<double> at(std::span<const double> values) const override {
      Inputs inputs = start_;
      for (std::size_t i = 0; i < places_.size(); ++i) {
        method_.handles_[places_[i]].set(inputs, values[i]);
        if (method_.checkers_[places_[i]](inputs)) return std::nullopt;
      }
      const auto result = method_.compute(inputs);
      if (!result) return std::nullopt;
      return value_(*result);
    }

   private:
    const TypedMethod& method_;
    Inputs start_;
    std::vector<std::size_t> places_;
    ValueOf value_;
  };

  Expected<Result> compute(const Inputs& inputs) const {
    if (arithmetic_ != nullptr) return arithmetic_(inputs);
    Steps not_kept;
    return function_(inputs, not_kept);
  }

  /// The number of inputs where there is none of this key.
  std::size_t place_of(const std::string& key) const {
    std::size_t place = 0;
    while (place < about_.inputs.size() && about_.inputs[place].key != key) ++place;
    return place;
  }

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
    handles_.push_back(
        {[member](Inputs& in, double si) { in.*member = Q::from_si(si); },
         [member](const Inputs& in) -> std::optional<double> { return (in.*member).si(); }});
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
    handles_.push_back({});
    checkers_.push_back([member, unit, allowed](const Inputs& in) -> std::optional<double> {
      for (const Q& value : in.*member) {
        if (!allowed.holds(value.in(unit))) return value.in(unit);
      }
      return std::nullopt;
    });
  }

  MethodDescription about_;
  Function function_;
  Arithmetic arithmetic_ = nullptr;
  using Reader = std::function<Problems(const InputDescription&, const nlohmann::json&, Inputs&)>;
  std::vector<Reader> readers_;
  std::vector<std::function<std::optional<double>(const Inputs&)>> checkers_;
  std::vector<Handle> handles_;
  std::vector<std::function<OutputValue(const Result&)>> outputs_;
  std::vector<ValueOf> values_;
  std::vector<std::function<bool(const Inputs&)>> limits_;
};

}  // namespace proofstone
