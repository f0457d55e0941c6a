#include "engine/hydraulics/hydraulic_jump.h"

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/energy_branches.h"

namespace proofstone {

Expected<HydraulicJump> hydraulic_jump(const ReachSection& section, Discharge discharge,
                                       Length level_before) {
  if (!(level_before > section.section.lowest())) {
    return Problem{"dry", "The water level does not stand above the lowest ground.", "",
                   "level before the jump", "a level above the lowest ground"};
  }
  const double q = discharge.si();
  if (!(q > 0) || !std::isfinite(q)) {
    return Problem{"discharge-not-positive", "The discharge is not a positive number.", "",
                   "discharge", "a discharge above 0"};
  }
  const LevelTable table(section);
  const auto energy = energy_branches(table, q);
  if (!energy) {
    return Problem{"too-much-water", "The section is too small for the discharge.", "", "section",
                   "a smaller discharge, or a wider section"};
  }
  const SectionState before = table.at(level_before.meters());
  if (energy->is_tranquil(before.level)) {
    return Problem{"not-rapid", "The flow before the jump is not rapid.", "",
                   "level before the jump", "a level below the critical one"};
  }
  const double force = specific_force(before, q);
  const auto excess = [&](const SectionState& state) { return specific_force(state, q) - force; };
  // From the next critical level up: near it the specific force is the least.
  const auto critical =
      std::find_if(energy->critical.begin(), energy->critical.end(),
                   [&](const SectionState& one) { return one.level > before.level; });
  const auto after = first_rise_through_zero(table, *critical, table.states().back(), excess);
  if (!after) {
    return Problem{"no-jump", "No tranquil flow has the specific force of the rapid flow.", "",
                   "section", "a level further from critical"};
  }
  HydraulicJump jump;
  jump.before = carrying(table.divided().flow(level_before), discharge);
  jump.after = carrying(table.divided().flow(Length::meters(after->level)), discharge);
  jump.specific_force_si = force;
  jump.energy_lost = Length::meters(energy_level(before, q) - energy_level(*after, q));
  return jump;
}

}  // namespace proofstone
