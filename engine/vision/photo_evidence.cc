#include "engine/vision/photo_evidence.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/effective_stones.h"
#include "engine/evidence/size_text.h"

namespace proofstone {
namespace {

/// The curve is read at these percents and at both ends.
constexpr double read_percents[] = {1,  2.5, 5,  10, 15, 20, 25, 30, 35, 40,   45, 50,
                                    55, 60,  65, 70, 75, 80, 85, 90, 95, 97.5, 99};
constexpr double least_step = 1e-6;  ///< of ln D, between two points of the curve
constexpr int shifts = 64;

/// The curve with its factors applied, ready to be read: percents at logarithms of sizes that rise.
struct CorrectedCurve {
  std::vector<double> percents;
  std::vector<double> logs;

  double percent_at(double log_size) const;
};

double CorrectedCurve::percent_at(double log_size) const {
  if (log_size <= logs.front()) return percents.front();
  if (log_size >= logs.back()) return percents.back();
  const auto above =
      static_cast<std::size_t>(std::upper_bound(logs.begin(), logs.end(), log_size) - logs.begin());
  const double part = (log_size - logs[above - 1]) / (logs[above] - logs[above - 1]);
  return percents[above - 1] + part * (percents[above] - percents[above - 1]);
}

/// Divides by the factors, and keeps sizes rising from the median outwards whatever they are.
CorrectedCurve corrected(const SizeFactors& factors, const std::vector<double>& percents,
                         const std::vector<double>& raw_logs) {
  CorrectedCurve curve{percents, {}};
  for (std::size_t i = 0; i < percents.size(); ++i) {
    curve.logs.push_back(raw_logs[i] - std::log(factors.at(percents[i]).ratio));
  }
  auto& logs = curve.logs;
  const auto median = static_cast<std::size_t>(
      std::find_if(percents.begin(), percents.end(), [](double p) { return p >= 50; }) -
      percents.begin());
  const auto from = std::min(median, percents.size() - 1);
  for (std::size_t i = from; i + 1 < logs.size(); ++i) {
    logs[i + 1] = std::max(logs[i + 1], logs[i] + least_step);
  }
  for (std::size_t i = from; i > 0; --i) {
    logs[i - 1] = std::min(logs[i - 1], logs[i] - least_step);
  }
  return curve;
}

/// The percents that the curve is read at: from that of the smallest stone that is resolved.
std::vector<double> percents_of(const StonesOnPhotos& seen, const SurfaceShare& share) {
  const double unresolved = share.percent_smaller(seen.smallest_resolved);
  std::vector<double> percents{unresolved};
  for (const double percent : read_percents) {
    if (percent > unresolved + 1e-9) percents.push_back(percent);
  }
  if (unresolved < 100) percents.push_back(100);
  return percents;
}

/// Equal stones behind the share up to each of the stones, were each stone drawn by itself.
std::vector<double> by_weights(const SurfaceShare& share) {
  std::vector<WeightedStones> groups;
  groups.reserve(share.stones().size());
  for (const auto& stone : share.stones()) groups.push_back({1, stone.weight});
  auto effective = effective_stones(groups, 0.5);
  // A photo hides small stones: its many small ones are not taken for more than the whole.
  for (double& there : effective.at_points) there = std::min(there, effective.overall);
  return effective.at_points;
}

/// At the stone of a percent, or the next one.
double value_at(const SurfaceShare& share, const std::vector<double>& values, double percent) {
  const Length size = share.size_at(percent);
  const auto& stones = share.stones();
  const auto at =
      std::lower_bound(stones.begin(), stones.end(), size,
                       [](const SeenStone& stone, Length wanted) { return stone.size < wanted; });
  const auto i = static_cast<std::size_t>(at - stones.begin());
  return values[std::min(i, values.size() - 1)];
}

/// What a size that is wrong by `error` does to the share at a size: mean and variance about the
/// share, as parts of one, over equally likely errors of that standard deviation.
struct ShiftedShare {
  double mean = 0;
  double variance = 0;
};
ShiftedShare shifted(const CorrectedCurve& curve, std::size_t point, double error) {
  ShiftedShare result;
  double squares = 0;
  for (int i = 0; i < shifts; ++i) {
    const double z = normal_quantile((i + 0.5) / shifts);
    squares += z * z / shifts;
    const double there = curve.percent_at(curve.logs[point] - z * error) / 100;
    const double off = there - curve.percents[point] / 100;
    result.mean += there / shifts;
    result.variance += off * off / shifts;
  }
  result.variance /= squares;  // the middles of equal parts spread a little less than they should
  return result;
}

/// Variance of the share at each point of the curve over pictures put together anew, as parts of
/// one.
std::vector<double> sampling_variances(const StonesOnPhotos& seen, const CorrectedCurve& curve,
                                       const BlockBootstrap& bootstrap) {
  std::vector<double> variances(curve.percents.size(), 0);
  const double part = bootstrap.enlarged / static_cast<double>(bootstrap.log_sizes.size());
  for (const auto& logs : bootstrap.log_sizes) {
    const auto again = corrected(seen.factors, curve.percents, logs);
    for (std::size_t i = 0; i < variances.size(); ++i) {
      const double off = (again.percent_at(curve.logs[i]) - curve.percents[i]) / 100;
      variances[i] += part * off * off;
    }
  }
  return variances;
}

}  // namespace

Expected<PhotoCurve> photo_curve(const StonesOnPhotos& seen, const SurfaceShare& share) {
  const auto percents = percents_of(seen, share);
  if (percents.size() < 2) {
    return Problem{"not-resolved", "No stone is as large as the smallest that the photos resolve.",
                   "", "photos", "photos from nearer by, or with more pixels"};
  }
  std::vector<double> raw_logs;
  for (const double percent : percents)
    raw_logs.push_back(std::log(share.size_at(percent).meters()));
  if (percents.front() > 0) raw_logs.front() = std::log(seen.smallest_resolved.meters());
  const auto read = corrected(seen.factors, percents, raw_logs);
  const auto bootstrap = block_bootstrap(share, percents);
  const auto by_blocks = sampling_variances(seen, read, bootstrap);
  const auto sampling_errors = bootstrap.errors();
  const auto weighted = by_weights(share);

  PhotoCurve curve;
  for (std::size_t i = 0; i < percents.size(); ++i) {
    const double factor_error = seen.factors.at(percents[i]).error;
    const double error =
        std::sqrt(seen.scale_error * seen.scale_error + factor_error * factor_error);
    const auto there = shifted(read, i, error);
    const double spread = there.mean * (1 - there.mean);
    double sampled = value_at(share, weighted, percents[i]);
    double lasting = 0;
    if (spread > 0) {
      if (by_blocks[i] > 0) sampled = std::min(sampled, spread / by_blocks[i]);
      lasting = there.variance / spread;
    }
    // The ends are those of a sample: how wrong they are it does not tell.
    if (percents[i] > std::max(0.0, percents.front()) && percents[i] < 100) {
      curve.size_errors.push_back(
          {percents[i], std::sqrt(sampling_errors[i] * sampling_errors[i] + error * error)});
    }
    curve.effective.push_back(1 / (1 / sampled + lasting));
    curve.lasting.push_back(lasting);
    curve.points.push_back({Length::meters(std::exp(read.logs[i])), percents[i]});
  }
  return curve;
}

std::optional<Problem> end_at_largest(PhotoCurve& curve, Length largest) {
  const auto end =
      std::find_if(curve.points.begin(), curve.points.end(),
                   [largest](const GradationPoint& point) { return point.size >= largest; });
  if (end == curve.points.end()) return std::nullopt;
  if (end->percent_smaller <= 85) {
    return Problem{"largest-too-small",
                   fmt::format("The largest stone by tape, {}, is smaller than the D85 of the "
                               "photos.",
                               size_in_both_systems(largest)),
                   "", "largest",
                   "the largest stone in sight; else the scale of the photos is off"};
  }
  const auto kept = static_cast<std::size_t>(end - curve.points.begin());
  const double ended = end->percent_smaller;
  curve.size_errors.erase(
      std::remove_if(curve.size_errors.begin(), curve.size_errors.end(),
                     [ended](const SizeError& error) { return error.percent >= ended; }),
      curve.size_errors.end());
  curve.points.resize(kept);
  curve.points.push_back({largest, 100});
  curve.effective = {curve.effective.begin(),
                     curve.effective.begin() + static_cast<std::ptrdiff_t>(kept + 1)};
  curve.lasting = {curve.lasting.begin(),
                   curve.lasting.begin() + static_cast<std::ptrdiff_t>(kept + 1)};
  return std::nullopt;
}

}  // namespace proofstone
