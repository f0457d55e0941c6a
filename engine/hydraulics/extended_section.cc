#include "engine/hydraulics/extended_section.h"

#include <utility>

namespace proofstone {

namespace {

/// Whether the point at an end is already the top of a wall: a third point there would be too many.
bool is_wall(const SectionPoint& end, const SectionPoint& beside) {
  return !(beside.station < end.station) && !(end.station < beside.station);
}

}  // namespace

Expected<Section> extended_to(const Section& section, Length level) {
  std::vector<SectionPoint> points = section.points();
  if (points.front().elevation < level) {
    if (is_wall(points[0], points[1])) {
      points.front().elevation = level;
    } else {
      const SectionPoint top{points.front().station, level, points.front().roughness};
      points.insert(points.begin(), top);
    }
  }
  if (points.back().elevation < level) {
    const std::size_t last = points.size() - 1;
    if (is_wall(points[last], points[last - 1])) {
      points.back().elevation = level;
    } else {
      // The roughness of a point is that of the ground after it.
      points.back().roughness = points[last - 1].roughness;
      points.push_back({points.back().station, level, points.back().roughness});
    }
  }
  return Section::make(std::move(points));
}

}  // namespace proofstone
