#include "simulation/known_pile.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <map>

namespace proofstone {
namespace {

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

MeasuredGradation in_bins(const std::vector<Length>& sizes, const Observer& observer) {
  const double step = std::log(observer.bin_ratio);
  std::map<int, int> counts;
  for (const Length size : sizes) {
    ++counts[static_cast<int>(std::ceil(std::log(size.meters()) / step))];
  }
  std::vector<CountBin> bins;
  const auto edge = [&](int number) { return Length::meters(std::exp(number * step)); };
  for (int number = counts.begin()->first; number <= counts.rbegin()->first; ++number) {
    bins.push_back({edge(number - 1), edge(number), counts[number]});
  }
  return *gradation_from_bins(bins, observer.picking);
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
  if (observer.bin_ratio > 1) return in_bins(sizes, observer);
  return *gradation_from_stones(sizes, observer.picking);
}

}  // namespace proofstone
