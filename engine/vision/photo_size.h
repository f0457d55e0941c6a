#pragma once

#include "engine/method/method.h"
#include "engine/vision/photo.h"

namespace proofstone {

enum class PhotoPercent { d15, d50, d85 };
enum class PhotoReadingBy { outlines, taps };
enum class PhotoWidth { wide, narrow };

struct PhotoSizeInputs {
  Length as_photographed;
  PhotoPercent percent = PhotoPercent::d50;
  PhotoView view = PhotoView::straight_on;
  RockLies lies = RockLies::in_layer;
  PhotoReadingBy by = PhotoReadingBy::outlines;
  PhotoWidth width = PhotoWidth::wide;
  Dimensionless sampling_error;
  Dimensionless scale_error = Dimensionless::number(0.06);
};
struct PhotoSizeResult {
  Length size;
  Length low;   ///< of the 90 % interval
  Length high;  ///< of the 90 % interval
};

/// The size at a percent of the mass of the whole pile from that of the surface as photographed.
Expected<PhotoSizeResult> photo_size(const PhotoSizeInputs& in, Steps& steps);

/// The same by name: "photo-size".
const Method& photo_size_method();

}  // namespace proofstone
