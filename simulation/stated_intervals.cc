#include "simulation/stated_intervals.h"

#include "engine/evidence/confidence.h"

namespace proofstone {
namespace {

constexpr double stated = 0.9;
/// Each of three, so that all hold together at what is stated.
constexpr double each_of_three = 1 - (1 - stated) / 3;

bool holds(const SizeInterval& interval, Length size) {
  return (!interval.low || *interval.low <= size) && (!interval.high || size <= *interval.high);
}

}  // namespace

Coverage coverage(const KnownPile& pile, const Observer& observer, int looks, unsigned seed) {
  Draws draws(seed);
  Coverage found;
  std::array<Length, 3> truth;
  for (std::size_t i = 0; i < truth.size(); ++i) truth[i] = pile.size_at(Coverage::percents[i]);
  const double one = 1.0 / looks;
  for (int look = 0; look < looks; ++look) {
    const auto measured = look_at(pile, observer, draws);
    bool all = true;
    for (std::size_t i = 0; i < truth.size(); ++i) {
      const double percent = Coverage::percents[i];
      const auto share = stated_interval(measured, truth[i], stated);
      if (share.low <= percent && percent <= share.high) found.percent_smaller[i] += one;
      if (holds(size_interval(measured, percent, stated), truth[i])) found.size[i] += one;
      all = all && holds(size_interval(measured, percent, each_of_three), truth[i]);
    }
    if (all) found.all_sizes += one;
  }
  return found;
}

}  // namespace proofstone
