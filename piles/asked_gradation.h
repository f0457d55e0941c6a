#pragma once

#include <string>
#include <vector>

#include "engine/rock/gradation.h"
#include "engine/rock/rock_class.h"
#include "simulation/draws.h"

namespace proofstone::piles {

/// How the rock of a pile lies to the band of its class.
enum class RockAgainstClass {
  inside,      ///< the curve midway between the limits
  too_fine,    ///< that curve, a whole width of the band at D50 below the fine limit
  too_coarse,  ///< as far above the coarse limit
};

/// What a pile is made of, by mass, from its smallest stone to its largest.
class AskedGradation {
 public:
  /// `spread` is "very-uniform", "class-type", "broad" or "very-broad": D0, D15, D50, D85 and D100
  /// as multiples of D50.
  static Expected<AskedGradation> of_spread(const std::string& spread, Length d50);
  /// Of a class. What its band does not limit is made up: the smallest stone is 0.6 of the smallest
  /// size of the curve but not under 0.2 D50, the largest 1.15 of its largest size. A Problem where
  /// the band does not limit D50 on both sides.
  static Expected<AskedGradation> of_class(const RockClass& rock_class, RockAgainstClass against);

  const Gradation& curve() const { return curve_; }
  Length d50() const { return d50_; }
  const std::string& words() const { return words_; }

  /// `count` sizes whose mass curve is this one, but for the luck of the few largest: one size out
  /// of each of `count` equal shares of the number of stones.
  std::vector<Length> draw_sizes(int count, Draws& draws) const;
  /// Mean of size cubed over the stones by number.
  double mean_cube() const;

 private:
  AskedGradation(Gradation curve, Length d50, std::string words)
      : curve_(std::move(curve)), d50_(d50), words_(std::move(words)) {}

  /// Stones of one narrow range of sizes.
  struct Slice {
    double size = 0;
    double ratio = 1;   ///< of its largest to its smallest size
    double number = 0;  ///< of stones, in any unit
  };
  std::vector<Slice> slices() const;

  Gradation curve_;
  Length d50_;
  std::string words_;
};

}  // namespace proofstone::piles
