#pragma once

#include <map>
#include <string>

#include "engine/json/field_reader.h"
#include "engine/reliability/stated_spread.h"

namespace proofstone {

/// Reads the "uncertainty" of a zone: under the id of each sizing method, what the designer states
/// of its inputs, of the formula and of the rock.
std::map<std::string, StatedUncertainty> read_uncertainty(FieldReader& zone, Problems& problems);

}  // namespace proofstone
