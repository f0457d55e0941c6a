#include <fmt/format.h>

#include "engine/site/zone_placing.h"

namespace proofstone {

std::string required_text(const PlacingCheck& check, const Wording& wording) {
  if (!check.asked || check.measure == CheckMeasure::by_eye) return check.required;
  const auto asked = wording.rock(*check.asked);
  switch (check.measure) {
    case CheckMeasure::at_least:
      return fmt::format("{}: at least {}", check.required, asked);
    case CheckMeasure::at_most:
      return fmt::format("{}: at most {}", check.required, asked);
    case CheckMeasure::layer_survey:
      return fmt::format("{}: {}", check.required, asked);
    default:
      return check.required;
  }
}

std::string tolerance_text(const PlacingCheck& check, const Wording& wording) {
  if (check.tolerance) {
    return fmt::format("{} either way ({})", wording.rock(*check.tolerance),
                       check.source.sentence());
  }
  if (check.measure == CheckMeasure::by_eye) return check.source.sentence();
  return fmt::format("none below or above what is asked ({})", check.source.sentence());
}

const StandingCheck* ZonePlacing::held_at() const {
  return released < checks.size() ? &checks[released] : nullptr;
}

int ZonePlacing::in_state(CheckState state) const {
  int number = 0;
  for (const auto& one : checks) number += one.standing.state == state ? 1 : 0;
  return number;
}

}  // namespace proofstone
