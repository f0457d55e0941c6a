#pragma once

#include <vector>

#include "engine/vision/picture_geometry.h"

namespace proofstone::piles {

/// What the outline of a stone shows of its form, against its hull and the tightest box round it,
/// turned as it may be.
struct OutlineForm {
  double box_fill = 1;    ///< area over that of the box: 0.785 for an ellipse, 1 for a rectangle
  double elongation = 0;  ///< ln(longer side over shorter side of the box)
  double solidity = 1;    ///< area over that of the hull; what others hide bites into it
};

/// The form of an outline that encloses `area` square pixels. Precondition: `piece_of_outline`
/// takes it.
OutlineForm form_of_outline(const std::vector<PhotoPoint>& outline, double area);

}  // namespace proofstone::piles
