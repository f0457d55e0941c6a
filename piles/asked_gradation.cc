#include "piles/asked_gradation.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/rock/middle_curve.h"

namespace proofstone::piles {
namespace {

struct Spread {
  const char* name;
  std::array<double, 5> multiples;  ///< of D50, at 0, 15, 50, 85 and 100 percent smaller
};

constexpr std::array<double, 5> percents{0, 15, 50, 85, 100};
constexpr std::array<Spread, 4> spreads{{{"very-uniform", {0.72, 0.85, 1, 1.15, 1.3}},
                                         {"class-type", {0.4, 0.72, 1, 1.4, 2.0}},
                                         {"broad", {0.3, 0.55, 1, 1.25, 1.5}},
                                         {"very-broad", {0.2, 0.42, 1, 1.35, 1.75}}}};

/// The curve with a smallest stone and a largest one, all sizes times `factor`.
std::vector<GradationPoint> closed(const Gradation& curve, Length d50, double factor) {
  std::vector<GradationPoint> points;
  for (const GradationPoint& point : curve.points()) {
    points.push_back({point.size * factor, point.percent_smaller});
  }
  if (points.front().percent_smaller > 0) {
    const Length smallest = std::max(points.front().size * 0.6, d50 * (0.2 * factor));
    if (smallest < points.front().size) {
      points.insert(points.begin(), {smallest, 0});
    } else {
      points.front().percent_smaller = 0;
    }
  }
  if (points.back().percent_smaller < 100) points.push_back({points.back().size * 1.15, 100});
  return points;
}

std::string words_of(const RockClass& rock_class, RockAgainstClass against) {
  const std::string name = rock_class.family + ", " + rock_class.name;
  switch (against) {
    case RockAgainstClass::inside:
      return name + ": inside its band";
    case RockAgainstClass::too_fine:
      return name + ": too fine";
    case RockAgainstClass::too_coarse:
      return name + ": too coarse";
  }
  return name;
}

}  // namespace

Expected<AskedGradation> AskedGradation::of_spread(const std::string& spread, Length d50) {
  for (const Spread& known : spreads) {
    if (known.name != spread) continue;
    std::vector<GradationPoint> points;
    for (std::size_t i = 0; i < percents.size(); ++i) {
      points.push_back({d50 * known.multiples[i], percents[i]});
    }
    auto curve = Gradation::make(std::move(points), GradationBasis{});
    if (!curve) return curve.problems();
    return AskedGradation(std::move(*curve), d50, spread);
  }
  return Problem{"unknown-spread", "No spread is called \"" + spread + "\".", "", "--spread",
                 "very-uniform, class-type, broad, very-broad"};
}

Expected<AskedGradation> AskedGradation::of_class(const RockClass& rock_class,
                                                  RockAgainstClass against) {
  const auto middle = middle_curve(rock_class.band);
  if (!middle) return middle.problems();
  const auto fine = rock_class.band.smallest_size_at(50);
  const auto coarse = rock_class.band.largest_size_at(50);
  const auto d50 = middle->size_at(50);
  if (!fine || !coarse || !d50) {
    return Problem{"band-open", rock_class.name + " does not limit D50 on both sides.", "",
                   "--class", "a class with a smallest and a largest D50"};
  }
  const double half_width = std::sqrt(*coarse / *fine);
  double factor = 1;
  if (against == RockAgainstClass::too_fine) factor = std::pow(half_width, -3);
  if (against == RockAgainstClass::too_coarse) factor = std::pow(half_width, 3);
  auto curve = Gradation::make(closed(*middle, *d50, factor), middle->basis());
  if (!curve) return curve.problems();
  return AskedGradation(std::move(*curve), *d50 * factor, words_of(rock_class, against));
}

std::vector<AskedGradation::Slice> AskedGradation::slices() const {
  constexpr int slices_a_piece = 40;
  std::vector<Slice> slices;
  const auto& points = curve_.points();
  for (std::size_t i = 1; i < points.size(); ++i) {
    const double ratio = std::pow(points[i].size / points[i - 1].size, 1.0 / slices_a_piece);
    const double mass =
        (points[i].percent_smaller - points[i - 1].percent_smaller) / slices_a_piece;
    for (int k = 0; k < slices_a_piece; ++k) {
      const double low = points[i - 1].size.meters() * std::pow(ratio, k);
      const double size = low * std::sqrt(ratio);
      slices.push_back({size, ratio, mass / (size * size * size)});
    }
  }
  return slices;
}

double AskedGradation::mean_cube() const {
  double cubes = 0;
  double number = 0;
  for (const Slice& slice : slices()) {
    cubes += slice.number * std::pow(slice.size, 3);
    number += slice.number;
  }
  return cubes / number;
}

std::vector<Length> AskedGradation::draw_sizes(int count, Draws& draws) const {
  const std::vector<Slice> all = slices();
  double number = 0;
  for (const Slice& slice : all) number += slice.number;
  std::vector<Length> sizes;
  std::size_t at = 0;
  double below = 0;
  for (int i = 0; i < count; ++i) {
    const double wanted = (i + draws.uniform()) / count * number;
    while (at + 1 < all.size() && below + all[at].number < wanted) below += all[at++].number;
    const double within = std::min(1.0, (wanted - below) / all[at].number);
    sizes.push_back(Length::meters(all[at].size * std::pow(all[at].ratio, within - 0.5)));
  }
  return sizes;
}

}  // namespace proofstone::piles
