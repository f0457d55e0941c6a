#include "engine/hydraulics/uniform_flow_near.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/bracketed_root.h"
#include "engine/hydraulics/divided_section.h"
#include "engine/quantity/measure.h"

namespace proofstone {

namespace {

constexpr double first_step_m = 0.02;

std::string both(Length elevation) {
  return fmt::format("{} ({})", display(measure(elevation), UnitSystem::us_customary).text,
                     display(measure(elevation), UnitSystem::si).text);
}

}  // namespace

Expected<SectionFlow> uniform_flow_near(const Section& section,
                                        const std::vector<Length>& divisions,
                                        const UniformFlowCase& sought, Length near) {
  const DividedSection divided(section, divisions, sought.composite);
  const double wanted = sought.discharge.si() / std::sqrt(sought.slope.ratio());
  const auto carries = [&](double level) { return divided.conveyance(level) >= wanted; };
  const double lowest = section.lowest().meters();
  const double ceiling = section.lower_end().meters();
  double low = std::clamp(near.meters(), lowest, ceiling);
  double high = low;
  double step = first_step_m;
  while (low > lowest && carries(low)) {
    high = low;
    low = std::max(lowest, low - step);
    step *= 2;
  }
  while (!carries(high)) {
    if (!(high < ceiling)) {
      return Problem{"overtopped",
                     fmt::format("The section cannot hold the water below the lower of its two "
                                 "ends, at elevation {}.",
                                 both(section.lower_end())),
                     "", "section", "survey the section further up both banks"};
    }
    low = high;
    high = std::min(ceiling, high + step);
    step *= 2;
  }
  const Length level = Length::meters(turning_point(low, high, carries));
  return carrying(divided.flow(level), sought.discharge);
}

}  // namespace proofstone
