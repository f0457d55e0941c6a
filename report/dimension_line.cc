#include "report/dimension_line.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

void draw_arrow(SvgCanvas& canvas, PixelPoint tip, PixelPoint from) {
  const double length = std::max(1e-6, std::hypot(tip.x - from.x, tip.y - from.y));
  const PixelPoint step{(tip.x - from.x) / length, (tip.y - from.y) / length};
  const PixelPoint back{tip.x - 8 * step.x, tip.y - 8 * step.y};
  canvas.polygon({tip,
                  {back.x - 3.2 * step.y, back.y + 3.2 * step.x},
                  {back.x + 3.2 * step.y, back.y - 3.2 * step.x}},
                 {Ink::ink, 1, Ink::paper, 0.75, {}, "dimension"});
}

}  // namespace

void draw_dimension(SvgCanvas& canvas, PixelPoint from, PixelPoint to) {
  const double length = std::max(1e-6, std::hypot(to.x - from.x, to.y - from.y));
  const PixelPoint step{(to.x - from.x) / length, (to.y - from.y) / length};
  const double over = length < 24 ? 16 : 0;
  const PixelPoint before{from.x - over * step.x, from.y - over * step.y};
  const PixelPoint beyond{to.x + over * step.x, to.y + over * step.y};
  canvas.line(before, beyond, {Ink::none, 1, Ink::paper, 4, {}, "dimension-halo"});
  canvas.line(before, beyond, {Ink::none, 1, Ink::ink, 1.5, {}, "dimension"});
  draw_arrow(canvas, from, over > 0 ? before : to);
  draw_arrow(canvas, to, over > 0 ? beyond : from);
}

}  // namespace proofstone
