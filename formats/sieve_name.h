#pragma once

#include <optional>
#include <string_view>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// A sieve as it is called, and the unit in which a document writes its opening.
struct NamedSieve {
  Length opening;
  Unit unit = unit::millimeter;
};

/// The sieve that `name` calls: by number ("No. 200", "#200"; openings of ASTM E11, from memory),
/// or by its opening with a unit ("3 in", "1 1/2 in", "3/8\"", "4.75 mm"). Inches are taken as
/// lengths: a 3/4 in sieve is 19.05 mm, where E11 has 19.0.
std::optional<NamedSieve> sieve_called(std::string_view name);

}  // namespace proofstone
