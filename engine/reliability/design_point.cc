#include "engine/reliability/design_point.h"

#include <cmath>
#include <numeric>

#include "engine/evidence/standard_normal.h"
#include "engine/hydraulics/bracketed_root.h"
#include "engine/reliability/score_space.h"

namespace proofstone {
namespace {

using Vector = std::vector<double>;

constexpr double difference_step = 0.02;
constexpr double farthest = 8;  // standard deviations
constexpr int most_steps = 60;
constexpr int most_turns = 200;
constexpr double settled = 1e-14;

double dot(const Vector& a, const Vector& b) {
  return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

Vector times(double factor, Vector vector) {
  for (double& value : vector) value *= factor;
  return vector;
}

struct MarginAt {
  double margin = 0;
  Vector gradient;
  double steepness = 0;
};

std::optional<MarginAt> margin_at(const ScoreSpace& space, const Vector& scores) {
  MarginAt at;
  const auto centre = space.margin_at(scores);
  if (!centre || !std::isfinite(*centre)) return std::nullopt;
  at.margin = *centre;
  Vector moved = scores;
  for (std::size_t i = 0; i < scores.size(); ++i) {
    double sum = 0;
    constexpr double places[] = {-2, -1, 1, 2};
    constexpr double weights[] = {1, -8, 8, -1};
    for (int k = 0; k < 4; ++k) {
      moved[i] = scores[i] + places[k] * difference_step;
      const auto margin = space.margin_at(moved);
      if (!margin || !std::isfinite(*margin)) return std::nullopt;
      sum += weights[k] * *margin;
    }
    moved[i] = scores[i];
    at.gradient.push_back(sum / (12 * difference_step));
  }
  at.steepness = std::sqrt(dot(at.gradient, at.gradient));
  return at;
}

/// The direction in which the margin falls most steeply.
Vector falling(const MarginAt& at) { return times(-1 / at.steepness, at.gradient); }

/// Hasofer–Lind–Rackwitz–Fiessler: the next point is the nearest one of the tangent plane.
std::optional<Vector> iterate(const ScoreSpace& space, int& steps) {
  Vector scores(space.size(), 0.0);
  double tightest = 1;
  for (steps = 1; steps <= most_steps; ++steps) {
    const auto at = margin_at(space, scores);
    if (!at || !(at->steepness > 0)) return std::nullopt;
    const Vector direction = falling(*at);
    const double distance = dot(direction, scores) + at->margin / at->steepness;
    if (!(std::abs(distance) < farthest)) return std::nullopt;
    const Vector next = times(distance, direction);
    double change = 0;
    for (std::size_t i = 0; i < next.size(); ++i) {
      change = std::max(change, std::abs(next[i] - scores[i]));
    }
    scores = next;
    if (change < settled) return scores;
    // Rounding of the differences ends the gain near the last digits: standing still is enough.
    if (change < 1e-7 && change >= tightest) return scores;
    tightest = change;
  }
  return std::nullopt;
}

/// Distance along `direction` at which the margin changes sign; negative when it is negative at the
/// medians already.
std::optional<double> bracket(const ScoreSpace& space, const Vector& direction) {
  const auto fails_at = [&](double distance) {
    const auto margin = space.margin_at(times(distance, direction));
    return !margin || !(*margin > 0);  // no answer is no rock that stays
  };
  double safe = 0;
  const double sign = fails_at(0) ? -1 : 1;
  constexpr double stride = 0.25;
  constexpr int strides = static_cast<int>(farthest / stride);
  for (int step = 1; step <= strides; ++step) {
    const double distance = step * stride;
    if (fails_at(sign * distance) == (sign < 0)) {
      safe = sign * distance;
      continue;
    }
    const double low = sign > 0 ? safe : -distance;
    const double high = sign > 0 ? distance : safe;
    return turning_point(low, high, fails_at);
  }
  return std::nullopt;
}

Vector between(const Vector& from, const Vector& to, double part) {
  Vector mixed(from.size());
  for (std::size_t i = 0; i < from.size(); ++i) mixed[i] = from[i] + part * (to[i] - from[i]);
  return times(1 / std::sqrt(dot(mixed, mixed)), mixed);
}

/// Turns the direction towards the steepest one, by less and less until failure comes nearer.
std::optional<Vector> bracketed_point(const ScoreSpace& space) {
  const auto start = margin_at(space, Vector(space.size(), 0.0));
  if (!start || !(start->steepness > 0)) return std::nullopt;
  Vector direction = falling(*start);
  auto distance = bracket(space, direction);
  if (!distance) return std::nullopt;
  for (int turn = 0; turn < most_turns; ++turn) {
    Vector scores = times(*distance, direction);
    const auto at = margin_at(space, scores);
    if (!at || !(at->steepness > 0)) return scores;
    const Vector steepest = falling(*at);
    if (1 - dot(steepest, direction) < 1e-14) return scores;
    bool nearer = false;
    for (double part = 1; part > 1e-6 && !nearer; part /= 2) {
      const Vector turned = between(direction, steepest, part);
      const auto there = bracket(space, turned);
      nearer = there && *there < *distance;
      if (!nearer) continue;
      direction = turned;
      distance = there;
    }
    if (!nearer) return scores;
  }
  return std::nullopt;
}

}  // namespace

Expected<DesignPoint> find_design_point(const LimitState& limit,
                                        const std::vector<Correlation>& correlations) {
  const auto space = ScoreSpace::of(limit, correlations);
  if (!space) return space.problems();
  DesignPoint found;
  auto scores = iterate(*space, found.steps);
  if (!scores) {
    found.bracketed = true;
    scores = bracketed_point(*space);
  }
  const auto at = scores ? margin_at(*space, *scores) : std::nullopt;
  if (!at || !(at->steepness > 0)) {
    return Problem{"form-not-settled",
                   "No most likely failure was found within 8 standard deviations.", "", "",
                   "spreads that let the rock move, and a formula with an answer there"};
  }
  found.alphas = falling(*at);
  found.beta = dot(found.alphas, *scores) + at->margin / at->steepness;
  found.probability = normal_cumulative(-found.beta);
  found.values = space->values_at(*scores);
  found.importance = space->importance(found.alphas);
  return found;
}

}  // namespace proofstone
