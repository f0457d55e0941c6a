#pragma once

#include <functional>
#include <string>
#include <vector>

#include "report/svg_canvas.h"

namespace proofstone {

/// One line of the legend under a picture: a sample of how a thing is drawn, and its name.
struct LegendEntry {
  /// Draws the sample round a point, at most 28 pixels wide and 16 high.
  std::function<void(SvgCanvas&, PixelPoint centre)> sample;
  std::string text;
};

/// A line as it is drawn in the picture.
LegendEntry line_entry(const Paint& paint, std::string text);

/// Draws a legend from `top` down between `left` and `right`, in as many columns as the longest
/// entry leaves room for, and returns where it ends.
double draw_legend(SvgCanvas& canvas, const std::vector<LegendEntry>& entries, double left,
                   double right, double top);

}  // namespace proofstone
