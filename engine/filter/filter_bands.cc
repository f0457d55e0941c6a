#include "engine/filter/filter_bands.h"

#include <algorithm>
#include <cmath>

#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

constexpr std::size_t most_layers = 4;
constexpr double rounding = 1e-9;

bool serves(const LayerCurves& rock, const FilterLimits& limits) {
  const auto coarsest = rock.coarsest(15);
  const auto finest = rock.finest(15);
  return coarsest && finest && *coarsest <= limits.max_d15 * (1 + rounding) &&
         *finest >= limits.permeable_d15 * (1 - rounding);
}

Length between(Length small, Length large) { return small * std::sqrt(large / small); }

}  // namespace

FilterBands filter_bands(const std::vector<FilterBase>& soil, const LayerCurves& rock,
                         FilterChoices choices) {
  FilterBands bands;
  if (!rock.coarsest(15) || !rock.finest(15)) {
    bands.why_not = "The band of the rock does not tell its D15.";
    return bands;
  }
  auto below = soil;
  while (true) {
    Steps not_shown;
    const auto limits = filter_limits(below, choices, not_shown);
    if (!limits) {
      bands.why_not = limits.problems().front().what;
      return bands;
    }
    if (serves(rock, *limits)) return bands;
    if (bands.layers.size() == most_layers ||
        (!bands.layers.empty() && limits->max_d15 <= bands.layers.back().max_d15)) {
      bands.why_not =
          "Grains of a filter go up to 75 mm, and layers of those sizes do not reach the rock.";
      return bands;
    }
    const auto band = filter_band_of(*limits);
    if (!band) {
      bands.why_not = band.problems().front().what;
      return bands;
    }
    bands.layers.push_back(*limits);
    below = {{band->fine_limit(), band->coarse_limit()}};
    choices.dispersion = Dispersion::no;
  }
}

Expected<Gradation> middle_of(const FilterLimits& limits) {
  const Length d15 = between(limits.min_d15, limits.max_d15);
  const Length largest_d60 = std::min(limits.max_d60, limits.max_d90);
  const Length d60 =
      std::max(between(std::min(limits.min_d60, largest_d60), largest_d60), 1.1 * d15);
  // On as straight as from D15 to D60.
  const Length end = d60 * std::pow(d60 / d15, (100.0 - 60) / (60 - 15));
  return Gradation::make({{std::max(limits.min_d5, 0.5 * d15), 0},
                          {d15, 15},
                          {d60, 60},
                          {std::max(std::min(end, limits.max_d90), 1.1 * d60), 100}},
                         sieved_by_mass);
}

}  // namespace proofstone
