#pragma once

#include <optional>
#include <string>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// A level on a slope as a designer names it: the water of a flow case, or an elevation. Neither
/// means the end of the slope that the field stands for.
struct NamedLevel {
  std::string flow_case;
  std::optional<Length> elevation;
};

}  // namespace proofstone
