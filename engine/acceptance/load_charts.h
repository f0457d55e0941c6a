#pragma once

#include <optional>
#include <vector>

#include "engine/method/method.h"

namespace proofstone {

/// Where a chart of loads stands after every load; loads are numbered from 1.
struct CumulativeSums {
  std::vector<double> upper;
  std::vector<double> lower;
  std::optional<int> first_alarm;
};

/// S_H = max(0, S_H + x − μ0 − K) and S_L = max(0, S_L + μ0 − K − x), alarm above H. K and H in the
/// unit of the values.
struct CumulativeSumSettings {
  double target = 0;
  double allowance = 0;
  double interval = 0;
  double head_start = 0;
};
CumulativeSums cumulative_sums(const std::vector<double>& values,
                               const CumulativeSumSettings& settings);

/// z = λ·x + (1 − λ)·z with limits μ0 ± L·σ·√[λ/(2 − λ)·(1 − (1 − λ)^(2i))], or those of the long
/// run.
struct MovingAverageSettings {
  double target = 0;
  double deviation = 0;
  double weight = 0.2;
  double limits = 2.7;
  bool limits_of_long_run = false;
};
struct MovingAverages {
  std::vector<double> average;
  std::vector<double> half_width;  ///< of the limits about the target
  std::optional<int> first_alarm;
};
MovingAverages moving_averages(const std::vector<double>& values,
                               const MovingAverageSettings& settings);

/// "individuals-chart", "cumulative-sum-chart" and "moving-average-chart": the three charts by
/// name.
const Method& individuals_chart_method();
const Method& cumulative_sum_chart_method();
const Method& moving_average_chart_method();

}  // namespace proofstone
