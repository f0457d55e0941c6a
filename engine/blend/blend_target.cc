#include "engine/blend/blend_target.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/rock/limit_curve.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

using Sense = BandCondition::Sense;

/// "At most 100 %" and "at least 0 %" rule nothing out.
bool rules_nothing_out(const BandCondition& condition) {
  return condition.sense == Sense::at_most ? condition.percent >= 100 : condition.percent <= 0;
}

struct Known {
  double percent = 0;
  bool cut_short = false;
};

Known careful_percent(const Gradation& curve, Length size, Sense sense) {
  const auto& points = curve.points();
  constexpr double rounding = 1e-9;
  const bool below = size < points.front().size * (1 - rounding);
  const bool above = size > points.back().size * (1 + rounding);
  const double first = points.front().percent_smaller;
  const double last = points.back().percent_smaller;
  if (below && first > 0) return {sense == Sense::at_most ? first : 0, true};
  if (above && last < 100) return {sense == Sense::at_most ? 100 : last, true};
  return {curve.percent_smaller(size), false};
}

Problems problems_of(const std::vector<OfferedMaterial>& materials, const GradationBand& band) {
  Problems problems;
  if (materials.empty()) {
    problems.push_back(
        {"no-material", "There is no material to blend.", "", "", "at least one material"});
    return problems;
  }
  const auto& first = materials.front().gradation.basis();
  for (const auto& material : materials) {
    if (material.gradation.basis().percent != PercentOf::mass) {
      problems.push_back({"percent-by-count", "Percents by count cannot be blended by mass.", "",
                          material.name, "percents by mass"});
    } else if (material.gradation.basis().size != first.size) {
      problems.push_back({"different-basis", "Its sizes mean something else than those before it.",
                          "", material.name, "one meaning of size throughout"});
    }
  }
  const auto& conditions = band.conditions();
  if (std::any_of(conditions.begin(), conditions.end(), [&](const BandCondition& condition) {
        return percent_of(condition, band.basis()) != PercentOf::mass;
      })) {
    problems.push_back({"different-basis",
                        "The band is stated by count; a blend is known by mass only.", "", "band",
                        "a band by mass"});
  }
  return problems;
}

void add_middle(BlendTarget& target, const std::vector<OfferedMaterial>& materials,
                const GradationBand& band, Length size) {
  constexpr double same = 1e-9;
  for (const auto& known : target.middle) {
    if (std::abs(known.size / size - 1) < same) return;
  }
  MiddlePoint point;
  point.size = size;
  int limits = 0;
  for (const auto* limit : {&band.coarse_limit(), &band.fine_limit()}) {
    if (limit->empty()) continue;
    point.percent += percent_on_curve(*limit, size);
    ++limits;
  }
  if (limits == 0) return;
  point.percent /= limits;
  for (const auto& material : materials) {
    const auto& curve = material.gradation;
    point.percents.push_back(
        curve.percent_smaller(convert_size(size, band.basis().size, curve.basis().size)));
  }
  target.middle.push_back(std::move(point));
}

}  // namespace

double BlendTarget::percent(const TargetLine& line, const std::vector<double>& shares) {
  double sum = 0;
  for (std::size_t i = 0; i < shares.size(); ++i) sum += shares[i] * line.percents[i];
  return sum;
}

double BlendTarget::miss(const TargetLine& line, const std::vector<double>& shares) {
  const double over = percent(line, shares) - line.condition.percent;
  return std::max(0.0, line.condition.sense == Sense::at_most ? over : -over);
}

double BlendTarget::margin(const std::vector<double>& shares) const {
  double least = 100;
  for (const auto& line : lines) {
    const double over = percent(line, shares) - line.condition.percent;
    const double room = line.condition.sense == Sense::at_most ? -over : over;
    if (line.has_room || room < -1e-7) least = std::min(least, room);
  }
  return least;
}

void add_condition(BlendTarget& target, const std::vector<OfferedMaterial>& materials,
                   const BandCondition& condition, SizeMeaning meaning) {
  if (rules_nothing_out(condition)) return;
  TargetLine line;
  line.condition = condition;
  line.has_room = condition.percent > 0 && condition.percent < 100;
  for (const auto& material : materials) {
    const auto& curve = material.gradation;
    const Length size = convert_size(condition.size, meaning, curve.basis().size);
    const auto known = careful_percent(curve, size, condition.sense);
    line.percents.push_back(known.percent);
    auto& cut = target.cut_short;
    if (known.cut_short && std::find(cut.begin(), cut.end(), material.name) == cut.end()) {
      cut.push_back(material.name);
    }
  }
  target.lines.push_back(std::move(line));
}

Expected<BlendTarget> blend_target(const std::vector<OfferedMaterial>& materials,
                                   const GradationBand& band) {
  if (auto problems = problems_of(materials, band); !problems.empty()) return problems;
  BlendTarget target;
  for (const auto& condition : band.conditions()) {
    add_middle(target, materials, band, condition.size);
    add_condition(target, materials, condition, band.basis().size);
  }
  if (target.lines.empty()) {
    return Problem{"empty-band", "The band rules nothing out.", "", "band",
                   "a band with at least one limit"};
  }
  for (const auto& material : materials) target.names.push_back(material.name);
  return target;
}

LinearRow row_of(const TargetLine& line) {
  LinearRow row;
  row.sense = line.condition.sense == Sense::at_most ? LinearRow::Sense::at_most
                                                     : LinearRow::Sense::at_least;
  for (const double percent : line.percents) {
    row.coefficients.push_back(percent - line.condition.percent);
  }
  return row;
}

}  // namespace proofstone
