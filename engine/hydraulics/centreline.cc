#include "engine/hydraulics/centreline.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/hydraulics/tridiagonal.h"

namespace proofstone {

namespace {

constexpr double most_places = 20'000;

double distance(const PlanPoint& a, const PlanPoint& b) {
  const double x = (b.x - a.x).meters();
  const double y = (b.y - a.y).meters();
  return std::sqrt(x * x + y * y);
}

/// Second derivatives of a cubic spline through values at parameters `t`, constant over its first
/// and last piece, so that a circle is not flattened at its ends.
std::vector<double> second_derivatives(const std::vector<double>& t,
                                       const std::vector<double>& values) {
  const std::size_t count = t.size();
  Tridiagonal equations(count);
  equations.here[0] = equations.here[count - 1] = 1;
  equations.after[0] = equations.before[count - 1] = -1;
  for (std::size_t i = 1; i + 1 < count; ++i) {
    const double before = t[i] - t[i - 1];
    const double after = t[i + 1] - t[i];
    equations.before[i] = before;
    equations.here[i] = 2 * (before + after);
    equations.after[i] = after;
    equations.right[i] =
        6 * ((values[i + 1] - values[i]) / after - (values[i] - values[i - 1]) / before);
  }
  return equations.solved();
}

/// A smooth line through points: x and y as cubic splines of the length of the chords.
class SmoothLine {
 public:
  explicit SmoothLine(const std::vector<PlanPoint>& points) {
    t_.push_back(0);
    for (std::size_t i = 0; i < points.size(); ++i) {
      if (i > 0) t_.push_back(t_.back() + distance(points[i - 1], points[i]));
      x_.push_back(points[i].x.meters());
      y_.push_back(points[i].y.meters());
    }
    x2_ = second_derivatives(t_, x_);
    y2_ = second_derivatives(t_, y_);
  }
  double chord(std::size_t piece) const { return t_[piece + 1] - t_[piece]; }
  /// The place at a share of the way through a piece.
  PlanPoint at(std::size_t piece, double share) const {
    return {Length::meters(value(x_, x2_, piece, share)),
            Length::meters(value(y_, y2_, piece, share))};
  }

 private:
  double value(const std::vector<double>& v, const std::vector<double>& second, std::size_t i,
               double share) const {
    const double h = chord(i);
    const double a = 1 - share;
    const double b = share;
    return a * v[i] + b * v[i + 1] +
           ((a * a * a - a) * second[i] + (b * b * b - b) * second[i + 1]) * h * h / 6;
  }
  std::vector<double> t_, x_, y_, x2_, y2_;
};

/// Places at equal distances along a line of many short pieces.
std::vector<PlanPoint> walked(const std::vector<PlanPoint>& line, double length, int steps) {
  std::vector<PlanPoint> places{line.front()};
  double done = 0;
  std::size_t piece = 1;
  for (int k = 1; k < steps; ++k) {
    const double wanted = length * k / steps;
    while (piece + 1 < line.size() && done + distance(line[piece - 1], line[piece]) < wanted) {
      done += distance(line[piece - 1], line[piece]);
      ++piece;
    }
    const PlanPoint& a = line[piece - 1];
    const PlanPoint& b = line[piece];
    const double share = (wanted - done) / distance(a, b);
    places.push_back({a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share});
  }
  places.push_back(line.back());
  return places;
}

Problem point_problem(const std::string& code, std::size_t index, const std::string& what,
                      const std::string& allowed) {
  return {code, what, "", fmt::format("point {}", index + 1), allowed};
}

/// Mean of the curvature over half a width to either side, trapezoid weights. Places whose window
/// would leave the line take the value of the nearest whole window.
std::vector<double> smoothed(const std::vector<double>& curvature) {
  constexpr std::size_t reach = 2;  // quarters of a width
  constexpr std::size_t first = reach + 1;
  constexpr std::ptrdiff_t ends = first;
  std::vector<double> smooth = curvature;
  if (curvature.size() < 2 * first + 1) return smooth;
  const std::size_t last = curvature.size() - 1 - first;
  for (std::size_t i = first; i <= last; ++i) {
    double sum = (curvature[i - reach] + curvature[i + reach]) / 2;
    for (std::size_t k = i - reach + 1; k < i + reach; ++k) sum += curvature[k];
    smooth[i] = sum / (2 * reach);
  }
  std::fill(smooth.begin(), smooth.begin() + ends, smooth[first]);
  std::fill(smooth.end() - ends, smooth.end(), smooth[last]);
  return smooth;
}

/// Where the curvature crosses `limit` between two places, the first of them inside the bend.
Length crossing(const CurvePoint& inside, const CurvePoint& outside, double sign, double limit) {
  const double in = sign * inside.curvature_si;
  const double out = sign * outside.curvature_si;
  return inside.along + (outside.along - inside.along) * ((in - limit) / (in - out));
}

/// The way the curvature turns between two places: ∫ of it along the line, in `sign`'s sense.
double turn_between(const std::vector<CurvePoint>& curve, std::size_t first, std::size_t last,
                    double sign) {
  double turn = 0;
  for (std::size_t i = first + 1; i <= last; ++i) {
    turn += sign * (curve[i].curvature_si + curve[i - 1].curvature_si) / 2 *
            (curve[i].along - curve[i - 1].along).meters();
  }
  return turn;
}

PlanBend bend_between(const std::vector<CurvePoint>& curve, std::size_t first, std::size_t last,
                      double limit) {
  PlanBend bend;
  const double sign = curve[first].curvature_si > 0 ? 1 : -1;
  bend.outer_bank = sign > 0 ? BankSide::right : BankSide::left;
  double sharpest = 0;
  for (std::size_t i = first; i <= last; ++i) {
    sharpest = std::max(sharpest, sign * curve[i].curvature_si);
  }
  const bool from_start = first == 0;
  const bool to_end = last + 1 == curve.size();
  bend.begin =
      from_start ? curve[first].along : crossing(curve[first], curve[first - 1], sign, limit);
  bend.end = to_end ? curve[last].along : crossing(curve[last], curve[last + 1], sign, limit);
  // Smoothing spreads the turn of a round bend over half a width beyond its ends.
  for (int quarter = 0; quarter < 4; ++quarter) {
    if (first > 0 && sign * curve[first - 1].curvature_si > 0) --first;
    if (last + 1 < curve.size() && sign * curve[last + 1].curvature_si > 0) ++last;
  }
  const double turn = turn_between(curve, first, last, sign);
  bend.turn = Angle::radians(turn);
  bend.least_radius = Length::meters(1 / sharpest);
  bend.mean_radius = turn > 0 ? (bend.end - bend.begin) / turn : bend.least_radius;
  return bend;
}

}  // namespace

Expected<Centreline> Centreline::make(std::vector<PlanPoint> points) {
  constexpr double farthest = 1e7;
  constexpr double nearest = 1e-3;
  if (points.size() < 3 || points.size() > 10'000) {
    return Problem{points.size() < 3 ? "too-few-points" : "too-many-points",
                   fmt::format("The centreline has {} points.", points.size()), "", "centreline",
                   "3 to 10,000 points"};
  }
  Problems problems;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double x = points[i].x.meters();
    const double y = points[i].y.meters();
    if (!(std::abs(x) <= farthest && std::abs(y) <= farthest)) {
      problems.push_back(point_problem("out-of-range", i, "The point is not a place on Earth.",
                                       "coordinates within 10,000 km"));
    } else if (i > 0 && !(distance(points[i - 1], points[i]) >= nearest)) {
      problems.push_back(point_problem("repeated-point", i, "The point repeats the one before it.",
                                       "points from upstream to downstream, each once"));
    }
  }
  if (!problems.empty()) return problems;
  return Centreline(std::move(points));
}

Expected<std::vector<PlanPoint>> Centreline::resampled(Length spacing) const {
  const SmoothLine smooth(points_);
  std::vector<PlanPoint> line{points_.front()};
  double length = 0;
  for (std::size_t i = 0; i + 1 < points_.size(); ++i) {
    const double parts = std::ceil(std::max(8.0, 8 * smooth.chord(i) / spacing.meters()));
    if (!(static_cast<double>(line.size()) + parts <= 10 * most_places)) {
      return Problem{"too-fine", "The centreline is too long for so small a width.", "", "width",
                     "a width of which the centreline is at most 5,000"};
    }
    for (int k = 1; k <= static_cast<int>(parts); ++k) {
      const PlanPoint place = smooth.at(i, k / parts);
      const double step = distance(line.back(), place);
      if (!(step > 0)) continue;
      length += step;
      line.push_back(place);
    }
  }
  const double steps = std::max(2.0, std::ceil(length / spacing.meters() * (1 - 1e-12)));
  return walked(line, length, static_cast<int>(std::min(steps, most_places)));
}

double three_point_curvature(const PlanPoint& a, const PlanPoint& b, const PlanPoint& c) {
  const double cross =
      (b.x - a.x).meters() * (c.y - a.y).meters() - (b.y - a.y).meters() * (c.x - a.x).meters();
  return 2 * cross / (distance(a, b) * distance(b, c) * distance(c, a));
}

Expected<std::vector<CurvePoint>> curvature_along(const Centreline& centreline, Length width) {
  if (!(width.meters() > 0) || !std::isfinite(width.meters())) {
    return Problem{"width-not-positive", "The width is not a positive number.", "", "width",
                   "the water's width at the design flow, above 0"};
  }
  const auto places = centreline.resampled(0.25 * width);
  if (!places) return places.problems();
  const std::size_t count = places->size();
  std::vector<double> curvature(count);
  for (std::size_t i = 1; i + 1 < count; ++i) {
    curvature[i] = three_point_curvature((*places)[i - 1], (*places)[i], (*places)[i + 1]);
  }
  curvature.front() = curvature[1];
  curvature.back() = curvature[count - 2];
  const std::vector<double> smooth = smoothed(curvature);
  std::vector<CurvePoint> curve;
  curve.reserve(count);
  double along = 0;
  for (std::size_t i = 0; i < count; ++i) {
    if (i > 0) along += distance((*places)[i - 1], (*places)[i]);
    curve.push_back({Length::meters(along), (*places)[i], smooth[i]});
  }
  return curve;
}

std::vector<PlanBend> bends_along(const std::vector<CurvePoint>& curve, Length width,
                                  double limit) {
  const double least = 1 / (limit * width.meters());
  const auto turning = [&](std::size_t i) {
    return curve[i].curvature_si > least ? 1 : (curve[i].curvature_si < -least ? -1 : 0);
  };
  std::vector<PlanBend> bends;
  for (std::size_t i = 0; i < curve.size(); ++i) {
    if (turning(i) == 0) continue;
    std::size_t last = i;
    while (last + 1 < curve.size() && turning(last + 1) == turning(i)) ++last;
    bends.push_back(bend_between(curve, i, last, least));
    i = last;
  }
  return bends;
}

}  // namespace proofstone
