#pragma once

#include <optional>
#include <string>

#include "engine/evidence/band_comparison.h"
#include "engine/evidence/decision_risks.h"

namespace proofstone {

/// What a condition of a band asks of a sample. Internal to the evidence, as all below.
enum class ConditionKind {
  holds_of_itself,  ///< at least 0 %
  ordinary,         ///< a percent that a sample can be tested against
  none_larger,      ///< at least 100 %
  none_smaller,     ///< at most 0 %
  largest_reaches,  ///< at most 100 %: the largest stone is at least this large
};
ConditionKind condition_kind(const BandCondition& condition);

/// What a curve says of the share smaller than a size, in percent: one value, or two where the size
/// lies inside an open smallest bin. Either may be off by `misread`, for being read between edges.
struct ShareSmaller {
  double lowest = 0;
  double highest = 0;
  double misread = 0;
  double at_least() const { return lowest > misread ? lowest - misread : 0; }
  double at_most() const { return highest + misread < 100 ? highest + misread : 100; }
  bool is_one_value() const;
};
ShareSmaller share_smaller(const Gradation& curve, Length size, ConditionKind kind);

/// Whether the share keeps the condition, whatever the confidence. "At most 100 %" is always kept.
bool share_keeps(const ShareSmaller& share, const BandCondition& condition);

/// One condition under test: the evidence at its size and the question put to it.
class ConditionTrial {
 public:
  /// `size` is the condition's size in the sense of size of the measured curve, `risks` those of
  /// this one condition, `tolerable` the percent beyond an extreme limit. The references must
  /// outlive the trial.
  ConditionTrial(const MeasuredGradation& measured, const BandCondition& condition, Length size,
                 const DecisionRisks& risks, double tolerable);

  ConditionCheck judge() const;
  bool kept_by_estimate() const { return share_keeps(share_, condition_); }
  /// Stones in all that would decide it; absent when more of the same would not.
  std::optional<int> stones_to_decide() const;
  /// Stones of a grid count of its own that would decide it if it found the same share; absent for
  /// what the largest and smallest stones decide, and where 5,000 would not do.
  std::optional<int> counted_stones_to_decide() const;
  double effective_stones() const { return stones_; }
  /// How the confidence was found, as a formula.
  std::string formula() const;

 private:
  bool at_most() const { return condition_.sense == BandCondition::Sense::at_most; }
  double confidence_kept(double stones) const;
  double confidence_broken(double stones) const;
  bool decided(double stones) const;
  /// Of an ordinary condition, by the error of the size at its percent, `times` as many stones
  /// taken in the same way; absent where that error is not known.
  std::optional<double> kept_by_size(double times) const;
  std::optional<double> broken_by_size(double times) const;
  ConditionCheck begun() const;
  /// Whether stones were measured at the end of the curve that the condition asks for.
  bool end_known() const;
  bool stone_seen_beyond() const;
  bool large_stone_seen() const;
  bool searched_enough(double stones) const;
  void judge_ordinary(ConditionCheck& check) const;
  void judge_none_beyond(ConditionCheck& check) const;
  void judge_largest(ConditionCheck& check) const;
  void judge_unknown_end(ConditionCheck& check) const;

  const MeasuredGradation& measured_;
  const BandCondition& condition_;
  ConditionKind kind_;
  Length size_;
  ShareSmaller share_;
  double stones_;
  DecisionRisks risks_;
  double tolerable_;
};

}  // namespace proofstone
