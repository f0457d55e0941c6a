#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "engine/method/description.h"

namespace proofstone {

/// One input of a method that is let vary, and the value it is held at otherwise.
struct VariedInput {
  InputDescription about;
  std::optional<double> value_si;  ///< absent for an optional input that was not given
};

/// One output of a method as a function of some of its inputs, all others held: what sensitivity
/// and simulation call millions of times. No steps are written and no texts are read.
class VariedOutput {
 public:
  explicit VariedOutput(std::vector<VariedInput> inputs) : inputs_(std::move(inputs)) {}
  virtual ~VariedOutput() = default;

  const std::vector<VariedInput>& inputs() const { return inputs_; }
  /// The output in SI at these values (SI, in the order of `inputs`); nothing where a value is not
  /// allowed or the method has no answer.
  virtual std::optional<double> at(std::span<const double> values) const = 0;

 private:
  std::vector<VariedInput> inputs_;
};

}  // namespace proofstone
