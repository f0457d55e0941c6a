#pragma once

#include <functional>
#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <span>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "engine/method/untyped_method.h"

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
/// What does not depend on the types stands in UntypedMethod and in method_inputs, so that a method
/// costs little to compile and to ship.
template <class Inputs, class Result, class Base = Method>
class TypedMethod : public Base, protected MethodTypes {
 public:
  using Function = Expected<Result> (*)(const Inputs&, Steps&);
  /// The same computation without its steps.
  using Arithmetic = Expected<Result> (*)(const Inputs&);

  TypedMethod(MethodDescription about, Function function) : function_(function) {
    method_.about = std::move(about);
  }

  /// Names the computation without its steps, which simulation calls in the place of the function.
  void without_steps(Arithmetic arithmetic) { arithmetic_ = arithmetic; }

  /// An input that must be given.
  template <class Q>
  void required(Naming name, Q Inputs::* member, const Unit& unit, AllowedRange allowed,
                LengthUse use = LengthUse::ground) {
    describe(name, InputForm::quantity, Q::kind, unit, allowed, use);
    method_.add_input(std::make_unique<QuantitySlot<Inputs, Q>>(member));
  }
  /// An input whose default stands in the Inputs struct.
  template <class Q>
  void defaulted(Naming name, Q Inputs::* member, const Unit& unit, AllowedRange allowed,
                 LengthUse use = LengthUse::ground) {
    auto& input = describe(name, InputForm::quantity, Q::kind, unit, allowed, use);
    method_inputs::describe_default(input, Measure::of(start_.*member));
    method_.add_input(std::make_unique<QuantitySlot<Inputs, Q>>(member));
  }
  /// An input that may be absent, which has a meaning of its own (`absent_means`).
  template <class Q>
  void optional(Naming name, std::optional<Q> Inputs::* member, const Unit& unit,
                AllowedRange allowed, std::string absent_means, LengthUse use = LengthUse::ground) {
    auto& input = describe(name, InputForm::quantity, Q::kind, unit, allowed, use);
    input.required = false;
    input.default_text = std::move(absent_means);
    method_.add_input(std::make_unique<OptionalSlot<Inputs, Q>>(member));
  }
  /// A list of quantities, such as the stations of a section.
  template <class Q>
  void required_list(Naming name, std::vector<Q> Inputs::* member, const Unit& unit,
                     AllowedRange allowed, LengthUse use = LengthUse::ground) {
    describe(name, InputForm::quantity_list, Q::kind, unit, allowed, use);
    method_.add_input(std::make_unique<ListSlot<Inputs, Q>>(member));
  }
  /// A list that may be absent, which leaves it empty and has a meaning of its own.
  template <class Q>
  void optional_list(Naming name, std::vector<Q> Inputs::* member, const Unit& unit,
                     AllowedRange allowed, std::string absent_means,
                     LengthUse use = LengthUse::ground) {
    auto& input = describe(name, InputForm::quantity_list, Q::kind, unit, allowed, use);
    input.required = false;
    input.default_text = std::move(absent_means);
    method_.add_input(std::make_unique<ListSlot<Inputs, Q>>(member));
  }
  /// One of some words; the default is that of the Inputs struct.
  template <class Enum>
  void choice(Naming name, Enum Inputs::* member, const std::vector<ChoiceOption<Enum>>& options) {
    auto& input = describe(name, InputForm::choice, QuantityKind::dimensionless, unit::number, {},
                           LengthUse::ground);
    input.required = false;
    std::vector<Enum> values(options.size());
    for (std::size_t i = 0; i < options.size(); ++i) {
      const auto& option = options[i];
      method_inputs::describe_option(input, option.key, option.meaning);
      if (option.value == start_.*member) input.default_text = option.key;
      values[i] = option.value;
    }
    method_.add_input(std::make_unique<ChoiceSlot<Inputs, Enum>>(member, std::move(values)));
  }
  template <class Q>
  void output(Naming name, Q Result::* member, const Unit& unit,
              LengthUse use = LengthUse::ground) {
    method_inputs::describe_output(method_.about, name, Q::kind, unit, use);
    method_.add_output(std::make_unique<QuantitySlot<Result, Q>>(member));
  }
  /// A published limit of validity; `kept` says whether these inputs stand inside it.
  template <class Kept>
  void limit(LimitNaming limit, Kept kept) {
    method_inputs::describe_limit(method_.about, limit.sentence, limit.source);
    if constexpr (std::is_empty_v<Kept>) {
      // A plain pointer: what std::function makes of it is the same for every limit.
      bool (*of_any)(const void*) = [](const void* inputs) {
        return Kept{}(*static_cast<const Inputs*>(inputs));
      };
      method_.add_limit(of_any);
    } else {
      method_.add_limit(
          [kept](const void* inputs) { return kept(*static_cast<const Inputs*>(inputs)); });
    }
  }

  const MethodDescription& description() const override { return method_.about; }

  Expected<Evaluation> evaluate(const nlohmann::json& inputs) const override {
    return method_.evaluate(*this, &start_, inputs);
  }

  Expected<std::unique_ptr<VariedOutput>> vary(const nlohmann::json& inputs,
                                               const std::vector<std::string>& varied,
                                               const std::string& output) const override {
    return method_.vary(*this, &start_, inputs, varied, output);
  }

 protected:
  const UntypedMethod& described() const { return method_; }
  const Inputs& defaults() const { return start_; }

 private:
  Untyped copy_of(const void* inputs) const override {
    return std::make_shared<Inputs>(*static_cast<const Inputs*>(inputs));
  }
  Problems compute(const void* inputs, Steps* steps, Untyped& result) const override {
    const auto& typed = *static_cast<const Inputs*>(inputs);
    auto computed = steps == nullptr ? compute_unread(typed) : function_(typed, *steps);
    if (!computed) return computed.problems();
    result = std::make_shared<Result>(std::move(*computed));
    return {};
  }
  std::optional<double> value_with(const void* start, std::span<const std::size_t> places,
                                   std::span<const double> values,
                                   const ValueOf& value) const override {
    Inputs inputs = *static_cast<const Inputs*>(start);
    if (!method_.set(places, values, &inputs)) return std::nullopt;
    const auto result = compute_unread(inputs);
    if (!result) return std::nullopt;
    return value(&*result);
  }

  Expected<Result> compute_unread(const Inputs& inputs) const {
    if (arithmetic_ != nullptr) return arithmetic_(inputs);
    Steps unread = Steps::unread();
    return function_(inputs, unread);
  }

  InputDescription& describe(const Naming& name, InputForm form, QuantityKind kind,
                             const Unit& unit, AllowedRange allowed, LengthUse use) {
    return method_inputs::describe(method_.about, name, form, kind, unit, allowed, use);
  }

  UntypedMethod method_;
  Function function_;
  Arithmetic arithmetic_ = nullptr;
  Inputs start_{};  ///< holds the defaults
};

}  // namespace proofstone
