#pragma once

#include "engine/evidence/measured_gradation.h"
#include "engine/vision/stones_on_photos.h"

namespace proofstone {

/// The curve of stones on photos and how many equal stones stand behind each of its points.
struct PhotoCurve {
  std::vector<GradationPoint> points;
  std::vector<double> effective;
  std::vector<double> lasting;         ///< part of 1/effective that more photos do not reduce
  std::vector<SizeError> size_errors;  ///< of sampling, scale and factor, within the curve's ends
};

/// `share` is that of the stones in `seen`. A Problem where the photos resolve no stone.
Expected<PhotoCurve> photo_curve(const StonesOnPhotos& seen, const SurfaceShare& share);

/// Ends the curve at the largest stone in sight, measured with a tape. A Problem where it is
/// smaller than the D85 of the photos: one of the two is wrong.
std::optional<Problem> end_at_largest(PhotoCurve& curve, Length largest);

}  // namespace proofstone
