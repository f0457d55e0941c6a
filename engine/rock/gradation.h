#pragma once

#include <string_view>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// What the word "size" means in a table or a measurement. Never mixed silently.
enum class SizeMeaning {
  intermediate_axis,  ///< the b axis of a stone, as a rule or template measures it
  sphere,             ///< diameter of the sphere of the same mass
  sieve,              ///< square opening that lets the stone through
};

/// What "percent smaller" counts.
enum class PercentOf {
  mass,   ///< share of the mass
  count,  ///< share of the number of stones of a whole sample
};

/// "intermediate axis", "sphere", "sieve": as data files write them.
std::string_view size_meaning_name(SizeMeaning meaning);
/// "mass", "count".
std::string_view percent_of_name(PercentOf percent_of);

/// The basis on which a gradation or a band is stated.
struct GradationBasis {
  SizeMeaning size = SizeMeaning::intermediate_axis;
  PercentOf percent = PercentOf::mass;
  bool operator==(const GradationBasis&) const = default;
};

struct GradationPoint {
  Length size;
  double percent_smaller = 0;  ///< 0 to 100
};

/// A gradation curve: percent smaller against size, straight in log(size) between its points
/// (ASTM practice for gradation plots; common practice for stone).
///
/// Invariant: at least two points; sizes positive and strictly rising; percents from 0 to 100 and
/// never falling; the last is 100 or the curve is marked open by ending below it.
class Gradation {
 public:
  /// Problems are located as "point 3". Points may come largest first; they are then turned round.
  static Expected<Gradation> make(std::vector<GradationPoint> points, GradationBasis basis);

  const std::vector<GradationPoint>& points() const { return points_; }
  const GradationBasis& basis() const { return basis_; }

  /// Percent smaller than `size`: below the curve the first point's percent, above it the last
  /// point's.
  double percent_smaller(Length size) const;

  /// The size of which `percent` is smaller; where the curve is level, the smallest such size. A
  /// Problem when the curve does not reach: below the first point's percent or above the last
  /// one's.
  Expected<Length> size_at(double percent) const;

 private:
  Gradation(std::vector<GradationPoint> points, GradationBasis basis)
      : points_(std::move(points)), basis_(basis) {}
  std::vector<GradationPoint> points_;
  GradationBasis basis_;
};

}  // namespace proofstone
