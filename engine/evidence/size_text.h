#pragma once

#include <string>

#include "engine/quantity/measure.h"

namespace proofstone {

/// A stone size in both unit systems, for sentences that must read alike everywhere:
/// "12.0 in (305 mm)".
inline std::string size_in_both_systems(Length size) {
  return display(measure(size), UnitSystem::us_customary, LengthUse::rock).text + " (" +
         display(measure(size), UnitSystem::si, LengthUse::rock).text + ")";
}

}  // namespace proofstone
