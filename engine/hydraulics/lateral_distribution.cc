#include "engine/hydraulics/lateral_distribution.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/hydraulics/section_problem.h"
#include "engine/hydraulics/tridiagonal.h"
#include "engine/hydraulics/wet_pieces.h"

namespace proofstone {

namespace {

/// One finite volume of the water, from its ground to its surface, in SI.
struct Column {
  double x = 0;
  double width = 0;
  double depth = 0;
  double left_depth = 0;
  double right_depth = 0;
  double f = 0;
  double slope_factor = 1;  ///< √(1+1/s²)
  double secondary = 0;     ///< Γ/ρ, m²/s²
  double area() const { return width * depth; }
};

bool fits(const std::vector<double>& list, const Section& section) {
  const std::size_t points = section.points().size();
  return list.empty() || list.size() == points || list.size() + 1 == points;
}

Problems problems_of(const Section& section, const LateralWater& water) {
  Problems problems;
  const auto positive = [&](double value, const char* what, const char* where) {
    if (value > 0 && std::isfinite(value)) return;
    problems.push_back(section_problem("not-positive",
                                       fmt::format("The {} is not a positive number.", what), where,
                                       "a number above 0"));
  };
  positive(water.energy_slope.ratio(), "slope", "slope");
  positive(water.eddy_viscosity, "eddy viscosity", "eddy_viscosity");
  positive(water.gravity_si, "gravity", "gravity");
  positive(water.density_si, "density of water", "density");
  for (const double f : water.friction_factors) positive(f, "friction factor", "friction_factors");
  if (!fits(water.friction_factors, section) || !fits(water.secondary_flow, section)) {
    problems.push_back(
        section_problem("lists-differ", "There are not as many values as pieces of ground.",
                        fits(water.secondary_flow, section) ? "friction_factors" : "secondary_flow",
                        "one value for each point, valid up to the next point"));
  }
  if (water.cells < 10 || water.cells > 100'000) {
    problems.push_back(section_problem("cells-out-of-range", "The number of cells is out of range.",
                                       "cells", "10 to 100,000"));
  }
  if (!(water.water_level > section.lowest()) || !std::isfinite(water.water_level.meters())) {
    problems.push_back(section_problem("dry",
                                       "The water level does not stand above the lowest ground.",
                                       "water_level", "a level above the lowest ground"));
  }
  return problems;
}

/// Cuts the wet ground into columns, from left to right.
class ColumnMaker {
 public:
  ColumnMaker(const Section& section, const LateralWater& water)
      : section_(section), water_(water) {
    const WetGeometry wet = section.wet(water.water_level);
    greatest_width_ = wet.top_width.meters() / water.cells;
    secondary_unit_ = water.gravity_si * wet.deepest.meters() * water.energy_slope.ratio();
  }

  std::vector<Column> volumes() {
    const auto& points = section_.points();
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
      const double x1 = points[i].station.meters();
      const double x2 = points[i + 1].station.meters();
      if (x2 - x1 < wet_piece_detail::same_station) continue;
      const double d1 = (water_.water_level - points[i].elevation).meters();
      const double d2 = (water_.water_level - points[i + 1].elevation).meters();
      if (d1 <= 0 && d2 <= 0) continue;
      cut(i, x1, x2, d1, d2);
    }
    return std::move(volumes_);
  }

 private:
  void cut(std::size_t piece, double x1, double x2, double d1, double d2) {
    const double deepening = (d2 - d1) / (x2 - x1);
    if (d1 < 0) x1 -= d1 / deepening;
    if (d2 < 0) x2 -= d2 / deepening;
    d1 = std::max(d1, 0.0);
    d2 = std::max(d2, 0.0);
    const double parts = std::max(1.0, std::ceil((x2 - x1) / greatest_width_ * (1 - 1e-12)));
    Column volume;
    volume.width = (x2 - x1) / parts;
    volume.slope_factor = std::sqrt(1 + deepening * deepening);
    if (!water_.secondary_flow.empty()) {
      volume.secondary = water_.secondary_flow[piece] * secondary_unit_;
    }
    for (int k = 0; k < static_cast<int>(parts); ++k) {
      volume.left_depth = d1 + (d2 - d1) * (k / parts);
      volume.right_depth = d1 + (d2 - d1) * ((k + 1) / parts);
      volume.depth = (volume.left_depth + volume.right_depth) / 2;
      volume.x = x1 + (x2 - x1) * ((k + 0.5) / parts);
      volume.f = friction(piece, volume.depth);
      volumes_.push_back(volume);
    }
  }
  double friction(std::size_t piece, double depth) const {
    if (!water_.friction_factors.empty()) return water_.friction_factors[piece];
    const double n = section_.points()[piece].roughness.number();
    return 8 * water_.gravity_si * n * n / std::pow(depth, 1.0 / 3.0);
  }

  const Section& section_;
  const LateralWater& water_;
  double greatest_width_ = 0;
  double secondary_unit_ = 0;
  std::vector<Column> volumes_;
};

/// How strongly a volume's middle is tied to one of its sides, over a height `meeting` of the
/// water's depth `depth` there: ½·λ·H·h·√(f/8)/(half the width).
double tie(const Column& volume, double depth, double meeting, double lambda) {
  return lambda * depth * meeting * std::sqrt(volume.f / 8) / volume.width;
}

/// The balance of momentum of every volume, divided by the density; unknown is U².
class Balance {
 public:
  Balance(const std::vector<Column>& volumes, const LateralWater& water)
      : volumes_(volumes),
        lambda_(water.eddy_viscosity),
        equations_(volumes.size()),
        wall_(volumes.size()),
        joined_(volumes.size()) {
    for (std::size_t i = 0; i < volumes.size(); ++i) {
      const Column& v = volumes[i];
      equations_.here[i] = v.f / 8 * v.slope_factor * v.width;
      equations_.right[i] =
          water.gravity_si * water.energy_slope.ratio() * v.area() - v.secondary * v.width;
    }
    stand_still(0, volumes.front().left_depth, 0);
    for (std::size_t i = 1; i < volumes.size(); ++i) meet(i);
    stand_still(volumes.size() - 1, volumes.back().right_depth, 0);
  }
  std::vector<double> squares() const { return equations_.solved(); }
  bool joined(std::size_t i) const { return joined_[i]; }
  /// Drag of ground and walls on a volume for each unit of U², divided by the density.
  double drag(std::size_t i) const {
    return volumes_[i].f / 8 * volumes_[i].slope_factor * volumes_[i].width + wall_[i];
  }

 private:
  /// Volumes i − 1 and i meet over the smaller of their depths; the rest is wall.
  void meet(std::size_t i) {
    const Column& a = volumes_[i - 1];
    const Column& b = volumes_[i];
    const bool neighbours =
        b.x - b.width / 2 - (a.x + a.width / 2) < 2 * wet_piece_detail::same_station;
    const double meeting = neighbours ? std::min(a.right_depth, b.left_depth) : 0;
    stand_still(i - 1, a.right_depth, meeting);
    stand_still(i, b.left_depth, meeting);
    if (!(meeting > 0)) return;
    const double from_a = tie(a, a.right_depth, meeting, lambda_);
    const double from_b = tie(b, b.left_depth, meeting, lambda_);
    const double both = from_a * from_b / (from_a + from_b);
    equations_.here[i - 1] += both;
    equations_.after[i - 1] -= both;
    equations_.here[i] += both;
    equations_.before[i] -= both;
    joined_[i] = true;
  }
  /// A wall over what of the depth at a side of volume i meets no water.
  void stand_still(std::size_t i, double depth, double meeting) {
    const double wall = depth - meeting;
    if (!(wall > wet_piece_detail::same_station)) return;
    const double pull = tie(volumes_[i], depth, wall, lambda_);
    equations_.here[i] += pull;
    wall_[i] += pull;
  }

  const std::vector<Column>& volumes_;
  double lambda_;
  Tridiagonal equations_;
  std::vector<double> wall_;
  std::vector<bool> joined_;
};

}  // namespace

Expected<LateralDistribution> lateral_distribution(const Section& section,
                                                   const LateralWater& water) {
  const Problems problems = problems_of(section, water);
  if (!problems.empty()) return problems;
  const std::vector<Column> volumes = ColumnMaker(section, water).volumes();
  const Balance balance(volumes, water);
  const std::vector<double> squares = balance.squares();

  LateralDistribution result;
  double discharge = 0;
  for (std::size_t i = 0; i < volumes.size(); ++i) {
    const Column& v = volumes[i];
    if (!(squares[i] >= 0)) {
      return section_problem(
          "flows-backwards",
          fmt::format("With this secondary flow the water would run backwards at {:.4g} "
                      "m from the start of the stations.",
                      v.x),
          "secondary_flow", "a smaller share where the water is shallow");
    }
    LateralCell cell;
    cell.station = Length::meters(v.x);
    cell.width = Length::meters(v.width);
    cell.depth = Length::meters(v.depth);
    cell.velocity = Velocity::meters_per_second(std::sqrt(squares[i]));
    cell.shear = Stress::pascals(water.density_si * v.f / 8 * squares[i]);
    cell.friction_factor = v.f;
    cell.joined = balance.joined(i);
    result.cells.push_back(cell);
    discharge += cell.velocity.meters_per_second() * v.area();
    result.boundary_force_si += water.density_si * balance.drag(i) * squares[i];
    result.weight_force_si +=
        water.density_si * water.gravity_si * v.area() * water.energy_slope.ratio();
  }
  result.discharge = Discharge::cubic_meters_per_second(discharge);
  return result;
}

std::optional<LateralCell> LateralDistribution::at(Length station) const {
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const LateralCell& cell = cells[i];
    const Length half = 0.5 * cell.width + Length::meters(wet_piece_detail::same_station);
    if (station < cell.station - half || station > cell.station + half) continue;
    LateralCell found = cell;
    const bool before = station < cell.station;
    const bool has_neighbour = before ? cell.joined : i + 1 < cells.size() && cells[i + 1].joined;
    if (!has_neighbour) return found;
    const LateralCell& next = before ? cells[i - 1] : cells[i + 1];
    const double share = (station - cell.station) / (next.station - cell.station);
    const double v = cell.velocity.meters_per_second();
    const double between = v + share * (next.velocity.meters_per_second() - v);
    found.station = station;
    found.velocity = Velocity::meters_per_second(between);
    found.depth = cell.depth + (next.depth - cell.depth) * share;
    if (v > 0) found.shear = cell.shear * (between * between / (v * v));
    return found;
  }
  return std::nullopt;
}

const Source& lateral_distribution_source() {
  static const Source source{"Shiono & Knight, J. Fluid Mech. 222 (1991)",
                             "depth-averaged momentum with lateral exchange and secondary flow",
                             SourceStanding::memory};
  return source;
}

}  // namespace proofstone
