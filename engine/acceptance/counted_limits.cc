#include "engine/acceptance/counted_limits.h"

#include <algorithm>
#include <cmath>

#include "engine/evidence/band_comparison.h"
#include "engine/evidence/condition_trial.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

constexpr double size_reading = 1e-6;      ///< sizes so near are the same
constexpr double nearest_share = 1.0 / 3;  ///< of the limit, that is always good

ShareRisks shares_of(double limit, const DecisionRisks& risks, double good_by, double limits) {
  ShareRisks shares;
  shares.unacceptable = Dimensionless::number(limit);
  shares.acceptable = Dimensionless::number(std::max(limit - good_by, nearest_share * limit));
  shares.owners_risk = Dimensionless::number(risks.owners);
  shares.producers_risk = Dimensionless::number(risks.producers / limits);
  return shares;
}

}  // namespace

bool CountedLimit::is_wrong(Length stone) const {
  if (smaller_is_wrong) return stone < (1 - size_reading) * size;
  return no_stone_at_all ? stone > (1 + size_reading) * size : !(stone < (1 - size_reading) * size);
}

std::vector<CountedLimit> counted_limits(const GradationBand& band, const DecisionRisks& risks,
                                         double good_by) {
  std::vector<CountedLimit> limits;
  for (const auto& condition : band.conditions()) {
    const auto kind = condition_kind(condition);
    if (kind == ConditionKind::holds_of_itself || kind == ConditionKind::largest_reaches) continue;
    CountedLimit limit;
    limit.condition = condition;
    limit.smaller_is_wrong = condition.sense == BandCondition::Sense::at_most;
    limit.no_stone_at_all = kind != ConditionKind::ordinary;
    limit.size = convert_size(condition.size, band.basis().size, SizeMeaning::intermediate_axis);
    limits.push_back(std::move(limit));
  }
  const auto number = static_cast<double>(limits.size());
  constexpr double tolerable = default_tolerable_percent_beyond / 100;
  for (auto& limit : limits) {
    const double percent = limit.condition.percent;
    if (limit.no_stone_at_all) {
      limit.stones_without_wrong =
          static_cast<int>(std::ceil(std::log(risks.owners) / std::log(1 - tolerable)));
    } else {
      const double share = (limit.smaller_is_wrong ? percent : 100 - percent) / 100;
      limit.risks = shares_of(share, risks, good_by, number);
    }
  }
  return limits;
}

}  // namespace proofstone
