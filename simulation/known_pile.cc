#include "simulation/known_pile.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <map>

#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

constexpr Density common_rock = Density::kilograms_per_cubic_meter(2650);
/// Standard deviation of ln(mass) among stones of one size.
constexpr double scatter_of_shape = 0.15;

/// Where stones picked one each lie: a mass share s at size D is s·D^−power in number (Kellerhals
/// and Bray 1971), so that the conversion by the same power undoes it.
int power_of(StonePicking picking) {
  switch (picking) {
    case StonePicking::grid:
      return 0;
    case StonePicking::line:
      return 1;
    case StonePicking::area:
      return 2;
    case StonePicking::whole:
      return 3;
  }
  return 0;
}

double rounded(double size, double to) {
  return to > 0 ? std::max(to, to * std::floor(size / to + 0.5)) : size;
}

/// Stones by the number of their bin, from the smallest bin filled to the largest.
std::map<int, std::vector<Length>> sorted_into_bins(const std::vector<Length>& sizes, double step) {
  std::map<int, std::vector<Length>> bins;
  for (const Length size : sizes) {
    bins[static_cast<int>(std::ceil(std::log(size.meters()) / step))].push_back(size);
  }
  for (int number = bins.begin()->first; number < bins.rbegin()->first; ++number) bins[number];
  return bins;
}

MeasuredGradation in_bins(const std::vector<Length>& sizes, const Observer& observer,
                          Draws& draws) {
  const double step = std::log(observer.bin_ratio);
  const auto edge = [&](int number) { return Length::meters(std::exp(number * step)); };
  std::vector<CountBin> bins;
  std::vector<WeighedGroup> groups;
  for (const auto& [number, stones] : sorted_into_bins(sizes, step)) {
    const int counted = static_cast<int>(stones.size());
    bins.push_back({edge(number - 1), edge(number), counted});
    Mass mass;
    for (const Length size : stones) {
      if (!observer.weighed) break;
      mass = mass + std::exp(scatter_of_shape * draws.normal()) *
                        stone_mass(size, SizeMeaning::intermediate_axis, common_rock);
    }
    groups.push_back({edge(number - 1), edge(number), mass, counted});
  }
  return observer.weighed ? *gradation_from_weighed(groups, SizeMeaning::intermediate_axis)
                          : *gradation_from_bins(bins, observer.picking);
}

}  // namespace

double KnownPile::percent_smaller(Length size) const {
  // The middle of 60 slices from one end to the other: to 0.001 % for the segregations in use.
  constexpr int slices = 60;
  const boost::math::normal standard;
  double sum = 0;
  for (int i = 0; i < slices; ++i) {
    const double place = 2 * (i + 0.5) / slices - 1;
    const double z = (std::log(size / median) - segregation * place) / spread;
    sum += boost::math::cdf(standard, z);
  }
  return 100 * sum / slices;
}

Length KnownPile::size_at(double percent) const {
  double low = median.meters() / 100;
  double high = median.meters() * 100;
  for (int i = 0; i < 80; ++i) {
    const double middle = std::sqrt(low * high);
    (percent_smaller(Length::meters(middle)) < percent ? low : high) = middle;
  }
  return Length::meters(high);
}

std::vector<Length> read_stones(const KnownPile& pile, const Observer& observer, Draws& draws) {
  const double shift = power_of(observer.picking) * pile.spread * pile.spread;
  std::vector<Length> sizes;
  sizes.reserve(static_cast<std::size_t>(observer.stones));
  for (int i = 0; i < observer.stones; ++i) {
    const double along = draws.uniform();
    const double place = observer.one_end ? (1 + 2 * along) / 3 : 2 * along - 1;
    const double true_size = draws.normal();
    const double error = observer.reading_error > 0 ? observer.reading_error * draws.normal() : 0;
    const double logarithm = pile.segregation * place + pile.spread * true_size - shift + error;
    sizes.push_back(Length::meters(
        rounded(pile.median.meters() * std::exp(logarithm), observer.rounding.meters())));
  }
  return sizes;
}

MeasuredGradation look_at(const KnownPile& pile, const Observer& observer, Draws& draws) {
  const auto sizes = read_stones(pile, observer, draws);
  if (observer.bin_ratio > 1) return in_bins(sizes, observer, draws);
  return *gradation_from_stones(sizes, observer.picking);
}

}  // namespace proofstone
