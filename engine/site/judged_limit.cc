#include "engine/site/judged_limit.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace proofstone {
namespace {

bool speaks_of(const SubmittedTest& test, const RockLimit& limit) {
  if (test.test != limit.test || test.results.empty()) return false;
  const auto& done = test.manner;
  const auto& asked = limit.manner;
  if (!asked.salt.empty() && done.salt != asked.salt) return false;
  // Fewer cycles than asked for show nothing; more are harder to pass.
  if (asked.cycles && (!done.cycles || *done.cycles < *asked.cycles)) return false;
  return !asked.above || (done.above && std::abs(*done.above - *asked.above) < 1e-9);
}

}  // namespace

JudgedLimit judge_limit(const RockLimit& limit, const Submittal& submittal) {
  JudgedLimit judged;
  judged.limit = &limit;
  std::vector<double> results;
  for (const auto& test : submittal.tests) {
    if (speaks_of(test, limit)) {
      results.insert(results.end(), test.results.begin(), test.results.end());
    }
  }
  if (results.empty()) return judged;
  const auto [lowest, highest] = std::minmax_element(results.begin(), results.end());
  const double average =
      std::accumulate(results.begin(), results.end(), 0.0) / static_cast<double>(results.size());
  const double low = limit.of_each ? *lowest : average;
  const double high = limit.of_each ? *highest : average;
  judged.result = limit.least ? low : high;
  bool kept = true;
  if (limit.least) {
    kept = kept && low >= *limit.least;
    judged.margin = low / *limit.least;
  }
  if (limit.most) {
    kept = kept && high <= *limit.most;
    if (high > 0) judged.margin = *limit.most / high;
  }
  judged.outcome = kept ? Outcome::meets : Outcome::falls_short;
  return judged;
}

}  // namespace proofstone
