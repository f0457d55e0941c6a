#pragma once

#include <optional>
#include <vector>

#include "engine/finding/steps.h"
#include "engine/rock/gradation_band.h"
#include "engine/rock/limit_curve.h"

namespace proofstone {

/// Whether a soil disperses in water.
enum class Dispersion { no, yes, not_tested };

/// Which issue of the base-category procedure: the multiplier of the permeability criterion.
enum class FilterEdition {
  of_1994,  ///< 4·d15
  of_2017,  ///< 5·d15
};

/// Whether a base soil with gravel is regraded to what passes the No. 4 sieve.
enum class Regrading { by_rule, never };

/// A base soil: the finest curve decides retention, the coarsest permeability. One sample is both.
struct FilterBase {
  CurvePoints finest;
  CurvePoints coarsest;
};

/// What the procedure is told besides the curves.
struct FilterChoices {
  Dispersion dispersion = Dispersion::not_tested;
  FilterEdition edition = FilterEdition::of_2017;
  Regrading regrading = Regrading::by_rule;
};

/// Limits of a filter for one base soil: the control points of the procedure.
struct FilterLimits {
  double fines = 0;      ///< percent passing No. 200 after regrading
  int category = 4;      ///< 1 to 4
  Length base_d85;       ///< after regrading
  Length max_d15;        ///< control point 1
  Length permeable_d15;  ///< control point 2 before the band is narrowed
  Length min_d15;        ///< control point 2
  Length max_d60;        ///< control point 3
  Length min_d60;        ///< control point 4
  Length min_d5;         ///< control point 5
  Length max_d100;       ///< control point 6
  Length max_d90;        ///< control point 7
  Length min_d10;
  Length max_d10;
  std::size_t retained = 0;  ///< the sample that decides what holds the soil
  std::size_t drained = 0;   ///< the sample that decides what lets the water out
};

/// The curve of what passes the No. 4 sieve alone: P(d)·100/P(No. 4). The same curve where nothing
/// is larger.
CurvePoints regraded(const CurvePoints& curve);

/// Largest D15 of a filter for a category, and nothing else of the procedure.
/// `fines` in percent after regrading, 0 to 100.
Length max_filter_d15(double fines, Length base_d85, Dispersion dispersion);

/// Largest D90 that does not segregate, by the smallest D10.
Length max_filter_d90(Length min_d10);

/// The base-category procedure of NEH 633 chapter 26 (from memory), which EM 1110-2-1901 and -2300
/// share. Problems: a curve that does not reach d85 or the No. 200 sieve; no room for a filter.
Expected<FilterLimits> filter_limits(const FilterBase& base, const FilterChoices& choices,
                                     Steps& steps);

/// The same for several samples of one ground, at least one: the least of what may hold each, the
/// most of what lets the water out of each. The finest sample need not be the one that asks for
/// most: a fine sand may ask for less D15 than a silt.
Expected<FilterLimits> filter_limits(const std::vector<FilterBase>& samples,
                                     const FilterChoices& choices, Steps& steps);

/// The band of those limits, its fine side drawn on to 100 %.
Expected<GradationBand> filter_band_of(const FilterLimits& limits);

}  // namespace proofstone
