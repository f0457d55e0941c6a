#include "engine/evidence/measured_gradation.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/weighted_curve.h"

namespace proofstone {

namespace {

/// Between the points of the curve straight in log(size), beyond them the first or the last value.
double at_size(const std::vector<double>& values, const std::vector<GradationPoint>& points,
               Length size) {
  if (size <= points.front().size) return values.front();
  if (size >= points.back().size) return values.back();
  const auto above = std::upper_bound(
      points.begin(), points.end(), size,
      [](Length wanted, const GradationPoint& point) { return wanted < point.size; });
  const auto i = static_cast<std::size_t>(above - points.begin());
  const double part =
      std::log(size / points[i - 1].size) / std::log(points[i].size / points[i - 1].size);
  return values[i - 1] + part * (values[i] - values[i - 1]);
}

}  // namespace

double MeasuredGradation::effective_stones_at(Length size) const {
  const auto& points = curve.points();
  if (effective_at_points.size() != points.size()) return effective_stones;
  const double there = at_size(effective_at_points, points, size);
  if (size <= points.back().size || picked_on_grid) return there;
  const double ratio = points.back().size / size;
  return there * ratio * ratio * ratio;
}

double MeasuredGradation::effective_stones_at(Length size, double times) const {
  const double now = effective_stones_at(size);
  const double lasting = lasting_at(size);
  if (!(lasting > 0)) return now * times;
  return 1 / ((1 / now - lasting) / times + lasting);
}

double MeasuredGradation::lasting_at(Length size) const {
  const auto& points = curve.points();
  if (lasting_at_points.size() != points.size()) return 0;
  return std::min(at_size(lasting_at_points, points, size), 1 / effective_stones_at(size));
}

Expected<MeasuredGradation> pooled(const std::vector<MeasuredGradation>& looks) {
  std::vector<BlendPart> parts;
  parts.reserve(looks.size());
  for (const auto& look : looks) parts.push_back({look.curve, look.effective_stones});
  auto curve = weighted_curve(parts, "look");
  if (!curve) return curve.problems();
  if (looks.size() == 1) return looks.front();

  MeasuredGradation together{std::move(*curve)};
  together.method = fmt::format("{} looks together", looks.size());
  together.picked_on_grid = true;
  together.smallest_known = false;
  together.largest_known = false;
  for (std::size_t i = 0; i < looks.size(); ++i) {
    const auto& look = looks[i];
    together.effective_stones += look.effective_stones;
    together.stones += look.stones;
    together.photos += look.photos;
    together.picked_on_grid = together.picked_on_grid && look.picked_on_grid;
    together.smallest_known = together.smallest_known || look.smallest_known;
    together.largest_known = together.largest_known || look.largest_known;
    if (look.seen_larger_than) {
      together.seen_larger_than =
          std::max(together.seen_larger_than.value_or(Length{}), *look.seen_larger_than);
    }
    if (look.seen_smaller_than) {
      together.seen_smaller_than = std::min(
          together.seen_smaller_than.value_or(*look.seen_smaller_than), *look.seen_smaller_than);
    }
    for (const auto& caution : look.cautions) {
      if (std::find(together.cautions.begin(), together.cautions.end(), caution) ==
          together.cautions.end()) {
        together.cautions.push_back(caution);
      }
    }
    together.steps.given(fmt::format("ne{}", i + 1),
                         fmt::format("effective stones of look {}: {}", i + 1, look.method),
                         measure(look.effective_stones));
  }
  // Var F = Σ (n/N)²·F(1 − F)/n(D), so that N²/Σ(n²/n(D)) equal stones stand behind it. What may
  // be wrong for all stones of a look alike is taken to be wrong the same way in every look.
  bool any_lasting = false;
  for (const auto& point : together.curve.points()) {
    double sum = 0;
    double lasting = 0;
    for (const auto& look : looks) {
      const double stays = look.lasting_at(point.size);
      const double share = look.effective_stones / together.effective_stones;
      sum += share * share * (1 / look.effective_stones_at(point.size) - stays);
      lasting += share * std::sqrt(stays);
    }
    any_lasting = any_lasting || lasting > 0;
    together.effective_at_points.push_back(1 / (sum + lasting * lasting));
    together.lasting_at_points.push_back(lasting * lasting);
  }
  if (!any_lasting) together.lasting_at_points.clear();
  together.steps.computed("ne", "effective stones of all looks; F = Σ ne·F / Σ ne at every size",
                          "Σ ne", measure(together.effective_stones));
  return together;
}

}  // namespace proofstone
