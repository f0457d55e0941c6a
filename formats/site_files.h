#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// A file that stands beside a site document. Only its name is known here, never where it lies.
struct SuppliedFile {
  std::string name;
  std::string text;
};

/// The names of the files that a site document asks for, each once, in the order they appear. A
/// file is asked for where a revision sets `survey`, `course`, `stones`, `groups` or `gradation`,
/// at any depth, to {"file": "<name>"}.
std::vector<std::string> files_named_in(const nlohmann::json& site_document);

/// The document with every file read into it:
///
///  - survey: {"points": [{"station": "12 ft", "elevation": "101.3 ft", "roughness": "0.035"}, …]}
///  - course: {"points": [{"easting": "2110 ft", "northing": "880.5 ft"}, …]}
///  - stones: {"axes": ["11.5 in", …]}, or {"bins": [{"larger_than": "3 in",
///    "not_larger_than": "6 in", "stones": 7}, …]}
///  - groups: {"groups": [{"larger_than": "3 in", "not_larger_than": "6 in", "mass": "310 lb",
///    "stones": 12}, …]}
///  - gradation: [{"size": "4.75 mm", "smaller": "78 %"}, …]
///
/// Lengths and masses stand in the unit of the file and read back to the same number. Problems: a
/// file that is not supplied or supplied twice, and a name with a path in it, located by JSON
/// pointer; and those of the readers, located by file, row and field.
Expected<nlohmann::json> with_files(nlohmann::json site_document,
                                    const std::vector<SuppliedFile>& files);

}  // namespace proofstone
