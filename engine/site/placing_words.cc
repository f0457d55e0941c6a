#include <fmt/format.h>

#include "engine/site/zone_placing.h"

namespace proofstone {
namespace {

std::string length_text(const PlacingCheck& check, Length length, const Wording& wording) {
  return wording.shown(measure(length), length_use(check));
}

}  // namespace

LengthUse length_use(const PlacingCheck& check) {
  return check.reads_as_ground ? LengthUse::ground : LengthUse::rock;
}

std::string required_text(const PlacingCheck& check, const Wording& wording) {
  if (!check.asked || check.measure == CheckMeasure::by_eye) return check.required;
  const auto asked = length_text(check, *check.asked, wording);
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
  auto source = check.source.sentence();
  switch (check.measure) {
    case CheckMeasure::within:
      return fmt::format("{} either way ({})",
                         length_text(check, check.tolerance.value_or(Length::meters(0)), wording),
                         source);
    case CheckMeasure::at_least:
      return check.tolerance ? fmt::format("{} less ({})",
                                           length_text(check, *check.tolerance, wording), source)
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
