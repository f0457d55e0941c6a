#include "engine/hydraulics/rock_roughness_flow.h"

#include <cmath>

#include "engine/hydraulics/bracketed_root.h"

namespace proofstone {

namespace {

constexpr Length deepest = Length::feet(1000);

/// The trapezoid filled to depth y, in metres.
struct Filled {
  double area = 0;
  double perimeter = 0;
  double top_width = 0;
};

Filled filled(const RockLinedChannel& channel, double y) {
  const double b = channel.bottom_width.meters();
  const double z = 1 / channel.side_slope.ratio();
  return {(b + z * y) * y, b + 2 * y * std::sqrt(1 + z * z), b + 2 * z * y};
}

}  // namespace

Dimensionless rock_roughness(Length d90, Dimensionless k) {
  return Dimensionless::number(k.number() * std::pow(d90.feet(), 1.0 / 6));
}

Expected<RockLinedFlow> rock_lined_flow(const RockLinedChannel& channel, Dimensionless roughness) {
  const double Q = channel.discharge.cubic_meters_per_second();
  const double conveyance = Q / std::sqrt(channel.bed_slope.ratio());
  const auto carries = [&](double y) {
    const Filled wet = filled(channel, y);
    const double radius = wet.area / wet.perimeter;
    return wet.area * std::pow(radius, 2.0 / 3) / roughness.number() >= conveyance;
  };
  if (!carries(deepest.meters())) {
    return Problem{"too-deep", "The channel does not carry the discharge within 1000 ft of depth.",
                   "", "/discharge", "a smaller discharge, a wider or a steeper channel"};
  }
  const double y = turning_point(0, deepest.meters(), carries);
  const Filled wet = filled(channel, y);
  return RockLinedFlow{Length::meters(y), Length::meters(wet.top_width),
                       Velocity::meters_per_second(Q / wet.area)};
}

}  // namespace proofstone
