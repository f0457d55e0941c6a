#pragma once

#include <string>
#include <vector>

#include "engine/evidence/effective_stones.h"
#include "engine/evidence/measured_gradation.h"
#include "engine/evidence/size_ranges.h"

namespace proofstone {

/// Half the width, relative to the size, of the upright steps at the ends of a curve of measured
/// stones. Internal to the evidence, as all below.
inline constexpr double step_width = 1e-6;

/// A bin or a weighed group with what its stones weigh in the curve.
struct SampleRange {
  SizeRange range;
  WeightedStones stones;
  std::string name;  ///< "bin 3", as the reader numbered it
};

/// The lower size of a range, or half of the upper one where none is stated.
Length lower_or_half(const SizeRange& range);

/// Whether a range has a lower size above zero.
bool has_lower(const SizeRange& range);

/// The curve of ranges sorted from small to large and already checked, its evidence, what was seen
/// for a fact, and the cautions about an open smallest range and wide ranges. `exponent` is the
/// power of the size that made weights of the middles of counted ranges, 0 where the ranges were
/// weighed or need none. A Problem when a curve needs one more range.
Expected<MeasuredGradation> curve_of_ranges(const std::vector<SampleRange>& sample,
                                            GradationBasis basis, const std::string& word,
                                            double exponent);

/// Adds D15, D50 and D85 to the steps, where the curve reaches them.
void say_percentiles(MeasuredGradation& measured);

/// A caution when fewer than 100 stones were handled.
void caution_few_stones(MeasuredGradation& measured);

/// Cautions about readings that look copied or rounded: a list whose second half repeats the first,
/// ten equal readings in a row, more than a third of the readings equal.
void caution_repeated_readings(MeasuredGradation& measured, const std::vector<Length>& readings);

}  // namespace proofstone
