#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/rock/gradation.h"

namespace proofstone {

/// One testable statement of a band: the percent smaller than `size` is at most, or at least, a
/// value. Every way of wording a band comes down to a list of these (reference: a window of sizes
/// at a percent, "Dp in [A, B]", is F(A) ≤ p and F(B) ≥ p). "At most 100" states that the largest
/// stone is at least `size`: one such stone shows it, and no curve contradicts it.
struct BandCondition {
  enum class Sense { at_most, at_least };
  Length size;
  Sense sense = Sense::at_most;
  double percent = 0;
  /// How the specification words it: "D50 at least 11.5 in".
  std::string wording;
  /// What this condition counts, where it differs from the rest of its band.
  std::optional<PercentOf> percent_of;
};

/// What a condition of a band on this basis counts.
PercentOf percent_of(const BandCondition& condition, const GradationBasis& basis);

/// The ways published bands are worded.
struct PercentWindow {  ///< percent smaller at a size, between two values
  Length size;
  double min_percent = 0;
  double max_percent = 100;
  /// What this window counts, where it differs from the rest of its band.
  std::optional<PercentOf> percent_of = std::nullopt;
  bool worded_as_larger = false;  ///< the specification prints percents larger
  std::string size_words = {};    ///< how it writes the size; empty where it writes a length
};
struct MassPercentWindow {  ///< percent lighter at a stone mass, between two values
  Mass mass;
  double min_percent = 0;
  double max_percent = 100;
  std::optional<PercentOf> percent_of = std::nullopt;
  bool worded_as_larger = false;
};
struct SizeWindow {  ///< size at a percent smaller, between two values; an end may be open
  double percent = 50;
  std::optional<Length> min_size;
  std::optional<Length> max_size;
};
struct MassWindow {  ///< stone mass at a percent lighter, between two values
  double percent = 50;
  std::optional<Mass> min_mass;
  std::optional<Mass> max_mass;
};

/// The two limiting curves of a gradation specification and the basis they are stated on.
class GradationBand {
 public:
  /// Problems are located as "window 2". Windows that contradict one another are Problems.
  static Expected<GradationBand> from_percent_windows(std::vector<PercentWindow> windows,
                                                      GradationBasis basis);
  static Expected<GradationBand> from_size_windows(std::vector<SizeWindow> windows,
                                                   GradationBasis basis);
  /// Masses become sphere diameters at the given rock density.
  static Expected<GradationBand> from_mass_percent_windows(
      const std::vector<MassPercentWindow>& windows, Density rock_density, PercentOf percent);
  static Expected<GradationBand> from_mass_windows(const std::vector<MassWindow>& windows,
                                                   Density rock_density, PercentOf percent);

  const std::vector<BandCondition>& conditions() const { return conditions_; }
  const GradationBasis& basis() const { return basis_; }

  /// The limiting curves as drawn: the coarse limit (lowest percents) and the fine limit (highest
  /// percents), each from small to large.
  const std::vector<GradationPoint>& coarse_limit() const { return coarse_limit_; }
  const std::vector<GradationPoint>& fine_limit() const { return fine_limit_; }

  /// The smallest Dp a rock inside the band can have: log-size interpolation on the fine limit.
  Expected<Length> smallest_size_at(double percent) const;
  /// The largest Dp a rock inside the band can have, on the coarse limit.
  Expected<Length> largest_size_at(double percent) const;

 private:
  static Expected<Length> size_on_limit(const std::vector<GradationPoint>& limit, double percent);

  std::vector<BandCondition> conditions_;
  std::vector<GradationPoint> coarse_limit_;
  std::vector<GradationPoint> fine_limit_;
  GradationBasis basis_;
};

}  // namespace proofstone
