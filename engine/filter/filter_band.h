#pragma once

#include "engine/filter/base_category.h"
#include "engine/method/method.h"
#include "engine/soil/gradation_inputs.h"

namespace proofstone {

struct FilterBandInputs : GradationInputs {
  Dispersion dispersion = Dispersion::not_tested;
  FilterEdition edition = FilterEdition::of_2017;
  Regrading regrading = Regrading::by_rule;
};

struct FilterBandResult {
  Dimensionless fines;
  Dimensionless category;
  Length base_d85;
  Length max_d15;
  Length permeable_d15;
  Length min_d15;
  Length max_d60;
  Length min_d60;
  Length min_d5;
  Length max_d100;
  Length max_d90;
};

/// Control points of a granular filter for a soil, by the categories of base soils.
Expected<FilterBandResult> filter_band(const FilterBandInputs& in, Steps& steps);

/// The same by name: "filter-band".
const Method& filter_band_method();

}  // namespace proofstone
