#pragma once

#include <optional>
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

/// Standard deviation of the logarithm of the size at a percent.
struct SizeError {
  double percent = 50;
  double log_error = 0;
};

/// A size at or between the edges of ranges.
struct ReadingError {
  Length size;
  /// So much more of the mass is smaller by the other way to draw the curve than by the curve.
  double percent = 0;
  /// Effective stones behind a share that is read straight between the edges, more than behind one
  /// counted there; 0: as between the points of the curve.
  double stones = 0;
};

/// What an observation knows of a gradation: a curve by mass and, at each of its points, how much
/// evidence stands behind it.
///
/// Where the curve starts above 0 %, its first point is an open bin ("smaller than"): below that
/// size nothing is known but that the share lies between 0 and the first percent.
struct MeasuredGradation {
  Gradation curve;  ///< by mass
  /// The number of equally informative independent stones: the count itself for a grid count, the
  /// effective number (Σm)²/Σm² where stones carry different weights.
  double effective_stones = 0;
  int stones = 0;        ///< stones handled
  std::string method{};  ///< "stone count on a grid", "weighed sample"
  Steps steps{};
  std::vector<std::string> cautions{};  ///< hidden or truncated small stones, wide bins …

  /// Every stone was picked by a grid: the shares are shares of the surface, which serve a band
  /// stated by mass and one stated by a count of stones on a grid (FP-14 Table 705-1) alike.
  bool picked_on_grid = false;
  /// At least one stone was larger (smaller) than this; absent when nothing is known. What was
  /// seen is a fact, whatever the confidence of the shares.
  std::optional<Length> seen_larger_than{};
  std::optional<Length> seen_smaller_than{};
  /// Effective stones for the share smaller than each point of the curve. Where stones carry
  /// different weights a few heavy ones decide the upper end, and fewer stones speak there than
  /// (Σm)²/Σm² says. Empty means `effective_stones` everywhere.
  std::vector<double> effective_at_points{};
  /// The part of 1/n, n the effective stones at each point, that more of the same does not reduce:
  /// what may be wrong for all stones alike, as the scale of a photo. Empty: nothing is.
  std::vector<double> lasting_at_points{};
  /// Errors of sizes that were found by themselves, as on photos; the limits of other sizes follow
  /// from the effective stones behind their shares.
  std::vector<SizeError> size_errors{};
  /// Of a curve through the edges of bins or groups, or through readings rounded coarsely, from
  /// small to large sizes; else empty.
  std::vector<ReadingError> reading_errors{};
  /// Photos that the stones were outlined or tapped on; 0 for stones that were handled.
  int photos = 0;
  /// Whether the ends of the curve are those of stones that were measured. A photo hides the small
  /// stones and does not tell the largest.
  bool smallest_known = true;
  bool largest_known = true;

  /// Effective stones for the share smaller than `size`, by the scatter of sampling alone: between
  /// points straight in log(size), where ranges were counted between their quarters.
  /// Beyond the last point it falls with the cube of the size unless picked on a grid, because one
  /// unseen stone of that size would weigh as much more.
  double effective_stones_at(Length size) const;
  /// As above if `times` as many stones had been taken in the same way and the shares had stayed.
  /// Above 0.
  double effective_stones_at(Length size, double times) const;
  /// The part of one over the above that more of the same does not reduce.
  double lasting_at(Length size) const;
  /// How far the share smaller than `size` may be off for being read between the edges of ranges,
  /// in percent. More of the same does not reduce it; narrower ranges do.
  double reading_error_at(Length size) const;
  /// The percent smaller halfway between the curve and the other way to draw it; half of
  /// `reading_error_at` away from either.
  double percent_read_halfway(Length size) const;
};

/// Which size stands for the stones of a bin when a count becomes a share of the mass.
enum class MidSize {
  geometric,   ///< √(lower·upper)
  arithmetic,  ///< (lower + upper)/2
};

/// One bin of a count: stones larger than `lower` and not larger than `upper`; `lower` absent means
/// "smaller than upper", `upper` absent is not allowed (the largest stone must be measured).
struct CountBin {
  std::optional<Length> lower;
  Length upper;
  int stones = 0;
};

/// Count in bins to a curve by mass: at the upper edge of each bin, the share of the bins up to it.
/// Bins may come largest first. A `lower` of zero is read as absent. Problems name the bin ("bin
/// 3"): gaps, overlaps, reversed bins, sizes above 5 m, negative counts, no stones at all.
Expected<MeasuredGradation> gradation_from_bins(const std::vector<CountBin>& bins,
                                                StonePicking picking,
                                                MidSize mid_size = MidSize::geometric);

/// Count with measured intermediate axes. Problems name the stone ("stone 12").
///
/// At each measured size the curve counts the smaller stones whole and those of just that size
/// half (the mid-rank, (i − ½)/n for distinct sizes), because a reading is rounded and stands for
/// sizes on both sides of itself. Between measured sizes the curve is then never more than half a
/// stone away from the count. It starts at 0 % and ends at 100 % one part in a million outside the
/// smallest and the largest stone.
Expected<MeasuredGradation> gradation_from_stones(const std::vector<Length>& intermediate_axes,
                                                  StonePicking picking);

/// One group of a weighed sample: stones that pass `upper` and not `lower`, weighed together.
struct WeighedGroup {
  std::optional<Length> lower;
  Length upper;
  Mass mass;
  /// In the group; decides the confidence. 0 means not counted: the number is then estimated from
  /// the mass and the middle size at a specific gravity of 2.65, and a caution says so.
  int stones = 0;
};

/// Weighed sample by size ranges (ASTM D5519 method B, scope seen) to a curve by mass. Problems
/// name the group ("group 2"), as for bins.
Expected<MeasuredGradation> gradation_from_weighed(const std::vector<WeighedGroup>& groups,
                                                   SizeMeaning size_meaning);

/// Evidence of several looks at one lot put together, each weighted by its effective stones. The
/// curve starts where every look knows the share. Ask `same_rock` first whether the looks agree.
/// Problems when there is no look or the bases differ.
Expected<MeasuredGradation> pooled(const std::vector<MeasuredGradation>& looks);

}  // namespace proofstone
