#pragma once

#include <vector>

#include "engine/evidence/measured_gradation.h"

namespace proofstone {

/// A bin, a weighed group or the sizes that one rounded reading stands for. Internal to the
/// evidence.
struct CountedRange {
  Length lower;
  Length upper;
  double stones = 0;  ///< may be a fraction where it was estimated
};

/// How far the share that a curve tells between and at the edges of ranges may be off, because it
/// is drawn straight in log D there and one size stands for the weight of all stones of a range. It
/// is the difference from the share read straight on log-probability paper (the normal quantile of
/// the count against log D, on which log-normal rock is a straight line), at the edges of every
/// range and at its quarters. `exponent` is the power of the size that turns the count into a share
/// of the mass. The ranges join, from small to large.
std::vector<ReadingError> reading_errors(const std::vector<CountedRange>& ranges, double exponent,
                                         const Gradation& curve);

/// The ranges that rounded readings stand for, halfway to the next readings, when so many stones
/// share one that it matters; else none. `stones[i]` were read as `readings[i]`, which rise.
std::vector<CountedRange> ranges_of_readings(const std::vector<Length>& readings,
                                             const std::vector<double>& stones);

}  // namespace proofstone
