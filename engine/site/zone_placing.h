#pragma once

#include <string>
#include <vector>

#include "engine/placing/check_standing.h"
#include "engine/site/placing_design_of.h"
#include "engine/site/wording.h"

namespace proofstone {

/// A check of a zone with everything that was seen of it.
struct StandingCheck {
  PlacingCheck check;
  CheckStanding standing;
  std::vector<TallyLine> tally;       ///< of the mix
  std::vector<MixShare> mix;          ///< whose loads are tallied
  std::vector<std::string> evidence;  ///< in words, in the order of time
  std::vector<std::string> remarks;   ///< what is out of order
  std::string waits_for;              ///< hold point: the first check before it that is open
  bool released() const { return standing.state == CheckState::pass && waits_for.empty(); }
};

/// The placing of a zone: its checks in the order of work, and how far the work may go.
struct ZonePlacing {
  const Zone* zone = nullptr;
  std::vector<StandingCheck> checks;
  bool begun = false;        ///< something was seen, surveyed or found wrong
  std::size_t released = 0;  ///< checks before the first hold point that is not released
  std::vector<std::string> open_nonconformances;  ///< by name
  /// The hold point at which the work stands; nullptr where all are released.
  const StandingCheck* held_at() const;
  int in_state(CheckState state) const;
};

/// Generates the checks of the zone and judges each by walks, surveys of the layer and
/// nonconformances.
ZonePlacing placing_of(const Site& site, const Zone& zone, const Wording& wording);

/// How the lengths of a check are read.
LengthUse length_use(const PlacingCheck& check);

/// "at least 24 in", "within 3 in", with the words before it.
std::string required_text(const PlacingCheck& check, const Wording& wording);

/// "3 in (Maryland SHA …)", or that there is none.
std::string tolerance_text(const PlacingCheck& check, const Wording& wording);

}  // namespace proofstone
