#include "engine/evidence/size_error.h"

#include <algorithm>
#include <cmath>

#include "engine/evidence/standard_normal.h"

namespace proofstone {
namespace {

/// How many of its own errors the size at a percent lies above `size`.
std::optional<double> errors_above(const MeasuredGradation& measured, double percent, Length size,
                                   double times) {
  const auto there = measured.curve.size_at(percent);
  const auto error = size_error_at(measured, percent, times);
  if (!there || !error || !(*error > 0) || !(size.si() > 0)) return std::nullopt;
  return std::log(*there / size) / *error;
}

}  // namespace

std::optional<double> size_error_at(const MeasuredGradation& measured, double percent,
                                    double times) {
  const auto& known = measured.size_errors;
  const auto above = std::find_if(known.begin(), known.end(), [percent](const SizeError& error) {
    return error.percent >= percent - 1e-9;
  });
  if (above == known.end()) return std::nullopt;
  double error = above->log_error;
  if (above->percent > percent + 1e-9) {
    if (above == known.begin()) return std::nullopt;
    const auto below = above - 1;
    const double part = (percent - below->percent) / (above->percent - below->percent);
    error = below->log_error + part * (above->log_error - below->log_error);
  }
  const auto size = measured.curve.size_at(percent);
  if (!size) return std::nullopt;
  const double lasting = measured.lasting_at(*size) * measured.effective_stones_at(*size);
  return error * std::sqrt(lasting + (1 - lasting) / times);
}

std::optional<double> confidence_size_at_least(const MeasuredGradation& measured, double percent,
                                               Length size, double times) {
  const auto z = errors_above(measured, percent, size, times);
  if (!z) return std::nullopt;
  return normal_cumulative(*z);
}

std::optional<double> confidence_size_at_most(const MeasuredGradation& measured, double percent,
                                              Length size, double times) {
  const auto z = errors_above(measured, percent, size, times);
  if (!z) return std::nullopt;
  return normal_cumulative(-*z);
}

}  // namespace proofstone
