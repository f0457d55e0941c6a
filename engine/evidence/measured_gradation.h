#pragma once

#include <string>
#include <vector>

#include "engine/finding/steps.h"
#include "engine/rock/gradation.h"

namespace proofstone {

/// How the stones of a count were picked, which decides how a count becomes a share of the mass
/// (Kellerhals & Bray 1971: multiply each class by size to a power and renormalise).
enum class StonePicking {
  grid,   ///< the stone under each point of a grid, tape or pace walk: power 0
  line,   ///< every stone that a line touches, each once: power 1
  area,   ///< every stone seen on a face: power 2
  whole,  ///< every stone of a load or a bucket: power 3
};

/// What an observation knows of a gradation: a curve by mass and, at each of its points, how much
/// evidence stands behind it.
struct MeasuredGradation {
  Gradation curve;              ///< by mass
  /// The number of equally informative independent stones: the count itself for a grid count, the
  /// effective number (Σm)²/Σm² where stones carry different weights.
  double effective_stones = 0;
  int stones = 0;               ///< stones handled
  std::string method;           ///< "stone count on a grid", "weighed sample"
  Steps steps;
  std::vector<std::string> cautions;  ///< hidden or truncated small stones, wide bins …
};

/// One bin of a count: stones larger than `lower` and not larger than `upper`; `lower` absent means
/// "smaller than upper", `upper` absent is not allowed (the largest stone must be measured).
struct CountBin {
  std::optional<Length> lower;
  Length upper;
  int stones = 0;
};

/// Count in bins to a curve by mass. Problems name the bin ("bin 3").
Expected<MeasuredGradation> gradation_from_bins(const std::vector<CountBin>& bins,
                                                StonePicking picking);

/// Count with measured intermediate axes. Problems name the stone ("stone 12").
Expected<MeasuredGradation> gradation_from_stones(const std::vector<Length>& intermediate_axes,
                                                  StonePicking picking);

/// One group of a weighed sample: stones that pass `upper` and not `lower`, weighed together.
struct WeighedGroup {
  std::optional<Length> lower;
  Length upper;
  Mass mass;
  int stones = 0;  ///< in the group; needed for the confidence
};

/// Weighed sample by size ranges (ASTM D5519 method B, scope seen) to a curve by mass.
Expected<MeasuredGradation> gradation_from_weighed(const std::vector<WeighedGroup>& groups,
                                                   SizeMeaning size_meaning);

/// Evidence of several looks at one lot put together, each weighted by its effective stones.
/// Problems when the bases differ.
Expected<MeasuredGradation> pooled(const std::vector<MeasuredGradation>& looks);

}  // namespace proofstone
