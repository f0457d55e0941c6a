#include "engine/site/density_scatter.h"

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"

namespace proofstone {
namespace {

/// Equally likely errors of a mean of tests, by Student's t; in units of what was tested.
std::vector<double> errors_of_mean(const std::vector<Dimensionless>& tests, double mean) {
  constexpr int errors = 8;
  const auto n = static_cast<double>(tests.size());
  double squares = 0;
  for (const auto& test : tests) squares += (test.number() - mean) * (test.number() - mean);
  const double error_of_mean = std::sqrt(squares / (n - 1) / n);
  std::vector<double> result;
  for (int i = 0; i < errors; ++i) {
    const double below = (i + 0.5) / errors;
    const double t = student_quantile_above(std::min(below, 1 - below), n - 1);
    result.push_back(below < 0.5 ? -t * error_of_mean : t * error_of_mean);
  }
  return result;
}

}  // namespace

std::optional<DensityScatter> density_scatter(const RockSource& source, ZoneSetting setting,
                                              const SizingMethod& method, Length needed,
                                              SizeMeaning meaning) {
  const auto& tests = source.specific_gravity_tests;
  if (tests.size() < 2) return std::nullopt;
  const double mean = source.rock.specific_gravity.number();
  DensityScatter scatter;
  scatter.lightest = *std::min_element(tests.begin(), tests.end());
  const double lighter = std::log((scatter.lightest.number() - 1) / (mean - 1));
  if (!(lighter < -1e-9)) return std::nullopt;
  setting.rock.specific_gravity = scatter.lightest;
  const auto answer = method.size(setting);
  if (!answer.required) return std::nullopt;
  scatter.needed_with_lightest = size_as(*answer.required, meaning);
  const double power = std::log(scatter.needed_with_lightest / needed) / lighter;
  constexpr double hardly_heavier_than_water = 0.1;
  for (const double error : errors_of_mean(tests, mean)) {
    const double heavier = std::max(hardly_heavier_than_water, mean + error - 1);
    scatter.log_errors.push_back(power * std::log(heavier / (mean - 1)));
  }
  return scatter;
}

}  // namespace proofstone
