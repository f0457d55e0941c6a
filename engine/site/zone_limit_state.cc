#include "engine/site/zone_limit_state.h"

#include <fmt/format.h>

#include "engine/site/wording.h"

namespace proofstone {
namespace {

Problems add_spread(const StatedSpread& stated, std::optional<double> held, const std::string& key,
                    std::vector<Distribution>& spreads) {
  const auto distribution = distribution_of(stated, held);
  if (!distribution) return located_under(distribution.problems(), "/" + key);
  spreads.push_back(*distribution);
  return {};
}

Expected<std::vector<Distribution>> spreads_of(const StatedUncertainty& stated,
                                               const std::vector<std::string>& keys,
                                               const std::vector<VariedInput>& inputs) {
  std::vector<Distribution> spreads;
  Problems problems;
  for (std::size_t i = 0; i < keys.size(); ++i) {
    const auto more =
        add_spread(stated.inputs.at(keys[i]), inputs[i].value_si, "inputs/" + keys[i], spreads);
    problems.insert(problems.end(), more.begin(), more.end());
  }
  if (!problems.empty()) return problems;
  return spreads;
}

Expected<std::optional<Distribution>> beside(const std::optional<StatedSpread>& stated, double held,
                                             const std::string& key) {
  if (!stated) return std::optional<Distribution>();
  const auto distribution = distribution_of(*stated, held);
  if (!distribution) return located_under(distribution.problems(), "/" + key);
  return std::optional<Distribution>(*distribution);
}

Expected<std::vector<Correlation>> correlations_of(const StatedUncertainty& stated,
                                                   const LimitState& limit) {
  std::vector<Correlation> correlations;
  const auto& variables = limit.variables();
  const auto place = [&](const std::string& key) {
    std::size_t i = 0;
    while (i < variables.size() && variables[i].key != key) ++i;
    return i;
  };
  for (const auto& one : stated.correlations) {
    const Correlation correlation{place(one.first), place(one.second), one.coefficient};
    if (correlation.first == variables.size() || correlation.second == variables.size()) {
      return Problem{"bad-correlation",
                     "A correlation names a quantity whose spread is not stated.", "",
                     "/correlations", "keys of the quantities with a spread"};
    }
    correlations.push_back(correlation);
  }
  return correlations;
}

/// The least size of the class there, as the finding of the class takes it.
Expected<Length> least_available(const ChanceQuestion& ask, double percent) {
  auto size = least_size_of(*ask.specified, percent, density_of(ask.water->setting->rock));
  if (size) return size;
  return Problem{
      "no-size",
      fmt::format("{} does not state a D{}.", ask.specified->name, percent_number(percent)), "",
      "/available_size", "a class with a limit there"};
}

}  // namespace

Expected<ZoneLimitState> zone_limit_state(const ChanceQuestion& ask) {
  std::vector<std::string> keys;
  for (const auto& [key, spread] : ask.stated->inputs) keys.push_back(key);
  auto required =
      ask.method->vary_size(*ask.water->setting, keys, ask.specified->band.basis().size);
  if (!required) return required.problems();

  ZoneLimitState asked;
  asked.percent_smaller = required->percent_smaller;
  const auto least = least_available(ask, required->percent_smaller);
  if (!least) return least.problems();
  const auto spreads = spreads_of(*ask.stated, keys, required->size->inputs());
  if (!spreads) return spreads.problems();
  const auto model = beside(ask.stated->model, 1, "model");
  if (!model) return model.problems();
  const auto available = beside(ask.stated->available_size, least->meters(), "available_size");
  if (!available) return available.problems();
  SizeLimitState::Surroundings around;
  around.available_si = *available ? (*available)->mean() : least->meters();
  around.available = *available;
  around.model_factor = *model;
  asked.available = Length::meters(around.available_si);
  asked.limit.emplace(required->size, *spreads, around);
  auto correlations = correlations_of(*ask.stated, *asked.limit);
  if (!correlations) return correlations.problems();
  asked.correlations = std::move(*correlations);
  return asked;
}

}  // namespace proofstone
