#include "engine/hydraulics/divided_section.h"

#include <algorithm>
#include <cmath>

#include "engine/hydraulics/wet_pieces.h"

namespace proofstone {

namespace {

constexpr double g = standard_gravity.meters_per_second_squared();

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
    if (!wall && strip_.width > 0 && std::abs(strip_.n - piece.roughness) > 1e-12) close_strip();
    strip_.area += piece.area;
    strip_.perimeter += piece.perimeter;
    strip_.perimeter_growth += piece.perimeter_growth;
    strip_.width += piece.width;
    if (!wall) strip_.n = piece.roughness;
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
  WeightedRoughness weighted_;
  Strip strip_;
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
                               CompositeRoughness composite)
    : section_(section), bounds_(part_bounds(section, divisions)), composite_(composite) {}

PartState DividedSection::part(std::size_t index, double level) const {
  PartSums sums(composite_);
  visit_wet_pieces(section_, bounds_[index], bounds_[index + 1], Length::meters(level),
                   [&](const WetPiece& piece) { sums.add(piece); });
  return sums.state();
}

double DividedSection::conveyance(double level) const {
  double sum = 0;
  for (std::size_t i = 0; i + 1 < bounds_.size(); ++i) sum += part(i, level).conveyance;
  return sum;
}

double DividedSection::energy_growth(double level, double discharge) const {
  double area = 0, width = 0, conveyance = 0, conveyance_growth = 0, cubes = 0, cubes_growth = 0;
  for (std::size_t i = 0; i + 1 < bounds_.size(); ++i) {
    const PartState p = part(i, level);
    if (!(p.area > 0)) continue;
    const double k = p.conveyance;
    const double cube = k * k * k / (p.area * p.area);
    area += p.area;
    width += p.width;
    conveyance += k;
    conveyance_growth += k * p.conveyance_growth;
    cubes += cube;
    cubes_growth += cube * (3 * p.conveyance_growth - 2 * p.width / p.area);
  }
  const double alpha = cubes * area * area / (conveyance * conveyance * conveyance);
  const double alpha_growth =
      alpha * (cubes_growth / cubes + 2 * width / area - 3 * conveyance_growth / conveyance);
  const double velocity = discharge / area;
  return 1 - alpha * velocity * velocity * width / (g * area) +
         velocity * velocity / (2 * g) * alpha_growth;
}

}  // namespace proofstone
