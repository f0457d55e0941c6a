#include "engine/reliability/variance_shares.h"

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/reliability/shifted_sobol.h"

namespace proofstone {
namespace {

Problem no_answer_of_samples() {
  return {"no-answer", "The formula has no answer for some samples.", "", "", "narrower spreads"};
}

}  // namespace

Expected<VarianceShares> variance_shares(const ScoreSpace& space, std::uint64_t points) {
  if (!space.independent()) {
    return Problem{"correlated", "Shares of variance are defined for independent quantities.", "",
                   "", "no correlations"};
  }
  const std::size_t size = space.size();
  ShiftedSobol sequence(2 * size, 0, 0);
  std::vector<double> both(2 * size);
  std::vector<double> a(size);
  std::vector<double> b(size);
  std::vector<double> first_sums(size, 0.0);
  std::vector<double> total_sums(size, 0.0);
  double sum = 0;
  double squares = 0;
  const auto centre = space.margin_at(std::vector<double>(size, 0.0));
  const double origin = centre ? *centre : 0;  // keeps the squares small beside their difference
  for (std::uint64_t n = 0; n < points; ++n) {
    sequence.next(both);
    for (std::size_t i = 0; i < size; ++i) {
      a[i] = normal_quantile(both[i]);
      b[i] = normal_quantile(both[size + i]);
    }
    const auto at_a = space.margin_at(a);
    const auto at_b = space.margin_at(b);
    for (std::size_t i = 0; i < size && at_a && at_b; ++i) {
      const double kept = a[i];
      a[i] = b[i];
      const auto mixed = space.margin_at(a);
      a[i] = kept;
      if (!mixed) return no_answer_of_samples();
      first_sums[i] += (*at_b - origin) * (*mixed - *at_a);
      total_sums[i] += (*at_a - *mixed) * (*at_a - *mixed);
    }
    if (!at_a || !at_b) return no_answer_of_samples();
    sum += (*at_a - origin) + (*at_b - origin);
    squares += (*at_a - origin) * (*at_a - origin) + (*at_b - origin) * (*at_b - origin);
  }
  const auto count = static_cast<double>(points);
  const double mean = sum / (2 * count);
  VarianceShares shares;
  shares.variance = squares / (2 * count) - mean * mean;
  if (!(shares.variance > 0)) {
    return Problem{"nothing-moves", "None of the uncertain quantities moves the margin.", "", "",
                   "a quantity that this method uses"};
  }
  for (std::size_t i = 0; i < size; ++i) {
    shares.alone.push_back(first_sums[i] / count / shares.variance);
    shares.together.push_back(total_sums[i] / (2 * count) / shares.variance);
  }
  return shares;
}

}  // namespace proofstone
