#include "engine/reliability/size_limit_state.h"

#include <cmath>

namespace proofstone {
namespace {

std::vector<RandomVariable> variables_of(const VariedOutput& required,
                                         const std::vector<Distribution>& spreads,
                                         const SizeLimitState::Surroundings& around) {
  std::vector<RandomVariable> variables;
  for (std::size_t i = 0; i < spreads.size(); ++i) {
    const auto& about = required.inputs()[i].about;
    variables.push_back({about.key, about.meaning, spreads[i]});
  }
  if (around.model_factor) {
    variables.push_back(
        {"model-factor", "what the formula itself does not know", *around.model_factor});
  }
  if (around.available) {
    variables.push_back({"available-size", "size of the rock that is there", *around.available});
  }
  return variables;
}

}  // namespace

SizeLimitState::SizeLimitState(std::shared_ptr<const VariedOutput> required,
                               const std::vector<Distribution>& spreads, const Surroundings& around)
    : LimitState(variables_of(*required, spreads, around)),
      required_(std::move(required)),
      inputs_(spreads.size()),
      available_si_(around.available_si),
      model_factor_varies_(around.model_factor.has_value()),
      available_varies_(around.available.has_value()) {}

std::optional<double> SizeLimitState::margin(std::span<const double> values) const {
  const auto required = required_->at(values.first(inputs_));
  if (!required) return std::nullopt;
  std::size_t next = inputs_;
  const double model_factor = model_factor_varies_ ? values[next++] : 1;
  const double available = available_varies_ ? values[next] : available_si_;
  if (!(available > 0 && model_factor > 0 && *required > 0)) return std::nullopt;
  return std::log(available / (model_factor * *required));
}

}  // namespace proofstone
