#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// A place in the grid of the survey.
struct GridPlace {
  Length easting;
  Length northing;
};

/// Who saw something, when, where and with what. Empty: not stated.
struct Observation {
  std::string who;
  std::string when;   ///< as written; RFC 3339 in UTC
  std::string where;  ///< in words: "station 4+60, foot of the slope"
  std::optional<GridPlace> place;
  std::string instrument;
  std::vector<std::string> photos;  ///< SHA-256 of each file, 64 hexadecimal digits
  std::string note;
};

}  // namespace proofstone
