#include "engine/evidence/measured_gradation.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/weighted_curve.h"
#include "engine/finding/stable_order.h"

namespace proofstone {

namespace {

/// Where a size lies among sizes that rise: between `above` − 1 and `above`, so far of the way in
/// log(size). Sizes beyond the ends lie at the ends.
struct PlaceAmong {
  std::size_t above = 1;
  double part = 0;
};

template <class Sized>
PlaceAmong place_among(const std::vector<Sized>& sizes, Length size) {
  if (size <= sizes.front().size) return {1, 0};
  if (size >= sizes.back().size) return {sizes.size() - 1, 1};
  const auto above =
      std::upper_bound(sizes.begin(), sizes.end(), size,
                       [](Length wanted, const Sized& one) { return wanted < one.size; });
  const auto i = static_cast<std::size_t>(above - sizes.begin());
  const Length below = sizes[i - 1].size;
  return {i, std::log(size / below) / std::log(sizes[i].size / below)};
}

double between(double from, double to, double part) { return from + part * (to - from); }

/// Percent by which the other way to draw the curve lies above it.
double read_otherwise_by(const std::vector<ReadingError>& errors, Length size) {
  if (errors.size() < 2) return 0;
  const auto place = place_among(errors, size);
  return between(errors[place.above - 1].percent, errors[place.above].percent, place.part);
}

}  // namespace

double MeasuredGradation::effective_stones_at(Length size) const {
  const auto& points = curve.points();
  if (effective_at_points.size() != points.size()) return effective_stones;
  const bool within_ranges = reading_errors.size() > 1 && reading_errors.back().stones > 0;
  if (within_ranges && size <= points.back().size) {
    const auto place = place_among(reading_errors, size);
    return between(reading_errors[place.above - 1].stones, reading_errors[place.above].stones,
                   place.part);
  }
  const auto place = place_among(points, size);
  const double there =
      between(effective_at_points[place.above - 1], effective_at_points[place.above], place.part);
  if (size > points.back().size && !picked_on_grid) {
    const double ratio = points.back().size / size;
    return there * ratio * ratio * ratio;
  }
  return there;
}

double MeasuredGradation::reading_error_at(Length size) const {
  return std::abs(read_otherwise_by(reading_errors, size));
}

double MeasuredGradation::percent_read_halfway(Length size) const {
  return curve.percent_smaller(size) + 0.5 * read_otherwise_by(reading_errors, size);
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
  const auto place = place_among(points, size);
  const double there =
      between(lasting_at_points[place.above - 1], lasting_at_points[place.above], place.part);
  return std::min(there, 1 / effective_stones_at(size));
}

namespace {

struct EvidenceAtSize {
  double stones = 0;
  double lasting = 0;
  double misread = 0;
};

/// Var F = Σ (n/N)²·F(1 − F)/n(D), so that N²/Σ(n²/n(D)) equal stones stand behind it. What may be
/// wrong for all stones of a look alike, or misread on its curve, is taken to be wrong the same way
/// in every look. `all` is N.
EvidenceAtSize evidence_of_all(const std::vector<MeasuredGradation>& looks, double all,
                               Length size) {
  EvidenceAtSize behind;
  double sum = 0;
  double lasting = 0;
  for (const auto& look : looks) {
    const double stays = look.lasting_at(size);
    const double share = look.effective_stones / all;
    sum += share * share * (1 / look.effective_stones_at(size) - stays);
    lasting += share * std::sqrt(stays);
    behind.misread += share * read_otherwise_by(look.reading_errors, size);
  }
  behind.lasting = lasting * lasting;
  behind.stones = 1 / (sum + behind.lasting);
  return behind;
}

}  // namespace

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
  bool any_lasting = false;
  for (const auto& point : together.curve.points()) {
    const auto behind = evidence_of_all(looks, together.effective_stones, point.size);
    any_lasting = any_lasting || behind.lasting > 0;
    together.effective_at_points.push_back(behind.stones);
    together.lasting_at_points.push_back(behind.lasting);
  }
  if (!any_lasting) together.lasting_at_points.clear();
  for (const auto& look : looks) {
    for (const auto& one : look.reading_errors) together.reading_errors.push_back(one);
  }
  sort_in_order(together.reading_errors.begin(), together.reading_errors.end(),
                [](const ReadingError& a, const ReadingError& b) { return a.size < b.size; });
  for (auto& one : together.reading_errors) {
    const auto behind = evidence_of_all(looks, together.effective_stones, one.size);
    one.percent = behind.misread;
    one.stones = behind.stones;
  }
  together.steps.computed("ne", "effective stones of all looks; F = Σ ne·F / Σ ne at every size",
                          "Σ ne", measure(together.effective_stones));
  return together;
}

}  // namespace proofstone
