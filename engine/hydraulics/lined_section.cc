#include "engine/hydraulics/lined_section.h"

#include <utility>

namespace proofstone {

namespace {

bool lies_between(Length station, const SectionPoint& left, const SectionPoint& right) {
  return station > left.station && station < right.station;
}

SectionPoint point_between(Length station, const SectionPoint& left, const SectionPoint& right) {
  const double share = (station - left.station) / (right.station - left.station);
  return {station, left.elevation + (right.elevation - left.elevation) * share, left.roughness};
}

}  // namespace

Expected<Section> with_roughness(const Section& section, const SectionStretch& stretch,
                                 Dimensionless roughness) {
  std::vector<SectionPoint> points;
  const auto& surveyed = section.points();
  points.reserve(surveyed.size() + 2);
  for (std::size_t i = 0; i < surveyed.size(); ++i) {
    if (i > 0) {
      for (const Length end : {stretch.left, stretch.right}) {
        if (lies_between(end, surveyed[i - 1], surveyed[i])) {
          points.push_back(point_between(end, surveyed[i - 1], surveyed[i]));
        }
      }
    }
    points.push_back(surveyed[i]);
  }
  for (SectionPoint& point : points) {
    if (point.station >= stretch.left && point.station < stretch.right) {
      point.roughness = roughness;
    }
  }
  return Section::make(std::move(points));
}

}  // namespace proofstone
