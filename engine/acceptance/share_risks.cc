#include "engine/acceptance/share_risks.h"

namespace proofstone {

Problems problems_of(const ShareRisks& risks) {
  Problems problems;
  if (!(risks.unacceptable > risks.acceptable)) {
    problems.push_back({"shares-reversed",
                        "The share that must not be accepted is not above the one that is good.",
                        "", "/unacceptable", "more than the acceptable share"});
  }
  return problems;
}

}  // namespace proofstone
