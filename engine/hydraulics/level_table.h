#pragma once

#include <vector>

#include "engine/hydraulics/crossing_level.h"
#include "engine/hydraulics/divided_section.h"
#include "engine/hydraulics/reach.h"

namespace proofstone {

/// A section of a reach with its states at many levels, worked out once and asked for every
/// discharge. Above its ends it is extended by vertical walls. Refers to the section, which must
/// outlive it. Internal to the hydraulics.
class LevelTable {
 public:
  explicit LevelTable(const ReachSection& section);

  const ReachSection& section() const { return section_; }
  const DividedSection& divided() const { return divided_; }
  /// Levels rise; the first stands just above the lowest ground, the last far above the section.
  const std::vector<SectionState>& states() const { return states_; }
  /// Worked out exactly, not from the table.
  SectionState at(double level) const { return divided_.state(level); }
  /// How the conveyance is shared between left overbank, channel and right overbank.
  double left_share(const SectionState& state) const;
  double right_share(const SectionState& state) const;

 private:
  const ReachSection& section_;
  DividedSection divided_;
  bool has_left_ = false;
  bool has_right_ = false;
  std::vector<SectionState> states_;
};

/// Where `value(state)`, below zero at `low` and not at `high`, passes through zero or jumps across
/// it; the value of what is returned is not below zero.
template <class Value>
SectionState crossing_between(const LevelTable& table, const SectionState& low,
                              const SectionState& high, Value&& value) {
  return table.at(crossing_level({low.level, value(low)}, {high.level, value(high)},
                                 [&](double level) { return value(table.at(level)); }));
}

}  // namespace proofstone
