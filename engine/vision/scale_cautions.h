#pragma once

#include <string>
#include <vector>

#include "engine/vision/photo.h"

namespace proofstone {

/// What makes the scale of a photo less sure than it could be, as far as its marks tell: an oblique
/// view (as stated, by the plane of a board, or by two balls at different heights), one mark only
/// in such a view, marks that hide much of the rock, marks that do not lie on rock. It can be said
/// before anything is measured. `number` is that of the photo, from 1.
std::vector<std::string> cautions_of_scale(const Photo& photo, int number);

}  // namespace proofstone
