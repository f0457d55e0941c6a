#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/filter/base_category.h"
#include "engine/filter/layer_curves.h"
#include "engine/finding/outcome.h"
#include "engine/finding/source.h"
#include "engine/site/wording.h"
#include "engine/site/zone_filter.h"

namespace proofstone {

/// What a layer and the one below it come to.
struct PairVerdict {
  std::string lower;
  std::string upper;
  Outcome outcome = Outcome::not_yet_known;
  /// Size allowed over size there is, of retention: with the coarsest rock above and the finest
  /// grains below that the bands allow, and in the middle of both bands.
  std::optional<double> worst;
  std::optional<double> middle;
  std::string sentence;
  std::string next;
  std::vector<std::string> reasons;
  Steps steps;
  std::vector<Source> sources;
};

/// The soil under a chain of layers.
struct SoilBelow {
  LayerCurves curves;
  Dispersion dispersion = Dispersion::not_tested;
  std::optional<Dimensionless> plasticity_index;
  std::vector<LayerCurves> further = {};  ///< further samples of the same ground

  /// Every sample as a base soil; the first is `curves`.
  std::vector<FilterBase> samples() const;
};

/// The rock above a fabric, and whether bedding lies between.
struct RockAbove {
  Mass largest_stone;
  bool bedding_between = false;
  bool waves = false;
};

/// A grain size as it is read: below an inch in millimetres, above as rock.
std::string grain_text(Length size, const Wording& wording);

/// A granular layer or rock on soil, by categories of base soils.
PairVerdict judge_on_soil(const SoilBelow& soil, const LayerCurves& upper, FilterChoices choices,
                          const Wording& wording);

/// A granular layer or rock on a granular layer, by the highway ratios.
PairVerdict judge_on_layer(const LayerCurves& lower, const LayerCurves& upper,
                           const Wording& wording);

/// A geotextile on soil.
PairVerdict judge_fabric(const SoilBelow& soil, const GeotextileFilter& fabric,
                         const RockAbove& rock, const Wording& wording);

/// What a geotextile must be for a soil; absent where the soil's curve does not tell it.
std::optional<GeotextileFilterResult> fabric_needed(const SoilBelow& soil,
                                                    const GeotextileFilter& fabric,
                                                    const RockAbove& rock, Steps& steps);

}  // namespace proofstone
