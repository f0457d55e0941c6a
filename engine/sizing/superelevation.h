#pragma once

#include "engine/finding/source.h"
#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Which of the published forms gives the rise of the water on the outside of a bend.
enum class SuperelevationForm {
  usace,      ///< EM 1110-2-1601 Table 2-4: Δy = C·V²·W/(g·r) above the mean level
  half,       ///< FHWA: V²·W/(g·r) from bank to bank, half of it above the mean level
  log_radii,  ///< HDS-6: V²/g·ln(r_o/r_i) from bank to bank, half of it above the mean level
};

/// Rise above the mean level at the outer bank of a simple circular bend: C = 0.5 in tranquil flow
/// and 1.0 in rapid flow, whatever the section (EM 1110-2-1601 Table 2-4). All positive.
Length superelevation_rise(Velocity velocity, Length top_width, Length bend_radius, bool rapid);

const Source& superelevation_source();

/// All forms by name, with the spirals of the table.
const Method& superelevation_method();

}  // namespace proofstone
