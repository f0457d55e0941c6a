#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

#include "engine/finding/problem.h"

namespace proofstone {

/// Reads a request for water from grids, samples them, and writes what a zone of a site document
/// may state of its water:
///
///   {"from": "2-D model of 2026, run 12",
///    "depth": {"file": "depth.tif", "unit": "ft"},
///    "velocity": {"file": "velocity.tif", "unit": "ft/s"},
///    "water_level": {"file": "level.tif", "unit": "ft", "vertical_datum": "NAVD 88"},
///    "zero_depth": "dry",          or "no data"
///    "moment": "one moment",       or "greatest of each cell"
///    "polygon": [[x, y], …]}       or "points", in the grids' own coordinates
///
/// Files lie in `folder`. The answer holds "water" (from, velocity, depth, water_level: quantities
/// as texts), "sampled" (cells, ranges, where the water is fastest) and "cautions". Units, datum,
/// the meaning of a depth of zero and the moment are never guessed: each must be stated. Problems:
/// those of the fields and of sample_water_grids.
Expected<nlohmann::json> water_from_grids(std::string_view request_text, const std::string& folder);

}  // namespace proofstone
