#pragma once

#include "engine/evidence/measured_gradation.h"
#include "engine/vision/stones_on_photos.h"

namespace proofstone {

/// The curve of stones on photos and how many equal stones stand behind each of its points.
struct PhotoCurve {
  std::vector<GradationPoint> points;
  std::vector<double> effective;
  std::vector<double> lasting;  ///< part of 1/effective that more photos do not reduce
  bool folded = false;  ///< sizes were so alike that the factors would have turned the curve back
};

/// `share` is that of the stones in `seen`. A Problem where the photos resolve no stone.
Expected<PhotoCurve> photo_curve(const StonesOnPhotos& seen, const SurfaceShare& share);

}  // namespace proofstone
