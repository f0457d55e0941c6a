#pragma once

#include <string>
#include <vector>

#include "engine/filter/base_category.h"
#include "engine/filter/layer_curves.h"

namespace proofstone {

/// Bands of granular filters from the soil up, each made for what lies below it, until the rock
/// serves on the last.
struct FilterBands {
  std::vector<FilterLimits> layers;  ///< empty where the rock serves on the soil itself
  std::string why_not;               ///< why no chain of bands reaches the rock; empty: one does
};

/// By the base-category procedure, layer on layer: the fine limit of a band is held, its coarse
/// limit drained. The last band is kept as fine as the finest rock asks, to let the water out of
/// it. At most four layers. `soil` is at least one sample.
FilterBands filter_bands(const std::vector<FilterBase>& soil, const LayerCurves& rock,
                         FilterChoices choices);

/// The limits with a largest D15 of `max_d15` or less, and all that follows from it.
/// Precondition: `max_d15` is not below what lets the water out.
FilterLimits narrowed_to(const FilterLimits& limits, Length max_d15);

/// A gradation in the middle of a band, from 0 to 100 %.
Expected<Gradation> middle_of(const FilterLimits& limits);

}  // namespace proofstone
