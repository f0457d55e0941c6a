#include "engine/specification/count_limits.h"

#include "engine/evidence/confidence.h"

namespace proofstone {

CountLimits count_limits(BandCondition::Sense sense, double percent, int stones, double level) {
  const bool at_most = sense == BandCondition::Sense::at_most;
  std::optional<int> most_for_less;   // largest number that shows "at most"
  std::optional<int> least_for_more;  // smallest number that shows "at least"
  for (int smaller = 0; smaller <= stones; ++smaller) {
    const double share = 100.0 * smaller / stones;
    if (confidence_at_most(share, stones, percent) >= level) most_for_less = smaller;
    if (!least_for_more && confidence_at_least(share, stones, percent) >= level) {
      least_for_more = smaller;
    }
  }
  return at_most ? CountLimits{most_for_less, least_for_more}
                 : CountLimits{least_for_more, most_for_less};
}

}  // namespace proofstone
