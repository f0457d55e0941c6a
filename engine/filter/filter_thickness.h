#pragma once

#include "engine/method/method.h"

namespace proofstone {

enum class FilterLayers { single, several };
enum class FilterPlacing { dry, under_water };

struct FilterThicknessInputs {
  std::optional<Length> largest_grain;
  FilterLayers layers = FilterLayers::single;
  FilterPlacing placing = FilterPlacing::dry;
};

struct FilterThicknessResult {
  Length thickness;
};

/// Least thickness of a granular filter layer.
Expected<FilterThicknessResult> filter_thickness(const FilterThicknessInputs& in, Steps& steps);

/// The same by name: "filter-thickness".
const Method& filter_thickness_method();

}  // namespace proofstone
