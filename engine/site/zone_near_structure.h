#pragma once

#include <optional>
#include <string>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// What stands near a zone and quickens the water there, by the designer's choice.
enum class NearbyStructure {
  impinging_flow,  ///< braided or oblique flow that runs at the rock
  round_pier,      ///< beside a pier with a round nose
  square_pier,     ///< beside a pier with a square face
  stated           ///< a factor that somebody else found
};

/// The choice with what it needs. Only a stated one has a factor of its own.
struct NearStructure {
  NearbyStructure choice = NearbyStructure::impinging_flow;
  Dimensionless factor = Dimensionless::number(1);
  bool on_mean_velocity = false;  ///< of the main channel; else on the velocity at the zone's place
  std::string from;               ///< of a stated factor: who or what says so
};

}  // namespace proofstone
