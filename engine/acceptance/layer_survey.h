#pragma once

#include <optional>
#include <vector>

#include "engine/method/method.h"

namespace proofstone {

struct LayerSurveyInputs {
  std::vector<Length> thicknesses;  ///< at points, measured as `measured` says
  Length required;                  ///< mean thickness, square to the slope
  std::optional<Length> least;      ///< nowhere less
  std::optional<Slope> slope;       ///< thicknesses are vertical differences on it
  Dimensionless confidence = Dimensionless::number(0.95);
  Length mean_within = Length::millimeters(20);  ///< half-width wanted of the mean
};

struct LayerSurveyResult {
  Length mean;
  Length standard_deviation;
  Length lower_bound;  ///< of the mean, one-sided
  Length thinnest;
  Dimensionless above_least;  ///< share of the layer, estimated; 1 where nothing is asked
  Dimensionless points_needed;
};

/// Fewest points whose mean is known to within `half_width`, where points differ by `deviation` and
/// `tail` may lie beyond on each side; absent above 5,000.
std::optional<int> points_for_mean(double deviation, double half_width, double tail);

/// Thickness of a placed layer from survey points of bedding and finished surface.
Expected<LayerSurveyResult> layer_survey(const LayerSurveyInputs& in, Steps& steps);

/// The same by name: "layer-survey".
const Method& layer_survey_method();

}  // namespace proofstone
