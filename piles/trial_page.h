#pragma once

#include <string>
#include <vector>

#include "piles/outline_trial.h"

namespace proofstone::piles {

/// The handbook's page of the trial, docs/photo-outlines.md, in Markdown.
std::string trial_page(const std::vector<TriedPile>& piles);

}  // namespace proofstone::piles
