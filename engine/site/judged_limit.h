#pragma once

#include <optional>

#include "engine/finding/outcome.h"
#include "engine/site/submittal.h"

namespace proofstone {

/// One limit on a test against the results that a submittal holds of it.
struct JudgedLimit {
  const RockLimit* limit = nullptr;
  Outcome outcome = Outcome::not_yet_known;
  std::optional<double> result;  ///< in SI: the average, or the worst of them; absent: none speaks
  std::optional<double> margin;  ///< 1 just holds
};

/// Only results that were found in the manner that the limit asks for speak of it.
JudgedLimit judge_limit(const RockLimit& limit, const Submittal& submittal);

}  // namespace proofstone
