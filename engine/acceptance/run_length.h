#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// How a chart of loads raises an alarm; sizes in standard deviations of one load.
struct CumulativeSumChart {
  double allowance = 0.5;  ///< k: half the shift that matters
  double interval = 4;     ///< h: the sum at which the alarm is raised
  double head_start = 0;   ///< where both sums begin
};

/// Loads until the alarm on average, when the mean has shifted by `shift` standard deviations from
/// the start. One side alone, or both sides together (an increase and a decrease).
double run_length_of_upper_sum(const CumulativeSumChart& chart, double shift);
double run_length(const CumulativeSumChart& chart, double shift);

struct MovingAverageChart {
  double weight = 0.2;  ///< λ of the latest load, above 0 to 1
  double limits = 2.7;  ///< L: in standard deviations of the average in the long run
};

/// As above for an exponentially weighted moving average that starts at the target, limits of the
/// long run on both sides.
double run_length(const MovingAverageChart& chart, double shift);

/// The interval h with which a chart without a shift runs `loads` on average before a false alarm;
/// found between 0.1 and 20. `loads` from 2 to 10,000.
double interval_for_run_length(double allowance, double loads);

/// The limits L of a moving average with which it does so; found between 0.5 and 6.
double limits_for_run_length(double weight, double loads);

enum class LoadChart { cumulative_sum, one_sided_sum, moving_average };

struct RunLengthInputs {
  LoadChart chart = LoadChart::cumulative_sum;
  Dimensionless allowance = Dimensionless::number(0.5);
  Dimensionless interval = Dimensionless::number(4);
  Dimensionless head_start;
  Dimensionless weight = Dimensionless::number(0.2);
  Dimensionless limits = Dimensionless::number(2.7);
  Dimensionless shift;
};

struct RunLengthResult {
  Dimensionless run_length;
};

Expected<RunLengthResult> average_run_length(const RunLengthInputs& in, Steps& steps);

/// The same by name: "average-run-length".
const Method& average_run_length_method();

}  // namespace proofstone
