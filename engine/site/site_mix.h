#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/mix/mix_recipes.h"

namespace proofstone {

/// What a document says of a material on offer beyond its gradation. What is absent is not known.
struct MaterialState {
  std::optional<Dimensionless> specific_gravity;
  std::optional<Dimensionless> porosity;            ///< in place, packed alone
  std::optional<Dimensionless> loose_over_bank;     ///< volume in the truck over that in the ground
  std::optional<Dimensionless> in_place_over_bank;  ///< volume in place over that in the ground
  std::optional<double> price_per_tonne;            ///< in the money of the document
  std::optional<Mass> available;
  std::optional<Mass> load;        ///< of one truck
  std::optional<Length> scalp_at;  ///< oversize could be taken out above this size

  /// c: volume in place over loose volume.
  std::optional<double> in_place_over_loose() const {
    if (!loose_over_bank || !in_place_over_bank) return std::nullopt;
    return *in_place_over_bank / *loose_over_bank;
  }
};

/// One material of a mix and how much of it.
struct SiteMixPart {
  std::string material;
  double parts = 1;  ///< by loose volume
};

/// A filled mix of the document: rock of a class, and what fills its voids, by parts of loose
/// volume; or a published recipe with the soil of the place. Neither: to be designed.
struct SiteMix {
  std::string id;
  std::string name;
  MixKind kind = MixKind::soil_filled;
  std::string rock_class;  ///< empty: that of the zone
  std::optional<Dimensionless> rock_voids;
  MixPlacing placing = MixPlacing::mixed;
  std::string recipe;  ///< published; empty: own parts
  std::string soil;    ///< the material that stands for a recipe's soil
  double rock_parts = 0;
  std::vector<SiteMixPart> parts;
  std::vector<std::string> on_offer;  ///< materials to design with; empty: those of the parts
  std::optional<Volume> bucket;
  int most_buckets = 12;  ///< to a batch, for a design
};

}  // namespace proofstone
