#include "engine/acceptance/two_piles.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/acceptance/mean_and_deviation.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

using DescribedTwoPiles = TypedMethod<TwoPilesInputs, TwoPilesResult>;

Source distance_source() {
  return {"Schröer & Trenkler 1995, Computational Statistics & Data Analysis 20, 185–202",
          "exact distribution of the two-sample statistic with ties, as in the documentation of R",
          SourceStanding::published};
}
Source rank_source() {
  return {"Scholz & Stephens 1987, Journal of the American Statistical Association 82, 918–924",
          "k-sample Anderson–Darling tests, mid-ranks; Tables 1 and 2", SourceStanding::memory};
}

/// Variance of A² when all samples are the same rock (Scholz & Stephens 1987, eq. 4).
double variance_of_statistic(const std::vector<std::vector<double>>& samples, double N) {
  const auto k = static_cast<double>(samples.size());
  double H = 0;
  for (const auto& sample : samples) H += 1 / static_cast<double>(sample.size());
  double h = 0;
  double g = 0;
  double sum = 0;  // Σ 1/(N − j) from 1 to i
  for (int i = 1; i < static_cast<int>(N); ++i) {
    h += 1.0 / i;
    if (i + 1 < static_cast<int>(N)) {
      sum += 1 / (N - i);
      g += sum / (i + 1);
    }
  }
  const double a = (4 * g - 6) * (k - 1) + (10 - 6 * g) * H;
  const double b = (2 * g - 4) * k * k + 8 * h * k + (2 * g - 14 * h - 4) * H - 8 * h + 4 * g - 6;
  const double c = (6 * h + 2 * g - 2) * k * k + (4 * h - 4 * g + 6) * k + (2 * h - 6) * H + 4 * h;
  const double d = (2 * h + 6) * k * k - 4 * h * k;
  return (((a * N + b) * N + c) * N + d) / ((N - 1) * (N - 2) * (N - 3));
}

/// Chance of a standardised statistic at least as large: between the printed points straight in
/// log(chance), beyond them the last printed one.
double chance_of(double standardised, double k) {
  constexpr std::array<double, 7> chances{0.25, 0.10, 0.05, 0.025, 0.01, 0.005, 0.001};
  constexpr std::array<double, 7> b0{0.675, 1.281, 1.645, 1.960, 2.326, 2.573, 3.085};
  constexpr std::array<double, 7> b1{-0.245, 0.250, 0.678, 1.149, 1.822, 2.364, 3.615};
  constexpr std::array<double, 7> b2{-0.105, -0.305, -0.362, -0.391, -0.396, -0.345, -0.154};
  const double m = k - 1;
  const auto point = [&](std::size_t i) { return b0[i] + b1[i] / std::sqrt(m) + b2[i] / m; };
  if (standardised <= point(0)) return chances.front();
  for (std::size_t i = 1; i < chances.size(); ++i) {
    if (standardised > point(i)) continue;
    const double part = (standardised - point(i - 1)) / (point(i) - point(i - 1));
    return chances[i - 1] * std::pow(chances[i] / chances[i - 1], part);
  }
  return chances.back();
}

DescribedTwoPiles build_two_piles() {
  MethodDescription about;
  about.id = "two-piles";
  about.title = "Two piles compared";
  about.purpose =
      "Whether stones measured one by one on two piles, on two sides of one pile or on two loads "
      "can "
      "come from the same rock.";
  about.group = MethodGroup::evidence;
  about.sources = {distance_source(), rank_source()};
  about.cautions = {
      "Not to differ is no proof of sameness: with few stones only large differences show.",
      "The chance of the rank statistic is read between printed points of 25 % and 0.1 %; beyond "
      "them it is that point.",
      "Rounded sizes are ties and are counted as such."};
  DescribedTwoPiles method(std::move(about), &two_piles);
  method.required_list({"first", "x", "sizes of the stones of the first, in any one unit"},
                       &TwoPilesInputs::first, unit::number, AllowedRange::positive_to(1e6));
  method.required_list({"second", "y", "sizes of the stones of the second"},
                       &TwoPilesInputs::second, unit::number, AllowedRange::positive_to(1e6));
  method.output({"distance", "D", "largest distance between both curves"},
                &TwoPilesResult::distance, unit::number);
  method.output({"distance_chance", "P(D)", "chance of it with the same rock"},
                &TwoPilesResult::distance_chance, unit::number);
  method.output({"rank_statistic", "A²", "Anderson–Darling statistic"},
                &TwoPilesResult::rank_statistic, unit::number);
  method.output({"rank_standardised", "T", "the same, standardised"},
                &TwoPilesResult::rank_standardised, unit::number);
  method.output({"rank_chance", "P(T)", "chance of it with the same rock"},
                &TwoPilesResult::rank_chance, unit::number);
  return method;
}

constexpr std::size_t most_stones = 5000;

}  // namespace

Expected<RankDistance> rank_distance(const std::vector<std::vector<double>>& samples) {
  std::vector<double> all;
  for (const auto& sample : samples) all.insert(all.end(), sample.begin(), sample.end());
  std::sort(all.begin(), all.end());
  if (all.size() < 4 || !(all.front() < all.back())) {
    return Problem{"nothing-to-compare", "All stones have the same size, or there are too few.", "",
                   "/first", "at least four stones of different sizes"};
  }
  const auto N = static_cast<double>(all.size());
  RankDistance result;
  for (const auto& sample : samples) {
    const auto n = static_cast<double>(sample.size());
    double sum = 0;
    for (auto at = all.begin(); at != all.end();) {
      const auto next = std::upper_bound(at, all.end(), *at);
      const auto equal = static_cast<double>(next - at);
      const double below = static_cast<double>(at - all.begin()) + equal / 2;
      const auto own = static_cast<double>(std::count(sample.begin(), sample.end(), *at));
      const auto smaller = static_cast<double>(
          std::count_if(sample.begin(), sample.end(), [&](double value) { return value < *at; }));
      const double mine = smaller + own / 2;
      const double top = N * mine - n * below;
      sum += equal * top * top / (below * (N - below) - N * equal / 4);
      at = next;
    }
    result.statistic += sum / n;
  }
  result.statistic *= (N - 1) / (N * N);
  const auto k = static_cast<double>(samples.size());
  result.standardised = (result.statistic - (k - 1)) / std::sqrt(variance_of_statistic(samples, N));
  result.chance = chance_of(result.standardised, k);
  return result;
}

Expected<TwoPilesResult> two_piles(const TwoPilesInputs& in, Steps& steps) {
  const auto first = numbers_of(in.first);
  const auto second = numbers_of(in.second);
  if (first.empty() || second.empty() || first.size() + second.size() > most_stones) {
    return Problem{"too-few-values", "Both piles need stones, and not more than can be compared.",
                   "", first.empty() ? "/first" : "/second", "from 1 to 5,000 stones in all"};
  }
  const auto ranks = rank_distance({first, second});
  if (!ranks) return ranks.problems();
  const auto distance = largest_distance(first, second);
  steps.computed("D", "largest distance between both curves", "max |F1 − F2|",
                 measure(distance.distance));
  steps.computed("P(D)", "chance of it with the same rock",
                 "all ways to deal the stones, with ties", measure(distance.chance),
                 distance_source().sentence());
  steps.computed("A²", "Anderson–Darling statistic",
                 "(N − 1)/N²·Σ_i (1/n_i)·Σ_j l_j·(N·M_ij − n_i·B_j)²/[B_j·(N − B_j) − N·l_j/4]",
                 measure(ranks->statistic), rank_source().sentence());
  steps.computed("T", "standardised", "(A² − (k − 1))/σ", measure(ranks->standardised),
                 rank_source().sentence());
  steps.computed("P(T)", "chance of it with the same rock", "between printed points",
                 measure(ranks->chance), rank_source().sentence());
  return TwoPilesResult{
      Dimensionless::number(distance.distance), Dimensionless::number(distance.chance),
      Dimensionless::number(ranks->statistic), Dimensionless::number(ranks->standardised),
      Dimensionless::number(ranks->chance)};
}

const Method& two_piles_method() {
  static const DescribedTwoPiles method = build_two_piles();
  return method;
}

}  // namespace proofstone
