#pragma once

#include "piles/develop.h"
#include "piles/setting.h"

namespace proofstone::piles {

/// What is asked of one picture of a pile.
struct PictureRequest {
  ViewRequest view;
  PictureLook look;
  RenderEffort effort;
  unsigned seed = 1;
};

/// One picture with all that is true of it.
struct Picture {
  View view;
  PictureLook look;
  std::vector<ScaleObject> objects;
  LinearPicture light;
  StoneMask mask;
};

/// The same pile and request give the same picture.
Picture take_picture(const Pile& pile, const PileSurface& surface, const PictureRequest& request);

/// The mask alone, of stones with nothing around them: quick.
StoneMask take_mask(const Pile& pile, const View& view);

}  // namespace proofstone::piles
