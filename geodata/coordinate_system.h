#pragma once

#include <string>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

class OGRSpatialReference;

namespace proofstone {

/// What stands in the way of measuring lengths in a coordinate system; nothing where it is a
/// projected one. Codes: no-coordinate-system (nullptr or empty), not-projected,
/// stretched-projection (web Mercator, on which no length is true).
Problems unmeasurable(const OGRSpatialReference* system, const std::string& file);

/// The unit of a projected system's coordinates as the library of coordinate systems knows it:
/// metre, foot or US survey foot. Any other is the problem "unknown-unit".
Expected<Unit> linear_unit_of(const OGRSpatialReference& system, const std::string& file);

}  // namespace proofstone
