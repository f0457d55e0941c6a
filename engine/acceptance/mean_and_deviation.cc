#include "engine/acceptance/mean_and_deviation.h"

#include <fmt/format.h>

#include <cmath>
#include <numeric>

namespace proofstone {

Expected<MeanAndDeviation> mean_and_deviation(const std::vector<double>& values, int least,
                                              const std::string& where) {
  if (static_cast<int>(values.size()) < least) {
    return Problem{
        "too-few-values",
        fmt::format("{} values are too few; their spread would not be known.", values.size()), "",
        where, fmt::format("at least {}", least)};
  }
  const auto n = static_cast<double>(values.size());
  MeanAndDeviation result;
  result.mean = std::accumulate(values.begin(), values.end(), 0.0) / n;
  double squares = 0;
  for (const double value : values) squares += (value - result.mean) * (value - result.mean);
  result.deviation = std::sqrt(squares / (n - 1));
  return result;
}

std::vector<double> numbers_of(const std::vector<Dimensionless>& values) {
  std::vector<double> numbers;
  numbers.reserve(values.size());
  for (const auto& value : values) numbers.push_back(value.number());
  return numbers;
}

}  // namespace proofstone
