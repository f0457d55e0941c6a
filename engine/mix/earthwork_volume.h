#pragma once

#include <optional>
#include "engine/method/typed_method.h"

namespace proofstone {

/// What earth is, for its change of volume between the ground, the truck and the fill.
enum class EarthKind { sand, common_earth, clay, blasted_rock };
/// The state a volume of earth is measured in.
enum class EarthState { bank, loose, compacted };

/// Volumes over that in the ground (bank).
struct EarthFactors {
  double loose = 1;
  double compacted = 1;
  double in_place_over_loose() const { return compacted / loose; }
};
EarthFactors earth_factors(EarthKind kind);

/// One amount of earth as bank, loose and compacted volume, by the usual factors or by densities
/// that were measured.
struct EarthworkVolumeInputs {
  EarthKind earth = EarthKind::common_earth;
  Volume volume;
  EarthState state = EarthState::bank;
  std::optional<Density> bank_density;       ///< dry, in the ground
  std::optional<Density> loose_density;      ///< dry, in the truck
  std::optional<Density> compacted_density;  ///< dry, in the fill
};

struct EarthworkVolumeResult {
  Volume bank;
  Volume loose;
  Volume compacted;
  Dimensionless swell;  ///< growth from bank to loose, share
  Dimensionless in_place_over_loose;
};

Expected<EarthworkVolumeResult> earthwork_volume(const EarthworkVolumeInputs& inputs, Steps& steps);

const Method& earthwork_volume_method();

}  // namespace proofstone
