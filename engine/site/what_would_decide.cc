#include "engine/site/what_would_decide.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofstone {
namespace {

/// More stones than this are not worth counting: a remedy is cheaper (common practice).
constexpr int most_stones_advised = 1000;

std::string how_many_more(std::optional<int> stones, int counted) {
  if (!stones) return "More stones will hardly decide: the rock lies on a limit.";
  if (*stones > most_stones_advised) {
    return fmt::format(
        "Counting alone will not help: it would take about {} stones, because the rock lies close "
        "to a limit. See the remedies.",
        *stones);
  }
  return fmt::format(
      "Measure about {} stones more, {} in all: that decides if the shares stay as they are.",
      *stones - counted, *stones);
}

/// What photos lack: more photos like these where they would do, and a count on a grid that would
/// decide without them.
std::string how_many_more_photos(const BandComparison& comparison,
                                 const MeasuredGradation& measured) {
  std::string next =
      "More photos alone will not decide: what is left is the error of scale and factors, or the "
      "largest and smallest stones.";
  if (comparison.stones_to_decide) {
    const int more = *comparison.stones_to_decide - measured.stones;
    const int on_each = std::max(1, measured.stones / measured.photos);
    next = fmt::format(
        "Take about {} photos more like these ({} stones): that decides if the shares stay as they "
        "are.",
        (more + on_each - 1) / on_each, more);
  }
  if (comparison.counted_stones_to_decide &&
      *comparison.counted_stones_to_decide <= most_stones_advised) {
    next += fmt::format(" Or count {} stones on a grid: they would decide by themselves.",
                        *comparison.counted_stones_to_decide);
  }
  const auto asks_for_tape = [](const ConditionCheck& check) {
    return check.outcome == Outcome::not_yet_known && check.condition.percent >= 100;
  };
  if (!measured.largest_known &&
      std::any_of(comparison.checks.begin(), comparison.checks.end(), asks_for_tape)) {
    next += " Measure the largest stone with a tape.";
  }
  return next;
}

}  // namespace

std::string what_would_decide(const BandComparison& comparison, const MeasuredGradation& measured) {
  return measured.photos > 0 ? how_many_more_photos(comparison, measured)
                             : how_many_more(comparison.stones_to_decide, measured.stones);
}

}  // namespace proofstone
