#include "engine/acceptance/load_charts.h"

#include <algorithm>
#include <cmath>

#include "engine/acceptance/mean_and_deviation.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

/// 3/d2 for ranges of two values (NIST/SEMATECH e-Handbook §6.3.2.2).
constexpr double limits_of_two = 3 / 1.128;

Source individuals_source() {
  return {"NIST/SEMATECH e-Handbook of Statistical Methods", "§6.3.2.2, individuals control charts",
          SourceStanding::memory};
}
Source sum_source() {
  return {"Montgomery & Runger, Applied Statistics and Probability for Engineers, 3rd edition",
          "Example 16-6, cumulative sum chart", SourceStanding::published};
}
Source average_source() {
  return {"NIST/SEMATECH e-Handbook of Statistical Methods", "§6.3.2.4, EWMA control charts",
          SourceStanding::published};
}

MethodDescription describe_load_charts(const char* id, const char* title, const char* purpose,
                                       Source source) {
  MethodDescription about;
  about.id = id;
  about.title = title;
  about.purpose = purpose;
  about.group = MethodGroup::evidence;
  about.sources = {std::move(source)};
  about.cautions = {
      "An alarm says that the supply has changed, not that the rock is out of its band.",
      "Loads of different sources belong on different charts."};
  return about;
}

struct IndividualsInputs {
  std::vector<Dimensionless> values;
};
struct IndividualsResult {
  Dimensionless mean;
  Dimensionless moving_range;
  Dimensionless lower;
  Dimensionless upper;
};

Expected<IndividualsResult> individuals(const IndividualsInputs& in, Steps& steps) {
  const auto values = numbers_of(in.values);
  const auto spread = mean_and_deviation(values, 2, "/values");
  if (!spread) return spread.problems();
  double ranges = 0;
  for (std::size_t i = 1; i < values.size(); ++i) ranges += std::abs(values[i] - values[i - 1]);
  const double range = ranges / static_cast<double>(values.size() - 1);
  const double half = limits_of_two * range;
  const auto source = individuals_source().sentence();
  steps.computed("x̄", "mean", "Σx/n", measure(spread->mean));
  steps.computed("MR̄", "mean of the moving ranges", "Σ|x_i − x_(i−1)|/(n − 1)", measure(range));
  steps.computed("UCL", "upper limit", "x̄ + 3·MR̄/1.128", measure(spread->mean + half), source);
  steps.computed("LCL", "lower limit", "x̄ − 3·MR̄/1.128", measure(spread->mean - half), source);
  return IndividualsResult{Dimensionless::number(spread->mean), Dimensionless::number(range),
                           Dimensionless::number(spread->mean - half),
                           Dimensionless::number(spread->mean + half)};
}

struct SumInputs {
  std::vector<Dimensionless> values;
  Dimensionless target;
  Dimensionless allowance;
  Dimensionless interval = Dimensionless::number(1);
  Dimensionless head_start;
};
struct SumResult {
  Dimensionless upper;
  Dimensionless lower;
  Dimensionless first_alarm;
};

Expected<SumResult> sum_chart(const SumInputs& in, Steps& steps) {
  const auto values = numbers_of(in.values);
  if (values.empty()) {
    return Problem{"too-few-values", "A chart has at least one load.", "", "/values",
                   "one value of each load"};
  }
  const auto sums = cumulative_sums(values, {in.target.number(), in.allowance.number(),
                                             in.interval.number(), in.head_start.number()});
  const auto source = sum_source().sentence();
  steps.computed("S_H", "upper sum after the last load", "max(0, S_H + x − μ0 − K)",
                 measure(sums.upper.back()), source);
  steps.computed("S_L", "lower sum after the last load", "max(0, S_L + μ0 − K − x)",
                 measure(sums.lower.back()), source);
  const double alarm = sums.first_alarm.value_or(0);
  steps.computed("i", "first load with an alarm, 0 for none", "a sum above H", measure(alarm));
  return SumResult{Dimensionless::number(sums.upper.back()),
                   Dimensionless::number(sums.lower.back()), Dimensionless::number(alarm)};
}

enum class AverageLimits { of_load, of_long_run };
struct AverageInputs {
  std::vector<Dimensionless> values;
  Dimensionless target;
  Dimensionless deviation = Dimensionless::number(1);
  Dimensionless weight = Dimensionless::number(0.2);
  Dimensionless limits = Dimensionless::number(2.7);
  AverageLimits limits_of = AverageLimits::of_load;
};
struct AverageResult {
  Dimensionless average;
  Dimensionless lower;
  Dimensionless upper;
  Dimensionless first_alarm;
};

Expected<AverageResult> average_chart(const AverageInputs& in, Steps& steps) {
  const auto values = numbers_of(in.values);
  if (values.empty()) {
    return Problem{"too-few-values", "A chart has at least one load.", "", "/values",
                   "one value of each load"};
  }
  const auto chart =
      moving_averages(values, {in.target.number(), in.deviation.number(), in.weight.number(),
                               in.limits.number(), in.limits_of == AverageLimits::of_long_run});
  const double target = in.target.number();
  const double half = chart.half_width.back();
  const auto source = average_source().sentence();
  steps.computed("z", "average after the last load", "λ·x + (1 − λ)·z",
                 measure(chart.average.back()), source);
  steps.computed("Δ", "half-width of the limits there", "L·σ·√[λ/(2 − λ)·(1 − (1 − λ)^(2i))]",
                 measure(half), source);
  const double alarm = chart.first_alarm.value_or(0);
  steps.computed("i", "first load with an alarm, 0 for none", "z outside μ0 ± Δ", measure(alarm));
  return AverageResult{Dimensionless::number(chart.average.back()),
                       Dimensionless::number(target - half), Dimensionless::number(target + half),
                       Dimensionless::number(alarm)};
}

TypedMethod<IndividualsInputs, IndividualsResult> make_individuals() {
  TypedMethod<IndividualsInputs, IndividualsResult> method(
      describe_load_charts("individuals-chart", "Individuals chart of loads",
                           "Limits within which single loads of an unchanged supply lie.",
                           individuals_source()),
      &individuals);
  method.required_list({"values", "x", "one value of each load, in any one unit"},
                       &IndividualsInputs::values, unit::number, AllowedRange::any());
  method.output({"mean", "x̄", "mean"}, &IndividualsResult::mean, unit::number);
  method.output({"moving_range", "MR̄", "mean of the moving ranges"},
                &IndividualsResult::moving_range, unit::number);
  method.output({"lower", "LCL", "lower limit"}, &IndividualsResult::lower, unit::number);
  method.output({"upper", "UCL", "upper limit"}, &IndividualsResult::upper, unit::number);
  return method;
}

TypedMethod<SumInputs, SumResult> make_sum() {
  TypedMethod<SumInputs, SumResult> method(
      describe_load_charts("cumulative-sum-chart", "Cumulative sum chart of loads",
                           "Finds a small lasting drift of the supply from load to load.",
                           sum_source()),
      &sum_chart);
  method.required_list({"values", "x", "one value of each load, in any one unit"},
                       &SumInputs::values, unit::number, AllowedRange::any());
  method.required({"target", "μ0", "the value that loads should keep"}, &SumInputs::target,
                  unit::number, AllowedRange::any());
  method.required({"allowance", "K", "half the drift that matters"}, &SumInputs::allowance,
                  unit::number, AllowedRange::between(0, 1e9));
  method.required({"interval", "H", "sum at which the alarm is raised"}, &SumInputs::interval,
                  unit::number, AllowedRange::positive_to(1e9));
  method.defaulted({"head_start", "S_0", "where both sums begin"}, &SumInputs::head_start,
                   unit::number, AllowedRange::between(0, 1e9));
  method.output({"upper", "S_H", "upper sum after the last load"}, &SumResult::upper, unit::number);
  method.output({"lower", "S_L", "lower sum after the last load"}, &SumResult::lower, unit::number);
  method.output({"first_alarm", "i", "first load with an alarm, 0 for none"},
                &SumResult::first_alarm, unit::number);
  return method;
}

TypedMethod<AverageInputs, AverageResult> make_average() {
  TypedMethod<AverageInputs, AverageResult> method(
      describe_load_charts(
          "moving-average-chart", "Moving average chart of loads",
          "Finds a small lasting drift of the supply by an exponentially weighted average.",
          average_source()),
      &average_chart);
  method.required_list({"values", "x", "one value of each load, in any one unit"},
                       &AverageInputs::values, unit::number, AllowedRange::any());
  method.required({"target", "μ0", "the value that loads should keep"}, &AverageInputs::target,
                  unit::number, AllowedRange::any());
  method.required({"deviation", "σ", "standard deviation of one load"}, &AverageInputs::deviation,
                  unit::number, AllowedRange::positive_to(1e9));
  method.defaulted({"weight", "λ", "weight of the latest load"}, &AverageInputs::weight,
                   unit::number, AllowedRange::between(0.01, 1));
  method.defaulted({"limits", "L", "limits in standard deviations of the average"},
                   &AverageInputs::limits, unit::number, AllowedRange::between(0.5, 5));
  method.choice({"limits_of", "limits", "which limits"}, &AverageInputs::limits_of,
                {{AverageLimits::of_load, "of-load", "narrower at the first loads"},
                 {AverageLimits::of_long_run, "of-long-run", "those of the long run throughout"}});
  method.output({"average", "z", "average after the last load"}, &AverageResult::average,
                unit::number);
  method.output({"lower", "LCL", "lower limit there"}, &AverageResult::lower, unit::number);
  method.output({"upper", "UCL", "upper limit there"}, &AverageResult::upper, unit::number);
  method.output({"first_alarm", "i", "first load with an alarm, 0 for none"},
                &AverageResult::first_alarm, unit::number);
  return method;
}

}  // namespace

CumulativeSums cumulative_sums(const std::vector<double>& values,
                               const CumulativeSumSettings& settings) {
  CumulativeSums sums;
  double upper = settings.head_start;
  double lower = settings.head_start;
  for (const double x : values) {
    upper = std::max(0.0, upper + x - settings.target - settings.allowance);
    lower = std::max(0.0, lower + settings.target - settings.allowance - x);
    sums.upper.push_back(upper);
    sums.lower.push_back(lower);
    if (!sums.first_alarm && std::max(upper, lower) > settings.interval) {
      sums.first_alarm = static_cast<int>(sums.upper.size());
    }
  }
  return sums;
}

MovingAverages moving_averages(const std::vector<double>& values,
                               const MovingAverageSettings& settings) {
  MovingAverages chart;
  const double lambda = settings.weight;
  const double long_run = settings.limits * settings.deviation * std::sqrt(lambda / (2 - lambda));
  double average = settings.target;
  double forgotten = 1;  // (1 − λ)^(2i)
  for (const double x : values) {
    average = lambda * x + (1 - lambda) * average;
    forgotten *= (1 - lambda) * (1 - lambda);
    const double half =
        settings.limits_of_long_run ? long_run : long_run * std::sqrt(1 - forgotten);
    chart.average.push_back(average);
    chart.half_width.push_back(half);
    if (!chart.first_alarm && std::abs(average - settings.target) > half) {
      chart.first_alarm = static_cast<int>(chart.average.size());
    }
  }
  return chart;
}

const Method& individuals_chart_method() {
  static const auto method = make_individuals();
  return method;
}
const Method& cumulative_sum_chart_method() {
  static const auto method = make_sum();
  return method;
}
const Method& moving_average_chart_method() {
  static const auto method = make_average();
  return method;
}

}  // namespace proofstone
