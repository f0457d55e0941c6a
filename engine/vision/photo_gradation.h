#pragma once

#include "engine/evidence/measured_gradation.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// The size at one percent of the mass from photos, with what may be wrong of it; errors are
/// standard deviations of ln D.
struct PhotoSize {
  double percent = 50;
  Length as_photographed;
  Length size;  ///< as photographed over its factor
  double sampling_error = 0;
  double scale_error = 0;
  double factor_error = 0;
  double error() const;
  Length low() const;   ///< of the 90 % interval
  Length high() const;  ///< of the 90 % interval
};

/// Puts down how the size and its limits were found.
void say_photo_size(const PhotoSize& size, Steps& steps);

/// What photos say of a gradation.
struct PhotoGradation {
  MeasuredGradation measured;
  /// D15 (which is indicative: small stones hide), D50 and D85; one is absent
  /// where it lies below the smallest stone that the photos resolve.
  std::vector<PhotoSize> sizes;
};

/// From what is drawn on photos to a curve by mass of the whole pile.
///
/// Outlines: the size of a stone is the equal-area diameter of its visible piece, and it counts by
/// its visible area. Pieces cut by an edge of the picture are dropped and the rest counts
/// 1/[(1 − w/W)(1 − h/H)]. Tapped stones: √(long·short), and each node counts one. All photos are
/// put together before any percent is read; then each size is divided by the factor of its percent.
///
/// Below the smallest stone that the photos resolve nothing is said. The largest stone is known
/// where it was taped, or tapped at both ends; the curve never tells it, and ends where it was
/// taped.
///
/// The evidence behind each share is the number of equal stones whose binomial variance is that of
/// the share: sampling by blocks of the picture, and the errors of scale and factors, which more
/// photos do not reduce (`lasting_at_points`).
Expected<PhotoGradation> gradation_from_photos(
    const PhotoSet& set, const std::vector<PhotoCalibration>& calibrations = {});

}  // namespace proofstone
