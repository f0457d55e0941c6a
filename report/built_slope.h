#pragma once

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "report/rock_packing.h"

namespace proofstone {

/// The strip of the layer, measured from its foot up.
class BuiltSlope {
 public:
  BuiltSlope(LayerStrip strip, bool foot_on_right)
      : strip_(std::move(strip)), right_(foot_on_right) {}

  double length() const { return strip_.length(); }
  const LayerStrip& strip() const { return strip_; }
  double along(double from_foot) const { return right_ ? length() - from_foot : from_foot; }
  SectionPlace at(double from_foot, double down) const { return strip_.at(along(from_foot), down); }

  /// The first place, from the foot up, that stands as high as `z`.
  double from_foot(double z) const {
    constexpr int samples = 2000;
    for (int i = 0; i <= samples; ++i) {
      const double here = length() * i / samples;
      if (at(here, 0).z >= z - 1e-9) return here;
    }
    return length();
  }

  /// The strip between two places and two depths below the surface, as a closed outline.
  std::vector<SectionPlace> area(double low, double high, double up, double down) const {
    std::vector<double> places{low};
    double walked = 0;
    auto surface = strip_.surface();
    if (right_) std::reverse(surface.begin(), surface.end());
    for (std::size_t i = 0; i + 1 < surface.size(); ++i) {
      walked += std::hypot(surface[i + 1].x - surface[i].x, surface[i + 1].z - surface[i].z);
      if (walked > low && walked < high) places.push_back(walked);
    }
    places.push_back(high);
    std::vector<SectionPlace> outline;
    for (const double here : places) outline.push_back(at(here, up));
    for (auto here = places.rbegin(); here != places.rend(); ++here) {
      outline.push_back(at(*here, down));
    }
    return outline;
  }

 private:
  LayerStrip strip_;
  bool right_;
};

}  // namespace proofstone
