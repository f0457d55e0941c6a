#pragma once

#include <optional>
#include <string>

#include "engine/rock/gradation_band.h"
#include "engine/rock/limit_curve.h"

namespace proofstone {

/// A layer of a filter, the soil below it or the rock above it: one curve, or the two limits of a
/// band. Sizes are those of sieves.
class LayerCurves {
 public:
  LayerCurves(std::string name, const Gradation& curve);
  LayerCurves(std::string name, const GradationBand& band);

  const std::string& name() const { return name_; }
  bool is_band() const { return is_band_; }
  const CurvePoints& coarse() const { return coarse_; }
  const CurvePoints& fine() const { return fine_; }

  /// The size of which `percent` is smaller: on the coarse limit, on the fine limit, and in the
  /// middle of the band; the same of a single curve. Absent where the curve does not reach.
  std::optional<Length> coarsest(double percent) const;
  std::optional<Length> finest(double percent) const;
  /// Halfway between the percents where both limits stand at the same sizes, else at the geometric
  /// mean of the two sizes.
  std::optional<Length> middle(double percent) const;

 private:
  std::string name_;
  bool is_band_;
  CurvePoints coarse_;
  CurvePoints fine_;
};

}  // namespace proofstone
