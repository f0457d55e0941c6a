#pragma once

#include <vector>

#include "engine/method/method.h"

namespace proofstone {

struct CistinZiemsInputs {
  Length base_d50;
  Dimensionless base_uniformity;
  Dimensionless filter_uniformity;
};

struct CistinZiemsResult {
  Dimensionless ratio;  ///< A50
  Length most_d50;
};

/// Digitised chart: A50 by uniformity of base (rows) and filter (columns), both rising.
struct CistinZiemsChart {
  std::vector<double> base_uniformities;
  std::vector<double> filter_uniformities;
  std::vector<std::vector<double>> ratios;  ///< [base][filter]
};

/// The chart of the engine, out of catalog/cistin-ziems-chart.json. It is empty: nobody has
/// digitised it, and no point is invented.
const CistinZiemsChart& cistin_ziems_chart();

/// A50 between the points of a chart, straight in both uniformities; a Problem outside it, and
/// where it is empty.
Expected<double> read_chart(const CistinZiemsChart& chart, double base, double filter);

/// Largest D50 of a filter, A50·d50 of the base.
Expected<CistinZiemsResult> cistin_ziems(const CistinZiemsInputs& in, Steps& steps);

/// The same by name: "cistin-ziems".
const Method& cistin_ziems_method();

}  // namespace proofstone
