#pragma once

#include <fmt/format.h>
#include <cmath>
#include <optional>
#include <string>

#include "engine/finding/problem.h"

namespace proofstone {

/// The Problem of a count that is not a whole number. Internal to the evidence.
inline std::optional<Problem> problem_of_count(double value, const std::string& where) {
  if (!(std::floor(value) < value)) return std::nullopt;
  return Problem{"not-a-count", fmt::format("{:g} is not a whole number.", value), "", where,
                 "a whole number"};
}

}  // namespace proofstone
