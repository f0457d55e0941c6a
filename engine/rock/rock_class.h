#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/source.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// A published class: a gradation band under a name, with its source and basis.
struct RockClass {
  std::string id;      ///< "fhwa-3", "front-range-m"
  std::string family;  ///< "FHWA classes (HEC-23)"
  std::string name;    ///< "Class III"
  Length nominal_d50;
  GradationBand band;
  /// Largest stone the class allows, when the band states one.
  std::optional<Length> largest_stone;
  /// Layer thickness as a multiple of the nominal D50 where the class's own manual states one.
  std::optional<double> thickness_in_d50;
  Source source;
  std::vector<std::string> notes;
};

/// The classes that come with the engine, by family and then by size; read once from the data in
/// catalog/.
const std::vector<RockClass>& class_catalog();

/// The class called `id`, or nullptr.
const RockClass* find_rock_class(std::string_view id);

/// Reads classes from catalog data; Problems are located by JSON pointer. The format is described
/// by schema/rock-classes.schema.json.
Expected<std::vector<RockClass>> read_rock_classes(std::string_view json_text);

}  // namespace proofstone
