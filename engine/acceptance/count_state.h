#pragma once

#include <optional>
#include <vector>

#include "engine/acceptance/counted_limits.h"
#include "engine/evidence/measured_gradation.h"
#include "engine/finding/outcome.h"

namespace proofstone {

/// Where the sequential plan of one limit stands.
struct CountedLimitState {
  CountedLimit limit;
  int stones = 0;                      ///< counted
  int wrong = 0;                       ///< of them
  std::optional<int> accept_at_most;   ///< as of now; absent: none would be few enough yet
  std::optional<int> reject_at_least;  ///< as of now; absent: too few counted yet
  /// Meets: accepted; falls short: turned away; not yet known: go on.
  Outcome outcome = Outcome::not_yet_known;
  /// The stone at which it was decided, where the order of the stones is known.
  std::optional<int> decided_at;
};

/// Where a count stands: accepted when every limit is accepted, turned away when one is.
struct CountState {
  std::vector<CountedLimitState> limits;
  Outcome outcome = Outcome::not_yet_known;
};

/// A count stone by stone, in the order of counting, against the sequential plan of each limit. A
/// decision stands from the stone at which a line was crossed.
CountState count_state(const std::vector<CountedLimit>& limits,
                       const std::vector<Length>& intermediate_axes);

/// A count in bins, whose order is not known, against the lines at its last stone. Limits that lie
/// within a bin holding stones are not yet known.
CountState count_state(const std::vector<CountedLimit>& limits, const std::vector<CountBin>& bins);

}  // namespace proofstone
