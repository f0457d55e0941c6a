#pragma once

#include <string>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Fits a sheet of Letter and of A4 lying down.
inline constexpr double usual_marker_edge_mm = 65;

/// A marker board to print, as SVG in true scale: six markers of the open family tag36h11, a rule
/// to measure the print with, and what to do with it. An edge of 65 mm fits a sheet of Letter and
/// of A4 lying down. Problems: a board that there is not (1 to 4), an edge that nobody prints.
Expected<std::string> marker_sheet(int board, Length edge);

}  // namespace proofstone
