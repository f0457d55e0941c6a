#pragma once

#include <optional>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// Rock aprons below culverts: FHWA HEC-14 3rd ed. (2006) Table 10.1 [memory].
inline constexpr const char* apron_table_source =
    "FHWA HEC-14 3rd ed. (2006) Table 10.1 (from memory; confirm)";

/// One row of the table.
struct ApronClass {
  int number;
  double d50_in;
  double length_over_diameter;
  double depth_over_d50;
};

/// The smallest class at least as large as `d50`; nothing above class 6 (22 in).
std::optional<ApronClass> apron_class_for(Length d50);

/// Depth of an apron over the median size of its rock: the row of the largest class that is not
/// larger, so that a size between two classes takes the deeper apron; class 1 below it.
double apron_depth_over_d50(Length d50);

}  // namespace proofstone
