#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Broad crest of a trapezoid: a rectangle and two triangles, US units. Common practice in spillway
/// design; also in the Front Range criteria.
struct TrapezoidWeirInputs {
  Length length;                                           ///< L of the level crest
  Length head;                                             ///< H over it
  Dimensionless side_slope = Dimensionless::number(0);     ///< Z: horizontal for 1 vertical
  Dimensionless coefficient = Dimensionless::number(3.0);  ///< C, ft units
};

struct TrapezoidWeirResult {
  Discharge rectangle;           ///< C·L·H^1.5
  Discharge sides;               ///< (4/5)·C·Z·H^2.5
  Discharge discharge;           ///< of both
  UnitDischarge unit_discharge;  ///< over the level crest, C·H^1.5
};

Expected<TrapezoidWeirResult> trapezoid_weir(const TrapezoidWeirInputs& inputs, Steps& steps);

/// C·H^1.5 (ft, ft²/s): what runs over each unit of a level crest.
UnitDischarge crest_unit_discharge(Dimensionless coefficient, Length head);

const Method& trapezoid_weir_method();

}  // namespace proofstone
