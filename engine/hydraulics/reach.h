#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/hydraulics/ineffective_part.h"
#include "engine/hydraulics/section_flow.h"

namespace proofstone {

/// Distances from a section to the next one downstream, along the left overbank, the channel and
/// the right overbank. In a profile they are weighted by what flows in each.
struct ReachLengths {
  Length left;
  Length channel;
  Length right;

  static ReachLengths all(Length length) { return {length, length, length}; }
};

/// Energy lost where the flow narrows or widens, as shares of the change of the velocity head.
/// Tranquil flow: 0.1 and 0.3 where it does so gradually, 0.3 and 0.5 at a bridge, 0.6 and 0.8 when
/// abrupt (common US practice, from memory); less in rapid flow.
struct LossCoefficients {
  Dimensionless contraction = Dimensionless::number(0.1);
  Dimensionless expansion = Dimensionless::number(0.3);
};

/// One section of a reach.
struct ReachSection {
  std::string name;
  Section section;
  /// Bank tops that divide channel from overbanks; both or neither. Without them all is channel.
  std::optional<Length> left_bank = {};
  std::optional<Length> right_bank = {};
  std::vector<IneffectivePart> ineffective = {};
  ReachLengths to_next = {};     ///< of no account in the last section
  LossCoefficients losses = {};  ///< on the way to the next section
  CompositeRoughness composite = CompositeRoughness::horton;
  /// α from a measurement, in place of the one of the divided conveyance.
  std::optional<Dimensionless> energy_coefficient = {};
  bool interpolated = false;
};

/// Surveyed sections in order from upstream to downstream, each looking downstream.
///
/// Invariant: 2 to 20,000 sections; lengths above 0 and at most 100 km; banks inside their section
/// and in order, in all sections or in none; ineffective parts in order and apart; loss
/// coefficients from 0 to 1; energy coefficients from 1 to 10.
class Reach {
 public:
  /// Problems name the section ("section 3, left bank"). With a `greatest_step`, sections are
  /// interpolated wherever the channel length is greater.
  static Expected<Reach> make(std::vector<ReachSection> sections,
                              std::optional<Length> greatest_step = {});

  const std::vector<ReachSection>& sections() const { return sections_; }

 private:
  explicit Reach(std::vector<ReachSection> sections) : sections_(std::move(sections)) {}
  std::vector<ReachSection> sections_;
};

}  // namespace proofstone
