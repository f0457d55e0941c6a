#pragma once

#include "engine/quantity/quantity.h"

namespace proofstone {

/// A stretch of a section in which water stands without flowing, such as the shadow of an
/// embankment or low ground behind a levee, until the water rises above `until`.
struct IneffectivePart {
  Length left;
  Length right;
  Length until;
};

}  // namespace proofstone
