#include "engine/evidence/weighted_curve.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

constexpr double same_size = 1e-9;         // relative
constexpr double nearly_all = 100 - 1e-9;  // percent

Problems problems_of_parts(const std::vector<BlendPart>& parts, const std::string& word) {
  Problems problems;
  if (parts.empty()) {
    problems.push_back({"empty", "There is no " + word + ".", "", "", "at least one " + word});
    return problems;
  }
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const auto where = fmt::format("{} {}", word, i + 1);
    if (!(std::isfinite(parts[i].amount) && parts[i].amount > 0)) {
      problems.push_back({"not-positive", "Its amount is not above 0.", "", where, "above 0"});
    }
    if (!(parts[i].gradation.basis() == parts.front().gradation.basis())) {
      problems.push_back({"different-basis",
                          fmt::format("Its sizes or percents mean something else than those of "
                                      "{} 1.",
                                      word),
                          "", where, "one meaning of size and one of percent throughout"});
    }
  }
  if (parts.front().gradation.basis().percent != PercentOf::mass) {
    problems.push_back({"percent-by-count", "Percents by count cannot be weighted by mass.", "",
                        fmt::format("{} 1", word), "percents by mass"});
  }
  return problems;
}

std::vector<Length> sizes_of_all(const std::vector<BlendPart>& parts) {
  std::optional<Length> begin;
  std::optional<Length> end;
  std::vector<Length> sizes;
  for (const auto& part : parts) {
    const auto& points = part.gradation.points();
    if (points.front().percent_smaller > 0) {
      begin = std::max(begin.value_or(points.front().size), points.front().size);
    }
    if (points.back().percent_smaller < nearly_all) {
      end = std::min(end.value_or(points.back().size), points.back().size);
    }
    for (const auto& point : points) sizes.push_back(point.size);
  }
  std::sort(sizes.begin(), sizes.end());
  std::vector<Length> kept;
  for (const Length size : sizes) {
    if ((begin && size < *begin) || (end && size > *end)) continue;
    if (kept.empty() || (size - kept.back()) / size > same_size) kept.push_back(size);
  }
  return kept;
}

}  // namespace

Expected<Gradation> weighted_curve(const std::vector<BlendPart>& parts, const std::string& word) {
  if (auto problems = problems_of_parts(parts, word); !problems.empty()) return problems;
  double total = 0;
  for (const auto& part : parts) total += part.amount;

  std::vector<GradationPoint> points;
  for (const Length size : sizes_of_all(parts)) {
    double sum = 0;
    for (const auto& part : parts) sum += part.amount * part.gradation.percent_smaller(size);
    double percent = sum / total;
    if (percent > nearly_all) percent = 100;  // no rounding of the weights may leave 99.99…
    if (!points.empty()) percent = std::max(percent, points.back().percent_smaller);
    points.push_back({size, percent});
  }
  if (points.size() < 2) {
    return Problem{"no-common-sizes",
                   fmt::format("There are no sizes at which every {} knows its share.", word), "",
                   "", "curves that overlap"};
  }
  return Gradation::make(std::move(points), parts.front().gradation.basis());
}

}  // namespace proofstone
