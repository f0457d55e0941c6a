#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/source.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

class FieldReader;

/// A size that a class's own table prints beside its band: "D30 at least 0.73 ft".
struct StatedSize {
  double percent_smaller = 30;
  Length least;
};

/// A class: a gradation band under a name, with its source and basis.
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
  /// Least sizes the class's own table prints, which go before those read off its band.
  std::vector<StatedSize> stated_sizes = {};
  /// Density at which the masses of the class became the sizes of its band; absent where the class
  /// is stated in sizes.
  std::optional<Density> mass_density = std::nullopt;
};

/// The least size of which `percent` is smaller in rock of this class: as its own table prints it,
/// or on the fine limit of its band. Where the class is stated in masses and the density of the
/// rock is given, it is the size of that mass in this very rock: lighter rock makes larger stones.
Expected<Length> least_size_of(const RockClass& rock_class, double percent,
                               std::optional<Density> rock = std::nullopt);

/// The classes that come with the engine, by family and then by size; read once from the data in
/// catalog/.
const std::vector<RockClass>& class_catalog();

/// The class called `id`, or nullptr.
const RockClass* find_rock_class(std::string_view id);

/// Reads one class that stands by itself, with what catalog data state once a family: a class of
/// the user's own. `id` is its name in the document. The caller finishes the reader.
std::optional<RockClass> read_own_rock_class(FieldReader& reader, const std::string& id,
                                             Problems& problems);

/// Reads classes from catalog data; Problems are located by JSON pointer. The format is described
/// by schema/rock-classes.schema.json.
Expected<std::vector<RockClass>> read_rock_classes(std::string_view json_text);

}  // namespace proofstone
