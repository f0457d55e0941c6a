#pragma once

#include <string_view>

#include "report/svg_canvas.h"

namespace proofstone {

/// A place on a plot, in the units of its axes.
struct PlotPlace {
  double x = 0;
  double y = 0;
};

/// Both axes of a plot of one height, as wide as its picture.
struct PlotAxes {
  static constexpr double height = 300;

  double x_low, x_high, y_low, y_high, width;

  PixelPoint at(PlotPlace place) const;
};

/// The grid of a plot, its numbers, and what its axes mean.
void draw_plot_axes(SvgCanvas& canvas, const PlotAxes& axes, std::string_view upward,
                    std::string_view rightward);

}  // namespace proofstone
