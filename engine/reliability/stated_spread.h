#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/quantity/measure.h"
#include "engine/reliability/distribution.h"

namespace proofstone {

/// How a designer states that a quantity is uncertain. Values are in SI.
struct StatedSpread {
  DistributionFamily family = DistributionFamily::lognormal;
  std::optional<double> variation;  ///< coefficient of variation
  std::optional<double> mean;       ///< absent: the value that the zone has
  std::optional<double> standard_deviation;
  std::optional<double> low;
  std::optional<double> most_likely;
  std::optional<double> high;
};

/// Correlation of two quantities by their keys.
struct StatedCorrelation {
  std::string first;
  std::string second;
  double coefficient = 0;
};

/// What a designer states of the uncertainty in one sizing method at one zone. Nothing is assumed:
/// what is not stated is taken as certain.
struct StatedUncertainty {
  std::string from;                            ///< who says so, and on what grounds
  std::map<std::string, StatedSpread> inputs;  ///< by input key of the method
  std::optional<StatedSpread> model;           ///< true over computed size; its mean is 1 if absent
  std::optional<StatedSpread> available_size;  ///< its mean is the smallest the class allows
  std::vector<StatedCorrelation> correlations;
  std::optional<double> accepted_chance;  ///< what the owner bears in the design flood
};

/// The words of documents for the families: "normal", "lognormal", "truncated normal" …
const std::vector<std::pair<std::string, DistributionFamily>>& distribution_words();

/// The distribution of a quantity whose value is otherwise `held`. Problems: a mean that is neither
/// stated nor held, values that the family needs and that are not stated, an impossible spread.
Expected<Distribution> distribution_of(const StatedSpread& stated, std::optional<double> held);

}  // namespace proofstone
