#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "engine/reliability/distribution.h"

namespace proofstone {

/// An uncertain quantity of a limit state. Values are in SI.
struct RandomVariable {
  std::string key;      ///< "velocity"
  std::string meaning;  ///< "velocity at the rock"
  Distribution distribution;
};

/// A margin that is above 0 while the rock stays and below 0 when it moves, as a function of
/// uncertain quantities.
class LimitState {
 public:
  explicit LimitState(std::vector<RandomVariable> variables) : variables_(std::move(variables)) {}
  virtual ~LimitState() = default;

  const std::vector<RandomVariable>& variables() const { return variables_; }
  /// The margin at these values, one for each variable; nothing where the formula has no answer.
  virtual std::optional<double> margin(std::span<const double> values) const = 0;

 private:
  std::vector<RandomVariable> variables_;
};

/// A limit state written as a formula.
class FormulaLimitState : public LimitState {
 public:
  using Formula = std::function<std::optional<double>(std::span<const double>)>;
  FormulaLimitState(std::vector<RandomVariable> variables, Formula formula)
      : LimitState(std::move(variables)), formula_(std::move(formula)) {}
  std::optional<double> margin(std::span<const double> values) const override {
    return formula_(values);
  }

 private:
  Formula formula_;
};

/// Correlation of the normal scores of two variables (Gaussian copula, the Nataf model with the
/// correlation stated after the transformation): the ordinary correlation of two normal variables,
/// and that of the logarithms of two lognormal ones. Variables not named are independent.
struct Correlation {
  std::size_t first = 0;
  std::size_t second = 0;
  double coefficient = 0;
};

}  // namespace proofstone
