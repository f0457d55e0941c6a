#pragma once

#include "engine/hydraulics/reach.h"

namespace proofstone {

/// The two sides of a hydraulic jump in one section.
struct HydraulicJump {
  SectionFlow before;
  SectionFlow after;
  double specific_force_si = 0;  ///< βQ²/(gA) + Az̄, m³, the same on both sides
  Length energy_lost;
};

/// The tranquil flow into which rapid flow at `level_before` jumps: the one of the same specific
/// force. The bed's slope and friction in the jump are left out: for slopes below about 0.05.
///
/// Problems: the discharge is not positive; the level is not above the bed ("dry"), or not in rapid
/// flow ("not-rapid").
Expected<HydraulicJump> hydraulic_jump(const ReachSection& section, Discharge discharge,
                                       Length level_before);

}  // namespace proofstone
