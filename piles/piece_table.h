#pragma once

#include <iosfwd>
#include <vector>

#include "piles/outline_trial.h"

namespace proofstone::piles {

/// A row for each picture that was not refused, after a line of names, separated by commas: what is
/// true of its pile and how it was taken.
void write_pictures(std::ostream& out, const std::vector<TriedPile>& piles);

/// A row for each stone that the network found whole on one of those pictures: its size as
/// photographed in metres, what it counts, and its form.
void write_pieces(std::ostream& out, const std::vector<TriedPile>& piles);

}  // namespace proofstone::piles
