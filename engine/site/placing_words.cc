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
  const auto source = check.source.sentence();
  switch (check.measure) {
    case CheckMeasure::within:
      return fmt::format("{} either way ({})",
                         wording.rock(check.tolerance.value_or(Length::meters(0))), source);
    case CheckMeasure::at_least:
      return check.tolerance ? fmt::format("{} less ({})", wording.rock(*check.tolerance), source)
                             : fmt::format("nowhere less ({})", source);
    case CheckMeasure::at_most:
      return fmt::format("nowhere more ({})", source);
    default:
      return source;
  }
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
