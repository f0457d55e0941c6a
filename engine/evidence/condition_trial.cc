#include "engine/evidence/condition_trial.h"

#include <fmt/format.h>

#include "engine/evidence/confidence.h"
#include "engine/evidence/size_error.h"
#include "engine/evidence/size_text.h"
#include "engine/evidence/stones_needed.h"

namespace proofstone {
namespace {

constexpr double percent_rounding = 1e-9;
/// "No stone larger" allows one of just that size; a curve of measured stones reaches 100 % one
/// part in a million above its largest stone.
constexpr double just_beyond = 2e-6;

}  // namespace

ConditionKind condition_kind(const BandCondition& condition) {
  const bool none = condition.percent <= percent_rounding;
  const bool all = condition.percent >= 100 - percent_rounding;
  if (condition.sense == BandCondition::Sense::at_most) {
    if (all) return ConditionKind::largest_reaches;
    return none ? ConditionKind::none_smaller : ConditionKind::ordinary;
  }
  if (none) return ConditionKind::holds_of_itself;
  return all ? ConditionKind::none_larger : ConditionKind::ordinary;
}

bool ShareSmaller::is_one_value() const { return highest - lowest <= percent_rounding; }

ShareSmaller share_smaller(const Gradation& curve, Length size, ConditionKind kind) {
  if (kind == ConditionKind::none_larger) size = (1 + just_beyond) * size;
  if (kind == ConditionKind::none_smaller) size = (1 - just_beyond) * size;
  const double percent = curve.percent_smaller(size);
  return {size < curve.points().front().size ? 0 : percent, percent};
}

bool share_keeps(const ShareSmaller& share, const BandCondition& condition) {
  if (condition.sense == BandCondition::Sense::at_most) {
    return share.highest <= condition.percent + percent_rounding;
  }
  return share.lowest >= condition.percent - percent_rounding;
}

ConditionTrial::ConditionTrial(const MeasuredGradation& measured, const BandCondition& condition,
                               Length size, const DecisionRisks& risks, double tolerable)
    : measured_(measured),
      condition_(condition),
      kind_(condition_kind(condition)),
      size_(size),
      share_(share_smaller(measured.curve, size, kind_)),
      stones_(measured.effective_stones_at(size)),
      risks_(risks),
      tolerable_(tolerable) {
  if (kind_ == ConditionKind::ordinary) share_.misread = measured.reading_error_at(size);
}

double ConditionTrial::confidence_kept(double stones) const {
  switch (kind_) {
    case ConditionKind::holds_of_itself:
      return 1;
    case ConditionKind::largest_reaches:
      return large_stone_seen() ? 1 : 0;
    case ConditionKind::none_larger:
      return stone_seen_beyond() ? 0 : confidence_at_least(share_.lowest, stones, 100 - tolerable_);
    case ConditionKind::none_smaller:
      return stone_seen_beyond() ? 0 : confidence_at_most(share_.highest, stones, tolerable_);
    case ConditionKind::ordinary:
      break;
  }
  return at_most() ? confidence_at_most(share_.at_most(), stones, condition_.percent)
                   : confidence_at_least(share_.at_least(), stones, condition_.percent);
}

double ConditionTrial::confidence_broken(double stones) const {
  if (kind_ != ConditionKind::ordinary) return stone_seen_beyond() ? 1 : 0;
  return at_most() ? confidence_at_least(share_.at_least(), stones, condition_.percent)
                   : confidence_at_most(share_.at_most(), stones, condition_.percent);
}

std::optional<double> ConditionTrial::kept_by_size(double times) const {
  if (kind_ != ConditionKind::ordinary) return std::nullopt;
  return at_most() ? confidence_size_at_least(measured_, condition_.percent, size_, times)
                   : confidence_size_at_most(measured_, condition_.percent, size_, times);
}

std::optional<double> ConditionTrial::broken_by_size(double times) const {
  if (kind_ != ConditionKind::ordinary) return std::nullopt;
  return at_most() ? confidence_size_at_most(measured_, condition_.percent, size_, times)
                   : confidence_size_at_least(measured_, condition_.percent, size_, times);
}

bool ConditionTrial::stone_seen_beyond() const {
  if (kind_ == ConditionKind::none_larger) {
    return measured_.seen_larger_than && *measured_.seen_larger_than >= (1 - 1e-9) * size_;
  }
  return kind_ == ConditionKind::none_smaller && measured_.seen_smaller_than &&
         *measured_.seen_smaller_than <= (1 + 1e-9) * size_;
}

bool ConditionTrial::large_stone_seen() const {
  return measured_.seen_larger_than && *measured_.seen_larger_than >= (1 - just_beyond) * size_;
}

/// Had the tolerable percent of the lot been that large, one such stone would have been found.
bool ConditionTrial::searched_enough(double stones) const {
  return confidence_at_least(100, stones, 100 - tolerable_) >= risks_.to_accept();
}

void ConditionTrial::judge_ordinary(ConditionCheck& check) const {
  const auto limit = size_in_both_systems(condition_.size);
  if (share_.is_one_value()) {
    check.reason = fmt::format("{:.1f} % is smaller than {}, {} {:g} % asked.", share_.highest,
                               limit, at_most() ? "at most" : "at least", condition_.percent);
  } else {
    check.reason =
        fmt::format("{} lies within the open smallest bin: between 0 and {:.1f} % is smaller.",
                    limit, share_.highest);
  }
  if (check.confidence_kept >= risks_.to_accept()) {
    check.outcome = Outcome::meets;
    check.reason += fmt::format(" Kept with {:.1f} % confidence.", 100 * check.confidence_kept);
  } else if (check.confidence_broken >= risks_.to_turn_away()) {
    check.outcome = Outcome::falls_short;
    check.reason +=
        fmt::format(" Not kept, with {:.1f} % confidence.", 100 * check.confidence_broken);
  } else {
    check.outcome = Outcome::not_yet_known;
    check.reason += fmt::format(" Confidence that it is kept {:.1f} %, asked {:.1f} %.",
                                100 * check.confidence_kept, 100 * risks_.to_accept());
  }
}

void ConditionTrial::judge_none_beyond(ConditionCheck& check) const {
  const bool larger = kind_ == ConditionKind::none_larger;
  const char* beyond = larger ? "larger" : "smaller";
  const auto limit = size_in_both_systems(condition_.size);
  if (stone_seen_beyond()) {
    check.outcome = Outcome::falls_short;
    check.reason = fmt::format("A stone {} than {} was measured.", beyond, limit);
  } else if (!kept_by_estimate()) {
    check.outcome = Outcome::not_yet_known;
    check.reason = fmt::format(
        "The limit of {} lies within a bin that holds stones: measure the {} stones one by one.",
        limit, larger ? "largest" : "smallest");
  } else {
    const bool shown = check.confidence_kept >= risks_.to_accept();
    check.outcome = shown ? Outcome::meets : Outcome::not_yet_known;
    check.reason = fmt::format(
        "No stone {} than {} is among those measured. A sample cannot show that there is none in "
        "the lot; that such stones make up at most {:g} % of it is shown with {:.1f} % confidence, "
        "asked {:.1f} %.",
        beyond, limit, tolerable_, 100 * check.confidence_kept, 100 * risks_.to_accept());
  }
}

void ConditionTrial::judge_largest(ConditionCheck& check) const {
  const auto limit = size_in_both_systems(condition_.size);
  if (large_stone_seen()) {
    check.outcome = Outcome::meets;
    check.reason = fmt::format("A stone of at least {} was measured.", limit);
  } else if (share_.highest < 100 - percent_rounding) {
    check.outcome = Outcome::not_yet_known;
    check.reason = fmt::format(
        "{} lies within the largest bin: measure the largest stones one by one.", limit);
  } else if (searched_enough(stones_)) {
    check.outcome = Outcome::ask_the_designer;
    check.reason = fmt::format(
        "No stone of at least {} is among those measured; such stones make up less than {:g} % of "
        "the lot. Whether it matters is the designer's decision.",
        limit, tolerable_);
  } else {
    check.outcome = Outcome::not_yet_known;
    check.reason = fmt::format("No stone of at least {} is among those measured so far.", limit);
  }
}

ConditionCheck ConditionTrial::begun() const {
  const auto kept = kept_by_size(1);
  const auto broken = broken_by_size(1);
  return {condition_,
          share_.highest,
          kept ? *kept : confidence_kept(stones_),
          broken ? *broken : confidence_broken(stones_),
          Outcome::meets,
          "Holds of itself."};
}

ConditionCheck ConditionTrial::judge() const {
  auto check = begun();
  if (!end_known()) {
    judge_unknown_end(check);
    return check;
  }
  switch (kind_) {
    case ConditionKind::holds_of_itself:
      break;
    case ConditionKind::ordinary:
      judge_ordinary(check);
      break;
    case ConditionKind::none_larger:
    case ConditionKind::none_smaller:
      judge_none_beyond(check);
      break;
    case ConditionKind::largest_reaches:
      judge_largest(check);
      break;
  }
  return check;
}

std::optional<int> ConditionTrial::stones_to_decide() const {
  if (!end_known()) return std::nullopt;
  switch (kind_) {
    case ConditionKind::holds_of_itself:
      return std::nullopt;
    case ConditionKind::largest_reaches:
      if (share_.highest < 100 - percent_rounding) return std::nullopt;
      return stones_needed(measured_, size_,
                           [&](double stones) { return searched_enough(stones); });
    case ConditionKind::none_larger:
    case ConditionKind::none_smaller:
      if (!kept_by_estimate()) return std::nullopt;
      break;
    case ConditionKind::ordinary:
      if (!share_.is_one_value()) return std::nullopt;
      break;
  }
  if (kept_by_size(1)) {
    return least_number(measured_.stones, [&](int stones) {
      const double times = static_cast<double>(stones) / measured_.stones;
      return *kept_by_size(times) >= risks_.to_accept() ||
             *broken_by_size(times) >= risks_.to_turn_away();
    });
  }
  return stones_needed(measured_, size_, [&](double stones) { return decided(stones); });
}

std::optional<int> ConditionTrial::counted_stones_to_decide() const {
  if (kind_ != ConditionKind::ordinary || !share_.is_one_value()) return std::nullopt;
  return least_number(0, [&](int stones) { return decided(stones); });
}

bool ConditionTrial::decided(double stones) const {
  return confidence_kept(stones) >= risks_.to_accept() ||
         confidence_broken(stones) >= risks_.to_turn_away();
}

bool ConditionTrial::end_known() const {
  if (kind_ == ConditionKind::none_smaller) return measured_.smallest_known;
  const bool of_largest =
      kind_ == ConditionKind::none_larger || kind_ == ConditionKind::largest_reaches;
  return !of_largest || measured_.largest_known || stone_seen_beyond() ||
         (kind_ == ConditionKind::largest_reaches && large_stone_seen());
}

void ConditionTrial::judge_unknown_end(ConditionCheck& check) const {
  check.outcome = Outcome::not_yet_known;
  check.confidence_kept = 0;
  check.reason =
      kind_ == ConditionKind::none_smaller
          ? "A photo does not tell the smallest stones: they lie hidden between the others."
          : "A photo does not tell the largest stone of a lot: measure the largest one with a "
            "tape, or tap its ends.";
}

std::string ConditionTrial::formula() const {
  if (!end_known()) return "0, this end was not measured";
  switch (kind_) {
    case ConditionKind::holds_of_itself:
      return "holds of itself";
    case ConditionKind::largest_reaches:
      return "1 when a stone as large was measured, else 0";
    case ConditionKind::none_larger:
    case ConditionKind::none_smaller:
      return stone_seen_beyond() ? "0, a stone beyond the limit was measured"
                                 : "1 − (1 − tolerable share)^ne when none was measured";
    case ConditionKind::ordinary:
      break;
  }
  if (kept_by_size(1)) return "Φ(± ln(Dp / D) / e), e the error of Dp";
  return at_most() ? "1 − P(at most ne·F/100 of ne smaller | true share at the limit)"
                   : "1 − P(at least ne·F/100 of ne smaller | true share at the limit)";
}

}  // namespace proofstone
