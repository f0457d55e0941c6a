#include "engine/acceptance/layer_survey.h"

#include <algorithm>
#include <cmath>

#include "engine/acceptance/mean_and_deviation.h"
#include "engine/acceptance/percent_within_limits.h"
#include "engine/evidence/confidence.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

using DescribedLayerSurvey = TypedMethod<LayerSurveyInputs, LayerSurveyResult>;

constexpr int most_points = 5000;

DescribedLayerSurvey build_layer_survey() {
  MethodDescription about;
  about.id = "layer-survey";
  about.title = "Thickness of a placed layer";
  about.purpose =
      "Whether a placed layer is thick enough, from thicknesses at points: its mean with a lower "
      "bound, the share below the least thickness, and how many points it takes.";
  about.group = MethodGroup::evidence;
  about.sources = {{"Student's t and the normal distribution", "mean of a sample",
                    SourceStanding::common_practice},
                   {"FAA AC 150/5370-10", "Section 110, percentage of material within limits",
                    SourceStanding::memory}};
  about.cautions = {
      "Bedding and finished surface are surveyed at the same points; rock is rough, so use a foot "
      "of "
      "about half a median stone.",
      "Points nearer to one another than one or two median stones are not independent (common "
      "practice)."};
  DescribedLayerSurvey method(std::move(about), &layer_survey);
  const auto length = AllowedRange::positive_to(20);
  method.required_list({"thicknesses", "t", "thickness at each point"},
                       &LayerSurveyInputs::thicknesses, unit::meter, length);
  method.required({"required", "t_req", "mean thickness asked for, square to the slope"},
                  &LayerSurveyInputs::required, unit::meter, length);
  method.optional({"least", "t_min", "least thickness at any point"}, &LayerSurveyInputs::least,
                  unit::meter, length, "no least thickness");
  method.optional({"slope", "1/m", "slope on which the thicknesses were measured vertically"},
                  &LayerSurveyInputs::slope, unit::rise_per_run, AllowedRange::positive_to(10),
                  "thicknesses are square to the slope");
  method.defaulted({"confidence", "1 − α", "confidence of the statements"},
                   &LayerSurveyInputs::confidence, unit::percent, AllowedRange::between(50, 99.9));
  method.defaulted({"mean_within", "E", "half-width wanted of the mean, two-sided"},
                   &LayerSurveyInputs::mean_within, unit::millimeter,
                   AllowedRange::positive_to(5000));
  method.output({"mean", "t̄", "mean thickness"}, &LayerSurveyResult::mean, unit::meter);
  method.output({"standard_deviation", "s", "standard deviation"},
                &LayerSurveyResult::standard_deviation, unit::meter);
  method.output({"lower_bound", "t_low", "lower bound of the mean, one-sided"},
                &LayerSurveyResult::lower_bound, unit::meter);
  method.output({"thinnest", "t_1", "thinnest point"}, &LayerSurveyResult::thinnest, unit::meter);
  method.output({"above_least", "P", "share of the layer above the least thickness, estimated"},
                &LayerSurveyResult::above_least, unit::percent);
  method.output({"points_needed", "n", "points for the half-width wanted"},
                &LayerSurveyResult::points_needed, unit::number);
  return method;
}

/// Square to the slope, from vertical differences where they are such.
std::vector<double> square_thicknesses(const LayerSurveyInputs& in, Steps& steps) {
  double factor = 1;
  if (in.slope) {
    const double m = 1 / in.slope->ratio();
    factor = m / std::sqrt(1 + m * m);
    steps.computed("t/Δz", "square thickness over vertical difference", "m/√(1 + m²)",
                   measure(factor));
  }
  std::vector<double> values;
  values.reserve(in.thicknesses.size());
  for (const auto& thickness : in.thicknesses) values.push_back(factor * thickness.meters());
  return values;
}

}  // namespace

std::optional<int> points_for_mean(double deviation, double half_width, double tail) {
  for (int n = 2; n <= most_points; ++n) {
    const double t = student_quantile_above(tail, n - 1);
    if (n >= std::pow(t * deviation / half_width, 2)) return n;
  }
  return std::nullopt;
}

Expected<LayerSurveyResult> layer_survey(const LayerSurveyInputs& in, Steps& steps) {
  const auto values = square_thicknesses(in, steps);
  const auto spread = mean_and_deviation(values, 3, "/thicknesses");
  if (!spread) return spread.problems();
  const auto n = static_cast<double>(values.size());
  const double alpha = 1 - in.confidence.number();
  const double t = student_quantile_above(alpha, n - 1);

  LayerSurveyResult result;
  result.mean = Length::meters(spread->mean);
  result.standard_deviation = Length::meters(spread->deviation);
  result.lower_bound = Length::meters(spread->mean - t * spread->deviation / std::sqrt(n));
  result.thinnest = Length::meters(*std::min_element(values.begin(), values.end()));
  result.above_least = Dimensionless::number(1);
  if (in.least && spread->deviation > 0) {
    const double quality = (spread->mean - in.least->meters()) / spread->deviation;
    result.above_least = Dimensionless::number(share_within(quality, n));
  }
  const auto points = points_for_mean(spread->deviation, in.mean_within.meters(), alpha / 2);
  if (!points) {
    return Problem{"too-many-points", "No reasonable number of points gives so narrow a mean.", "",
                   "/mean_within", "a wider half-width"};
  }
  result.points_needed = Dimensionless::number(*points);
  steps.computed("t̄", "mean thickness", "Σt/n", measure(result.mean));
  steps.computed("s", "standard deviation", "√[Σ(t − t̄)²/(n − 1)]",
                 measure(result.standard_deviation));
  steps.computed("t_low", "lower bound of the mean", "t̄ − t_(1−α, n−1)·s/√n",
                 measure(result.lower_bound));
  steps.computed("P", "share above the least thickness, percent",
                 "100·[1 − I_y(n/2 − 1, n/2 − 1)], Q = (t̄ − t_min)/s",
                 measure(100 * result.above_least.number()));
  steps.computed("n", "points needed", "least n with n ≥ (t_(1−α/2, n−1)·s/E)²",
                 measure(result.points_needed));
  return result;
}

const Method& layer_survey_method() {
  static const DescribedLayerSurvey method = build_layer_survey();
  return method;
}

}  // namespace proofstone
