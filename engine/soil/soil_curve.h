#pragma once

#include <optional>

#include "engine/rock/gradation.h"
#include "engine/rock/limit_curve.h"

namespace proofstone {

/// Openings of the sieves that part the grain sizes of a soil (ASTM D2487 and E11, from memory).
namespace sieve {
inline constexpr Length three_inch = Length::millimeters(75);
inline constexpr Length no_4 = Length::millimeters(4.75);
inline constexpr Length no_40 = Length::millimeters(0.425);
inline constexpr Length no_200 = Length::millimeters(0.075);
}  // namespace sieve

/// Soils, filters and bedding are sieved and stated by mass.
inline constexpr GradationBasis sieved_by_mass{SizeMeaning::sieve, PercentOf::mass};

/// Percent smaller than `size`, where the curve tells it: within its ends, above an end at 100 %,
/// below one at 0 %. Nothing is ever extrapolated.
std::optional<double> known_percent(const CurvePoints& curve, Length size);

/// D60/D10; absent where the curve does not reach.
std::optional<double> uniformity(const CurvePoints& curve);
/// D30²/(D10·D60); absent where the curve does not reach.
std::optional<double> curvature(const CurvePoints& curve);

/// A stretch of sizes of which the soil has next to nothing.
struct SizeGap {
  Length from;
  Length to;
  double ratio() const { return to / from; }
};

/// The widest stretch between 10 and 90 % smaller that holds less than 5 % of the mass and spans a
/// threefold range of sizes or more; absent where there is none. Threefold is the gap ratio of
/// Chang & Zhang (2013); the 5 % is common practice.
std::optional<SizeGap> size_gap(const CurvePoints& curve);

/// Whether percents that fall with size would make a curve if they were percents retained: the
/// likeliest mistake behind such a table. `points` go from small to large or the other way.
bool look_retained(const CurvePoints& points);

}  // namespace proofstone
