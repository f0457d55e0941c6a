#include "engine/acceptance/run_length.h"

#include <Eigen/Dense>
#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <limits>
#include <vector>

#include "engine/evidence/standard_normal.h"
#include "engine/method/typed_method.h"
#include "engine/numeric/narrowed_bracket.h"

namespace proofstone {
namespace {

using DescribedRunLength = TypedMethod<RunLengthInputs, RunLengthResult>;
using Rule = boost::math::quadrature::gauss<double, 30>;

struct Node {
  double place = 0;
  double weight = 0;
};

/// Gauss–Legendre nodes on pieces of [low, high]. The kernel is a normal density of width `width`:
/// one piece of thirty nodes over a few widths leaves nothing to be seen in a double.
std::vector<Node> nodes_between(double low, double high, double width) {
  const int pieces = std::clamp(static_cast<int>(std::ceil((high - low) / (6 * width))), 1, 12);
  const double half = (high - low) / (2 * pieces);
  std::vector<Node> nodes;
  for (int piece = 0; piece < pieces; ++piece) {
    const double middle = low + (2 * piece + 1) * half;
    for (std::size_t i = 0; i < Rule::abscissa().size(); ++i) {
      const double offset = half * Rule::abscissa()[i];
      const double weight = half * Rule::weights()[i];
      nodes.push_back({middle - offset, weight});
      nodes.push_back({middle + offset, weight});
    }
  }
  return nodes;
}

/// The run length from every node, by the integral equation L = 1 + ∫ kernel·L at the nodes; with
/// `extra`, the last unknown is the run length from a sum of nothing, reached with that chance.
template <class Kernel, class Chance>
Eigen::VectorXd solve(const std::vector<Node>& nodes, double nothing, Kernel kernel,
                      Chance chance_of_nothing) {
  const auto n = static_cast<Eigen::Index>(nodes.size());
  Eigen::MatrixXd system = Eigen::MatrixXd::Identity(n + 1, n + 1);
  const auto from = [&](Eigen::Index row) {
    return row < n ? nodes[static_cast<std::size_t>(row)].place : nothing;
  };
  for (Eigen::Index row = 0; row <= n; ++row) {
    for (Eigen::Index column = 0; column < n; ++column) {
      const Node& node = nodes[static_cast<std::size_t>(column)];
      system(row, column) -= node.weight * kernel(from(row), node.place);
    }
    system(row, n) -= chance_of_nothing(from(row));
  }
  return system.partialPivLu().solve(Eigen::VectorXd::Ones(n + 1));
}

/// The setting between two ends at which `length_with(setting)`, which grows with it, is `loads`;
/// an end where it is so nowhere. Sought from a setting near the answer, since each length is a
/// system of equations; its logarithm is nearly straight in the setting.
template <class Length>
double setting_for(double loads, double near, double low, double high, Length length_with) {
  const auto surplus = [&](double setting) { return std::log(length_with(setting) / loads); };
  const auto close = [](double a, double b) { return std::abs(b - a) <= 1e-12 * std::abs(b); };
  double here = near;
  double at_here = surplus(here);
  const bool upward = at_here < 0;
  for (double step = (upward ? 0.1 : -0.1) * near;; step *= 2) {
    const double there = std::clamp(here + step, low, high);
    const double at_there = surplus(there);
    if (upward ? at_there >= 0 : at_there <= 0) {
      const ValueAt one{here, at_here};
      const ValueAt other{there, at_there};
      const auto ends = upward ? narrowed_bracket(surplus, one, other, close, 100)
                               : narrowed_bracket(surplus, other, one, close, 100);
      return (ends.first + ends.second) / 2;
    }
    if (there == (upward ? high : low) || std::isnan(at_there)) return there;
    here = there;
    at_here = at_there;
  }
}

/// What was answered last. A chart is designed anew with every look at a lot, mostly alike, and
/// each time takes a dozen systems of equations.
struct LastAnswer {
  double setting = std::numeric_limits<double>::quiet_NaN();
  double loads = std::numeric_limits<double>::quiet_NaN();
  double answer = 0;

  template <class Find>
  double of(double asked_setting, double asked_loads, Find find) {
    if (setting != asked_setting || loads != asked_loads) {
      *this = {asked_setting, asked_loads, find()};
    }
    return answer;
  }
};

struct SumRunLength {
  double from_nothing = 0;
  double from_head_start = 0;
};

SumRunLength upper_sum(const CumulativeSumChart& chart, double shift) {
  const double k = chart.allowance;
  const auto kernel = [&](double from, double to) { return normal_density(to - from + k - shift); };
  const auto nothing = [&](double from) { return normal_cumulative(k - shift - from); };
  const auto nodes = nodes_between(0, chart.interval, 1);
  const auto lengths = solve(nodes, 0, kernel, nothing);
  const auto n = static_cast<Eigen::Index>(nodes.size());
  SumRunLength result;
  result.from_nothing = lengths(n);
  double start = 1 + nothing(chart.head_start) * lengths(n);
  for (Eigen::Index i = 0; i < n; ++i) {
    const Node& node = nodes[static_cast<std::size_t>(i)];
    start += node.weight * kernel(chart.head_start, node.place) * lengths(i);
  }
  result.from_head_start = start;
  return result;
}

Source sum_source() {
  return {"Lucas & Crosier 1982, Technometrics 24, 199–205",
          "Table 1, average run lengths, as quoted in the documentation of a control-chart library",
          SourceStanding::published};
}
Source average_source() {
  return {"Lucas & Saccucci 1990, Technometrics 32, 1–12",
          "Table 3, average run lengths, as quoted in the documentation of a control-chart library",
          SourceStanding::published};
}

DescribedRunLength build_run_length() {
  MethodDescription about;
  about.id = "average-run-length";
  about.title = "Average run length of a chart of loads";
  about.purpose =
      "How many loads pass on average before a chart raises its alarm: few when the supply has "
      "drifted, many when it has not.";
  about.group = MethodGroup::evidence;
  about.sources = {sum_source(), average_source()};
  about.cautions = {"Holds for loads that vary independently and near to normally."};
  DescribedRunLength method(std::move(about), &average_run_length);
  method.choice({"chart", "chart", "which chart"}, &RunLengthInputs::chart,
                {{LoadChart::cumulative_sum, "cumulative-sum", "cumulative sums of both sides"},
                 {LoadChart::one_sided_sum, "one-sided-sum", "the cumulative sum of one side"},
                 {LoadChart::moving_average, "moving-average",
                  "exponentially weighted moving average, both sides"}});
  method.defaulted({"allowance", "k", "allowance of the sum, in standard deviations"},
                   &RunLengthInputs::allowance, unit::number, AllowedRange::between(0, 3));
  method.defaulted({"interval", "h", "sum at which the alarm is raised, in standard deviations"},
                   &RunLengthInputs::interval, unit::number, AllowedRange::positive_to(20));
  method.defaulted({"head_start", "z", "where the sums begin, in standard deviations"},
                   &RunLengthInputs::head_start, unit::number, AllowedRange::between(0, 20));
  method.defaulted({"weight", "λ", "weight of the latest load in the average"},
                   &RunLengthInputs::weight, unit::number, AllowedRange::between(0.01, 1));
  method.defaulted({"limits", "L", "limits of the average, in its standard deviations"},
                   &RunLengthInputs::limits, unit::number, AllowedRange::between(0.5, 5));
  method.defaulted({"shift", "δ", "shift of the mean, in standard deviations of one load"},
                   &RunLengthInputs::shift, unit::number, AllowedRange::between(-10, 10));
  method.output({"run_length", "ARL", "loads until the alarm, on average"},
                &RunLengthResult::run_length, unit::number);
  return method;
}

}  // namespace

double run_length_of_upper_sum(const CumulativeSumChart& chart, double shift) {
  return upper_sum(chart, shift).from_head_start;
}

double run_length(const CumulativeSumChart& chart, double shift) {
  const auto up = upper_sum(chart, shift);
  const auto down = shift == 0 ? up : upper_sum(chart, -shift);
  // Both sums run beside one another and never stand above nothing together for long (Lucas &
  // Crosier 1982); without a head start this is the sum of the rates of both.
  return (up.from_head_start * down.from_nothing + down.from_head_start * up.from_nothing -
          up.from_nothing * down.from_nothing) /
         (up.from_nothing + down.from_nothing);
}

double run_length(const MovingAverageChart& chart, double shift) {
  const double lambda = chart.weight;
  const double h = chart.limits * std::sqrt(lambda / (2 - lambda));
  const auto kernel = [&](double from, double to) {
    return normal_density((to - (1 - lambda) * from) / lambda - shift) / lambda;
  };
  // Without a shift both sides are alike, and half of them is enough: an eighth of the work.
  const auto folded = [&](double from, double to) { return kernel(from, to) + kernel(from, -to); };
  const auto no_chance = [](double) { return 0.0; };
  const auto nodes = nodes_between(shift == 0 ? 0 : -h, h, lambda);
  const auto lengths =
      shift == 0 ? solve(nodes, 0, folded, no_chance) : solve(nodes, 0, kernel, no_chance);
  return lengths(static_cast<Eigen::Index>(nodes.size()));
}

double interval_for_run_length(double allowance, double loads) {
  thread_local LastAnswer last;
  return last.of(allowance, loads, [&] {
    return setting_for(loads, CumulativeSumChart{}.interval, 0.1, 20, [&](double interval) {
      return run_length(CumulativeSumChart{allowance, interval, 0}, 0);
    });
  });
}

double limits_for_run_length(double weight, double loads) {
  thread_local LastAnswer last;
  return last.of(weight, loads, [&] {
    return setting_for(loads, MovingAverageChart{}.limits, 0.5, 6, [&](double limits) {
      return run_length(MovingAverageChart{weight, limits}, 0);
    });
  });
}

Expected<RunLengthResult> average_run_length(const RunLengthInputs& in, Steps& steps) {
  const CumulativeSumChart sum{in.allowance.number(), in.interval.number(), in.head_start.number()};
  const double shift = in.shift.number();
  if (in.chart != LoadChart::moving_average && sum.head_start >= sum.interval) {
    return Problem{"head-start-too-large", "A sum that begins at its interval is an alarm already.",
                   "", "/head_start", "less than the interval"};
  }
  double loads = 0;
  if (in.chart == LoadChart::moving_average) {
    loads = run_length(MovingAverageChart{in.weight.number(), in.limits.number()}, shift);
    steps.computed(
        "ARL", "loads until the alarm",
        "L(z) = 1 + (1/λ)·∫ L(x)·φ{[x − (1 − λ)·z]/λ − δ} dx between the limits, at z = 0",
        measure(loads), average_source().sentence());
  } else {
    const bool both = in.chart == LoadChart::cumulative_sum;
    loads = both ? run_length(sum, shift) : run_length_of_upper_sum(sum, shift);
    steps.computed("ARL", "loads until the alarm",
                   "L(z) = 1 + L(0)·Φ(k − δ − z) + ∫ L(x)·φ(x + k − δ − z) dx from 0 to h",
                   measure(loads), sum_source().sentence());
  }
  if (!std::isfinite(loads) || !(loads >= 1) || loads > 1e12) {
    return Problem{"never", "With these settings the alarm is practically never raised.", "",
                   "/interval", "a smaller interval or a larger shift"};
  }
  return RunLengthResult{Dimensionless::number(loads)};
}

const Method& average_run_length_method() {
  static const DescribedRunLength method = build_run_length();
  return method;
}

}  // namespace proofstone
