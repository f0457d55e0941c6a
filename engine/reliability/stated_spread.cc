#include "engine/reliability/stated_spread.h"

#include <cmath>

namespace proofstone {
namespace {

Problem missing(const char* field, const std::string& what) {
  return {"missing-field", what, "", std::string("/") + field, ""};
}

struct MeanAndDeviation {
  double mean;
  double deviation;
};

Expected<MeanAndDeviation> mean_and_deviation(const StatedSpread& stated,
                                              std::optional<double> held) {
  const auto mean = stated.mean ? stated.mean : held;
  if (!mean) return missing("mean", "Neither the zone nor the statement gives a mean.");
  if (stated.variation.has_value() == stated.standard_deviation.has_value()) {
    return missing("variation",
                   "The spread is stated once: as a coefficient of variation or as a standard "
                   "deviation.");
  }
  const double deviation =
      stated.variation ? *stated.variation * std::abs(*mean) : *stated.standard_deviation;
  return MeanAndDeviation{*mean, deviation};
}

}  // namespace

const std::vector<std::pair<std::string, DistributionFamily>>& distribution_words() {
  static const std::vector<std::pair<std::string, DistributionFamily>> words{
      {"normal", DistributionFamily::normal},
      {"lognormal", DistributionFamily::lognormal},
      {"truncated normal", DistributionFamily::truncated_normal},
      {"triangular", DistributionFamily::triangular},
      {"uniform", DistributionFamily::uniform}};
  return words;
}

Expected<Distribution> distribution_of(const StatedSpread& stated, std::optional<double> held) {
  const bool bounded = stated.family == DistributionFamily::truncated_normal ||
                       stated.family == DistributionFamily::triangular ||
                       stated.family == DistributionFamily::uniform;
  if (bounded && !(stated.low && stated.high)) {
    return missing("low", "This distribution needs its lowest and its highest value.");
  }
  if (stated.family == DistributionFamily::uniform) {
    return Distribution::uniform(*stated.low, *stated.high);
  }
  if (stated.family == DistributionFamily::triangular) {
    const auto most_likely = stated.most_likely ? stated.most_likely : held;
    if (!most_likely) return missing("most_likely", "The most likely value is not known.");
    return Distribution::triangular(*stated.low, *most_likely, *stated.high);
  }
  const auto moments = mean_and_deviation(stated, held);
  if (!moments) return moments.problems();
  if (stated.family == DistributionFamily::normal) {
    return Distribution::normal(moments->mean, moments->deviation);
  }
  if (stated.family == DistributionFamily::lognormal) {
    return Distribution::lognormal(moments->mean, moments->deviation);
  }
  return Distribution::truncated_normal(moments->mean, moments->deviation, *stated.low,
                                        *stated.high);
}

}  // namespace proofstone
