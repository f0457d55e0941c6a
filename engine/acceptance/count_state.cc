#include "engine/acceptance/count_state.h"

#include "engine/acceptance/sequential_plan.h"

namespace proofstone {
namespace {

/// Moves the state of one limit on by what the count now stands at.
class Watch {
 public:
  explicit Watch(const CountedLimit& limit) {
    state_.limit = limit;
    if (limit.no_stone_at_all) return;
    if (auto lines = SequentialLines::make(limit.risks)) lines_ = *lines;
  }

  void stands_at(int stones, int wrong) {
    state_.stones = stones;
    state_.wrong = wrong;
    if (state_.limit.no_stone_at_all) {
      state_.reject_at_least = 1;
      state_.accept_at_most =
          stones >= state_.limit.stones_without_wrong ? std::optional(0) : std::nullopt;
    } else if (lines_) {
      state_.accept_at_most = lines_->accept_at_most(stones);
      state_.reject_at_least = lines_->reject_at_least(stones);
    }
    decide();
  }

  /// A count whose last number says nothing of this limit.
  void does_not_tell(int stones, int wrong) {
    state_.stones = stones;
    state_.wrong = wrong;
  }

  const CountedLimitState& state() const { return state_; }

 private:
  void decide() {
    // A stone that may not be there at all breaks its limit whenever it is found.
    const bool may_turn = state_.limit.no_stone_at_all && state_.outcome == Outcome::meets;
    if (state_.outcome != Outcome::not_yet_known && !may_turn) return;
    if (state_.reject_at_least && state_.wrong >= *state_.reject_at_least) {
      state_.outcome = Outcome::falls_short;
    } else if (state_.accept_at_most && state_.wrong <= *state_.accept_at_most) {
      if (state_.outcome == Outcome::meets) return;
      state_.outcome = Outcome::meets;
    } else {
      return;
    }
    state_.decided_at = state_.stones;
  }

  CountedLimitState state_;
  std::optional<SequentialLines> lines_;
};

CountState together(std::vector<CountedLimitState> limits) {
  CountState state;
  state.outcome = limits.empty() ? Outcome::not_yet_known : Outcome::meets;
  for (const auto& limit : limits) {
    if (limit.outcome == Outcome::falls_short) {
      state.outcome = Outcome::falls_short;
    } else if (limit.outcome != Outcome::meets && state.outcome == Outcome::meets) {
      state.outcome = Outcome::not_yet_known;
    }
  }
  state.limits = std::move(limits);
  return state;
}

}  // namespace

CountState count_state(const std::vector<CountedLimit>& limits,
                       const std::vector<Length>& intermediate_axes) {
  std::vector<CountedLimitState> states;
  for (const auto& limit : limits) {
    Watch watch(limit);
    int stones = 0;
    int wrong = 0;
    for (const auto& axis : intermediate_axes) {
      ++stones;
      if (limit.is_wrong(axis)) ++wrong;
      watch.stands_at(stones, wrong);
    }
    states.push_back(watch.state());
  }
  return together(std::move(states));
}

CountState count_state(const std::vector<CountedLimit>& limits, const std::vector<CountBin>& bins) {
  std::vector<CountedLimitState> states;
  for (const auto& limit : limits) {
    Watch watch(limit);
    int stones = 0;
    int wrong = 0;
    bool torn = false;
    for (const auto& bin : bins) {
      stones += bin.stones;
      const Length lower = bin.lower.value_or(Length());
      constexpr double inside = 1e-6;
      const bool below = bin.upper <= (1 + inside) * limit.size;
      const bool above = lower >= (1 - inside) * limit.size;
      if (bin.stones > 0 && !below && !above) torn = true;
      if (limit.smaller_is_wrong ? below : above) wrong += bin.stones;
    }
    if (torn) {
      watch.does_not_tell(stones, wrong);
    } else {
      watch.stands_at(stones, wrong);
    }
    states.push_back(watch.state());
    states.back().decided_at.reset();
  }
  return together(std::move(states));
}

}  // namespace proofstone
