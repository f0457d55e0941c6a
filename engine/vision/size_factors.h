#pragma once

#include "engine/finding/steps.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// Size as photographed over size of the intermediate axis, for the whole pile, at one percent of
/// the mass, and the standard deviation of its logarithm that no number of photos reduces.
struct SizeFactor {
  double ratio = 1;
  double error = 0;
};

/// How sure the intervals of sizes from photos are.
inline constexpr double interval_confidence = 0.90;

/// The factors at D15, D50 and D85; between them straight in percent, beyond them level.
struct SizeFactors {
  SizeFactor at_15;
  SizeFactor at_50;
  SizeFactor at_85;
  std::string origin;

  SizeFactor at(double percent) const;
  void say(Steps& steps) const;
};

/// How a photo shows rock, as far as its factors hang on it.
struct SeenAs {
  PhotoView view = PhotoView::straight_on;
  RockLies lies = RockLies::in_layer;
  bool tapped = false;
  bool narrow = false;  ///< less than `narrowest_in_medians` wide
};

/// Photos less wide than so many D50 show few stones, cut many, and their factors were not found by
/// themselves.
constexpr double narrowest_in_medians = 9;

/// What the study found for stones outlined (equal-area diameter, weighted by visible area) or
/// tapped (√(long·short), the mostly hidden ones left out), by view and how the rock lies. Of a
/// heap the spread, where known, replaces the factor at D15; a calibration replaces all of them.
SizeFactors size_factors(const SeenAs& seen, const std::optional<SizeSpread>& spread,
                         const PhotoCalibration* calibration);

}  // namespace proofstone
