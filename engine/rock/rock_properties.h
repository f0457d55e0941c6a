#pragma once

#include <optional>
#include <string_view>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// How worn the edges of the stones are.
enum class Angularity { angular, rounded };

std::string_view angularity_name(Angularity angularity);

/// What a rock is, apart from its sizes: what sizing, layer and conversion need of it.
struct RockProperties {
  /// Saturated surface-dry unless the source says otherwise; rock for protection lies between
  /// about 2.2 and 3.2.
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angularity angularity = Angularity::angular;
  /// When absent, methods use their own published default and say so.
  std::optional<Angle> angle_of_repose;
};

}  // namespace proofstone
