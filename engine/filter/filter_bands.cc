#include "engine/filter/filter_bands.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/quantity/rounding.h"
#include "engine/soil/soil_curve.h"

namespace proofstone {
namespace {

constexpr std::size_t most_layers = 4;

bool serves(const LayerCurves& rock, const FilterLimits& limits) {
  const auto coarsest = rock.coarsest(15);
  const auto finest = rock.finest(15);
  return coarsest && finest && *coarsest <= limits.max_d15 * (1 + rounding) &&
         *finest >= limits.permeable_d15 * (1 - rounding);
}

/// A band as the base of the next layer. A filter has few fines and no gaps: its gravel counts, as
/// the procedure allows.
std::optional<FilterBase> base_of(const FilterLimits& limits) {
  const auto band = filter_band_of(limits);
  if (!band) return std::nullopt;
  return FilterBase{band->fine_limit(), band->coarse_limit()};
}

FilterChoices on_a_filter(FilterChoices choices) {
  choices.dispersion = Dispersion::no;
  choices.regrading = Regrading::never;
  return choices;
}

/// A band no wider than `width` between its limits, raised from its fine side.
FilterLimits no_wider_than(double width, FilterLimits limits) {
  limits.min_d15 = std::max(limits.min_d15, limits.max_d15 / width);
  limits.min_d60 = std::max(limits.min_d60, limits.max_d60 / width);
  limits.min_d10 = limits.min_d15 / 1.2;
  limits.max_d90 = max_filter_d90(limits.min_d10);
  return limits;
}

/// The band as fine as the finest rock asks and as narrow as the coarsest does, where the rock
/// serves on that.
std::optional<FilterLimits> last_layer(const FilterLimits& limits, const LayerCurves& rock,
                                       const FilterChoices& choices) {
  const double multiplier = choices.edition == FilterEdition::of_1994 ? 4 : 5;
  const auto finest = rock.finest(15);
  if (!finest || *finest / multiplier < limits.permeable_d15) return std::nullopt;
  for (const double width : {5.0, 4.0, 3.0, 2.0}) {
    const auto narrower = no_wider_than(width, narrowed_to(limits, *finest / multiplier));
    const auto base = base_of(narrower);
    if (!base) continue;
    Steps not_shown;
    const auto above = filter_limits(*base, on_a_filter(choices), not_shown);
    if (above && serves(rock, *above)) return narrower;
  }
  return std::nullopt;
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
    if (const auto last = last_layer(*limits, rock, choices)) {
      bands.layers.push_back(*last);
      return bands;
    }
    const auto base = base_of(*limits);
    if (!base) {
      bands.why_not = "The limits of a layer leave no band.";
      return bands;
    }
    bands.layers.push_back(*limits);
    below = {*base};
    choices = on_a_filter(choices);
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
