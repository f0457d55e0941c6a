#include "engine/acceptance/whole_curve_limits.h"

#include <fmt/format.h>

#include <cmath>
#include <numeric>

#include "engine/acceptance/mean_and_deviation.h"
#include "engine/evidence/confidence.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

using DescribedWholeCurveLimits = TypedMethod<WholeCurveLimitsInputs, WholeCurveLimitsResult>;

Source goodman_source() {
  return {"Goodman 1965, Technometrics 7, 247–254", "simultaneous limits of multinomial shares",
          SourceStanding::memory};
}
Source strip_source() {
  return {"Massart 1990, Annals of Probability 18, 1269–1283",
          "constant of the Dvoretzky–Kiefer–Wolfowitz inequality", SourceStanding::memory};
}

DescribedWholeCurveLimits build_whole_curve_limits() {
  MethodDescription about;
  about.id = "whole-curve-limits";
  about.title = "Limits of a whole curve at once";
  about.purpose =
      "How far the true shares of all classes of a count can lie from it, all of them together, "
      "and "
      "the strip that holds the whole curve.";
  about.group = MethodGroup::evidence;
  about.sources = {goodman_source(), strip_source()};
  about.cautions = {"Holds for stones picked independently on a grid."};
  DescribedWholeCurveLimits method(std::move(about), &whole_curve_limits);
  method.required_list({"counts", "c", "stones in each class, from small to large"},
                       &WholeCurveLimitsInputs::counts, unit::number,
                       AllowedRange::between(0, 1e6));
  method.defaulted({"confidence", "1 − α", "confidence of all limits together"},
                   &WholeCurveLimitsInputs::confidence, unit::percent,
                   AllowedRange::between(50, 99.99));
  method.defaulted({"asked_class", "i", "class whose limits are given, 1 the first"},
                   &WholeCurveLimitsInputs::asked_class, unit::number,
                   AllowedRange::between(1, 1000));
  method.output({"low", "L_i", "lower limit of the share of the class"},
                &WholeCurveLimitsResult::low, unit::percent);
  method.output({"high", "U_i", "upper limit of the share of the class"},
                &WholeCurveLimitsResult::high, unit::percent);
  method.output({"curve_half_width", "d", "half-width of the strip that holds the whole curve"},
                &WholeCurveLimitsResult::curve_half_width, unit::percent);
  return method;
}

}  // namespace

Expected<WholeCurveLimitsResult> whole_curve_limits(const WholeCurveLimitsInputs& in,
                                                    Steps& steps) {
  const auto counts = numbers_of(in.counts);
  const double n = std::accumulate(counts.begin(), counts.end(), 0.0);
  const auto k = static_cast<double>(counts.size());
  if (counts.size() < 2 || !(n > 0)) {
    return Problem{"too-few-values", "A count has at least two classes and one stone.", "",
                   "/counts", "the stones of each class"};
  }
  const double asked = in.asked_class.number();
  if (std::floor(asked) < asked || asked > k) {
    return Problem{"no-such-class",
                   fmt::format("There is no class {:g}; the count has {:g}.", asked, k), "",
                   "/asked_class", "a whole number up to the number of classes"};
  }
  const double alpha = 1 - in.confidence.number();
  // χ² of one degree of freedom is the square of a standard normal variable.
  const double z = normal_quantile(1 - alpha / (2 * k));
  const double A = z * z;
  const double c = counts[static_cast<std::size_t>(asked) - 1];
  const double root = std::sqrt(A * (A + 4 * c * (n - c) / n));
  const double low = (A + 2 * c - root) / (2 * (n + A));
  const double high = (A + 2 * c + root) / (2 * (n + A));
  const double strip = std::sqrt(std::log(2 / alpha) / (2 * n));
  steps.computed("A", "χ² quantile, one degree of freedom", "χ²(1 − α/k; 1)", measure(A),
                 goodman_source().sentence());
  steps.computed("L_i", "lower limit, percent",
                 "100·{A + 2c − √[A·(A + 4c·(n − c)/n)]}/[2·(n + A)]", measure(100 * low),
                 goodman_source().sentence());
  steps.computed("U_i", "upper limit, percent",
                 "100·{A + 2c + √[A·(A + 4c·(n − c)/n)]}/[2·(n + A)]", measure(100 * high),
                 goodman_source().sentence());
  steps.computed("d", "half-width of the strip, percent", "100·√[ln(2/α)/(2n)]",
                 measure(100 * strip), strip_source().sentence());
  return WholeCurveLimitsResult{Dimensionless::number(low), Dimensionless::number(high),
                                Dimensionless::number(strip)};
}

const Method& whole_curve_limits_method() {
  static const DescribedWholeCurveLimits method = build_whole_curve_limits();
  return method;
}

}  // namespace proofstone
