#pragma once

#include <string>
#include <vector>

#include "piles/outline_trial.h"

namespace proofstone::piles {

/// What the network found against true outlines, by kinds of pictures; a table of Markdown.
std::string outline_table(const std::vector<TriedPile>& piles);

/// What one and several photos say of the whole pile: ratio, scatter, the error that nine of ten
/// keep within and how often the stated interval held. Of piles in pairs of one rock also what they
/// say when calibrated on the other of the pair.
std::string pool_table(const std::vector<TriedPile>& piles, bool pairs_of_one_rock);

/// What stones tapped under nodes say of layers in pairs of one rock: the factors that they give,
/// and the pile by the factors of the engine and by those of the other rocks.
std::string tapped_table(const std::vector<TriedPile>& piles);

/// The true sizes in sight and how large they are seen, by the form of the rock.
std::string form_table(const std::vector<TriedPile>& piles);

}  // namespace proofstone::piles
