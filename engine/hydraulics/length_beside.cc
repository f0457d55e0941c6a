#include "engine/hydraulics/length_beside.h"

#include <algorithm>

namespace proofstone {

namespace {

/// What a stretch may end below the last point of a centreline that is only rounded.
constexpr double rounding_meters = 0.01;

/// The course's turn to the left between two places, the curvature read straight between its
/// points.
double turn_between(const std::vector<CurvePoint>& curve, double from, double to) {
  double turn = 0;
  for (std::size_t i = 1; i < curve.size(); ++i) {
    const double a = curve[i - 1].along.meters();
    const double b = curve[i].along.meters();
    const double low = std::max(a, from);
    const double high = std::min(b, to);
    if (!(high > low)) continue;
    const auto curvature_at = [&](double s) {
      const double share = (s - a) / (b - a);
      return curve[i - 1].curvature_si +
             share * (curve[i].curvature_si - curve[i - 1].curvature_si);
    };
    turn += (high - low) * (curvature_at(low) + curvature_at(high)) / 2;
  }
  return turn;
}

}  // namespace

Expected<Length> length_beside(const Centreline& centreline, const BesideCentreline& line,
                               Steps& steps) {
  const auto curve = curvature_along(centreline, line.width);
  if (!curve) return curve.problems();
  if (line.to.meters() > curve->back().along.meters() + rounding_meters) {
    return Problem{"beyond-the-centreline", "The stretch ends below the end of the centreline.", "",
                   "", "a stretch that the centreline covers"};
  }
  const Length along = line.to - line.from;
  const double turn = turn_between(*curve, line.from.meters(), line.to.meters());
  const auto length = Length::meters(along.meters() + line.offset_right.meters() * turn);
  steps.given("L_c", "length along the centreline", measure(along), "document");
  steps.given("e", "from the middle of the channel to the middle of the rock, to the right",
              measure(line.offset_right));
  steps.computed("φ", "turn of the course to the left", "∫κ ds", measure(Angle::radians(turn)));
  steps.computed("L", "length of the rock along the stream", "L_c + e·φ", measure(length));
  return length;
}

}  // namespace proofstone
