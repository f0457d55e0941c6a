#include "engine/hydraulics/prismatic_channel.h"

#include <utility>

namespace proofstone {

Expected<ReachSection> trapezoidal_section(const TrapezoidalChannel& channel, Length bed,
                                           Length height) {
  const Length toe = 0.5 * channel.bottom_width;
  const Length top = toe + channel.side_slope.number() * height;
  auto section = Section::make({{-1.0 * top, bed + height, channel.roughness},
                                {-1.0 * toe, bed, channel.roughness},
                                {toe, bed, channel.roughness},
                                {top, bed + height, channel.roughness}});
  if (!section) return section.problems();
  return ReachSection{"", std::move(*section)};
}

}  // namespace proofstone
