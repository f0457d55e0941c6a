#include "engine/hydraulics/uniform_flow_near.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/crossing_level.h"
#include "engine/hydraulics/divided_section.h"
#include "engine/hydraulics/section_problem.h"

namespace proofstone {

namespace {

constexpr double first_step_m = 0.02;

}  // namespace

Expected<SectionFlow> uniform_flow_near(const Section& section,
                                        const std::vector<Length>& divisions,
                                        const UniformFlowCase& sought, Length near) {
  const DividedSection divided(section, divisions, sought.composite);
  const double wanted = sought.discharge.si() / std::sqrt(sought.slope.ratio());
  const auto surplus = [&](double level) { return divided.conveyance(level) - wanted; };
  const double lowest = section.lowest().meters();
  const double ceiling = section.lower_end().meters();
  const double start = std::clamp(near.meters(), lowest, ceiling);
  ValueAtLevel low{start, surplus(start)};
  ValueAtLevel high = low;
  double step = first_step_m;
  while (low.level > lowest && low.value >= 0) {
    high = low;
    low.level = std::max(lowest, low.level - step);
    low.value = surplus(low.level);
    step *= 2;
  }
  while (high.value < 0) {
    if (!(high.level < ceiling)) {
      return Problem{"overtopped",
                     fmt::format("The section cannot hold the water below the lower of its two "
                                 "ends, at elevation {}.",
                                 in_both_systems(measure(section.lower_end()))),
                     "", "section", "survey the section further up both banks"};
    }
    low = high;
    high.level = std::min(ceiling, high.level + step);
    high.value = surplus(high.level);
    step *= 2;
  }
  const Length level = Length::meters(crossing_level(low, high, surplus));
  return carrying(divided.flow(level), sought.discharge);
}

}  // namespace proofstone
