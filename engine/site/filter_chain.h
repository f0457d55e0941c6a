#pragma once

#include <optional>
#include <vector>

#include "engine/site/filter_pairs.h"
#include "engine/site/site.h"

namespace proofstone {

/// What a chain of layers comes to, pair by pair from the soil upward.
struct ChainVerdict {
  std::vector<PairVerdict> pairs;
  Outcome outcome = Outcome::not_yet_known;
  /// The pair that decides; nothing where there is none.
  const PairVerdict* deciding() const;
};

/// The worse of two outcomes: falls short, ask the designer, not yet known, meets.
bool is_worse(Outcome one, Outcome other);

/// The soil of a zone; absent where it states none.
std::optional<SoilBelow> soil_below(const Site& site, const Zone& zone);

/// The curves of a bedding: a material of the document, else a standard bedding. Precondition: the
/// document was read, so that one of them is called so.
LayerCurves bedding_curves(const Site& site, const std::string& bedding);

/// The choices of the zone under method_choices: filter-band; by the issue of 2017 otherwise.
FilterChoices filter_choices(const Zone& zone);

/// Every pair of a chain: the soil, where there is one, `layers`, and the rock on top.
ChainVerdict judge_chain(const Site& site, const Zone& zone, const std::vector<FilterLayer>& layers,
                         const LayerCurves& rock, const Wording& wording);

/// Mass of the largest stone of a rock, for the strength of a fabric.
Mass largest_stone_mass(const Site& site, const Zone& zone, const LayerCurves& rock);

}  // namespace proofstone
