#include "engine/hydraulics/level_table.h"

#include <algorithm>
#include <optional>

#include "engine/hydraulics/level_scan.h"

namespace proofstone {

namespace {

std::vector<Length> banks_of(const ReachSection& section) {
  if (!section.left_bank || !section.right_bank) return {};
  return {*section.left_bank, *section.right_bank};
}

std::optional<double> alpha_of(const ReachSection& section) {
  if (!section.energy_coefficient) return std::nullopt;
  return section.energy_coefficient->number();
}

/// Levels inside the section, closest above each break of the ground, and above it in doubling
/// steps up to thousands of kilometres, so that a profile never runs out of them.
std::vector<double> levels_of(const ReachSection& section) {
  constexpr std::size_t wanted = 96;
  constexpr double far_above_m = 4e6;
  const double top = section.section.highest().meters();
  const double bed = section.section.lowest().meters();
  std::vector<double> breaks;
  for (const SectionPoint& point : section.section.points()) {
    breaks.push_back(point.elevation.meters());
  }
  for (const IneffectivePart& part : section.ineffective) {
    const double until = part.until.meters();
    if (until > bed && until < top) breaks.push_back(until);
  }
  std::vector<double> levels = levels_between(std::move(breaks), wanted);
  const double width = (section.section.right_end() - section.section.left_end()).meters();
  double step = std::max({(top - bed) / 16, width / 1000, 0.001});
  if (levels.empty()) levels.push_back(bed + 1e-6 * step);
  for (const IneffectivePart& part : section.ineffective) {
    if (part.until.meters() >= top) levels.push_back(part.until.meters());
  }
  double level = top + step;
  while (level < top + far_above_m) {
    levels.push_back(level);
    step *= 1.5;
    level += step;
  }
  std::sort(levels.begin(), levels.end());
  return levels;
}

}  // namespace

LevelTable::LevelTable(const ReachSection& section)
    : section_(section),
      divided_(section.section, banks_of(section), section.composite, section.ineffective,
               alpha_of(section)),
      has_left_(section.left_bank && *section.left_bank > section.section.left_end()),
      has_right_(section.right_bank && *section.right_bank < section.section.right_end()) {
  for (const double level : levels_of(section)) {
    const SectionState state = divided_.state(level);
    if (state.area > 0) states_.push_back(state);
  }
}

double LevelTable::left_share(const SectionState& state) const {
  return has_left_ ? state.first_part_conveyance / state.conveyance : 0;
}

double LevelTable::right_share(const SectionState& state) const {
  return has_right_ ? state.last_part_conveyance / state.conveyance : 0;
}

}  // namespace proofstone
