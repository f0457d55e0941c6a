#include "engine/evidence/measured_gradation.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/weighted_curve.h"

namespace proofstone {

double MeasuredGradation::effective_stones_at(Length size) const {
  const auto& points = curve.points();
  if (effective_at_points.size() != points.size()) return effective_stones;
  if (size <= points.front().size) return effective_at_points.front();
  if (size >= points.back().size) {
    const double ratio = points.back().size / size;
    return effective_at_points.back() * (picked_on_grid ? 1 : ratio * ratio * ratio);
  }
  const auto above = std::upper_bound(
      points.begin(), points.end(), size,
      [](Length wanted, const GradationPoint& point) { return wanted < point.size; });
  const auto i = static_cast<std::size_t>(above - points.begin());
  const double part =
      std::log(size / points[i - 1].size) / std::log(points[i].size / points[i - 1].size);
  return effective_at_points[i - 1] + part * (effective_at_points[i] - effective_at_points[i - 1]);
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
  for (std::size_t i = 0; i < looks.size(); ++i) {
    const auto& look = looks[i];
    together.effective_stones += look.effective_stones;
    together.stones += look.stones;
    together.picked_on_grid = together.picked_on_grid && look.picked_on_grid;
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
  // Var F = Σ (n/N)²·F(1 − F)/n(D), so that N²/Σ(n²/n(D)) equal stones stand behind it.
  for (const auto& point : together.curve.points()) {
    double sum = 0;
    for (const auto& look : looks) {
      sum += look.effective_stones * look.effective_stones / look.effective_stones_at(point.size);
    }
    together.effective_at_points.push_back(together.effective_stones * together.effective_stones /
                                           sum);
  }
  together.steps.computed("ne", "effective stones of all looks; F = Σ ne·F / Σ ne at every size",
                          "Σ ne", measure(together.effective_stones));
  return together;
}

}  // namespace proofstone
