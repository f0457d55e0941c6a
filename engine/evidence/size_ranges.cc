#include "engine/evidence/size_ranges.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/evidence/size_text.h"

namespace proofstone {
namespace {

constexpr std::size_t most_ranges = 1000;
constexpr double rounding_of_edges = 1e-3;

std::string name_of(const std::string& word, std::size_t index) {
  return fmt::format("{} {}", word, index + 1);
}

/// Smallest first as listed, or turned round when the list runs from large to small.
std::vector<std::size_t> rising(const std::vector<SizeRange>& ranges) {
  std::vector<std::size_t> order(ranges.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  if (ranges.front().upper > ranges.back().upper) std::reverse(order.begin(), order.end());
  return order;
}

std::optional<Problem> problem_of_neighbours(const SizeRange& smaller, const SizeRange& larger,
                                             const std::string& word, std::size_t smaller_index,
                                             std::size_t larger_index) {
  const auto where = name_of(word, larger_index);
  const auto other = name_of(word, smaller_index);
  if (larger.upper <= smaller.upper) {
    return Problem{
        "out-of-order",
        fmt::format("Its upper size {} is not larger than that of {}, {}.",
                    size_in_both_systems(larger.upper), other, size_in_both_systems(smaller.upper)),
        "", where, "sizes that rise, or fall, from one " + word + " to the next"};
  }
  if (!larger.lower) {
    return Problem{"missing-lower-size", "It has no lower size.", "", where,
                   "a lower size in every " + word + " but the smallest"};
  }
  const double step = (*larger.lower - smaller.upper) / smaller.upper;
  if (step > rounding_of_edges) {
    return Problem{
        "gap",
        fmt::format("It begins at {}, but {} ends at {}: the sizes between are in no {}.",
                    size_in_both_systems(*larger.lower), other, size_in_both_systems(smaller.upper),
                    word),
        "", where, "a lower size equal to the upper size before it"};
  }
  if (step < -rounding_of_edges) {
    return Problem{"overlap",
                   fmt::format("It begins at {}, but {} ends at {}: the sizes between are in both.",
                               size_in_both_systems(*larger.lower), other,
                               size_in_both_systems(smaller.upper)),
                   "", where, "a lower size equal to the upper size before it"};
  }
  return std::nullopt;
}

}  // namespace

std::optional<Problem> problem_of_size(Length size, const std::string& where) {
  if (!std::isfinite(size.si())) {
    return Problem{"not-a-number", "The size is not a number.", "", where, "a size above 0"};
  }
  if (size.si() <= 0) {
    return Problem{"not-positive", "The size is not above 0.", "", where, "a size above 0"};
  }
  if (size > largest_believable_size) {
    return Problem{"size-too-large",
                   fmt::format("A stone of {} is not believable; the unit may be wrong.",
                               size_in_both_systems(size)),
                   "", where, "sizes up to " + size_in_both_systems(largest_believable_size)};
  }
  return std::nullopt;
}

Expected<std::vector<std::size_t>> order_of_ranges(std::vector<SizeRange> ranges,
                                                   const std::string& word) {
  if (ranges.empty()) {
    return Problem{"empty", "There is no " + word + ".", "", "", "at least one " + word};
  }
  if (ranges.size() > most_ranges) {
    return Problem{"too-many", fmt::format("There are {} {}s.", ranges.size(), word), "", "",
                   fmt::format("at most {}", most_ranges)};
  }
  Problems problems;
  for (std::size_t i = 0; i < ranges.size(); ++i) {
    auto& range = ranges[i];
    const auto where = name_of(word, i);
    if (range.lower && std::abs(range.lower->si()) <= 0) range.lower.reset();
    if (auto problem = problem_of_size(range.upper, where)) {
      problems.push_back(std::move(*problem));
    } else if (!range.lower) {
      continue;
    } else if (auto lower_problem = problem_of_size(*range.lower, where)) {
      problems.push_back(std::move(*lower_problem));
    } else if (*range.lower >= range.upper) {
      problems.push_back(
          {"reversed",
           fmt::format("Its lower size {} is not below its upper size {}.",
                       size_in_both_systems(*range.lower), size_in_both_systems(range.upper)),
           "", where, "a lower size below the upper one"});
    }
  }
  if (!problems.empty()) return problems;

  const auto order = rising(ranges);
  for (std::size_t k = 1; k < order.size(); ++k) {
    if (auto problem = problem_of_neighbours(ranges[order[k - 1]], ranges[order[k]], word,
                                             order[k - 1], order[k])) {
      problems.push_back(std::move(*problem));
    }
  }
  if (!problems.empty()) return problems;
  return order;
}

}  // namespace proofstone
