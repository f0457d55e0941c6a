#pragma once

#include <optional>
#include <string>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// Keys of a bank zone, as protection needs them; see key_trench.h.
struct ZoneKeys {
  Length depth;         ///< square to the slope, from the layer's surface
  Length bottom_width;  ///< along the bank
  Length top_width;     ///< at the underside of the layer
  Length length;        ///< up the slope
  Volume volume;        ///< rock of one key below the layer
  Length spacing;       ///< at most
  int count = 0;        ///< both ends included; 0 where the length of the zone is not known
};

/// How far the rock of a bank zone reaches along the stream, and how its ends are made.
struct ZoneExtents {
  Length upstream;       ///< beyond what is protected
  Length downstream;     ///< beyond it
  Length end_thickness;  ///< of the layer at its ends
  Length end_length;     ///< over which it is thickened
  std::optional<ZoneKeys> keys;
};

/// Where two neighbouring bank zones meet along a centreline.
struct ZoneTransition {
  std::string upstream_zone;
  std::string downstream_zone;
  bool larger_upstream = true;
  Length meets_at;       ///< along the centreline: where the downstream zone begins
  Length overlap;        ///< needed, of the larger rock into the reach of the smaller
  Length drawn_overlap;  ///< of the two zones
  Length taper;          ///< over which the thickness changes
};

}  // namespace proofstone
