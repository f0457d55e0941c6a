#pragma once

#include <string>
#include <vector>

#include "engine/method/method.h"

namespace proofstone {

/// Which published limits the ratios are held against.
enum class RatioForm {
  highway,   ///< Terzaghi–Vicksburg as in HDS-6 and HEC-11
  airfield,  ///< subdrains of airfields
};

struct FilterRatiosInputs {
  Length upper_d15;
  std::optional<Length> upper_d50;
  Length lower_d15;
  std::optional<Length> lower_d50;
  Length lower_d85;
  RatioForm form = RatioForm::highway;
};

struct FilterRatiosResult {
  Dimensionless retention;            ///< D15/d85
  Dimensionless permeability;         ///< D15/d15
  Dimensionless median;               ///< D50/d50; 0 where a size is not given
  Dimensionless margin;               ///< of retention: its limit over the ratio
  Dimensionless kept;                 ///< criteria kept
  Dimensionless asked;                ///< criteria that could be asked
  std::vector<std::string> not_kept;  ///< no output: words
};

/// Ratios between a layer and the finer one below it: does the upper hold the lower, and does it
/// let the water out?
Expected<FilterRatiosResult> filter_ratios(const FilterRatiosInputs& in, Steps& steps);

/// The same by name: "filter-ratios".
const Method& filter_ratios_method();

}  // namespace proofstone
