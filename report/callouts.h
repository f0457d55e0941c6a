#pragma once

#include <string>
#include <vector>

#include "report/label_placement.h"
#include "report/svg_canvas.h"

namespace proofstone {

/// A word and the place in a picture that it points at.
struct Callout {
  PixelPoint at;
  std::string text;
  PixelPoint away = {};  ///< the way in which its number had best stand; none where both are 0
};

/// Where a list of callouts is written.
struct CalloutList {
  double left = 0;
  double width = 0;
  double top = 0;
};

/// Marks places with numbers that keep clear of one another and of what `placement` has taken, each
/// tied to its place by a line, and writes in a list what they mean. Returns where the list ends.
double draw_callouts(SvgCanvas& canvas, const std::vector<Callout>& callouts,
                     LabelPlacement& placement, const CalloutList& list);

}  // namespace proofstone
