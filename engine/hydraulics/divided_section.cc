#include "engine/hydraulics/divided_section.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "engine/hydraulics/wet_pieces.h"

namespace proofstone {

namespace {

/// Σ of a power of n over the wetted perimeter, and its rate of change with the level.
struct WeightedRoughness {
  double sum = 0;
  double growth = 0;
  void add(const WetPiece& piece, double weight) {
    sum += piece.perimeter * weight;
    growth += piece.perimeter_growth * weight;
  }
};

/// Neighbouring ground of one roughness, for Lotter's sum.
struct Strip {
  double area = 0;
  double perimeter = 0;
  double perimeter_growth = 0;
  double width = 0;
  double n = 0;
};

class PartSums {
 public:
  explicit PartSums(CompositeRoughness composite) : composite_(composite) {}

  void add(const WetPiece& piece) {
    area_ += piece.area;
    perimeter_ += piece.perimeter;
    width_ += piece.width;
    perimeter_growth_ += piece.perimeter_growth;
    first_moment_ += piece.first_moment;
    const double n = piece.roughness;
    switch (composite_) {
      case CompositeRoughness::horton:
        weighted_.add(piece, n * std::sqrt(n));
        break;
      case CompositeRoughness::pavlovskii:
        weighted_.add(piece, n * n);
        break;
      case CompositeRoughness::lotter:
        add_to_strip(piece);
        break;
    }
  }

  PartState state() {
    PartState part;
    if (!(area_ > 0)) return part;
    part.area = area_;
    part.perimeter = perimeter_;
    part.width = width_;
    part.first_moment = first_moment_;
    switch (composite_) {
      case CompositeRoughness::horton:
        // With n = (Σ P·n^1.5 / P)^⅔ the perimeter falls out of A·R^⅔/n.
        part.conveyance = std::pow(area_, 5.0 / 3.0) / std::pow(weighted_.sum, 2.0 / 3.0);
        part.conveyance_growth =
            5.0 / 3.0 * width_ / area_ - 2.0 / 3.0 * weighted_.growth / weighted_.sum;
        break;
      case CompositeRoughness::pavlovskii:
        part.conveyance =
            manning_conveyance(area_, perimeter_, std::sqrt(weighted_.sum / perimeter_));
        part.conveyance_growth = 5.0 / 3.0 * width_ / area_ - perimeter_growth_ / perimeter_ / 6.0 -
                                 weighted_.growth / weighted_.sum / 2.0;
        break;
      case CompositeRoughness::lotter:
        close_strip();
        part.conveyance = strips_conveyance_;
        part.conveyance_growth = strips_growth_ / strips_conveyance_;
        break;
    }
    return part;
  }

 private:
  void add_to_strip(const WetPiece& piece) {
    const bool wall = !(piece.width > 0);
    if (wall) {
      // A wall counts with the ground it stands on, which may be the next one.
      Strip& ground = piece.foot_right ? wall_ahead_ : strip_;
      ground.perimeter += piece.perimeter;
      ground.perimeter_growth += piece.perimeter_growth;
      return;
    }
    if (strip_.width > 0 && std::abs(strip_.n - piece.roughness) > 1e-12) close_strip();
    strip_.area += piece.area;
    strip_.perimeter += piece.perimeter + wall_ahead_.perimeter;
    strip_.perimeter_growth += piece.perimeter_growth + wall_ahead_.perimeter_growth;
    strip_.width += piece.width;
    strip_.n = piece.roughness;
    wall_ahead_ = {};
  }
  void close_strip() {
    if (!(strip_.area > 0)) return;
    const double conveyance = manning_conveyance(strip_.area, strip_.perimeter, strip_.n);
    strips_conveyance_ += conveyance;
    strips_growth_ += conveyance * (5.0 / 3.0 * strip_.width / strip_.area -
                                    2.0 / 3.0 * strip_.perimeter_growth / strip_.perimeter);
    strip_ = {};
  }

  CompositeRoughness composite_;
  double area_ = 0;
  double perimeter_ = 0;
  double width_ = 0;
  double perimeter_growth_ = 0;
  double first_moment_ = 0;
  WeightedRoughness weighted_;
  Strip strip_;
  Strip wall_ahead_;
  double strips_conveyance_ = 0;
  double strips_growth_ = 0;
};

/// The stations that bound the parts, the ends of the section included.
std::vector<Length> part_bounds(const Section& section, std::vector<Length> divisions) {
  std::sort(divisions.begin(), divisions.end());
  std::vector<Length> bounds{section.left_end()};
  for (const Length division : divisions) {
    if (division > bounds.back() && division < section.right_end()) bounds.push_back(division);
  }
  bounds.push_back(section.right_end());
  return bounds;
}

}  // namespace

double manning_conveyance(double area, double perimeter, double n) {
  return area * std::pow(area / perimeter, 2.0 / 3.0) / n;
}

DividedSection::DividedSection(const Section& section, const std::vector<Length>& divisions,
                               CompositeRoughness composite,
                               std::vector<IneffectivePart> ineffective,
                               std::optional<double> energy_coefficient)
    : section_(section),
      bounds_(part_bounds(section, divisions)),
      composite_(composite),
      ineffective_(std::move(ineffective)),
      energy_coefficient_(energy_coefficient) {}

PartState DividedSection::part(std::size_t index, double level) const {
  PartSums sums(composite_);
  const Length water_level = Length::meters(level);
  const Length right = bounds_[index + 1];
  Length from = bounds_[index];
  const auto visit_to = [&](Length to) {
    if (!(to > from)) return;
    visit_wet_pieces(section_, from, to, water_level,
                     [&](const WetPiece& piece) { sums.add(piece); });
  };
  for (const IneffectivePart& still : ineffective_) {
    if (water_level > still.until || still.right <= from || still.left >= right) continue;
    visit_to(still.left);
    from = still.right;
  }
  visit_to(right);
  return sums.state();
}

double DividedSection::conveyance(double level) const {
  double sum = 0;
  for (std::size_t i = 0; i + 1 < bounds_.size(); ++i) sum += part(i, level).conveyance;
  return sum;
}

SectionState DividedSection::state(double level) const {
  SectionState state;
  state.level = level;
  double conveyance_growth = 0, cubes = 0, cubes_growth = 0, squares = 0;
  for (std::size_t i = 0; i + 1 < bounds_.size(); ++i) {
    const PartState p = part(i, level);
    if (i == 0) state.first_part_conveyance = p.conveyance;
    state.last_part_conveyance = p.conveyance;
    if (!(p.area > 0)) continue;
    const double k = p.conveyance;
    const double cube = k * k * k / (p.area * p.area);
    state.area += p.area;
    state.width += p.width;
    state.conveyance += k;
    state.first_moment += p.first_moment;
    conveyance_growth += k * p.conveyance_growth;
    cubes += cube;
    cubes_growth += cube * (3 * p.conveyance_growth - 2 * p.width / p.area);
    squares += k * k / p.area;
  }
  const double area = state.area;
  const double k = state.conveyance;
  if (!(area > 0)) return state;
  state.alpha = cubes * area * area / (k * k * k);
  state.beta = squares * area / (k * k);
  double alpha_growth =
      state.alpha * (cubes_growth / cubes + 2 * state.width / area - 3 * conveyance_growth / k);
  if (energy_coefficient_) {
    state.alpha = *energy_coefficient_;
    state.beta = 1 + (state.alpha - 1) / 3;  // Chow (1959), sec. 2-7, for a like velocity pattern
    alpha_growth = 0;
  }
  state.criticality = state.alpha * state.width / (g_si * area * area * area) -
                      alpha_growth / (2 * g_si * area * area);
  return state;
}

double DividedSection::energy_growth(double level, double discharge) const {
  const SectionState at = state(level);
  if (!(at.area > 0)) return std::numeric_limits<double>::quiet_NaN();
  return 1 - discharge * discharge * at.criticality;
}

SectionFlow DividedSection::flow(Length water_level) const {
  SectionFlow flow;
  flow.water_level = water_level;
  flow.wet = section_.wet(water_level);
  double area = 0, perimeter = 0, width = 0, moment = 0;
  for (std::size_t i = 0; i + 1 < bounds_.size(); ++i) {
    const PartState state = part(i, water_level.meters());
    FlowPart part;
    part.left = bounds_[i];
    part.right = bounds_[i + 1];
    part.area = Area::square_meters(state.area);
    part.wetted_perimeter = Length::meters(state.perimeter);
    part.top_width = Length::meters(state.width);
    part.conveyance_si = state.conveyance;
    if (state.area > 0) {
      const double with_n_of_one = manning_conveyance(state.area, state.perimeter, 1);
      part.roughness = Dimensionless::number(with_n_of_one / state.conveyance);
    }
    flow.conveyance_si += state.conveyance;
    area += state.area;
    perimeter += state.perimeter;
    width += state.width;
    moment += state.first_moment;
    flow.parts.push_back(part);
  }
  if (!ineffective_.empty()) {  // only what flows
    flow.wet.area = Area::square_meters(area);
    flow.wet.wetted_perimeter = Length::meters(perimeter);
    flow.wet.top_width = Length::meters(width);
    flow.wet.first_moment_si = moment;
  }
  if (flow.conveyance_si > 0) {
    flow.energy_coefficient = Dimensionless::number(state(water_level.meters()).alpha);
  }
  return flow;
}

}  // namespace proofstone
