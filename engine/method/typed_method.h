#pragma once

#include <functional>
#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/method/method.h"
#include "engine/method/method_inputs.h"

namespace proofstone {

/// One word of a choice and the enumerator it stands for.
template <class Enum>
struct ChoiceOption {
  Enum value;
  std::string_view key;
  std::string_view meaning;
};

/// A limit in words, and where it is stated.
struct LimitNaming {
  std::string_view sentence;
  std::string_view source;
};

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
///
/// What does not depend on the types stands in method_inputs.cc, so that a method costs little to
/// compile and to ship.
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
    describe(name, InputForm::quantity, Q::kind, unit, allowed, use);
    slots_.push_back(std::make_unique<QuantitySlot<Inputs, Q>>(member));
  }
  /// An input whose default stands in the Inputs struct.
  template <class Q>
  void defaulted(Naming name, Q Inputs::* member, const Unit& unit, AllowedRange allowed,
                 LengthUse use = LengthUse::ground) {
    auto& input = describe(name, InputForm::quantity, Q::kind, unit, allowed, use);
    input.required = false;
    input.default_text = exact_text(Measure::of(start_.*member), unit);
    slots_.push_back(std::make_unique<QuantitySlot<Inputs, Q>>(member));
  }
  /// An input that may be absent, which has a meaning of its own (`absent_means`).
  template <class Q>
  void optional(Naming name, std::optional<Q> Inputs::* member, const Unit& unit,
                AllowedRange allowed, std::string absent_means, LengthUse use = LengthUse::ground) {
    auto& input = describe(name, InputForm::quantity, Q::kind, unit, allowed, use);
    input.required = false;
    input.default_text = std::move(absent_means);
    slots_.push_back(std::make_unique<OptionalSlot<Inputs, Q>>(member));
  }
  /// A list of quantities, such as the stations of a section.
  template <class Q>
  void required_list(Naming name, std::vector<Q> Inputs::* member, const Unit& unit,
                     AllowedRange allowed, LengthUse use = LengthUse::ground) {
    describe(name, InputForm::quantity_list, Q::kind, unit, allowed, use);
    slots_.push_back(std::make_unique<ListSlot<Inputs, Q>>(member));
  }
  /// A list that may be absent, which leaves it empty and has a meaning of its own.
  template <class Q>
  void optional_list(Naming name, std::vector<Q> Inputs::* member, const Unit& unit,
                     AllowedRange allowed, std::string absent_means,
                     LengthUse use = LengthUse::ground) {
    auto& input = describe(name, InputForm::quantity_list, Q::kind, unit, allowed, use);
    input.required = false;
    input.default_text = std::move(absent_means);
    slots_.push_back(std::make_unique<ListSlot<Inputs, Q>>(member));
  }
  /// One of some words; the default is that of the Inputs struct.
  template <class Enum>
  void choice(Naming name, Enum Inputs::* member, const std::vector<ChoiceOption<Enum>>& options) {
    auto& input = describe(name, InputForm::choice, QuantityKind::dimensionless, unit::number, {},
                           LengthUse::ground);
    input.required = false;
    std::vector<Enum> values;
    for (const auto& option : options) {
      input.choices.push_back({std::string(option.key), std::string(option.meaning)});
      if (option.value == start_.*member) input.default_text = option.key;
      values.push_back(option.value);
    }
    slots_.push_back(std::make_unique<ChoiceSlot<Inputs, Enum>>(member, std::move(values)));
  }
  template <class Q>
  void output(Naming name, Q Result::* member, const Unit& unit,
              LengthUse use = LengthUse::ground) {
    method_inputs::describe_output(about_, name, Q::kind, unit, use);
    outputs_.push_back(std::make_unique<QuantitySlot<Result, Q>>(member));
  }
  /// A published limit of validity; `kept` says whether these inputs stand inside it.
  void limit(LimitNaming limit, std::function<bool(const Inputs&)> kept) {
    about_.limits.push_back({std::string(limit.sentence), std::string(limit.source)});
    limits_.push_back(std::move(kept));
  }

  const MethodDescription& description() const override { return about_; }

  Expected<Evaluation> evaluate(const nlohmann::json& inputs) const override {
    auto read_inputs = read(inputs, start_, true);
    if (!read_inputs) return read_inputs.problems();
    return run(*read_inputs);
  }

  /// Reads inputs over `start`. With `complete`, a required input that is absent is a Problem;
  /// without, `start` stands in for it (a designer's choices over what a zone gives).
  Expected<Inputs> read(const nlohmann::json& inputs, Inputs start, bool complete) const {
    auto problems = method_inputs::read(about_, slots_, inputs, complete, &start);
    if (!problems.empty()) return problems;
    return start;
  }

  /// The required inputs that still stand at a starting value that is not allowed: nobody gave
  /// them.
  Problems not_given(const Inputs& inputs) const {
    return method_inputs::not_given(about_, slots_, &inputs, &start_);
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
    auto problems = method_inputs::not_allowed(about_, slots_, &inputs);
    if (!problems.empty()) return problems;
    auto result = function_(inputs, evaluation.steps);
    if (!result) return result.problems();
    for (std::size_t i = 0; i < outputs_.size(); ++i) {
      const auto& about = about_.outputs[i];
      evaluation.outputs.push_back(
          {about.key, Measure{outputs_[i]->value(&*result).value_or(0), about.kind}});
    }
    for (std::size_t i = 0; i < limits_.size(); ++i) {
      if (!limits_[i](inputs)) evaluation.limits_not_kept.push_back(about_.limits[i]);
    }
    return result;
  }

  /// The typed result alone, without the working, within the hard limits of every input.
  Expected<Result> run_unread(const Inputs& inputs) const {
    auto problems = method_inputs::not_allowed(about_, slots_, &inputs);
    if (!problems.empty()) return problems;
    return compute(inputs);
  }

  Expected<std::unique_ptr<VariedOutput>> vary(const nlohmann::json& inputs,
                                               const std::vector<std::string>& varied,
                                               const std::string& output) const override {
    auto start = read(inputs, start_, true);
    if (!start) return start.problems();
    for (std::size_t i = 0; i < about_.outputs.size(); ++i) {
      if (about_.outputs[i].key != output) continue;
      return vary_from(std::move(*start), varied, [slot = outputs_[i].get()](const Result& result) {
        return slot->value(&result).value_or(0);
      });
    }
    return method_inputs::unknown_output(about_, output);
  }

  /// As `vary`, from typed inputs and for any value of the result.
  Expected<std::unique_ptr<VariedOutput>> vary_from(Inputs start,
                                                    const std::vector<std::string>& varied,
                                                    ValueOf value) const {
    Problems problems;
    std::vector<VariedInput> inputs;
    std::vector<std::size_t> places;
    for (const auto& key : varied) {
      const auto place = method_inputs::quantity_called(about_, key);
      if (!place) {
        problems.insert(problems.end(), place.problems().begin(), place.problems().end());
        continue;
      }
      inputs.push_back({about_.inputs[*place], slots_[*place]->value(&start)});
      places.push_back(*place);
    }
    if (!problems.empty()) return problems;
    return std::unique_ptr<VariedOutput>(std::make_unique<Varied>(
        *this, std::move(start), std::move(inputs), std::move(places), std::move(value)));
  }

 private:
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
        method_.slots_[places_[i]]->set(&inputs, values[i]);
        if (method_inputs::outside(method_.about_, method_.slots_, places_[i], &inputs)) {
          return std::nullopt;
        }
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
    Steps unread = Steps::unread();
    return function_(inputs, unread);
  }

  InputDescription& describe(const Naming& name, InputForm form, QuantityKind kind,
                             const Unit& unit, AllowedRange allowed, LengthUse use) {
    return method_inputs::describe(about_, name, form, kind, unit, allowed, use);
  }

  MethodDescription about_;
  Function function_;
  Arithmetic arithmetic_ = nullptr;
  Inputs start_{};  ///< holds the defaults
  MemberSlots slots_;
  MemberSlots outputs_;
  std::vector<std::function<bool(const Inputs&)>> limits_;
};

}  // namespace proofstone
