#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// One roughness for a section of differing roughness, three ways, by name.
const Method& composite_roughness_method();

}  // namespace proofstone
