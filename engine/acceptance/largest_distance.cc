#include <algorithm>
#include <cmath>

#include "engine/acceptance/two_piles.h"

namespace proofstone {
namespace {

/// Distances are multiples of 1/(m·n): this is far less than one and far more than rounding.
constexpr double rounding_of_distances = 1e-9;

/// Which of the sorted values of both samples together are the last of their equals: only there do
/// the curves have a value.
std::vector<bool> ends_of_ties(std::vector<double> all) {
  std::sort(all.begin(), all.end());
  std::vector<bool> ends(all.size() + 1, true);
  for (std::size_t i = 1; i < all.size(); ++i) ends[i] = all[i - 1] < all[i];
  return ends;
}

}  // namespace

LargestDistance largest_distance(std::vector<double> first, std::vector<double> second) {
  std::vector<double> all = first;
  all.insert(all.end(), second.begin(), second.end());
  const auto ends = ends_of_ties(all);
  std::sort(first.begin(), first.end());
  std::sort(second.begin(), second.end());
  const std::size_t m = first.size();
  const std::size_t n = second.size();
  const auto apart = [&](std::size_t i, std::size_t j) {
    return std::abs(static_cast<double>(i) / static_cast<double>(m) -
                    static_cast<double>(j) / static_cast<double>(n));
  };
  LargestDistance result;
  for (std::size_t i = 0, j = 0; i < m || j < n;) {
    const double next = j == n || (i < m && first[i] <= second[j]) ? first[i] : second[j];
    while (i < m && first[i] <= next) ++i;
    while (j < n && second[j] <= next) ++j;
    result.distance = std::max(result.distance, apart(i, j));
  }
  // Chance that a random walk through the lattice of both samples keeps below the distance at every
  // end of a tie; walks are weighted as they go, so that nothing overflows.
  const auto reaches = [&](std::size_t i, std::size_t j) {
    return ends[i + j] && apart(i, j) >= result.distance - rounding_of_distances;
  };
  std::vector<double> below(n + 1, 0.0);
  for (std::size_t j = 0; j <= n; ++j) {
    below[j] = (j == 0 || below[j - 1] > 0) && !reaches(0, j) ? 1 : 0;
  }
  for (std::size_t i = 1; i <= m; ++i) {
    const double weight = static_cast<double>(i) / static_cast<double>(i + n);
    below[0] = reaches(i, 0) ? 0 : weight * below[0];
    for (std::size_t j = 1; j <= n; ++j) {
      below[j] = reaches(i, j) ? 0 : weight * below[j] + below[j - 1];
    }
  }
  result.chance = std::clamp(1 - below[n], 0.0, 1.0);
  return result;
}

}  // namespace proofstone
