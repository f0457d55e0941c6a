#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "engine/method/method.h"
#include "engine/rock/gradation.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// The size a method asks for, as a point of a gradation curve: `size` must not be larger than the
/// size of which `percent_smaller` of the rock, by mass, is smaller.
struct RequiredSize {
  double percent_smaller = 50;  ///< 30 for D30, 50 for D50
  Length size;
  /// The method asks for the mass of a stone; `size` is then the sphere of that mass and is turned
  /// into whatever the word size means in the class or measurement it is held against.
  bool by_mass = false;
};

/// The size asked for as `meaning` measures stones.
Length size_as(const RequiredSize& required, SizeMeaning meaning);

/// Density of the rock of a zone: its specific gravity times 1000 kg/m³.
Density density_of(const RockProperties& rock);

/// Why a method does not speak about a zone.
struct NotApplicable {
  std::string reason;
};

/// What a sizing method says of a zone.
struct SizingAnswer {
  std::optional<RequiredSize> required;  ///< present when the method applies and could compute
  std::optional<NotApplicable> not_applicable;
  Problems problems;  ///< why it could not compute, when it applies
  /// Why the answer only stands beside the others and does not govern; absent when it may govern.
  std::optional<std::string> for_comparison;
  Evaluation evaluation;
};

/// The size a method asks for as a function of some of its inputs.
struct VariedSize {
  double percent_smaller = 50;
  std::shared_ptr<const VariedOutput> size;
};

/// A method that sizes rock: it can be called by name like any method, and it can read what it
/// needs from a zone.
class SizingMethod : public Method {
 public:
  /// Where zones must lie for this method to speak about them.
  virtual const std::vector<ZonePlace>& places() const = 0;
  virtual SizingAnswer size(const ZoneSetting& zone) const = 0;
  /// What `size` requires, without the working: for many trials. Absent where that is.
  virtual std::optional<RequiredSize> required_size(const ZoneSetting& zone) const = 0;
  /// Those of its inputs that are margins of safety, at values that leave none.
  virtual const nlohmann::json& without_margins() const = 0;
  /// The size at the brink of motion in a zone, as a function of the inputs named in `varied`:
  /// safety margins among the inputs are held where they leave none. Problems: why the method
  /// cannot speak, and names that are no quantities of it.
  /// The size is as `meaning` measures stones.
  virtual Expected<VariedSize> vary_size(const ZoneSetting& zone,
                                         const std::vector<std::string>& varied,
                                         SizeMeaning meaning) const = 0;
};

/// Whether zones of this place are what the method is made for.
bool serves(const SizingMethod& method, ZonePlace place);

}  // namespace proofstone
