#pragma once

#include <optional>

#include "engine/acceptance/share_risks.h"
#include "engine/method/method.h"

namespace proofstone {

/// The two lines of Wald's sequential plan for a share: after each stone accept, turn away, or go
/// on.
class SequentialLines {
 public:
  /// Problems as of the risks.
  static Expected<SequentialLines> make(const ShareRisks& risks);

  double slope() const { return slope_; }           ///< g: wrong stones a stone, of both lines
  double accept_offset() const { return accept_; }  ///< h1
  double reject_offset() const { return reject_; }  ///< h2

  /// Most wrong stones with which `stones` are accepted; absent while none would be few enough.
  std::optional<int> accept_at_most(int stones) const;
  /// Fewest wrong stones with which `stones` are turned away; absent while too few were counted.
  std::optional<int> reject_at_least(int stones) const;
  /// The first stone after which rock without a wrong stone is accepted.
  int first_acceptance() const;

 private:
  double slope_ = 0;
  double accept_ = 0;
  double reject_ = 0;
};

/// The lines with an end to the count.
class SequentialPlan : public SequentialLines {
 public:
  /// Problems as of the risks, and where not even a single plan of 5,000 stones would do.
  static Expected<SequentialPlan> make(const ShareRisks& risks);

  /// Where the count ends at the latest: three times the single plan of the same risks.
  int last_stone() const { return last_stone_; }
  /// The single plan of the same risks.
  int single_plan_stones() const { return last_stone_ / 3; }

  /// What happens when the true share is `share`.
  struct Operation {
    double accepted = 0;        ///< chance
    double average_stones = 0;  ///< counted until the decision
  };
  /// By recursion over the wrong stones, stone by stone; the count ends at `last_stone` with the
  /// nearer line. No overshoot is neglected, as Wald's own formulas do.
  Operation operation(double share, int last_stone) const;
  Operation operation(double share) const { return operation(share, last_stone_); }

 private:
  SequentialPlan(const SequentialLines& lines, int last_stone)
      : SequentialLines(lines), last_stone_(last_stone) {}
  int last_stone_ = 0;
};

struct SequentialPlanInputs : ShareRisks {
  Dimensionless stones = Dimensionless::number(24);  ///< counted so far
  std::optional<Dimensionless> share;                ///< for the chance of acceptance
  std::optional<Dimensionless> last_stone;           ///< where the count ends at the latest
};

struct SequentialPlanResult {
  Dimensionless accept_offset;
  Dimensionless reject_offset;
  Dimensionless slope;
  Dimensionless accept_at_most;  ///< −1 while nothing can be accepted
  Dimensionless reject_at_least;
  Dimensionless first_acceptance;
  Dimensionless single_plan_stones;
  Dimensionless accepted;
  Dimensionless average_stones;
};

Expected<SequentialPlanResult> sequential_count(const SequentialPlanInputs& in, Steps& steps);

/// The same by name: "sequential-count".
const Method& sequential_count_method();

}  // namespace proofstone
