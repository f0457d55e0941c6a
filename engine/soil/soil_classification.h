#pragma once

#include "engine/method/method.h"
#include "engine/soil/soil_group.h"

namespace proofstone {

struct SoilClassificationInputs {
  Dimensionless passing_no_4;
  Dimensionless passing_no_200;
  std::optional<Length> d10;
  std::optional<Length> d30;
  std::optional<Length> d60;
  std::optional<Dimensionless> liquid_limit;
  std::optional<Dimensionless> plasticity_index;
  FinesKind fines = FinesKind::unknown;
  enum class Organic { no, yes } organic = Organic::no;
};

struct SoilClassificationResult {
  Dimensionless gravel;
  Dimensionless sand;
  Dimensionless fines;
  Dimensionless uniformity;  ///< 0 where D10 or D60 is not given
  Dimensionless curvature;   ///< 0 where a size is not given
  Dimensionless a_line;      ///< PI of the A-line at the liquid limit; 0 where that is not given
  Dimensionless group;       ///< number in the order of the chart, GW 1 to OH 14
  Dimensionless second_group;
  SoilClass soil;  ///< no output: words
};

/// Unified classification from percents passing, sizes and limits. A Problem names what the group
/// hangs on where it is not given.
Expected<SoilClassificationResult> soil_classification(const SoilClassificationInputs& in,
                                                       Steps& steps);

/// The same by name: "soil-classification".
const Method& soil_classification_method();

}  // namespace proofstone
