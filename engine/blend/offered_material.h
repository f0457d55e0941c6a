#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/rock/gradation.h"

namespace proofstone {

/// A material that could go into a blend: its curve by mass, and what is known of buying it. Prices
/// are in the money of the document, whatever that is.
struct OfferedMaterial {
  std::string id;
  std::string name;
  Gradation gradation;
  std::optional<double> price_per_tonne;
  std::optional<Mass> available;  ///< absent: as much as is wanted
  std::optional<Mass> load;       ///< of one truck or bucket
  /// Stones larger than this could be taken out first; what is taken out is paid for and left over.
  std::optional<Length> scalp_at;
};

/// A curve after all above `size` was taken out: 100·P(d)/P(size) (the sizes kept weighed anew).
struct Scalped {
  Gradation gradation;
  double kept = 1;  ///< share of the mass that is left, 0 to 1
};

/// Problems: a size that is not positive, a curve that does not reach it, nothing left below it.
Expected<Scalped> scalped(const Gradation& gradation, Length size);

/// The materials with, after each that may be scalped, itself as it is after scalping: what is left
/// costs more, and there is less of it. Problems name the material.
Expected<std::vector<OfferedMaterial>> with_scalped(const std::vector<OfferedMaterial>& offered);

}  // namespace proofstone
