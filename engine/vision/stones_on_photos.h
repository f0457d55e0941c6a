#pragma once

#include "engine/vision/photo.h"
#include "engine/vision/photo_scale.h"
#include "engine/vision/size_factors.h"
#include "engine/vision/surface_share.h"

namespace proofstone {

/// Every stone of a set of photos as photographed, and what may be wrong for all of them alike.
struct StonesOnPhotos {
  bool tapped = false;
  std::vector<SeenStone> stones;
  std::vector<PhotoScale> scales;  ///< of each photo
  SizeFactors factors;             ///< mean of those of the photos, by what each one counts
  double scale_error = 0;          ///< of all photos together, standard deviation over the size
  Length smallest_resolved;        ///< 8 pixels, or what was drawn, where a pixel shows most
  std::vector<double> sizes_in_pixels;
  int cut_by_edge = 0;
  int on_marks = 0;  ///< outlines of balls and boards, left out
  int mostly_hidden = 0;
};

/// Reads outlines, pieces or tapped stones off their photos. Problems name photo and outline
/// ("photo 2, outline 14"): no photos, outlines and tapped stones mixed, the same photo or outline
/// twice, outlines that cross themselves or leave the picture, scales that are none, fewer than 50
/// stones, stones in one corner of the picture only.
Expected<StonesOnPhotos> stones_on_photos(const PhotoSet& set,
                                          const std::vector<PhotoCalibration>& calibrations,
                                          Steps& steps);

}  // namespace proofstone
