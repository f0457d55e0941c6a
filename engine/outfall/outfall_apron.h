#pragma once

#include "engine/outfall/conduit_end.h"
#include "engine/sizing/apron_table.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Level rock apron below a circular culvert: FHWA HEC-14 3rd ed. (2006) §10.2, eq. 10.4 (Fletcher
/// and Grace 1972) and Table 10.1. Homogeneous; classes in inches.
struct OutfallApronInputs : ConduitEnd {
  Length diameter;
};

struct OutfallApronResult {
  Length diameter_used;       ///< D, or D' where the barrel flow is supercritical
  Length tailwater_used;      ///< TW, held between 0.4·D and D
  Length d50;                 ///< by the equation
  Dimensionless apron_class;  ///< of HEC-14 Table 10.1; not a class of any rock specification
  Length class_d50;
  Length apron_length;
  Length apron_depth;
  Length end_width;
};

/// Problems: a normal depth not less than the diameter; a size above class 6, for which the table
/// has no apron.
Expected<OutfallApronResult> outfall_apron(const OutfallApronInputs& inputs, Steps& steps);

const SizingMethod& outfall_apron_method();

}  // namespace proofstone
