#pragma once

#include <optional>
#include <string>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// What the document allows in placing, before what is published or usual. Absent: as published.
struct PlacingTolerances {
  std::string from;                  ///< who says so
  std::optional<Length> subgrade;    ///< off the lines drawn, either way
  std::optional<Length> surface;     ///< of the finished rock, either way
  std::optional<Length> thickness;   ///< of bedding, soil and depths, below what is drawn
  std::optional<Dimensionless> mix;  ///< of the loads of a fill, either way, as a share
};

}  // namespace proofstone
