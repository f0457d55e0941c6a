#pragma once

#include <string>
#include <vector>

#include "engine/blend/linear_program.h"
#include "engine/blend/offered_material.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// One condition of a target band in numbers: what each material has smaller than its size.
///
/// Where the curve of a material ends before the size, it counts on the careful side: nothing below
/// its first point for "at least", all of that point's percent for "at most", and so above it.
struct TargetLine {
  BandCondition condition;
  std::vector<double> percents;  ///< one a material
  bool has_room = true;  ///< whether a margin to the limit has a meaning (not at 0 and 100 %)
};

/// The middle of the band at one size, and what each material has smaller than it.
struct MiddlePoint {
  Length size;
  double percent = 0;
  std::vector<double> percents;
};

/// A band as the solver sees it.
struct BlendTarget {
  std::vector<TargetLine> lines;
  std::vector<MiddlePoint> middle;  ///< between the limiting curves, at every size of the band
  std::vector<std::string> names;   ///< of the materials
  /// Materials whose curve ends inside the band, so that something was taken on the careful side.
  std::vector<std::string> cut_short;

  std::size_t materials() const { return names.size(); }
  /// Percent of a blend smaller than the size of a line; shares 1 together.
  static double percent(const TargetLine& line, const std::vector<double>& shares);
  /// By how much a blend misses a line; 0 where it is kept.
  static double miss(const TargetLine& line, const std::vector<double>& shares);
  /// The least distance to a limit over all lines with room, in percent; negative where one is
  /// missed.
  double margin(const std::vector<double>& shares) const;
};

/// Problems: no material, curves that are not by mass or whose sizes mean different things, a band
/// that counts stones, no condition that could be tested.
Expected<BlendTarget> blend_target(const std::vector<OfferedMaterial>& materials,
                                   const GradationBand& band);

/// Adds one more condition, whose size is meant as `meaning`; nothing where it rules nothing out.
void add_condition(BlendTarget& target, const std::vector<OfferedMaterial>& materials,
                   const BandCondition& condition, SizeMeaning meaning);

/// The row Σ share·(percent − limit) ≤ 0 or ≥ 0 of a line: for shares and for masses alike.
LinearRow row_of(const TargetLine& line);

}  // namespace proofstone
