#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/filter/geotextile_filter.h"
#include "engine/rock/gradation.h"

namespace proofstone {

/// Another sample of the same ground.
struct SoilSample {
  std::string name;  ///< "Boring B-2, 4 ft"
  Gradation gradation;
};

/// The ground that rock lies on, as it was tested.
struct Soil {
  std::string id;
  std::string name;
  Gradation gradation;  ///< by sieve and hydrometer, by mass
  std::optional<Dimensionless> liquid_limit;
  std::optional<Dimensionless> plasticity_index;
  Dispersion dispersion = Dispersion::not_tested;
  std::optional<Dimensionless> specific_gravity;
  std::optional<Dimensionless> porosity;
  std::vector<SoilSample> further = {};  ///< beside the one above; a filter serves all of them
};

/// A layer of granular filter or bedding.
struct GranularFilter {
  std::string bedding;  ///< id of a material of the document or of a standard bedding
  Length thickness;
};

/// A geotextile as its data sheet states it.
struct GeotextileFilter {
  Length opening_size;  ///< apparent opening, O95
  std::optional<Rate> permittivity;
  std::optional<Length> thickness;
  Fabric fabric = Fabric::nonwoven;
  std::optional<int> strength_class;  ///< 1 to 3
  std::optional<Length> drop_height;  ///< from which stones fall on it
};

using FilterLayer = std::variant<GranularFilter, GeotextileFilter>;

/// What lies between soil and rock, from the soil upward; no layers where the designer states that
/// there is none.
struct ZoneFilter {
  std::vector<FilterLayer> layers;
};

}  // namespace proofstone
