#pragma once

#include <vector>

#include "engine/blend/blend_target.h"

namespace proofstone {

/// A curve by mass from sieves in millimetres; for tests.
inline Gradation curve_of_sieves(const std::vector<double>& millimeters,
                                 const std::vector<double>& percents) {
  std::vector<GradationPoint> points;
  for (std::size_t i = 0; i < millimeters.size(); ++i) {
    points.push_back({Length::millimeters(millimeters[i]), percents[i]});
  }
  return *Gradation::make(std::move(points), GradationBasis{});
}

inline OfferedMaterial offered(const std::string& name, Gradation gradation) {
  return {name, name, std::move(gradation), {}, {}, {}, {}};
}

inline GradationBand band_of_sieves(const std::vector<double>& millimeters,
                                    const std::vector<double>& low,
                                    const std::vector<double>& high) {
  std::vector<PercentWindow> windows;
  for (std::size_t i = 0; i < millimeters.size(); ++i) {
    windows.push_back({Length::millimeters(millimeters[i]), low[i], high[i]});
  }
  return *GradationBand::from_percent_windows(std::move(windows), GradationBasis{});
}

/// Mamlouk & Zaniewski, Materials for Civil and Construction Engineers, Problem 5.23.
struct TwoAggregates {
  const std::vector<double> sieves{19, 12.5, 9.5, 4.75, 2.36, 0.6, 0.3, 0.15, 0.075};
  std::vector<OfferedMaterial> materials{
      offered("A", curve_of_sieves(sieves, {100, 85, 55, 20, 2, 0, 0, 0, 0})),
      offered("B", curve_of_sieves(sieves, {100, 100, 100, 85, 67, 45, 32, 19, 11}))};
  GradationBand band = band_of_sieves(sieves, {100, 80, 70, 50, 35, 18, 13, 8, 4},
                                      {100, 100, 90, 70, 50, 29, 23, 16, 10});
};

}  // namespace proofstone
