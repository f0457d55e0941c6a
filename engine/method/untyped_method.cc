#include "engine/method/untyped_method.h"

#include <nlohmann/json.hpp>
#include <utility>

namespace proofstone {
namespace {

class Varied : public VariedOutput {
 public:
  Varied(const MethodTypes& types, Untyped start, std::vector<VariedInput> inputs,
         std::vector<std::size_t> places, MethodTypes::ValueOf value)
      : VariedOutput(std::move(inputs)),
        types_(types),
        start_(std::move(start)),
        places_(std::move(places)),
        value_(std::move(value)) {}

  std::optional<double> at(std::span<const double> values) const override {
    return types_.value_with(start_.get(), places_, values, value_);
  }

 private:
  const MethodTypes& types_;
  Untyped start_;
  std::vector<std::size_t> places_;
  MethodTypes::ValueOf value_;
};

}  // namespace

UntypedMethod::UntypedMethod() = default;
UntypedMethod::UntypedMethod(UntypedMethod&&) noexcept = default;
UntypedMethod::~UntypedMethod() = default;

void UntypedMethod::add_input(std::unique_ptr<const MemberSlot> slot) {
  slots.push_back(std::move(slot));
}
void UntypedMethod::add_output(std::unique_ptr<const MemberSlot> slot) {
  outputs.push_back(std::move(slot));
}
void UntypedMethod::add_limit(std::function<bool(const void* inputs)> kept) {
  limits.push_back(std::move(kept));
}

Expected<Untyped> UntypedMethod::run(const MethodTypes& types, const void* inputs,
                                     Evaluation& evaluation) const {
  auto problems = method_inputs::not_allowed(about, slots, inputs);
  if (!problems.empty()) return problems;
  Untyped result;
  problems = types.compute(inputs, &evaluation.steps, result);
  if (!problems.empty()) return problems;
  for (std::size_t i = 0; i < outputs.size(); ++i) {
    const auto& output = about.outputs[i];
    evaluation.outputs.push_back(
        {output.key, Measure{outputs[i]->value(result.get()).value_or(0), output.kind}});
  }
  for (std::size_t i = 0; i < limits.size(); ++i) {
    if (!limits[i](inputs)) evaluation.limits_not_kept.push_back(about.limits[i]);
  }
  return result;
}

Expected<Untyped> UntypedMethod::run_unread(const MethodTypes& types, const void* inputs) const {
  auto problems = method_inputs::not_allowed(about, slots, inputs);
  if (!problems.empty()) return problems;
  Untyped result;
  problems = types.compute(inputs, nullptr, result);
  if (!problems.empty()) return problems;
  return result;
}

Expected<Evaluation> UntypedMethod::evaluate(const MethodTypes& types, const void* start,
                                             const nlohmann::json& inputs) const {
  const Untyped read = types.copy_of(start);
  const auto problems = method_inputs::read(about, slots, inputs, true, read.get());
  if (!problems.empty()) return problems;
  Evaluation evaluation;
  const auto result = run(types, read.get(), evaluation);
  if (!result) return result.problems();
  return evaluation;
}

Expected<std::unique_ptr<VariedOutput>> UntypedMethod::vary(const MethodTypes& types,
                                                            const void* start,
                                                            const nlohmann::json& inputs,
                                                            const std::vector<std::string>& varied,
                                                            const std::string& output) const {
  Untyped read = types.copy_of(start);
  const auto problems = method_inputs::read(about, slots, inputs, true, read.get());
  if (!problems.empty()) return problems;
  for (std::size_t i = 0; i < about.outputs.size(); ++i) {
    if (about.outputs[i].key != output) continue;
    return vary_from(types, std::move(read), varied, [slot = outputs[i].get()](const void* result) {
      return slot->value(result).value_or(0);
    });
  }
  return method_inputs::unknown_output(about, output);
}

Expected<std::unique_ptr<VariedOutput>> UntypedMethod::vary_from(
    const MethodTypes& types, Untyped start, const std::vector<std::string>& varied,
    MethodTypes::ValueOf value) const {
  Problems problems;
  std::vector<VariedInput> inputs;
  std::vector<std::size_t> places;
  for (const auto& key : varied) {
    const auto place = method_inputs::quantity_called(about, key);
    if (!place) {
      problems.insert(problems.end(), place.problems().begin(), place.problems().end());
      continue;
    }
    inputs.push_back({about.inputs[*place], slots[*place]->value(start.get())});
    places.push_back(*place);
  }
  if (!problems.empty()) return problems;
  return std::unique_ptr<VariedOutput>(std::make_unique<Varied>(
      types, std::move(start), std::move(inputs), std::move(places), std::move(value)));
}

bool UntypedMethod::set(std::span<const std::size_t> places, std::span<const double> values,
                        void* inputs) const {
  for (std::size_t i = 0; i < places.size(); ++i) {
    slots[places[i]]->set(inputs, values[i]);
    if (method_inputs::outside(about, slots, places[i], inputs)) return false;
  }
  return true;
}

}  // namespace proofstone
