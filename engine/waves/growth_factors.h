#pragma once

#include <cmath>

namespace proofstone {

/// Depth factors that the shallow-water growth formulas of SMB 1977 and SPM 1984 share;
/// `gd_over_u2` is g·d/U² with the wind speed the formula takes. Both tend to 1 in deep water.
inline double height_depth_factor(double gd_over_u2) {
  return std::tanh(0.530 * std::pow(gd_over_u2, 0.75));
}
inline double period_depth_factor(double gd_over_u2) {
  return std::tanh(0.833 * std::pow(gd_over_u2, 0.375));
}

}  // namespace proofstone
