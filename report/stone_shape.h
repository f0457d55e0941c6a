#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/rock/rock_properties.h"
#include "report/svg_canvas.h"

namespace proofstone {

/// Numbers that look random and are the same on every machine and every day (SplitMix64; Steele,
/// Lea & Flood 2014 [memory]).
class SteadyNumbers {
 public:
  explicit SteadyNumbers(std::uint64_t seed) : state_(seed) {}
  /// Seeded by a text, such as the id of a picture.
  explicit SteadyNumbers(std::string_view seed);
  /// From `low` to below `high`.
  double between(double low, double high);

 private:
  std::uint64_t state_;
};

/// The outline of one stone, exactly `height` tall and about as wide, standing on a baseline at
/// `foot` (its lowest point, in the middle).
std::vector<PixelPoint> stone_outline(PixelPoint foot, double height, SteadyNumbers& numbers);

/// Path data of an outline: straight edges for angular rock, worn ones for rounded rock.
std::string stone_path(const std::vector<PixelPoint>& outline, Angularity angularity);

}  // namespace proofstone
