#pragma once

#include <string>
#include <vector>

#include "engine/vision/outline_network.h"

namespace proofstone {

/// How bright and how sharp a picture is.
struct LightOfPhoto {
  double darkest = 0;    ///< luma, 0 to 255, that a tenth of the pixels stay below
  double brightest = 0;  ///< luma that nine tenths stay below
  /// How much of what changes from one pixel to the next does not go on so: 0.3 to 0.4 on sharp
  /// photos of rock, towards 0 where they are blurred.
  double sharpness = 0;
};

LightOfPhoto light_of(const PhotoPixels& photo);

/// What the light and the focus of a photo make hard to see, and how a better one is taken.
std::vector<std::string> cautions_of_light(const LightOfPhoto& light);

/// The stones that were found, as the photo shows them.
struct StonesInView {
  double median = 0;  ///< diameter in pixels of the photo; half of the area is of smaller ones
  double across = 0;  ///< such diameters along the longer side of the photo
};

/// What makes outlines less sure than they could be, and how a better photo is taken.
std::vector<std::string> cautions_of_outlines(const LightOfPhoto& light,
                                              const StonesInView& stones);

}  // namespace proofstone
