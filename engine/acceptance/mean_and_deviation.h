#pragma once

#include <vector>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

struct MeanAndDeviation {
  double mean = 0;
  double deviation = 0;  ///< of the sample, n − 1
};

/// Problems: fewer than `least` values; `where` is their pointer.
Expected<MeanAndDeviation> mean_and_deviation(const std::vector<double>& values, int least,
                                              const std::string& where);

/// The plain numbers behind a list of an input.
std::vector<double> numbers_of(const std::vector<Dimensionless>& values);

}  // namespace proofstone
