#pragma once

#include <string>
#include <vector>

#include "engine/filter/base_category.h"
#include "engine/method/method.h"

namespace proofstone {

enum class Fabric { nonwoven, woven_monofilament, woven_slit_film };
enum class FabricAttack {
  steady,
  dynamic
};  ///< dynamic: waves, reversing flow, rock on the fabric
enum class SeepageRisk { benign, critical };

struct GeotextileFilterInputs {
  Length soil_d15;
  Length soil_d85;
  std::optional<Dimensionless> uniformity;
  Dimensionless fines;  ///< of the soil, passing No. 200
  std::optional<Dimensionless> plasticity_index;
  std::optional<Velocity> soil_conductivity;
  std::optional<Length> fabric_thickness;
  Fabric fabric = Fabric::nonwoven;
  FabricAttack attack = FabricAttack::dynamic;
  SeepageRisk risk = SeepageRisk::critical;
  Dispersion dispersion = Dispersion::not_tested;
  enum class Gap { no, yes } gap = Gap::no;  ///< is the soil gap-graded
};

struct GeotextileFilterResult {
  Length steady_opening;   ///< largest O95 to hold the soil under steady flow
  Length dynamic_opening;  ///< under waves, reversing flow and rock on the fabric
  Length default_opening;  ///< of AASHTO M 288 by fines
  Length most_opening;     ///< what governs
  Length least_opening;    ///< against clogging; 0 where nothing is asked
  Rate default_permittivity;
  Rate least_permittivity;  ///< what governs
  Dimensionless conflicts;  ///< 1 where clogging asks for more than retention allows
  Dimensionless exclusions;
  /// No outputs: words. Why this soil is not for a fabric by default rules, and what conflicts.
  std::vector<std::string> excluded_because;
  std::vector<std::string> conflict_words;
};

/// What a geotextile below rock must be for a soil: opening (AOS, O95) and permittivity.
Expected<GeotextileFilterResult> geotextile_filter(const GeotextileFilterInputs& in, Steps& steps);

/// The same by name: "geotextile-filter".
const Method& geotextile_filter_method();

}  // namespace proofstone
