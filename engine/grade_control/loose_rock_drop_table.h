#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Sloping loose-rock drop by table: Colorado Water Conservation Board, file 60182, Table 1, of
/// which the row for 25 ft²/s could be read.
struct LooseRockDropTableInputs {
  Velocity normal_velocity;  ///< Vn of the approach
  Length normal_depth;       ///< Yn of the approach
  Slope slope;               ///< of the face
};

struct LooseRockDropTableResult {
  UnitDischarge unit_discharge;  ///< Vn·Yn
  Length d50;                    ///< 12 in (M), 18 in (H) or 24 in (VH)
  Length layer_thickness;        ///< Dr
  Length apron_length;           ///< LB
  Length crest_rise;             ///< P, by which the crest wall is raised
};

/// Problems (beyond-table): more than 25 ft²/s, or a face steeper than 4H:1V.
Expected<LooseRockDropTableResult> loose_rock_drop_table(const LooseRockDropTableInputs& inputs,
                                                         Steps& steps);

const SizingMethod& loose_rock_drop_table_method();

}  // namespace proofstone
