#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace proofstone::piles {

/// Ratios as they come, in logarithms.
struct Ratios {
  std::vector<double> logs;
  void add(double ratio) { logs.push_back(std::log(ratio)); }

  double mean() const {
    double sum = 0;
    for (const double log : logs) sum += log;
    return sum / static_cast<double>(logs.size());
  }
  double deviation() const {
    double sum = 0;
    for (const double log : logs) sum += (log - mean()) * (log - mean());
    return std::sqrt(sum / static_cast<double>(logs.size() - 1));
  }
  /// The error that nine of ten keep within.
  double nine_of_ten() const {
    std::vector<double> errors;
    for (const double log : logs) errors.push_back(std::abs(std::exp(log) - 1));
    std::sort(errors.begin(), errors.end());
    return errors[static_cast<std::size_t>(0.9 * static_cast<double>(errors.size() - 1) + 0.5)];
  }
  /// "0.98 / 6 %"
  std::string text() const {
    if (logs.size() < 2) return "–";
    return fmt::format("{:.2f} / {:.0f} %", std::exp(mean()), 100 * deviation());
  }
};

}  // namespace proofstone::piles
