#pragma once

#include <string>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/vision/picture_geometry.h"

namespace proofstone {

/// The corners of the visible piece of a stone, in pixels of the photo.
using StoneOutline = std::vector<PhotoPoint>;

/// What somebody who looks at outlines changes. All of it is worked out on pixels of a stated size
/// (`pixel`, in pixels of the photo), as the outlines were found; outlines that come out do not
/// cross themselves. Problems: outlines or sizes that are none, and what each names.

/// Several pieces as one stone, with what lies between them up to four pixels wide. Problem: they
/// do not touch.
Expected<StoneOutline> joined_outlines(const std::vector<StoneOutline>& pieces, double pixel);

/// A stone cut along the line through two places; crumbs of fewer than 12 pixels are lost.
/// Problem: the line leaves it whole.
Expected<std::vector<StoneOutline>> cut_outline(const StoneOutline& stone, PhotoPoint from,
                                                PhotoPoint to, double pixel);

/// A stone drawn by hand, less what belongs to others already; of several parts the largest. The
/// path may cross itself. Problem: nothing is left of it.
Expected<StoneOutline> drawn_outline(const StoneOutline& path,
                                     const std::vector<StoneOutline>& others,
                                     const PictureSize& picture, double pixel);

}  // namespace proofstone
