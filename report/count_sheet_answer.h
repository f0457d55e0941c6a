#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "engine/finding/problem.h"
#include "engine/quantity/measure.h"
#include "engine/site/site.h"

namespace proofstone {

/// What a screen needs to begin a stone count of a lot: the bins its stones are sorted into, as
/// texts that the document takes, and the ways of picking. A Problem when there is no such lot.
Expected<nlohmann::json> count_sheet_answer(const Site& site, const std::string& lot,
                                            UnitSystem units);

/// The Problem that a site has no lot of this id; names those it has.
Problem no_such_lot(const Site& site, const std::string& lot);

}  // namespace proofstone
